// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.fits.Fit;
import holdfast.fits.MeasuredFit;
import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * Least and greatest diametral interference of a joint at 20 °C, from a fit, from limits or from measured parts.
 *
 * @param joint joint diameter D (nominal size)
 * @param least least interference; negative if the loosest pair has clearance
 * @param greatest greatest interference, over 0
 */
public record InterferenceBand(Length joint, Length least, Length greatest) implements Serializable {
  // Refuses clearance fits: there is nothing to compute.
  public InterferenceBand {
    Objects.requireNonNull(joint, "joint");
    Objects.requireNonNull(least, "least");
    Objects.requireNonNull(greatest, "greatest");
    Check.positive(joint.mm(), "joint diameter", "mm", "a joint has a size");
    if (greatest.compareTo(least) < 0) {
      throw new InputException("greatest interference", greatest.toString(), "at least " + least, "it is not below the least");
    }
    if (!(greatest.mm() > 0 && greatest.mm() < joint.mm())) {
      throw new InputException(
          "greatest interference",
          greatest.toString(),
          "over 0 mm and less than the joint diameter " + joint,
          "the fit must interfere: even the tightest pair of a clearance fit makes no pressure");
    }
  }

  /**
   * From limits.
   *
   * @param joint joint diameter
   * @param least least interference; negative if the loosest pair has clearance
   * @param greatest greatest interference, over 0
   * @return the band
   * @throws InputException if the fit cannot interfere
   */
  public static InterferenceBand of(Length joint, Length least, Length greatest) {
    return new InterferenceBand(joint, least, greatest);
  }

  /**
   * From a fit.
   *
   * @param fit an interference or transition fit
   * @return the band between its loosest and its tightest pair
   * @throws InputException if it is a clearance fit
   */
  public static InterferenceBand of(Fit fit) {
    Objects.requireNonNull(fit, "fit");
    return new InterferenceBand(fit.nominalSize(), fit.maximumClearance().negated(), fit.minimumClearance().negated());
  }

  /**
   * From one pair of measured parts, both measured at or corrected to 20 °C.
   *
   * @param stud measured diameter of the stud
   * @param bore measured diameter of the bore
   * @param uncertainty expanded uncertainty of the difference, 0 or more
   * @return the measured interference ± the uncertainty; the joint diameter is the measured bore
   * @throws InputException if the parts have clearance
   */
  public static InterferenceBand ofMeasured(Length stud, Length bore, Length uncertainty) {
    Objects.requireNonNull(stud, "stud");
    Objects.requireNonNull(bore, "bore");
    Objects.requireNonNull(uncertainty, "uncertainty");
    Check.notNegative(uncertainty.mm(), "uncertainty of the measurement", "mm", "it widens the band");
    Length measured = stud.minus(bore);
    return new InterferenceBand(bore, measured.minus(uncertainty), measured.plus(uncertainty));
  }

  /**
   * From measured parts: between the extreme readings, widened by the uncertainty.
   *
   * @param measured the readings of both parts
   * @return the band at the nominal size of the drawing
   * @throws InputException if the parts have clearance
   */
  public static InterferenceBand of(MeasuredFit measured) {
    Objects.requireNonNull(measured, "measured");
    return new InterferenceBand(
        measured.drawing().nominalSize(),
        measured.maximumClearance().plus(measured.uncertainty()).negated(),
        measured.minimumClearance().minus(measured.uncertainty()).negated());
  }

  /** Diameter and band: {@code "25 mm, interference 1 µm … 35 µm"}. */
  @Override
  public String toString() {
    return joint + ", interference " + least + " … " + greatest;
  }
}
