// SPDX-License-Identifier: Apache-2.0
/** Checks of rollers, greasing and fleets. */
package holdfast.verification.installation;
