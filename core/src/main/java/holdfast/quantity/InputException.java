// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

import java.util.Objects;

/**
 * Input outside the domain of a calculation. The message reads: parameter, value, permitted range, and why.
 * Its text is English in every locale. Of each part no more than 1000 characters are kept.
 */
public final class InputException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /** Characters of one part of the message that are kept. */
  private static final int MOST = 1000;

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
    super(clip(parameter, "parameter") + " (" + clip(value, "value") + ") must be " + clip(permitted, "permitted") + "; "
        + clip(reason, "reason"));
    this.parameter = clip(parameter, "parameter");
    this.value = clip(value, "value");
    this.permitted = clip(permitted, "permitted");
    this.reason = clip(reason, "reason");
  }

  /** A refusal is read by people: of a text pasted by mistake the beginning is enough, and its length. */
  private static String clip(String text, String name) {
    Objects.requireNonNull(text, name);
    if (text.length() <= MOST) {
      return text;
    }
    int end = Character.isHighSurrogate(text.charAt(MOST - 1)) ? MOST - 1 : MOST;
    return text.substring(0, end) + "… (" + text.length() + " characters)";
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
