// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.bearings;

import holdfast.bearings.BasicLifeKernel;
import holdfast.bearings.BearingFamily;
import holdfast.bearings.BearingType;
import holdfast.bearings.BulkLifeKernel;
import holdfast.bearings.Cleanliness;
import holdfast.bearings.Contamination;
import holdfast.bearings.DutyKernel;
import holdfast.bearings.DynamicRatingKernel;
import holdfast.bearings.FatigueLimitKernel;
import holdfast.bearings.InverseLifeKernel;
import holdfast.bearings.LifeModificationKernel;
import holdfast.bearings.LoadRatings;
import holdfast.bearings.LoadedBearing;
import holdfast.bearings.Lubrication;
import holdfast.bearings.LubricationKernel;
import holdfast.bearings.OuterRing;
import holdfast.bearings.MinimumLoadKernel;
import holdfast.bearings.RatingLife;
import holdfast.bearings.Reliability;
import holdfast.bearings.ReliabilityKernel;
import holdfast.bearings.Running;
import holdfast.bearings.StaticLoadKernel;
import holdfast.bearings.StaticRatingKernel;
import holdfast.bearings.ViscosityKernel;
import holdfast.bearings.WeibullKernel;
import holdfast.bearings.reference.ProfileKernel;
import holdfast.quantity.Angle;
import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.verification.CalculationSuite;
import holdfast.verification.NamedInputs;
import holdfast.verification.Suite;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** Load ratings and lives against values of general-purpose libraries, by another road where there is one. */
final class BearingValues {
  private static final Map<String, ToDoubleFunction<NamedInputs>> CALCULATIONS = Map.ofEntries(
      Map.entry("kilometres", x -> BasicLifeKernel.kilometres(x.get("L"), x.get("D"))),
      Map.entry("critical half swing", x -> DutyKernel.criticalHalfSwing(x.get("z"), x.get("gamma"))),
      Map.entry("damage life", x -> DutyKernel.damageLife(x.list("shares"), x.list("lives"))),
      Map.entry("linear load",
          x -> DutyKernel.linear(family(x).lifeExponent(), x.get("least"), x.get("greatest"))),
      Map.entry("linear load, rule", x -> DutyKernel.linearRule(x.get("least"), x.get("greatest"))),
      Map.entry("stationary and rotating load",
          x -> DutyKernel.stationaryAndRotating(x.get("stationary"), x.get("rotating"))),
      Map.entry("oscillation load",
          x -> DutyKernel.oscillationLoad(family(x).lifeExponent(), x.get("P"), x.angle("half_swing"))),
      Map.entry("dynamic rating, radial roller", x -> DynamicRatingKernel.radialRoller(
          x.get("bm"), x.get("fc"), (int) x.get("i"), x.angle("alpha"), x.get("z"), x.get("dwe"), x.get("lwe"))),
      Map.entry("dynamic rating, thrust ball", x -> DynamicRatingKernel.thrustBall(
          x.get("bm"), x.get("fc"), x.angle("alpha"), x.get("z"), x.get("dw"))),
      Map.entry("dynamic rating, thrust roller", x -> DynamicRatingKernel.thrustRoller(
          x.get("bm"), x.get("fc"), x.angle("alpha"), x.get("z"), x.get("dwe"), x.get("lwe"))),
      Map.entry("dynamic rating, thrust ball rows", x -> DynamicRatingKernel.thrustBallRows(x.list("z"), x.list("ca"))),
      Map.entry("dynamic rating, thrust roller rows",
          x -> DynamicRatingKernel.thrustRollerRows(x.list("z"), x.list("lwe"), x.list("ca"))),
      Map.entry("tandem", x -> DynamicRatingKernel.tandem(family(x), x.get("cr"), (int) x.get("n"))),
      Map.entry("static rating, radial roller", x -> StaticRatingKernel.radialRoller(
          (int) x.get("i"), x.angle("alpha"), x.get("z"), x.get("dwe"), x.get("lwe"), x.get("dpw"))),
      Map.entry("static rating, thrust roller", x -> StaticRatingKernel.thrustRoller(
          x.angle("alpha"), x.get("z"), x.get("dwe"), x.get("lwe"), x.get("dpw"))),
      Map.entry("greatest element load",
          x -> StaticLoadKernel.greatestElementLoad(x.get("fr"), x.get("z"), x.angle("alpha"))),
      Map.entry("static load", x -> StaticLoadKernel.load(
          BearingType.parse(x.word("type")), (int) x.get("i"), x.angle("alpha"), x.get("fr"), x.get("fa"))),
      Map.entry("static safety", x -> StaticLoadKernel.safety(x.get("C0"), x.get("P0"))),
      Map.entry("least static safety", x -> StaticLoadKernel.leastSafety(
          BearingType.parse(x.word("type")), Running.valueOf(x.word("running")))),
      Map.entry("fatigue limit, ball contact", x -> FatigueLimitKernel.ballContact(
          x.get("dw"), x.get("gamma"), x.get("inner"), x.get("outer"))),
      Map.entry("fatigue limit, roller contact",
          x -> FatigueLimitKernel.rollerContact(x.get("dwe"), x.get("lwe"), x.get("gamma"))),
      Map.entry("fatigue limit, bearing", x -> FatigueLimitKernel.fromContact(
          family(x), x.get("qu"), x.get("z"), (int) x.get("i"), x.angle("alpha"), x.get("dpw"))),
      Map.entry("fatigue limit, size factor", x -> FatigueLimitKernel.sizeFactor(family(x), x.get("dpw"))),
      Map.entry("fatigue limit, simplified", x -> FatigueLimitKernel.simplified(family(x), x.get("c0"), x.get("dpw"))),
      Map.entry("modified life", x -> LifeModificationKernel.life(
          family(x), x.get("C"), x.get("Cu"), x.get("P"), x.get("S"), x.get("kappa"), x.get("eC"))),
      Map.entry("array of lives in hours", x -> hours(x, false)),
      Map.entry("array of lives in hours, parallel", x -> hours(x, true)),
      Map.entry("allowable load", x -> InverseLifeKernel.allowableLoad(
          family(x), x.get("C"), x.get("Cu"), x.get("S"), x.get("kappa"), x.get("eC"), x.word("additives").equals("yes"),
          x.get("atOne"), x.get("L"))),
      Map.entry("required kappa", x -> InverseLifeKernel.requiredKappa(
          family(x), x.get("C"), x.get("Cu"), x.get("P"), x.get("S"),
          kappa -> Math.min(1, x.get("eC") * Math.pow(kappa, 0.68)), x.get("L"))),
      Map.entry("aISO with additives",
          x -> LifeModificationKernel.withAdditives(family(x), x.get("kappa"), x.get("eC"), x.get("atOne"), x.get("ratio"))),
      Map.entry("aISO with additives by cleanliness", BearingValues::additivesByCleanliness),
      Map.entry("equivalent load, angular contact", BearingValues::angularContact),
      Map.entry("kappa from film", x -> LubricationKernel.kappaFromFilm(x.get("film"))),
      Map.entry("given profile", x -> ProfileKernel.given(x.get("x"), x.get("lwe"), x.list("stations"))),
      Map.entry("reliability of a1", x -> ReliabilityKernel.percent(x.get("a1"))),
      Map.entry("survival",
          x -> WeibullKernel.survival(x.get("t"), x.get("slope"), x.get("scale"), x.get("minimum"))),
      Map.entry("viscosity at temperature", x -> ViscosityKernel.atTemperature(
          x.get("t1"), x.get("nu1"), x.get("t2"), x.get("nu2"), x.get("t"))),
      Map.entry("viscosity index", x -> ViscosityKernel.viscosityIndex(x.get("at40"), x.get("at100"))),
      Map.entry("viscosity at 100", x -> ViscosityKernel.at100(x.get("at40"), x.get("index"))));

  private BearingValues() {}

  /** Guiding values of the least load, as a catalogue prints them. */
  static Suite leastLoads() {
    return CalculationSuite.of(
        "bearings/least-loads",
        "Guiding values of the least load",
        Map.of("guiding value", x -> MinimumLoadKernel.guidingValue(family(x), x.get("C"))),
        List.of("holdfast.bearings.MinimumLoadKernel#guidingValue"));
  }

  static Suite suite() {
    return CalculationSuite.of(
        "bearings/computed-values", "Load ratings and lives against values of general-purpose libraries", CALCULATIONS,
        List.of("holdfast.bearings.BasicLifeKernel#kilometres", "holdfast.bearings.BulkLifeKernel",
            "holdfast.bearings.DutyKernel#linear", "holdfast.bearings.DynamicRatingKernel",
            "holdfast.bearings.FatigueLimitKernel", "holdfast.bearings.InverseLifeKernel",
            "holdfast.bearings.LifeModificationKernel#life", "holdfast.bearings.ReliabilityKernel#percent",
            "holdfast.bearings.StaticLoadKernel#load", "holdfast.bearings.StaticRatingKernel#radialRoller",
            "holdfast.bearings.ViscosityKernel", "holdfast.bearings.WeibullKernel#survival",
            "holdfast.bearings.reference.ProfileKernel#given"));
  }

  /** The factor in the modified life of C = 1 kN under a load of 1 kN. */
  private static double additivesByCleanliness(NamedInputs x) {
    LoadRatings ratings = new LoadRatings(
        family(x), new Force(1000), new Force(1000), new Force(1000 * x.get("ratio")), OuterRing.HOUSED);
    Lubrication film = Lubrication.ofKappa(x.get("kappa"), new Length(x.get("dpw"))).withProvenAdditives();
    Contamination dirt = Contamination.of(Cleanliness.valueOf(x.word("cleanliness")));
    return RatingLife.modified(ratings, new Force(1000), Reliability.L10, film, dirt).modification();
  }

  private static double angularContact(NamedInputs x) {
    LoadRatings ratings = LoadRatings.radialBall(new Force(1e5), new Force(x.get("c0r")));
    return LoadedBearing.of(BearingType.ANGULAR_CONTACT_BALL, new Angle(x.angle("alpha")), ratings)
        .withRows((int) x.get("i")).withF0(x.get("f0"))
        .dynamicLoad(new Force(x.get("fr")), new Force(x.get("fa"))).load().newton();
  }

  private static BearingFamily family(NamedInputs x) {
    return BearingFamily.valueOf(x.word("family"));
  }

  /** The wanted bearing between two others. */
  private static double hours(NamedInputs x, boolean parallel) {
    BearingFamily[] families = {BearingFamily.RADIAL_BALL, family(x), BearingFamily.THRUST_ROLLER};
    double[] hours = new double[3];
    double[] c = between(x, "C", 1e4);
    double[] cu = between(x, "Cu", 100);
    double[] p = between(x, "P", 900);
    double[] rpm = between(x, "n", 100);
    double[] viscosity = between(x, "nu", 50);
    double[] dpw = between(x, "dpw", 60);
    double[] contamination = between(x, "eC", 0.7);
    double[] reliability = between(x, "S", 92);
    if (parallel) {
      BulkLifeKernel.hoursInParallel(families, c, cu, p, rpm, viscosity, dpw, contamination, reliability, hours);
    } else {
      BulkLifeKernel.hours(0, 3, families, c, cu, p, rpm, viscosity, dpw, contamination, reliability, hours);
    }
    return hours[1];
  }

  private static double[] between(NamedInputs x, String name, double others) {
    double[] values = new double[3];
    Arrays.fill(values, others);
    values[1] = x.get(name);
    return values;
  }
}
