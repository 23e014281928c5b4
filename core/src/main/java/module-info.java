// SPDX-License-Identifier: Apache-2.0
/** Seating a bearing in a machine member: quantities, limits and fits, tightening, rating life, press fits, the sheet. */
module holdfast.core {
  requires transitive holdfast.tables;
  requires com.samskivert.jmustache;
  requires org.apache.commons.numbers.gamma;
  requires org.apache.commons.numbers.rootfinder;
  requires org.snakeyaml.engine.v2;
  // Only the executable jar opens JShell; embedders need not have it.
  requires static jdk.jshell;

  exports holdfast.bearings;
  exports holdfast.contact;
  exports holdfast.bearings.reference;
  exports holdfast.failures;
  exports holdfast.fits;
  exports holdfast.fleet;
  exports holdfast.installation;
  exports holdfast.job;
  exports holdfast.lubrication;
  exports holdfast.quantity;
  exports holdfast.rollers;
  exports holdfast.seats;
  exports holdfast.sheet;
  exports holdfast.threads;
  exports holdfast.trace;
}
