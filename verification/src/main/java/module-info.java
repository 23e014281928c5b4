// SPDX-License-Identifier: Apache-2.0
/** Checks of the calculations against values from outside the project, and the audit report. */
@SuppressWarnings("requires-automatic")
module holdfast.verification {
  requires transitive holdfast.core;
  requires com.samskivert.jmustache;
  requires commons.math3;
  requires de.siegmar.fastcsv;

  exports holdfast.verification;
  exports holdfast.verification.bearings;
  exports holdfast.verification.contact;
  exports holdfast.verification.fits;
  exports holdfast.verification.reference;
  exports holdfast.verification.installation;
  exports holdfast.verification.questions;
  exports holdfast.verification.seats;
  exports holdfast.verification.threads;

  // The report's template reads the records of the view.
  opens holdfast.verification to
      com.samskivert.jmustache;
}
