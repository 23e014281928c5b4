// SPDX-License-Identifier: Apache-2.0
/**
 * Load ratings and rating life of rolling bearings: ratings from geometry, equivalent loads, basic and modified rating
 * life, lubrication and contamination, varying duty, several bearings together, track rollers. Kernels take and give
 * doubles in N, mm, rad, rpm, mm²/s, °C and million revolutions.
 */
package holdfast.bearings;
