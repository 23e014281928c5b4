// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.quantity.InputException;

/**
 * Statements of a description of which only one can hold. A statement may be made again, which replaces it; two that exclude
 * each other are refused, whichever came first.
 */
final class Choice {
  private final String subject;
  private String made = "";

  Choice(String subject) {
    this.subject = subject;
  }

  /** Notes that a statement is made, by its name. */
  void make(String statement) {
    if (!made.isEmpty() && !made.equals(statement)) {
      throw new InputException(
          subject, made + " and " + statement, "one of them", "they exclude each other; describe it anew to choose another");
    }
    made = statement;
  }

  boolean isMade() {
    return !made.isEmpty();
  }
}
