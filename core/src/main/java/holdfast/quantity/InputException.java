// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

import java.util.Objects;

/**
 * Input outside the domain of a calculation. The message reads: parameter, value, permitted range, and why.
 * Its text is English in every locale.
 */
public final class InputException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final String parameter;
  private final String value;
  private final String permitted;
  private final String reason;

  /**
   * Creates the error.
   *
   * @param parameter what was given, in the words of the field, for example {@code "nominal size D"}
   * @param value the value with its unit, as text
   * @param permitted the permitted values, for example {@code "over 0 mm up to 3150 mm"}
   * @param reason where the limit comes from, for example {@code "ISO 286-1:2010, Table 1"}
   */
  public InputException(String parameter, String value, String permitted, String reason) {
    super(parameter + " (" + value + ") must be " + permitted + "; " + reason);
    this.parameter = Objects.requireNonNull(parameter, "parameter");
    this.value = Objects.requireNonNull(value, "value");
    this.permitted = Objects.requireNonNull(permitted, "permitted");
    this.reason = Objects.requireNonNull(reason, "reason");
  }

  /**
   * What was given.
   *
   * @return the name of the parameter
   */
  public String parameter() {
    return parameter;
  }

  /**
   * The refused value.
   *
   * @return the value with its unit, as text
   */
  public String value() {
    return value;
  }

  /**
   * What would be accepted.
   *
   * @return the permitted values, as text
   */
  public String permitted() {
    return permitted;
  }

  /**
   * Where the limit comes from.
   *
   * @return the source or the physical reason
   */
  public String reason() {
    return reason;
  }
}
