// SPDX-License-Identifier: Apache-2.0
/**
 * What a tilt between the raceways costs: load distribution over rolling elements and laminae under radial load,
 * clearance and tilt, and the life that follows from it.
 *
 * <p>The model has the structure of the reference rating life as recalled from ISO/TS 16281:2008, no text of which was at
 * hand. What rests on what:
 *
 * <ul>
 *   <li>derived: the deflection of a lamina from rigid-body geometry; equilibrium, and that it is the minimum of a convex
 *       energy; ring loads and their exponents (4 and 9/2 for lines, 3 and 10/3 for points) and the combination of
 *       laminae by the Weibull law with slope 9/8 (10/9); the exponent 7/9 of a lamina's rating; the point-contact constant
 *       from Hertz; axial motion of ball grooves under tilt;
 *   <li>recalled, and near what can be derived: the factors 0.378, 0.364, 1.038 (balls 0.407, 0.389, 1.044) are load
 *       distribution integrals at zero clearance, which come to 0.3764, 0.3630, 1.0367 (0.4068, 0.3895, 1.0443); they
 *       move the absolute life by up to 2 % and cancel but for the share of the rings in a ratio;
 *   <li>recalled: the line-contact constant 35948 with exponent 10/9; the logarithmic roller profiles; the edge stress
 *       factor; the division of the ratings by 0.83.
 * </ul>
 *
 * <p>The division by 0.83 multiplies every life by 0.83^-4 = 2.1 and cancels in a ratio. Therefore the result to use is the
 * <em>life ratio</em> against the same bearing without tilt; the absolute life is shown beside it and marked as recalled.
 *
 * <p>Workspaces are reused between solves so that nothing is allocated; they are not thread-safe: one for each thread.
 */
package holdfast.bearings.reference;
