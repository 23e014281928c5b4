// SPDX-License-Identifier: Apache-2.0
/** Checks of contact and stud calculations against worked examples, printed tables and general-purpose libraries. */
package holdfast.verification.contact;
