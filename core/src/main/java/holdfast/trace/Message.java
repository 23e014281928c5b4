// SPDX-License-Identifier: Apache-2.0
package holdfast.trace;

import holdfast.quantity.InputException;
import holdfast.quantity.Quantity;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A sentence whose quantities are still quantities, so that whoever prints it chooses their units before they become text.
 *
 * @param parts texts and quantities in order
 */
public record Message(List<Serializable> parts) implements Serializable {
  // Keeps an unmodifiable copy; refuses what is neither text nor quantity.
  public Message {
    Objects.requireNonNull(parts, "parts");
    parts = List.copyOf(parts);
    for (Serializable part : parts) {
      if (!(part instanceof String || part instanceof Quantity<?>)) {
        throw new InputException("part of a message", part.getClass().getSimpleName(), "a text or a quantity",
            "other things become text before they get here");
      }
    }
  }

  /**
   * Joins texts, quantities and other messages.
   *
   * @param parts what is joined; quantities stay quantities, messages give their parts, everything else becomes text
   * @return the message
   */
  public static Message of(Object... parts) {
    Objects.requireNonNull(parts, "parts");
    List<Serializable> all = new ArrayList<>();
    for (Object part : parts) {
      Objects.requireNonNull(part, "part");
      if (part instanceof Message message) {
        all.addAll(message.parts());
      } else if (part instanceof Quantity<?> quantity) {
        all.add((Serializable) quantity);
      } else {
        all.add(part.toString());
      }
    }
    return new Message(all);
  }

  /**
   * The sentence with its quantities in the units of the printer.
   *
   * @param units how a quantity is printed
   * @return the text
   */
  public String text(Function<Quantity<?>, String> units) {
    Objects.requireNonNull(units, "units");
    return parts.stream()
        .map(part -> part instanceof Quantity<?> quantity ? units.apply(quantity) : part.toString())
        .collect(Collectors.joining());
  }

  /** The sentence with its quantities as they print themselves. */
  @Override
  public String toString() {
    return text(Object::toString);
  }
}
