// SPDX-License-Identifier: Apache-2.0
/**
 * Quantities as small immutable records, the units in which they are read and printed, and the error that
 * refuses bad input. Base units: mm, mm², N, N·mm, MPa, rad, °C, K, rpm, mm/s, mm²/s, g, N·mm (work), N/mm, 1/K, h.
 */
package holdfast.quantity;
