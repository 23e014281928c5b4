// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Length;
import holdfast.quantity.Stress;
import java.io.Serializable;
import java.util.Objects;

/**
 * Stresses at a place of a fit. Tension is positive; the axial stress is zero (free ends).
 *
 * @param place where
 * @param radius distance from the axis
 * @param radial radial stress σ_r
 * @param hoop hoop stress σ_θ
 */
public record CriticalStress(Place place, Length radius, Stress radial, Stress hoop) implements Serializable {
  public CriticalStress {
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(radius, "radius");
    Objects.requireNonNull(radial, "radial");
    Objects.requireNonNull(hoop, "hoop");
  }

  /** The radii at which stresses of a fit are greatest. */
  public enum Place {
    /** On the axis of a solid stud. */
    STUD_AXIS("axis of the stud"),
    /** Wall of the hole in a hollow stud. */
    HOLE_WALL("wall of the hole in the stud"),
    /** Stud at the joint. */
    STUD_JOINT("stud at the joint"),
    /** Housing at the joint: its bore. */
    HOUSING_BORE("bore of the housing"),
    /** Outside of the housing, at its point nearest to the bore. */
    HOUSING_OUTSIDE("outside of the housing");

    private final String label;

    Place(String label) {
      this.label = label;
    }

    boolean ofHousing() {
      return this == HOUSING_BORE || this == HOUSING_OUTSIDE;
    }

    @Override
    public String toString() {
      return label;
    }
  }

  /**
   * Von Mises equivalent stress.
   *
   * @return the stress, 0 or more
   */
  public Stress vonMises() {
    return new Stress(EquivalentStressKernel.vonMises(hoop.base(), radial.base()));
  }

  /**
   * Equivalent stress after a theory of yield, to be compared with the yield strength.
   *
   * @param rule the theory
   * @return the stress, 0 or more
   */
  public Stress equivalent(YieldRule rule) {
    Objects.requireNonNull(rule, "rule");
    return switch (rule) {
      case VON_MISES -> vonMises();
      case TRESCA -> tresca();
      case MODIFIED_SHEAR -> tresca().times(Math.sqrt(3) / 2);
    };
  }

  /**
   * Tresca equivalent stress: twice the greatest shear stress.
   *
   * @return the stress, 0 or more
   */
  public Stress tresca() {
    return new Stress(EquivalentStressKernel.tresca(hoop.base(), radial.base()));
  }

  @Override
  public String toString() {
    return place + ": radial " + radial + ", hoop " + hoop + ", von Mises " + vonMises();
  }
}
