// SPDX-License-Identifier: Apache-2.0
/** Checks of threads, strength and tightening against published values. */
package holdfast.verification.threads;
