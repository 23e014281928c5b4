// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

/**
 * A part of the job that is described step by step.
 *
 * @param <T> what the description ends in
 */
abstract class Description<T> {
  /** Tells what is still missing. */
  abstract void missing(Missing missing);

  /** Ends the description; called only when nothing is missing. */
  abstract T make();

  /** The part, or one error that names all that is missing. */
  final T make(String name) {
    Missing missing = new Missing(name);
    missing(missing);
    missing.refuse();
    return make();
  }
}
