// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

/** What keeps a pin from turning in the fork and from walking out of it. */
public enum PinSecuring {
  /** A plate in a slot of the pin, screwed to the ear. */
  KEEPER_PLATE("a keeper plate in a slot of the pin", true),
  /** Plates over both ends of the pin, clamped together. */
  END_PLATES("end plates, clamped", true),
  /** Rings in grooves outside the ears: they keep the pin in place and let it turn. */
  RETAINING_RINGS("retaining rings outside the ears", false),
  /** A cross pin through ear and pin. */
  CROSS_PIN("a cross pin through ear and pin", true),
  /** Nothing but the press fit in the ears. */
  PRESS_FIT("the press fit in the ears alone", false);

  private final String words;
  private final boolean againstTurning;

  PinSecuring(String words, boolean againstTurning) {
    this.words = words;
    this.againstTurning = againstTurning;
  }

  /**
   * Whether it keeps a loose pin from turning.
   *
   * @return true if it locks the pin to the fork
   */
  public boolean againstTurning() {
    return againstTurning;
  }

  /** For example {@code "end plates, clamped"}. */
  @Override
  public String toString() {
    return words;
  }
}
