// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Length;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.util.Locale;
import java.util.Objects;

/** Levels of contamination of ISO 281:2007, Table 13, each with a range of the contamination factor. */
public enum ContaminationLevel {
  /** Particles no larger than the oil film; laboratory. */
  EXTREME_CLEANLINESS,
  /** Very fine oil filtration; sealed and greased for life. */
  HIGH_CLEANLINESS,
  /** Fine oil filtration; shielded and greased for life. */
  NORMAL_CLEANLINESS,
  /** A little dirt in the lubricant. */
  SLIGHT_CONTAMINATION,
  /** No integral seals, coarse filter, wear debris and ingress. */
  TYPICAL_CONTAMINATION,
  /** Very dirty surroundings and poor sealing. */
  SEVERE_CONTAMINATION,
  /** Contamination beyond the method. */
  VERY_SEVERE_CONTAMINATION;

  /** Pitch diameter in mm from which the higher ranges hold. */
  private static final double LARGE = 100;

  private final double smallFrom;
  private final double smallTo;
  private final double largeFrom;
  private final double largeTo;

  ContaminationLevel() {
    Table table = TableSet.bundled().table("bearings/iso-281/2007/contamination-levels");
    int row = table.find("level", words());
    this.smallFrom = table.number(row, "small_from");
    this.smallTo = table.number(row, "small_to");
    this.largeFrom = table.number(row, "large_from");
    this.largeTo = table.number(row, "large_to");
  }

  private String words() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /**
   * Lower, careful end of the range.
   *
   * @param pitchDiameter pitch diameter Dpw
   * @return eC
   */
  public double least(Length pitchDiameter) {
    Objects.requireNonNull(pitchDiameter, "pitchDiameter");
    return pitchDiameter.mm() < LARGE ? smallFrom : largeFrom;
  }

  /**
   * Upper end of the range.
   *
   * @param pitchDiameter pitch diameter Dpw
   * @return eC
   */
  public double greatest(Length pitchDiameter) {
    Objects.requireNonNull(pitchDiameter, "pitchDiameter");
    return pitchDiameter.mm() < LARGE ? smallTo : largeTo;
  }

  /** The level in words. */
  @Override
  public String toString() {
    return words();
  }
}
