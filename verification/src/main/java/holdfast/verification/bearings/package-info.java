// SPDX-License-Identifier: Apache-2.0
/** Checks of load ratings and rating life against standards, catalogues, charts and the closed forms behind the tables. */
package holdfast.verification.bearings;
