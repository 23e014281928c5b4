// SPDX-License-Identifier: Apache-2.0
/**
 * Checks against the outside world. A {@link holdfast.verification.Suite} reads published values from a case table,
 * runs the calculation and gives {@link holdfast.verification.Comparison}s; the {@link holdfast.verification.Audit}
 * runs all suites and reports. A disagreement is either disclosed with its reason or fails the audit.
 */
package holdfast.verification;
