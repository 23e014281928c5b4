// SPDX-License-Identifier: Apache-2.0
/**
 * Screw threads, their strength and their tightening: geometry and limits of size, strength classes, torque and preload
 * with friction as a band, stresses of solid and drilled studs, scatter, joint stiffness, the torque window, and
 * stripping.
 */
package holdfast.threads;
