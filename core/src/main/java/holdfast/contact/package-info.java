// SPDX-License-Identifier: Apache-2.0
/**
 * Contact of a roller with its track: line and elliptical Hertz contact, the stress below the surface, the capacity of
 * the track. Kernels work on doubles in mm, N, MPa and rad; the typed results on top explain themselves.
 */
package holdfast.contact;
