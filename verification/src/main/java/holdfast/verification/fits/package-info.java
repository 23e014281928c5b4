// SPDX-License-Identifier: Apache-2.0
/** Checks of limits and fits: printed limit deviations, printed fits, and the formulas behind the tables. */
package holdfast.verification.fits;
