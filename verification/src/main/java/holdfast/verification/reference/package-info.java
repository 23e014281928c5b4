// SPDX-License-Identifier: Apache-2.0
/** Checks of the life of tilted bearings: load sharing without clearance against printed factors and closed forms. */
package holdfast.verification.reference;
