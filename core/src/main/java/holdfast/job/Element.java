// SPDX-License-Identifier: Apache-2.0
package holdfast.job;

import java.util.List;

/** A key, or a list whose items have keys of their own. */
sealed interface Element permits Key, Element.Repeat {
  String path();

  String meaning();

  /**
   * A list of items with the same keys.
   *
   * @param path where it stands
   * @param meaning what it means
   * @param otherwise what holds without it
   * @param keys the keys of an item, their paths counted from the item
   */
  record Repeat(String path, String meaning, String otherwise, List<Key<?>> keys) implements Element {}
}
