/** The questions of the bench: the page's answers against published values. */
package holdfast.verification.questions;
