// SPDX-License-Identifier: Apache-2.0
/** Checks of materials, interference fits and housings against worked examples, models and second sources. */
package holdfast.verification.seats;
