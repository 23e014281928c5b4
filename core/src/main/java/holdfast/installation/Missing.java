// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.MeasuredPart;
import holdfast.quantity.InputException;
import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;

/** Collects what a description still lacks and what contradicts itself, so that one error names all of it. */
final class Missing {
  private final String description;
  private final List<String> names = new ArrayList<>();
  private final List<String> contradictions = new ArrayList<>();
  private String prefix = "";

  Missing(String description) {
    this.description = description;
  }

  Missing need(Object value, String name) {
    if (value == null) {
      names.add(prefix + name);
    }
    return this;
  }

  /** The part if it is complete and possible; null otherwise, and what is wrong is kept. */
  <T> T part(String name, Description<T> part) {
    if (part == null) {
      names.add(name);
      return null;
    }
    int before = names.size();
    prefix = name + ": ";
    part.missing(this);
    prefix = "";
    if (names.size() > before) {
      return null;
    }
    try {
      return part.make();
    } catch (InputException e) {
      contradictions.add(e.getMessage());
      return null;
    }
  }

  /** What the record of a measured part lacks. */
  Missing readings(String name, MeasuredPart part) {
    part.missing().forEach(lack -> names.add(name + ": " + lack));
    return this;
  }

  void refuse() {
    if (names.isEmpty() && contradictions.isEmpty()) {
      return;
    }
    StringJoiner value = new StringJoiner("; and ");
    if (!names.isEmpty()) {
      value.add("without " + String.join(", ", names));
    }
    contradictions.forEach(value::add);
    throw new InputException(
        description,
        value.toString(),
        contradictions.isEmpty() ? "complete" : "complete and free of contradictions",
        "nothing is assumed in place of what is not given");
  }
}
