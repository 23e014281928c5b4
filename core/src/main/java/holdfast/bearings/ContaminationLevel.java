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

  private double factor(Length pitchDiameter, String end) {
    Objects.requireNonNull(pitchDiameter, "pitchDiameter");
    Table table = TableSet.bundled().table("bearings/iso-281/2007/contamination-levels");
    return table.number(table.find("level", words()), (pitchDiameter.mm() < LARGE ? "small_" : "large_") + end);
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
    return factor(pitchDiameter, "from");
  }

  /**
   * Upper end of the range.
   *
   * @param pitchDiameter pitch diameter Dpw
   * @return eC
   */
  public double greatest(Length pitchDiameter) {
    return factor(pitchDiameter, "to");
  }

  /** The level in words. */
  @Override
  public String toString() {
    return words();
  }
}
