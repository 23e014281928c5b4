// SPDX-License-Identifier: Apache-2.0
/** The questions of the bench: the page's answers against published values. */
package holdfast.verification.questions;
