// SPDX-License-Identifier: Apache-2.0
package holdfast.trace;

import holdfast.tables.SourceRef;
import java.util.List;

/** A result that explains itself. */
public interface Traced {
  /**
   * How the result was computed; built when asked for, from the same kernels as the result.
   *
   * @return the derivation, whose last step is the main value of the result
   */
  Derivation explain();

  /**
   * What the reader must know: outside validity, extrapolated, assumption taken.
   *
   * @return the warnings; empty if there are none
   */
  List<Warning> warnings();

  /**
   * The documents and places used.
   *
   * @return the sources, each once
   */
  default List<SourceRef> sources() {
    return explain().sources();
  }
}
