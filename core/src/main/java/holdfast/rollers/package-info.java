// SPDX-License-Identifier: Apache-2.0
/**
 * Stud-type track rollers: boundary dimensions of the metric and inch series, identification from measured dimensions,
 * speed limits, the eccentric collar. No load ratings: those come from the maker of the roller.
 */
package holdfast.rollers;
