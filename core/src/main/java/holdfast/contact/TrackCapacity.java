// SPDX-License-Identifier: Apache-2.0
package holdfast.contact;

import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.Numbers;
import holdfast.quantity.Stress;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Load that a track of some hardness takes from a roller whose track capacity at 40 HRC is known.
 *
 * @param capacityAt40 track capacity at 40 HRC, from the roller's own data, over 0
 * @param hardness Rockwell C hardness of the track in HRC, from 20 to 58
 * @param crowned whether the outer ring is crowned (elliptical contact) or cylindrical (line contact)
 */
public record TrackCapacity(Force capacityAt40, double hardness, boolean crowned) implements Traced, Serializable {
  /** Least hardness of the tables in HRC. */
  public static final double SOFTEST = 20;
  /** Greatest hardness of the tables in HRC. */
  public static final double HARDEST = 58;

  // Refuses hardnesses that no table covers.
  public TrackCapacity {
    Objects.requireNonNull(capacityAt40, "capacityAt40");
    Check.positive(capacityAt40.base(), "track capacity at 40 HRC", "N", "from the roller's own data");
    Check.within(hardness, SOFTEST, HARDEST, "track hardness", "HRC", "range of the printed tables");
  }

  /**
   * Capacity of the track.
   *
   * @return capacity at 40 HRC times the factor
   */
  public Force capacity() {
    return capacityAt40.times(factor());
  }

  /**
   * Factor on the capacity at 40 HRC.
   *
   * @return the value interpolated in the table that covers hardness and ring
   */
  public double factor() {
    return table().factor(hardness, crowned);
  }

  /**
   * Lowest factor that any of the printed tables gives at this hardness.
   *
   * @return the factor of the most careful source
   */
  public double lowestPrintedFactor() {
    double lowest = factor();
    if (!crowned && hardness >= 26) {
      lowest = Math.min(lowest, TrackFactors.CAM_FOLLOWER_CATALOGUE.get().factor(hardness, false));
    }
    return Math.min(lowest, TrackFactors.TRACK_ROLLER_CATALOGUE.get().factor(hardness, crowned));
  }

  /**
   * Tensile strength that goes with the hardness in the same table.
   *
   * @return the strength, interpolated
   */
  public Stress strength() {
    return new Stress(table().strength(hardness));
  }

  /**
   * Where the factor stands.
   *
   * @return the table that covers hardness and ring
   */
  public SourceRef source() {
    return table().source();
  }

  @Override
  public Derivation explain() {
    Derivation.Builder steps = Derivation.of("Capacity of a track of " + Numbers.shortest(hardness) + " HRC");
    steps.step(
        "f", "factor on the capacity at 40 HRC", "geometric between the rows of the table", factor(), "", source(),
        "hardness " + Numbers.shortest(hardness) + " HRC", crowned ? "crowned ring" : "cylindrical ring");
    steps.step(
        "C_track", "track capacity", "f · capacity at 40 HRC", capacity().base(), "N", source(),
        "capacity at 40 HRC = " + capacityAt40);
    return steps.build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    double lowest = lowestPrintedFactor();
    if (lowest < 0.97 * factor()) {
      warnings.add(
          new Warning(
              "tables-disagree",
              "printed tables differ at " + Numbers.shortest(hardness) + " HRC: the factor is "
                  + Numbers.significant(factor(), 3) + " here and " + Numbers.significant(lowest, 3) + " in the most careful one",
              SourceRef.commonPractice("compare the printed tables and take the roller's own")));
    }
    return List.copyOf(warnings);
  }

  /** For example {@code track of 50 HRC, cylindrical ring: 24 kN}. */
  @Override
  public String toString() {
    return "track of " + Numbers.shortest(hardness) + " HRC, " + (crowned ? "crowned" : "cylindrical") + " ring: " + capacity();
  }

  private TrackFactors table() {
    return (hardness <= 55 ? TrackFactors.NEEDLE_CATALOGUE : TrackFactors.TRACK_ROLLER_CATALOGUE).get();
  }
}
