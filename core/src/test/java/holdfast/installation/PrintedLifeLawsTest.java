// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.quantity.Units.Nm;
import static holdfast.quantity.Units.degC;
import static holdfast.quantity.Units.hours;
import static holdfast.quantity.Units.kN;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.mm2PerS;
import static holdfast.quantity.Units.rpm;
import static holdfast.quantity.Units.um;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.bearings.ContaminationLevel;
import holdfast.bearings.LoadRatings;
import holdfast.bearings.LubricationKernel;
import holdfast.bearings.OuterRing;
import holdfast.bearings.Reliability;
import holdfast.bearings.reference.RollerProfile;
import holdfast.contact.ContactSurface;
import holdfast.lubrication.HeadForm;
import holdfast.lubrication.Port;
import holdfast.rollers.RollerKind;
import holdfast.seats.FrictionBand;
import holdfast.seats.Material;
import holdfast.seats.OuterPart;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

/** What makes a job worse never lengthens a life that the sheet prints. */
class PrintedLifeLawsTest {
  /** Rounding of two roads through the same formulas. */
  private static final double ROUNDING = 1e-9;
  /** The bearing model documents 1 % accuracy of each ratio and a small gain where a tilt widens the load zone. */
  private static final double TILTED = 0.02;

  private static final double PITCH = 23;

  private static final List<ContaminationLevel> DIRTIER =
      List.of(ContaminationLevel.EXTREME_CLEANLINESS, ContaminationLevel.HIGH_CLEANLINESS, ContaminationLevel.NORMAL_CLEANLINESS,
          ContaminationLevel.SLIGHT_CONTAMINATION, ContaminationLevel.TYPICAL_CONTAMINATION,
          ContaminationLevel.SEVERE_CONTAMINATION);

  /** More and more slack at the loosest pair. */
  private static final List<String> LOOSER = List.of("P7", "N7", "K7", "H7", "G7", "F7");

  /** A job with the numbers that decide its life. */
  record Inputs(
      double load, double speed, double viscosity, int dirt, int bore, double runOut, double crown, double clearance,
      double reliability) {
    static final double GREATEST_LOAD = 7;

    Inputs withLoad(double kilonewton) {
      return new Inputs(kilonewton, speed, viscosity, dirt, bore, runOut, crown, clearance, reliability);
    }

    Inputs withDirt(int level) {
      return new Inputs(load, speed, viscosity, level, bore, runOut, crown, clearance, reliability);
    }

    Inputs withBore(int looser) {
      return new Inputs(load, speed, viscosity, dirt, looser, runOut, crown, clearance, reliability);
    }

    Inputs withRunOut(double micrometre) {
      return new Inputs(load, speed, viscosity, dirt, bore, micrometre, crown, clearance, reliability);
    }

    InstallationPlan plan() {
      RollerInterior inside =
          RollerInterior.describe()
              .rollers(16, mm(3.5), mm(12), ValueOrigin.STATED)
              .pitchDiameter(mm(PITCH), ValueOrigin.STATED)
              .clearance(um(clearance), ValueOrigin.STATED)
              .profile(RollerProfile.logarithmic(), ValueOrigin.STATED)
              .build();
      return InstallationPlan.of(
              StudRoller.named("random roller")
                  .ring(mm(40), mm(20), mm(crown))
                  .flange(mm(32), mm(0.8))
                  .stud(mm(18), "h7")
                  .thread("M18x1.5")
                  .greaseBore(mm(3))
                  .material(Material.of("16MnCr5"), um(2))
                  .inside(RollerKind.CAGED_NEEDLE, false)
                  .head(HeadForm.SLOT)
                  .ratings(LoadRatings.trackRoller(kN(14.2), kN(17.5), OuterRing.DEFLECTING))
                  .temperatures(degC(-20), degC(110))
                  .interior(inside))
          .job("random job")
          .member(
              MachineMember.named("member")
                  .body(OuterPart.ring(Material.of("C45+N"), mm(50)).withRoughness(um(4)))
                  .bore(LOOSER.get(bore), mm(16))
                  .pressingFriction(FrictionBand.of(0.08, 0.20))
                  .faceRunOut(um(runOut)))
          .nut(Nut.onFace(mm(24.8), mm(19.2)).friction(ThreadCondition.OILED, 0.10, 0.16).wrench(Nm(60), 0.04).reserve(1.2))
          .duty(
              Duty.of(kN(load), rpm(speed))
                  .life(hours(10000), Reliability.ofPercent(reliability))
                  .staticSafety(1)
                  .at(degC(60))
                  .lubricant(mm2PerS(viscosity), DIRTIER.get(dirt))
                  .track(ContactSurface.flat(), 45)
                  .greaseThrough(Port.HEAD))
          .build();
    }
  }

  @Provide
  Arbitrary<Inputs> jobs() {
    Arbitrary<Double> load = Arbitraries.doubles().between(0.3, Inputs.GREATEST_LOAD).ofScale(3);
    Arbitrary<Double> speed = Arbitraries.doubles().between(20, 900).ofScale(1);
    Arbitrary<Double> kappa = Arbitraries.doubles().between(0.11, 4.5).ofScale(2);
    Arbitrary<Integer> dirt = Arbitraries.integers().between(0, DIRTIER.size() - 1);
    Arbitrary<Integer> bore = Arbitraries.integers().between(0, LOOSER.size() - 1);
    Arbitrary<Double> runOut = Arbitraries.doubles().between(0, 60).ofScale(1);
    Arbitrary<Double> crown = Arbitraries.of(0.0, 250.0, 500.0, 1000.0);
    Arbitrary<Double> reliability = Arbitraries.of(90.0, 95.0, 99.0);
    return Combinators.combine(load, speed, kappa, dirt, bore, runOut, crown, reliability)
        .as((p, n, k, d, b, t, r, s) -> new Inputs(p, n, k * LubricationKernel.referenceViscosity(n, PITCH), d, b, t, r, 20, s));
  }

  /** Every life that the summary holds, by its id. */
  private static Map<String, Double> lives(InstallationPlan plan) {
    Map<String, Double> lives = new TreeMap<>();
    plan.summary().values().stream()
        .filter(value -> value.id().startsWith("life.") && value.unit().equals("h"))
        .forEach(value -> lives.put(value.id(), value.value()));
    assertTrue(lives.size() >= 2, () -> "lives of the summary: " + lives);
    return lives;
  }

  private static void noneLonger(InstallationPlan better, InstallationPlan worse, double accuracy) {
    Map<String, Double> before = lives(better);
    lives(worse).forEach((id, life) ->
        assertTrue(life <= (1 + accuracy) * before.get(id), () -> id + ": " + life + " h after " + before.get(id) + " h"));
  }

  /** The life that the lean of the loosest pair leaves of the modified life: what sheet and summary give the reader to multiply. */
  private static double leaning(InstallationPlan plan) {
    return plan.seatPrice().orElseThrow().lifeRatio() * plan.modifiedLife().hours(plan.duty().speed()).hours();
  }

  private static void leaningNoLonger(InstallationPlan better, InstallationPlan worse) {
    double before = leaning(better);
    double after = leaning(worse);
    assertTrue(after <= (1 + TILTED) * before, () -> after + " h after " + before + " h");
  }

  @Property(tries = 100)
  void moreDirtNeverLengthensALife(@ForAll("jobs") Inputs job, @ForAll @IntRange(min = 1, max = 5) int more) {
    Inputs dirtier = job.withDirt(Math.min(job.dirt + more, DIRTIER.size() - 1));
    noneLonger(job.plan(), dirtier.plan(), ROUNDING);
  }

  @Property(tries = 60)
  void moreLoadNeverLengthensALife(@ForAll("jobs") Inputs job, @ForAll @Scale(3) @DoubleRange(min = 1.01, max = 3) double factor) {
    Inputs heavier = job.withLoad(job.load * factor);
    noneLonger(job.plan(), heavier.plan(), ROUNDING);
    leaningNoLonger(job.plan(), heavier.plan());
  }

  @Property(tries = 100)
  void moreTiltOfTheFaceNeverLengthensALife(
      @ForAll("jobs") Inputs job, @ForAll @Scale(3) @DoubleRange(min = 1.01, max = 3) double factor) {
    Inputs askew = job.withRunOut(job.runOut * factor);
    noneLonger(job.plan(), askew.plan(), TILTED);
    leaningNoLonger(job.plan(), askew.plan());
  }

  @Property(tries = 100)
  void moreSlackNeverLengthensALife(@ForAll("jobs") Inputs job, @ForAll @IntRange(min = 1, max = 5) int more) {
    Inputs looser = job.withBore(Math.min(job.bore + more, LOOSER.size() - 1));
    noneLonger(job.plan(), looser.plan(), TILTED);
    leaningNoLonger(job.plan(), looser.plan());
  }

  @Property(tries = 60)
  void moreReliabilityNeverLengthensALife(@ForAll("jobs") Inputs job) {
    double wanted = job.plan().replaceAfter().hours();
    double safer = new Inputs(job.load, job.speed, job.viscosity, job.dirt, job.bore, job.runOut, job.crown, job.clearance, 99.5)
        .plan().replaceAfter().hours();
    assertTrue(safer <= wanted, () -> safer + " h after " + wanted + " h");
  }
}
