// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.Numbers;
import holdfast.trace.Derivation;
import holdfast.trace.Message;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Dynamic equivalent load of a bearing.
 *
 * @param bearing the bearing
 * @param radial radial load Fr
 * @param axial axial load Fa
 * @param relativeAxialLoad the ratio by which the factors are found where they depend on it, else 0: f0 Fa/C0r, of
 *     angular contact bearings i f0 Fa/C0r
 * @param load dynamic equivalent load P
 */
public record EquivalentLoad(LoadedBearing bearing, Force radial, Force axial, double relativeAxialLoad, Force load)
    implements Traced, Serializable {
  public EquivalentLoad {
    Objects.requireNonNull(bearing, "bearing");
    Objects.requireNonNull(radial, "radial");
    Objects.requireNonNull(axial, "axial");
    Objects.requireNonNull(load, "load");
    Check.finite(relativeAxialLoad, "relative axial load", "");
  }

  static EquivalentLoad of(LoadedBearing bearing, Force radial, Force axial) {
    double relative = bearing.relativeAxialLoad(axial);
    double p = EquivalentLoadKernel.load(
        bearing.type(), bearing.rows(), bearing.contactAngle().radian(), relative, radial.newton(), axial.newton());
    return new EquivalentLoad(bearing, radial, axial, relative, new Force(p));
  }

  /**
   * Basic rating life under this load.
   *
   * @return L10
   */
  public BasicLife life() {
    return RatingLife.basic(bearing.ratings(), load);
  }

  private String ratio() {
    return EquivalentLoadKernel.rowsThatCount(bearing.type(), bearing.rows()) > 1 ? "i f0 Fa/C0r" : "f0 Fa/C0r";
  }

  private boolean simple() {
    double alpha = bearing.contactAngle().radian();
    return ContactAngle.is90(alpha) || (bearing.type().family() == BearingFamily.RADIAL_ROLLER && alpha == 0);
  }

  private double e() {
    double alpha = bearing.contactAngle().radian();
    return EquivalentLoadKernel.loadDependent(bearing.type())
        ? EquivalentLoadKernel.radialBallE(bearing.rows(), alpha, relativeAxialLoad)
        : EquivalentLoadKernel.angleE(bearing.type(), alpha);
  }

  @Override
  public Derivation explain() {
    Derivation.Builder steps = Derivation.of("Dynamic equivalent load of a " + bearing.type() + " bearing");
    String fr = "Fr = " + radial;
    String fa = "Fa = " + axial;
    if (simple()) {
      boolean thrust = bearing.type().family().thrust();
      return steps.step("P", "dynamic equivalent load", thrust ? "Fa" : "Fr", load.newton(), "N", BearingSources.XY, fr, fa)
          .build();
    }
    double e = e();
    boolean above = axial.newton() > e * radial.newton();
    double alpha = bearing.contactAngle().radian();
    double x;
    double y;
    if (EquivalentLoadKernel.loadDependent(bearing.type())) {
      x = above ? EquivalentLoadKernel.radialBallX(bearing.rows(), alpha, relativeAxialLoad) : 1;
      y = above
          ? EquivalentLoadKernel.radialBallY(bearing.rows(), alpha, relativeAxialLoad)
          : EquivalentLoadKernel.radialBallYLow(bearing.rows(), alpha, relativeAxialLoad);
      boolean perRow = bearing.type() == BearingType.ANGULAR_CONTACT_BALL;
      steps.step(ratio(), "relative axial load", perRow ? "i f0 Fa / C0r, one row carries Fa" : "f0 Fa / C0r", relativeAxialLoad,
          "", BearingSources.XY, "i = " + bearing.rows(), "f0 = " + Numbers.significant(bearing.f0(), 4), fa,
          "C0r = " + bearing.ratings().staticRating());
    } else {
      x = EquivalentLoadKernel.angleX(bearing.type(), bearing.rows(), alpha, above);
      y = EquivalentLoadKernel.angleY(bearing.type(), bearing.rows(), alpha, above);
    }
    return steps
        .step("e", "limit of Fa/Fr", "table", e, "", BearingSources.XY, "α = " + bearing.contactAngle())
        .step("X", "radial load factor", above ? "table, Fa/Fr > e" : "table, Fa/Fr ≤ e", x, "", BearingSources.XY)
        .step("Y", "axial load factor", above ? "table, Fa/Fr > e" : "table, Fa/Fr ≤ e", y, "", BearingSources.XY)
        .step("P", "dynamic equivalent load", "X Fr + Y Fa", load.newton(), "N", BearingSources.XY, fr, fa)
        .build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    double degrees = Math.toDegrees(bearing.contactAngle().radian());
    if (relativeAxialLoad > 0) {
      double least = RadialBallFactors.get().leastRelativeLoad(degrees);
      double greatest = RadialBallFactors.get().greatestRelativeLoad(degrees);
      if (relativeAxialLoad < least || relativeAxialLoad > greatest) {
        warnings.add(new Warning("relative-axial-load-outside-table", Message.of(ratio(), " = ",
            Numbers.significant(relativeAxialLoad, 3), " lies outside the table (", least, " to ", greatest,
            "): the row at its end is used", (relativeAxialLoad > greatest
                ? "; ask the maker whether the bearing carries this axial load" : "")), BearingSources.XY));
      }
    }
    Force least = new Force(MinimumLoadKernel.guidingValue(bearing.ratings().family(), bearing.ratings().dynamic().newton()));
    if (load.compareTo(least) < 0) {
      warnings.add(new Warning("load-below-minimum", Message.of("P = ", load, " is below the guiding least load ", least,
          ": the rolling elements may slide"), BearingSources.MINIMUM_LOAD));
    }
    LifeWarnings.load(warnings, bearing.ratings(), load);
    return List.copyOf(warnings);
  }

  /** For example {@code "P = 3.07 kN (Fr = 2.5 kN, Fa = 1 kN)"}. */
  @Override
  public String toString() {
    return "P = " + load + " (Fr = " + radial + ", Fa = " + axial + ")";
  }
}
