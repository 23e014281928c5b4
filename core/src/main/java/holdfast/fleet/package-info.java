// SPDX-License-Identifier: Apache-2.0
/**
 * Replacement of the rollers of a fleet: expected replacements, group interval, spares. The survival of one roller comes
 * from the caller as a function of its running hours.
 */
package holdfast.fleet;
