// SPDX-License-Identifier: Apache-2.0
package holdfast.laws;

import static holdfast.quantity.Units.MPa;
import static holdfast.quantity.Units.N;
import static holdfast.quantity.Units.Nm;
import static holdfast.quantity.Units.degC;
import static holdfast.quantity.Units.kN;
import static holdfast.quantity.Units.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;

import holdfast.bearings.BearingFamily;
import holdfast.bearings.Contamination;
import holdfast.bearings.FactorFcKernel;
import holdfast.bearings.LoadRatings;
import holdfast.bearings.Lubrication;
import holdfast.bearings.RatedLife;
import holdfast.bearings.RatingLife;
import holdfast.bearings.Reliability;
import holdfast.contact.ContactPair;
import holdfast.contact.ContactSurface;
import holdfast.contact.EllipticalContact;
import holdfast.fits.Fit;
import holdfast.fits.FitAtTemperature;
import holdfast.installation.InstallationPlan;
import holdfast.quantity.ThermalExpansion;
import holdfast.seats.FrictionBand;
import holdfast.seats.InnerPart;
import holdfast.seats.InterferenceFit;
import holdfast.seats.Material;
import holdfast.seats.OuterPart;
import holdfast.seats.YieldRule;
import holdfast.tables.TableSet;
import holdfast.threads.PropertyClass;
import holdfast.threads.Scatter;
import holdfast.threads.ScrewThread;
import holdfast.threads.Tightening;
import holdfast.threads.TorqueWindow;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** Shared objects give many threads at once the answers that they give one. */
class ManyThreadsTest {
  private static final int THREADS = 8;
  private static final int ROUNDS = 20;

  @Test
  void theAnswersOfOneThread() throws Exception {
    List<Supplier<Object>> questions = questions();
    List<Object> alone = questions.stream().map(Supplier::get).toList();
    CyclicBarrier together = new CyclicBarrier(THREADS);
    ExecutorService pool = Executors.newFixedThreadPool(THREADS);
    List<Future<List<Object>>> others = new ArrayList<>();
    for (int thread = 0; thread < THREADS; thread++) {
      int first = thread;
      others.add(pool.submit(() -> {
        together.await(1, TimeUnit.MINUTES);
        List<Object> different = new ArrayList<>();
        for (int i = 0; i < ROUNDS * questions.size(); i++) {
          // Each thread begins elsewhere, so that different questions meet as well as equal ones.
          int at = (first + i) % questions.size();
          Object answer = questions.get(at).get();
          if (!answer.equals(alone.get(at))) {
            different.add(answer);
          }
        }
        return different;
      }));
    }
    pool.shutdown();
    for (Future<List<Object>> other : others) {
      assertEquals(List.of(), other.get(5, TimeUnit.MINUTES));
    }
  }

  private static List<Supplier<Object>> questions() {
    Fit fit = Fit.of(mm(25), "H7/s6");
    FitAtTemperature warm =
        FitAtTemperature.uniform(fit, new ThermalExpansion(23e-6), new ThermalExpansion(11.5e-6), degC(80));
    Tightening tightening =
        Tightening.of(ScrewThread.of("M18x1.5")).bore(mm(3)).bearingFace(mm(24.8), mm(19)).friction(0.1, 0.16);
    TorqueWindow window = tightening.window(kN(20), PropertyClass.of("8.8"), Scatter.of(0.06));
    LoadRatings ratings = LoadRatings.radialRoller(kN(14.2), kN(17.5));
    RatedLife life = RatingLife.modified(
        ratings, kN(2.1), Reliability.ofPercent(95), Lubrication.ofKappa(1.4, mm(30)), Contamination.ofFactor(0.4));
    InterferenceFit press = InterferenceFit.of(InnerPart.hollow(Material.of("16MnCr5"), mm(3)),
        OuterPart.ring(Material.of("EN-GJS-600-3"), mm(50)), fit, mm(16));
    EllipticalContact ellipse =
        ContactPair.ofSteel(ContactSurface.crowned(mm(40), mm(500)), ContactSurface.flat()).ellipse(kN(2), mm(20));
    TableSet tables = TableSet.bundled();
    InstallationPlan plan = InstallationPlan.example();
    return List.of(
        fit::explain, fit::toString, fit::warnings, fit::onOtherBasis, () -> Fit.of(mm(25), "H7/s6"),
        warm::explain, warm::uniformTemperatureOfTightestContact,
        () -> tightening.preload(Nm(85)).explain(), () -> tightening.torque(kN(30)),
        window::explain, window::changes, window::target,
        life::explain, () -> life.warnings(), () -> FactorFcKernel.radialRoller(0.1),
        () -> RatingLife.requiredRating(BearingFamily.RADIAL_BALL, N(100), life.hours(holdfast.quantity.Units.rpm(100)),
            holdfast.quantity.Units.rpm(100)),
        press::explain, press::stresses, () -> press.limits(YieldRule.VON_MISES),
        () -> press.elasticPlastic(YieldRule.TRESCA).toString(), () -> press.holding(FrictionBand.of(0.08, 0.2)).toString(),
        press::heatingTemperature,
        ellipse::explain, () -> ellipse.forceAt(MPa(1500)), ellipse::largestShear,
        () -> tables.table("fits/iso-286-1/2010/standard-tolerances").size(),
        () -> plan.sheet().text(), () -> plan.sheet().html(),
        () -> tables.sources().contains("ISO 281:2007"));
  }
}
