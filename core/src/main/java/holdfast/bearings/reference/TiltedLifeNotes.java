// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

import holdfast.bearings.OuterRing;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.quantity.Stress;
import holdfast.quantity.Torque;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Message;
import holdfast.trace.Warning;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Derivation and warnings of a {@link TiltedLife}. */
final class TiltedLifeNotes {
  private static final String RECALLED = "ISO/TS 16281:2008";
  private static final SourceRef GEOMETRY =
      SourceRef.derived("rigid rings, displacement and tilt of one raceway against the other");
  private static final SourceRef WEIBULL = SourceRef.derived("weakest link over laminae and rings");
  private static final SourceRef HERTZ = SourceRef.derived("Hertz contact of steel on steel");

  private TiltedLifeNotes() {}

  static Derivation explain(TiltedLife t) {
    TiltedBearing bearing = t.bearing();
    Derivation.Builder d = Derivation.of("Life ratio of a tilted bearing: " + bearing.elements());
    Model model = Model.of(bearing);
    if (model instanceof RollerModel rollers) {
      rollerRatings(d, bearing, rollers);
    } else if (model instanceof BallModel balls) {
      ballRatings(d, bearing, balls);
    }
    model.solve(t.loading().aligned());
    d.step("δ(0)", "displacement of the rings without tilt", "root of Σ Q_j cos φ_j = Fr", model.workspace().displacement(),
            "mm", GEOMETRY, "Fr = " + t.loading().radial(), "s = " + bearing.clearance())
        .step("L(0)", "life without tilt", lifeFormula(model), model.life(), "million revolutions", WEIBULL, rings(bearing));
    model.solve(t.loading());
    d.step("ψ", "tilt in the plane of the load", t.loading().byMoment() ? "root of Σ M_j cos φ_j = M" : "given",
            model.workspace().tiltAlong(), "rad", GEOMETRY, t.loading().toString())
        .step("δ", "displacement of the rings with tilt", "root of Σ Q_j cos φ_j = Fr", model.workspace().displacement(), "mm",
            GEOMETRY, "Fr = " + t.loading().radial(), "s = " + bearing.clearance())
        .step("Qmax", "load on the most loaded element", "max Q_j", model.greatestLoad(), "N", GEOMETRY)
        .step("pmax", "greatest Hertz pressure, without edge stress", "Hertz", model.greatestPressure(), "MPa", HERTZ)
        .step("L", "life with tilt", lifeFormula(model), model.life(), "million revolutions", WEIBULL, rings(bearing))
        .step("Lrec", "reference life as recalled, not confirmed",
            model instanceof RollerModel ? "L / 0.83^4" : "L", model.life() * model.recalledFactor(),
            "million revolutions", SourceRef.memory(RECALLED, "reference life; the division of the ratings by 0.83"))
        .step("L/L(0)", "life ratio against the aligned bearing; constant factors cancel", "L / L(0)",
            model.life() / t.alignedLife(), "", WEIBULL, "L = " + Numbers.significant(model.life(), 6),
            "L(0) = " + Numbers.significant(t.alignedLife(), 6));
    return d.build();
  }

  private static void rollerRatings(Derivation.Builder d, TiltedBearing bearing, RollerModel model) {
    RollerSet rollers = (RollerSet) bearing.elements();
    String cr = "Cr = " + bearing.ratings().dynamic();
    String z = "Z = " + rollers.count();
    d.step("cL", "stiffness of a roller, Q = cL d^(10/9); each lamina has its share", "35948 Lwe^(8/9)",
            LaminaKernel.stiffness(rollers.length().mm()), "N/mm^(10/9)",
            SourceRef.memory(RECALLED, "stiffness of a roller contact"), "Lwe = " + rollers.length())
        .step("Qci", "rating of the inner ring contact", "Cr/(0.378 Z i^(7/9)) {1+[1.038((1-γ)/(1+γ))^(143/108)]^(9/2)}^(2/9)",
            model.innerRating, "N", SourceRef.memory(RECALLED, "rating of the contact, without the division by 0.83"), cr, z)
        .step("Qce", "rating of the outer ring contact", "Cr/(0.364 Z i^(7/9)) {1+[1.038((1-γ)/(1+γ))^(143/108)]^(-9/2)}^(2/9)",
            model.outerRating, "N", SourceRef.memory(RECALLED, "rating of the contact, without the division by 0.83"), cr, z);
  }

  private static void ballRatings(Derivation.Builder d, TiltedBearing bearing, BallModel model) {
    BallSet balls = (BallSet) bearing.elements();
    String cr = "Cr = " + bearing.ratings().dynamic();
    String z = "Z = " + balls.count();
    d.step("cP", "stiffness of a ball between both rings, Q = cP d^(3/2)", "1.48 E/(1-ν²) [Σ K (Σρ/(χ² E))^(1/3)]^(-3/2)",
            BallKernel.stiffness(balls.diameter().mm(), balls.pitchDiameter().mm(), balls.innerGroove().mm(),
                balls.outerGroove().mm()),
            "N/mm^1.5", SourceRef.memory(RECALLED, "spring constant of a ball"), "Dw = " + balls.diameter())
        .step("Qci", "rating of the inner ring",
            "Cr/(0.407 Z) {1+[1.044((1-γ)/(1+γ))^1.72 (ri(2re-Dw)/(re(2ri-Dw)))^0.41]^(10/3)}^(3/10)",
            model.innerRating, "N", SourceRef.memory(RECALLED, "rating of the ring"), cr, z)
        .step("Qce", "rating of the outer ring", "the same with 0.389 and the exponent -10/3", model.outerRating, "N",
            SourceRef.memory(RECALLED, "rating of the ring"), cr, z);
  }

  private static String lifeFormula(Model model) {
    return model instanceof RollerModel
        ? "{Σ [(qei/qci)^(9/2) + (qee/qce)^(9/2)]}^(-8/9)"
        : "[(Qei/Qci)^(10/3) + (Qee/Qce)^(10/3)]^(-9/10)";
  }

  private static String[] rings(TiltedBearing bearing) {
    return new String[] {"inner ring " + bearing.innerRing(), "outer ring " + bearing.outerRing()};
  }

  static List<Warning> warnings(TiltedLife t) {
    List<Warning> warnings = new ArrayList<>();
    TiltedBearing bearing = t.bearing();
    warnings.add(new Warning("recalled-method", "the structure of the method is recalled and no text of it was at hand; use the"
        + " life ratio, in which constant factors cancel. An absolute life from it is not confirmed",
        SourceRef.memory(RECALLED, "the method as a whole")));
    if (bearing.ratings().outerRing() != OuterRing.HOUSED) {
      warnings.add(new Warning("ring-bending-not-covered", "the ratings are those of a "
          + bearing.ratings().outerRing() + "; the load distribution is that of rigid rings: an outer ring that bends on its"
          + " track is not covered", GEOMETRY));
    }
    double fr = t.loading().radial().newton();
    double cr = bearing.ratings().dynamic().newton();
    if (fr > 0.5 * cr) {
      warnings.add(new Warning("load-above-half-C", Message.of("Fr = ", t.loading().radial(), " is above 0.5 Cr = ",
          bearing.ratings().dynamic().times(0.5), ": ask the maker whether a life equation holds"),
          SourceRef.published("ISO 281:2007", "5.3.2, 6.3.2, 7.3.2, 8.3.2, load range for the life equation")));
    }
    boolean rollers = bearing.elements() instanceof RollerSet;
    Stress limit = new Stress(rollers ? 4000 : 4200);
    if (t.greatestPressure().megapascal() > limit.megapascal()) {
      warnings.add(new Warning("pressure-above-static-limit", Message.of("greatest Hertz pressure ", t.greatestPressure(),
          " is above ", limit, ", the pressure behind the static rating: permanent set"), SourceRef.published("ISO 76:2006",
          "contact stress behind the basic static load rating")));
    }
    if (t.touchingShare() < 0.5) {
      warnings.add(new Warning("contact-under-half", "the most loaded roller touches over "
          + Numbers.significant(100 * t.touchingShare(), 3) + " % of its length: edge loading, heat and axial thrust of the"
          + " rollers are outside the model; keep to the tilt that the maker permits", GEOMETRY));
    }
    if (t.lifeRatio() > 1.005) {
      warnings.add(new Warning("ratio-above-one", "the model gives the tilted bearing a longer life than the aligned one (ratio "
          + Numbers.significant(t.lifeRatio(), 4) + "): the tilt widens the load zone under light load or in a bearing with"
          + " clearance; read it as no cost, not as a gain", GEOMETRY));
    }
    tiltNotHeld(t).ifPresent(warnings::add);
    if (rollers && bearing.laminae() < 30) {
      warnings.add(new Warning("few-laminae", bearing.laminae() + " laminae: the recalled method asks for 30 or more",
          SourceRef.memory(RECALLED, "number of laminae")));
    }
    if (t.laminaChange() > 0.01) {
      warnings.add(new Warning("not-refined-enough", "the last doubling of the number of laminae to " + bearing.laminae()
          + " changed the ratio by " + Numbers.significant(100 * t.laminaChange(), 2) + " %: the contact is very short",
          GEOMETRY));
    }
    if (!(t.residual() <= 1e-9)) {
      warnings.add(new Warning("not-in-equilibrium", "the contact loads miss the load by the share "
          + Numbers.significant(t.residual(), 3), GEOMETRY));
    }
    return List.copyOf(warnings);
  }

  /** A load within the width of the rolling elements makes no greater moment than that on its end. */
  private static Optional<Warning> tiltNotHeld(TiltedLife t) {
    Torque moment = new Torque(Math.hypot(t.momentAlong().newtonMillimetre(), t.momentAcross().newtonMillimetre()));
    double arm = moment.newtonMillimetre() / t.loading().radial().newton();
    if (t.loading().byMoment() || arm <= halfWidth(t.bearing())) {
      return Optional.empty();
    }
    return Optional.of(new Warning("tilt-not-held", Message.of("to hold this tilt takes a moment of ", moment,
        " between the rings; the load ", t.loading().radial(), " would have to act ", new Length(arm), " beside the middle,",
        " outside the rolling elements: unless something else holds the rings, they do not keep this tilt"), GEOMETRY));
  }

  private static double halfWidth(TiltedBearing bearing) {
    return bearing.elements() instanceof RollerSet rollers
        ? 0.5 * (rollers.length().mm() + (rollers.rows() - 1) * rollers.rowSpacing().mm())
        : 0.5 * ((BallSet) bearing.elements()).diameter().mm();
  }
}
