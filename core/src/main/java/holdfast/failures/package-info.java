// SPDX-License-Identifier: Apache-2.0
/**
 * Reading a failure: from the symptom to likely causes, checks and correction; and the limits of misalignment. Tables and
 * a search by words, no calculation of strength.
 */
package holdfast.failures;
