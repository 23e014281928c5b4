// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

/** How bore and face hold a stud against leaning. A real seat lies between two of these. */
public enum SeatHold {
  /** Friction holds the whole bore; the flange carries nothing. */
  BONDED_FREE(0, "bonded_free", "bore held by friction"),
  /** The bore presses and pulls without friction, as a press fit does while its pressure lasts; the flange carries nothing. */
  FRICTIONLESS_FREE(1, "frictionless_free", "bore without friction"),
  /** Friction holds the whole bore, the nut keeps the flange closed all round. */
  BONDED_CLAMPED(2, "bonded_clamped", "bore held by friction, flange closed"),
  /** The bore is without friction, the nut keeps the flange closed all round. */
  FRICTIONLESS_CLAMPED(3, "frictionless_clamped", "bore without friction, flange closed"),
  /** The flange that the nut keeps closed carries all; the bore does not touch. */
  OPEN_CLAMPED(4, "open_clamped", "flange closed, bore not touching");

  private final int place;
  private final String column;
  private final String label;

  SeatHold(int place, String column, String label) {
    this.place = place;
    this.column = column;
    this.label = label;
  }

  /** Place among the holds that the kernel keeps in arrays, from 0. */
  int place() {
    return place;
  }

  /** Beginning of the columns of the table. */
  String column() {
    return column;
  }

  @Override
  public String toString() {
    return label;
  }
}
