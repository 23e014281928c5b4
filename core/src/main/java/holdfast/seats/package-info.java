// SPDX-License-Identifier: Apache-2.0
/**
 * Seating a stud in its housing: materials, interference fits (pressure, stresses, elastic and plastic limits, pressing,
 * heating and cooling, service), the shape of the housing, and the tilt of the seat.
 *
 * <p>Kernels work on numbers in mm, N, MPa, K and allocate nothing; the other types carry quantities. Stresses are
 * positive in tension, pressures positive in compression; interferences are diametral unless said otherwise.
 */
package holdfast.seats;
