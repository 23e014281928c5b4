// SPDX-License-Identifier: Apache-2.0
package holdfast.job;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The values of a job by their keys. */
final class Values {
  private final Map<String, Object> values = new LinkedHashMap<>();

  <T> Values put(Key<T> key, T value) {
    values.put(key.path(), value);
    return this;
  }

  <T> Values putIf(Key<T> key, Optional<T> value) {
    value.ifPresent(known -> put(key, known));
    return this;
  }

  /** Writes a text as the key's kind reads it. */
  <T> void read(Key<T> key, String text) {
    put(key, key.kind().read().apply(text));
  }

  void putItems(Element.Repeat repeat, List<Values> items) {
    values.put(repeat.path(), items);
  }

  void remove(Element element) {
    values.remove(element.path());
  }

  /** Takes over a value of another job. */
  void take(Element element, Values from) {
    values.put(element.path(), from.values.get(element.path()));
  }

  boolean has(Element element) {
    return values.containsKey(element.path());
  }

  /** A value that is there: of a required key, or asked for before. */
  @SuppressWarnings("unchecked")
  <T> T get(Key<T> key) {
    T value = (T) values.get(key.path());
    if (value == null) {
      throw new IllegalStateException(key.path() + " was not asked for");
    }
    return value;
  }

  <T> Optional<T> find(Key<T> key) {
    return has(key) ? Optional.of(get(key)) : Optional.empty();
  }

  @SuppressWarnings("unchecked")
  List<Values> items(Element.Repeat repeat) {
    return (List<Values>) values.getOrDefault(repeat.path(), List.of());
  }
}
