// SPDX-License-Identifier: Apache-2.0
/** Limits and fits: tolerance classes, fits and their selection, to ISO 286 and to ANSI B4.1 in inches. */
package holdfast.fits;
