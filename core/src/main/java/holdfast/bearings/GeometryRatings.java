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
 * Ratings computed from geometry.
 *
 * @param geometry the geometry
 * @param fc factor fc
 * @param f0 factor f0 of a ball bearing; 0 for rollers
 * @param dynamic basic dynamic load rating C
 * @param staticRating basic static load rating C0
 * @param fatigueLimit fatigue load limit Cu, simplified estimate
 */
public record GeometryRatings(
    BearingGeometry geometry, double fc, double f0, Force dynamic, Force staticRating, Force fatigueLimit)
    implements Traced, Serializable {
  public GeometryRatings {
    Objects.requireNonNull(geometry, "geometry");
    Objects.requireNonNull(dynamic, "dynamic");
    Objects.requireNonNull(staticRating, "staticRating");
    Objects.requireNonNull(fatigueLimit, "fatigueLimit");
    Check.finite(fc, "factor fc", "");
    Check.finite(f0, "factor f0", "");
  }

  static GeometryRatings of(BearingGeometry g) {
    BearingType type = g.type();
    double alpha = g.contactAngle().radian();
    double dw = g.elementDiameter().mm();
    double dpw = g.pitchDiameter().mm();
    double lwe = g.elementLength() == null ? 0 : g.elementLength().mm();
    double ratio = g.ratio();
    double tableRatio = ContactAngle.is90(alpha) ? dw / dpw : ratio;
    double bm = type.bm();
    int z = g.elements();
    double fc;
    double f0 = 0;
    double c;
    double c0;
    switch (type.family()) {
      case RADIAL_BALL -> {
        fc = FactorFcKernel.radialBall(type, g.rows(), ratio);
        f0 = StaticRatingKernel.f0(type, ratio);
        c = DynamicRatingKernel.radialBall(bm, fc, g.rows(), alpha, z, dw);
        c0 = StaticRatingKernel.radialBall(f0, g.rows(), alpha, z, dw);
      }
      case RADIAL_ROLLER -> {
        fc = FactorFcKernel.radialRoller(ratio);
        c = DynamicRatingKernel.radialRoller(bm, fc, g.rows(), alpha, z, dw, lwe);
        c0 = StaticRatingKernel.radialRoller(g.rows(), alpha, z, dw, lwe, dpw);
      }
      case THRUST_BALL -> {
        fc = FactorFcKernel.thrustBall(alpha, tableRatio);
        f0 = StaticRatingKernel.f0(type, ratio);
        c = DynamicRatingKernel.thrustBall(bm, fc, alpha, z, dw);
        c0 = StaticRatingKernel.thrustBall(f0, alpha, z, dw);
      }
      default -> {
        fc = FactorFcKernel.thrustRoller(alpha, tableRatio);
        c = DynamicRatingKernel.thrustRoller(bm, fc, alpha, z, dw, lwe);
        c0 = StaticRatingKernel.thrustRoller(alpha, z, dw, lwe, dpw);
      }
    }
    double cu = FatigueLimitKernel.simplified(type.family(), c0, dpw);
    return new GeometryRatings(g, fc, f0, new Force(c), new Force(c0), new Force(cu));
  }

  /**
   * The ratings for life calculation, with the simplified fatigue load limit.
   *
   * @return C, C0 and Cu
   */
  public LoadRatings loadRatings() {
    return new LoadRatings(geometry.type().family(), dynamic, staticRating, fatigueLimit, OuterRing.HOUSED);
  }

  @Override
  public Derivation explain() {
    BearingFamily family = geometry.type().family();
    Derivation.Builder steps = Derivation.of("Ratings of a " + geometry);
    steps.step("γ", "ratio of the tables (0 stands for 90°)", "Dw cos α / Dpw", geometry.ratio(), "", BearingSources.FC,
        "Dw = " + geometry.elementDiameter(), "Dpw = " + geometry.pitchDiameter(), "α = " + geometry.contactAngle());
    if (family.ball()) {
      steps.step("f0", "factor for geometry and stress", "table at γ", f0, "", BearingSources.STATIC);
    }
    String c0Formula = switch (family) {
      case RADIAL_BALL -> "f0 i Z Dw² cos α";
      case RADIAL_ROLLER -> "44 (1 - γ) i Z Lwe Dwe cos α";
      case THRUST_BALL -> "f0 Z Dw² sin α";
      case THRUST_ROLLER -> "220 (1 - γ) Z Lwe Dwe sin α";
    };
    String lwe = geometry.elementLength() == null ? "no length" : "Lwe = " + geometry.elementLength();
    steps.step("C0", "basic static load rating", c0Formula, staticRating.newton(), "N", BearingSources.STATIC,
        "i = " + geometry.rows(), "Z = " + geometry.elements(), lwe);
    steps.step("Cu", "fatigue load limit, simplified", family.ball() ? "C0/22, (100/Dpw)^0.5 above 100 mm"
        : "C0/8.2, (100/Dpw)^0.3 above 100 mm", fatigueLimit.newton(), "N", BearingSources.FATIGUE_LIMIT);
    steps.step("fc", "factor for geometry", "table at γ", fc, "", BearingSources.FC);
    steps.step("C", "basic dynamic load rating", dynamicFormula(family), dynamic.newton(), "N", BearingSources.DYNAMIC,
        "bm = " + Numbers.significant(geometry.type().bm(), 4), "fc = " + Numbers.significant(fc, 5));
    return steps.build();
  }

  private String dynamicFormula(BearingFamily family) {
    boolean right = ContactAngle.is90(geometry.contactAngle().radian());
    boolean large = geometry.elementDiameter().mm() > DynamicRatingKernel.SIZE_BREAK;
    String ball = large ? "Z^(2/3) 3.647 Dw^1.4" : "Z^(2/3) Dw^1.8";
    String roller = "Z^(3/4) Dwe^(29/27)";
    return "bm fc " + switch (family) {
      case RADIAL_BALL -> "(i cos α)^0.7 " + ball;
      case RADIAL_ROLLER -> "(i Lwe cos α)^(7/9) " + roller;
      case THRUST_BALL -> (right ? "" : "(cos α)^0.7 tan α ") + ball;
      case THRUST_ROLLER -> (right ? "Lwe^(7/9) " : "(Lwe cos α)^(7/9) tan α ") + roller;
    };
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    BearingType type = geometry.type();
    if (!type.family().ball()) {
      warnings.add(new Warning("roller-factor-is-greatest",
          "fc of roller bearings is a greatest value: uneven stress along the rollers lowers C", BearingSources.FC));
      if (geometry.elementLength().mm() > 2.5 * geometry.elementDiameter().mm()) {
        warnings.add(new Warning("long-rollers", "Lwe is over 2.5 Dwe: expect a lower fc", BearingSources.FC));
      }
    } else {
      warnings.add(new Warning("groove-radii", "the factors hold for groove radii up to "
          + (type.family().thrust() ? "0.54 Dw" : type == BearingType.SELF_ALIGNING_BALL ? "0.53 Dw (inner ring)"
              : "0.52 Dw (inner ring) and 0.53 Dw (outer ring)"), BearingSources.FC));
    }
    double alpha = geometry.contactAngle().radian();
    if (type == BearingType.THRUST_BALL && FactorFcKernel.beyondPrintedColumn(alpha, geometry.ratio())) {
      warnings.add(new Warning("factor-beyond-column",
          "fc is taken beyond the printed columns of the table for thrust ball bearings", BearingSources.FC));
    }
    return List.copyOf(warnings);
  }

  /** For example {@code "C = 14.03 kN, C0 = 7.886 kN, Cu = 358.5 N"}. */
  @Override
  public String toString() {
    return "C = " + dynamic + ", C0 = " + staticRating + ", Cu = " + fatigueLimit;
  }
}
