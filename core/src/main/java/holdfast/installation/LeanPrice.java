// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.bearings.LoadRatings;
import holdfast.bearings.reference.TiltedLife;
import holdfast.quantity.Angle;
import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * What a lean costs in life: the share of it that the rollers see, and the life at that tilt against the same bearing under
 * the same load without tilt. An upper bound for a roller on a pin: a load in the middle of both ears pushes the pin to one
 * side of both, which does not lean it. Rating basis and limits of the method are those of {@link SeatPrice}.
 *
 * @param interior inside of the roller
 * @param tilt lean of the pin against the track and what of it the rollers see
 * @param life life at that tilt
 */
public record LeanPrice(RollerInterior interior, RacewayTilt tilt, TiltedLife life) implements Traced, Serializable {
  private static final SourceRef MIDDLE = SourceRef.derived("both ears carry half of a load in their middle");

  public LeanPrice {
    Objects.requireNonNull(interior, "interior");
    Objects.requireNonNull(tilt, "tilt");
    Objects.requireNonNull(life, "life");
  }

  static LeanPrice of(
      RollerInterior interior, LoadRatings ratings, Force load, Angle lean, Length crownRadius, Length outside) {
    RacewayTilt tilt = RacewayTilt.of(interior.bearing(ratings), load, lean, crownRadius, outside);
    return new LeanPrice(interior, tilt, interior.bearing(ratings).life(load, tilt.raceways()));
  }

  /**
   * Life over the life of the aligned bearing.
   *
   * @return the ratio; multiply a basic or modified rating life by it
   */
  public double lifeRatio() {
    return life.lifeRatio();
  }

  /** Shares of the lean, then the life; the last step is the life ratio. */
  @Override
  public Derivation explain() {
    return Derivation.of("Price of a lean in life: " + interior).steps(tilt.explain()).steps(life.explain()).build();
  }

  @Override
  public List<Warning> warnings() {
    Set<Warning> warnings = new LinkedHashSet<>(life.warnings());
    warnings.addAll(interior.warnings());
    warnings.addAll(tilt.warnings());
    if (tilt.studTilt().radian() > 0) {
      warnings.add(new Warning("lean-at-most", "a load in the middle of both ears pushes the pin to one side and does not lean"
          + " it; the lean taken is the most that a load beside the middle or a twisted fork can bring", MIDDLE));
    }
    warnings.add(SeatPriceNotes.NO_PRINT);
    return List.copyOf(warnings);
  }

  /** For example {@code "lean 0.12 mrad, life ratio 0.98"}. */
  @Override
  public String toString() {
    return "lean " + tilt + ", life ratio " + Numbers.significant(lifeRatio(), 2);
  }
}
