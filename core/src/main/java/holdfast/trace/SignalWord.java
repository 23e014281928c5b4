// SPDX-License-Identifier: Apache-2.0
package holdfast.trace;

import holdfast.quantity.InputException;

/**
 * Signal words by what can happen if the advice is not followed. The division is that of the ANSI Z535 series as its users
 * describe it; the standard itself was not read. Some military manuals use CAUTION for damage alone: here that is NOTICE.
 */
public enum SignalWord {
  /** Death or serious injury will follow. */
  DANGER,
  /** Death or serious injury could follow. */
  WARNING,
  /** Minor or moderate injury could follow. */
  CAUTION,
  /** Parts or machine could be damaged; nobody is hurt. */
  NOTICE;

  /** The word for what can happen: {@code kills}, {@code may kill}, {@code hurts}, {@code damages}. */
  static SignalWord of(String harm) {
    return switch (harm) {
      case "kills" -> DANGER;
      case "may kill" -> WARNING;
      case "hurts" -> CAUTION;
      case "damages" -> NOTICE;
      default -> throw new InputException("harm of a caution", "'" + harm + "'", "kills, may kill, hurts or damages",
          "the signal word follows from what can happen");
    };
  }

  /**
   * Whether somebody can be hurt.
   *
   * @return false for damage alone, which carries no alert symbol
   */
  public boolean injury() {
    return this != NOTICE;
  }
}
