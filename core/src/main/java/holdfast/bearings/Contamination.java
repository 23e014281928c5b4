// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import java.io.Serializable;
import java.util.Objects;

/** How clean the lubricant is: a source of the contamination factor eC. */
public sealed interface Contamination extends Serializable {
  /**
   * Contamination factor.
   *
   * @param kappa viscosity ratio κ, over 0; matters for the equations of Annex A only
   * @param pitchDiameter pitch diameter Dpw
   * @return eC, from 0 to 1
   */
  double factor(double kappa, Length pitchDiameter);

  /**
   * A known factor.
   *
   * @param eC contamination factor, from 0 to 1
   * @return the contamination
   * @throws holdfast.quantity.InputException if the factor is outside its range
   */
  static Contamination ofFactor(double eC) {
    return new Given(eC);
  }

  /**
   * A level of Table 13, at the lower, careful end of its range.
   *
   * @param level the level
   * @return the contamination
   */
  static Contamination of(ContaminationLevel level) {
    return new OfLevel(level, 0);
  }

  /**
   * A level of Table 13, at a place within its range.
   *
   * @param level the level
   * @param position share of the range: 0 for its lower, careful end, 1 for the upper
   * @return the contamination
   * @throws holdfast.quantity.InputException if the position is outside 0 to 1
   */
  static Contamination of(ContaminationLevel level, double position) {
    return new OfLevel(level, position);
  }

  /**
   * A cleanliness with an equation of Annex A.
   *
   * @param cleanliness lubrication and cleanliness
   * @return the contamination
   */
  static Contamination of(Cleanliness cleanliness) {
    return new OfEquation(cleanliness);
  }

  /**
   * A known factor.
   *
   * @param eC contamination factor
   */
  record Given(double eC) implements Contamination {
    // Refuses what is not a share.
    public Given {
      ContaminationKernel.checkFactor(eC);
    }

    @Override
    public double factor(double kappa, Length pitchDiameter) {
      Objects.requireNonNull(pitchDiameter, "pitchDiameter");
      return eC;
    }

    /** The factor. */
    @Override
    public String toString() {
      return "eC = " + Numbers.significant(eC, 3) + " as given";
    }
  }

  /**
   * A level of Table 13.
   *
   * @param level the level
   * @param position place within its range as a share, 0 to 1
   */
  record OfLevel(ContaminationLevel level, double position) implements Contamination {
    // Refuses places outside the range.
    public OfLevel {
      Objects.requireNonNull(level, "level");
      holdfast.quantity.Check.within(position, 0, 1, "place within the range of eC", "", "0 is the careful end");
    }

    @Override
    public double factor(double kappa, Length pitchDiameter) {
      Objects.requireNonNull(pitchDiameter, "pitchDiameter");
      double least = level.least(pitchDiameter);
      return least + position * (level.greatest(pitchDiameter) - least);
    }

    /** The level. */
    @Override
    public String toString() {
      String place = position == 0 ? "careful end" : Numbers.significant(position, 2) + " of the way up";
      return level + " (Table 13, " + place + " of its range)";
    }
  }

  /**
   * An equation of Annex A.
   *
   * @param cleanliness lubrication and cleanliness
   */
  record OfEquation(Cleanliness cleanliness) implements Contamination {
    public OfEquation {
      Objects.requireNonNull(cleanliness, "cleanliness");
    }

    @Override
    public double factor(double kappa, Length pitchDiameter) {
      Objects.requireNonNull(pitchDiameter, "pitchDiameter");
      return cleanliness.factor(kappa, pitchDiameter.mm());
    }

    /** The cleanliness. */
    @Override
    public String toString() {
      return cleanliness + " (Figure " + cleanliness.figure() + ")";
    }
  }
}
