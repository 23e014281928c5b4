// SPDX-License-Identifier: Apache-2.0
/**
 * Greasing a stud-type track roller: which port feeds it and what closes the others, how much grease, how often. Cautions
 * for grease guns are those of the package of installation.
 */
package holdfast.lubrication;
