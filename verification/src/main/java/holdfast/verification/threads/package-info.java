/** Checks of threads, strength and tightening against published values. */
package holdfast.verification.threads;
