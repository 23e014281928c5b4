// SPDX-License-Identifier: Apache-2.0
package holdfast.fleet;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import java.io.InvalidObjectException;
import java.io.ObjectStreamException;
import java.io.Serializable;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;

/** A caller's survival function, checked wherever it is evaluated. */
final class Survival implements Serializable {
  private static final long serialVersionUID = 1L;

  // Serializable if the caller's function is.
  @SuppressWarnings("serial")
  private final DoubleUnaryOperator function;

  Survival(DoubleUnaryOperator function) {
    this.function = function;
    double atStart = at(0);
    if (atStart != 1) {
      throw new InputException("survival at 0 h", Numbers.shortest(atStart), "1", "a new part has not failed");
    }
  }

  private Object readResolve() throws ObjectStreamException {
    try {
      return new Survival(Objects.requireNonNull(function, "function"));
    } catch (InputException | NullPointerException e) {
      throw new InvalidObjectException("survival: " + e.getMessage());
    }
  }

  /** Share that survives, from 0 to 1. */
  double at(double hours) {
    return Check.within(function.applyAsDouble(hours), 0, 1, "survival at " + Numbers.shortest(hours) + " h", "",
        "it is a share of the parts");
  }

  /** Share of those that have reached an age that survive further hours. */
  double at(double hours, double age) {
    if (age == 0) {
      return at(hours);
    }
    double reached = at(age);
    Check.positive(reached, "survival at the age of " + Numbers.shortest(age) + " h", "", "the part in place has survived");
    double share = at(age + hours) / reached;
    if (share > 1) {
      throw new InputException("survival at " + Numbers.shortest(age + hours) + " h", Numbers.shortest(at(age + hours)),
          "at most " + Numbers.shortest(reached), "survival never grows");
    }
    return share;
  }
}
