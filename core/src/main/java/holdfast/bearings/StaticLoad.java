// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.Numbers;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Static equivalent load of a bearing and its safety.
 *
 * @param bearing the bearing
 * @param radial radial load Fr
 * @param axial axial load Fa
 * @param running how the bearing has to run
 * @param load static equivalent load P0
 * @param safety static safety factor S0 = C0/P0
 */
public record StaticLoad(LoadedBearing bearing, Force radial, Force axial, Running running, Force load, double safety)
    implements Traced, Serializable {
  public StaticLoad {
    Objects.requireNonNull(bearing, "bearing");
    Objects.requireNonNull(radial, "radial");
    Objects.requireNonNull(axial, "axial");
    Objects.requireNonNull(running, "running");
    Objects.requireNonNull(load, "load");
    Check.finite(safety, "S0", "");
  }

  static StaticLoad of(LoadedBearing bearing, Force radial, Force axial, Running running) {
    double p0 = StaticLoadKernel.load(
        bearing.type(), bearing.rows(), bearing.contactAngle().radian(), radial.newton(), axial.newton());
    double s0 = StaticLoadKernel.safety(bearing.ratings().staticRating().newton(), p0);
    return new StaticLoad(bearing, radial, axial, running, new Force(p0), s0);
  }

  /**
   * Whether the safety reaches the guiding value of ISO 76.
   *
   * @return true if S0 is at least the guiding value
   */
  public boolean sufficient() {
    return safety >= StaticLoadKernel.leastSafety(bearing.type(), running);
  }

  @Override
  public Derivation explain() {
    boolean thrust = bearing.type().family().thrust();
    return Derivation.of("Static safety of a " + bearing.type() + " bearing")
        .step("P0", "static equivalent load", thrust ? "2.3 Fr tan α + Fa" : "max(X0 Fr + Y0 Fa, Fr)", load.newton(), "N",
            BearingSources.STATIC_LOAD, "Fr = " + radial, "Fa = " + axial, "α = " + bearing.contactAngle())
        .step("S0", "static safety factor", "C0 / P0", safety, "", BearingSources.STATIC_SAFETY,
            "C0 = " + bearing.ratings().staticRating())
        .build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    double least = StaticLoadKernel.leastSafety(bearing.type(), running);
    if (safety < least) {
      warnings.add(new Warning("static-safety-low", "S0 = " + Numbers.significant(safety, 3) + " is below the guiding value "
          + Numbers.significant(least, 3), BearingSources.STATIC_SAFETY));
    }
    double alpha = bearing.contactAngle().radian();
    boolean oneWay = bearing.type().family().thrust() && bearing.rows() == 1 && !ContactAngle.is90(alpha);
    double share = oneWay ? radial.newton() * Math.tan(alpha) : 0;
    if (share > 0.67 * axial.newton()) {
      warnings.add(new Warning("radial-share-outside-standard", "Fr/Fa is above 0.67 cot α: for a single-direction thrust"
          + " bearing ISO 76 gives no static equivalent load there; this one is no basis for a decision, take another bearing"
          + " or ask the maker", BearingSources.STATIC_LOAD));
    } else if (share > 0.44 * axial.newton()) {
      warnings.add(new Warning("radial-share-high", "Fr/Fa is above 0.44 cot α: 2.3 Fr tan α + Fa is less on the safe side",
          BearingSources.STATIC_LOAD));
    }
    return List.copyOf(warnings);
  }

  /** For example {@code "P0 = 2.5 kN, S0 = 3.14"}. */
  @Override
  public String toString() {
    return "P0 = " + load + ", S0 = " + Numbers.significant(safety, 3);
  }
}
