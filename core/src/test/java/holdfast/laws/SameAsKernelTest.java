// SPDX-License-Identifier: Apache-2.0
package holdfast.laws;

import static holdfast.quantity.Units.MPa;
import static holdfast.quantity.Units.N;
import static holdfast.quantity.Units.Nmm;
import static holdfast.quantity.Units.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import holdfast.bearings.BasicLifeKernel;
import holdfast.bearings.BearingFamily;
import holdfast.bearings.Contamination;
import holdfast.bearings.LifeModificationKernel;
import holdfast.bearings.LoadRatings;
import holdfast.bearings.Lubrication;
import holdfast.bearings.RatingLife;
import holdfast.bearings.Reliability;
import holdfast.bearings.ReliabilityKernel;
import holdfast.contact.ContactGeometryKernel;
import holdfast.contact.ContactMaterial;
import holdfast.contact.ContactPair;
import holdfast.contact.ContactSurface;
import holdfast.contact.EllipticalContact;
import holdfast.contact.EllipticalContactKernel;
import holdfast.contact.LineContact;
import holdfast.contact.LineContactKernel;
import holdfast.fits.Feature;
import holdfast.fits.Fit;
import holdfast.fits.LimitDeviationsKernel;
import holdfast.fits.ToleranceClass;
import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.seats.InnerPart;
import holdfast.seats.InterferenceBand;
import holdfast.seats.InterferenceFit;
import holdfast.seats.Material;
import holdfast.seats.OuterPart;
import holdfast.seats.ThickRingKernel;
import holdfast.threads.PreloadBand;
import holdfast.threads.ScrewThread;
import holdfast.threads.Tightening;
import holdfast.threads.TighteningKernel;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** The typed layer holds no formula of its own: it says what the kernels say. */
class SameAsKernelTest {
  private static final double ULPS = 1e-14;
  private static final List<String> HOLES = List.of("H7", "F8", "JS9", "K7", "N7", "P7", "S6", "G6", "D10", "H11");
  private static final List<String> SHAFTS = List.of("g6", "h7", "js5", "k6", "n6", "p6", "s7", "f7", "d9", "h11");

  @Property(tries = 300)
  void fits(@ForAll @DoubleRange(min = 3.5, max = 500) double size, @ForAll int pick) {
    ToleranceClass hole = ToleranceClass.of(HOLES.get(Math.floorMod(pick, 10)));
    ToleranceClass shaft = ToleranceClass.of(SHAFTS.get(Math.floorMod(pick / 10, 10)));
    assertEquals(Feature.HOLE, hole.feature());
    double[] deviations = new double[4];
    LimitDeviationsKernel.fit(size, hole.code(), shaft.code(), deviations);
    Fit fit = Fit.of(mm(size), hole, shaft);
    assertEquals(deviations[0] - deviations[3], fit.maximumClearance().in(KnownUnits.UM), 1e-9);
    assertEquals(deviations[1] - deviations[2], fit.minimumClearance().in(KnownUnits.UM), 1e-9);
    assertEquals(LimitDeviationsKernel.maximumClearance(size, hole.code(), shaft.code()),
        fit.maximumClearance().in(KnownUnits.UM), 1e-9);
    assertEquals(size + deviations[0] / 1000, fit.hole().limits().upper().mm(), 1e-9);
    assertEquals(size + deviations[3] / 1000, fit.shaft().limits().lower().mm(), 1e-9);
  }

  @Property(tries = 300)
  void tightening(
      @ForAll @DoubleRange(min = 1000, max = 500_000) double torque,
      @ForAll @DoubleRange(min = 0.05, max = 0.2) double low,
      @ForAll @DoubleRange(min = 1, max = 2) double widening,
      @ForAll @DoubleRange(min = 0, max = 900) double prevailing) {
    ScrewThread thread = ScrewThread.of("M18x1.5");
    double high = low * widening;
    PreloadBand band = Tightening.of(thread).bearingFace(mm(24.8), mm(19)).friction(low, high).prevailing(Nmm(prevailing))
        .preload(Nmm(torque));
    double d2 = thread.pitchDiameter().mm();
    double face = TighteningKernel.meanFaceDiameter(24.8, 19);
    near(TighteningKernel.preload(torque, d2, 1.5, low, face, low, prevailing), band.greatest().preload().newton());
    near(TighteningKernel.preload(torque, d2, 1.5, high, face, high, prevailing), band.least().preload().newton());
  }

  @Property(tries = 300)
  void life(
      @ForAll BearingFamily family,
      @ForAll @DoubleRange(min = 1000, max = 1e6) double c,
      @ForAll @DoubleRange(min = 0.01, max = 0.6) double share,
      @ForAll @DoubleRange(min = 90, max = 99.9) double percent,
      @ForAll @DoubleRange(min = 0.1, max = 5) double kappa,
      @ForAll @DoubleRange(min = 0, max = 1) double ec) {
    double p = c * share;
    double cu = c / 20;
    LoadRatings ratings = (switch (family) {
      case RADIAL_BALL -> LoadRatings.radialBall(N(c), N(c));
      case RADIAL_ROLLER -> LoadRatings.radialRoller(N(c), N(c));
      case THRUST_BALL -> LoadRatings.thrustBall(N(c), N(c));
      case THRUST_ROLLER -> LoadRatings.thrustRoller(N(c), N(c));
    }).withFatigueLimit(N(cu));
    Reliability reliability = Reliability.ofPercent(percent);
    near(BasicLifeKernel.l10(family, c, p) * ReliabilityKernel.a1(percent),
        RatingLife.basic(ratings, N(p), reliability).millionRevolutions());
    near(LifeModificationKernel.life(family, c, cu, p, percent, kappa, ec),
        RatingLife.modified(ratings, N(p), reliability, Lubrication.ofKappa(kappa, mm(50)), Contamination.ofFactor(ec))
            .millionRevolutions());
  }

  @Property(tries = 300)
  void pressFit(
      @ForAll @DoubleRange(min = 5, max = 200) double joint,
      @ForAll @DoubleRange(min = 0, max = 0.8) double hole,
      @ForAll @DoubleRange(min = 1.2, max = 5) double outside,
      @ForAll @DoubleRange(min = 0.01, max = 1) double perMille) {
    Material steel = Material.of("16MnCr5");
    Material iron = Material.of("EN-GJS-600-3");
    double u = perMille / 1000 * joint;
    InterferenceFit fit = InterferenceFit.of(InnerPart.hollow(steel, mm(hole * joint)),
        OuterPart.ring(iron, mm(outside * joint)), InterferenceBand.of(mm(joint), mm(u / 2), mm(u)), mm(20));
    double expected = ThickRingKernel.pressure(u, joint, mm(hole * joint).mm(), mm(outside * joint).mm(),
        steel.elasticModulus().megapascal(), steel.poissonRatio(), iron.elasticModulus().megapascal(), iron.poissonRatio());
    near(expected, fit.pressure().greatest().megapascal());
  }

  @Property(tries = 300)
  void contact(
      @ForAll @DoubleRange(min = 10, max = 200) double diameter,
      @ForAll @DoubleRange(min = 100, max = 1000) double crown,
      @ForAll @DoubleRange(min = 10, max = 1e5) double force,
      @ForAll @DoubleRange(min = 70_000, max = 220_000) double modulus) {
    ContactMaterial steel = ContactMaterial.steel();
    ContactMaterial track = ContactMaterial.of(MPa(modulus), 0.3);
    double e = ContactGeometryKernel.combinedModulus(steel.modulus().megapascal(), steel.poisson(), modulus, 0.3);
    ContactPair flat = ContactPair.of(ContactSurface.cylinder(mm(diameter)), steel, ContactSurface.flat(), track);
    LineContact line = flat.line(N(force), mm(12));
    near(LineContactKernel.peakPressure(force, 12, diameter / 2, e), line.peakPressure().megapascal());
    near(LineContactKernel.halfWidth(force, 12, diameter / 2, e), line.halfWidth().mm());
    ContactPair crowned =
        ContactPair.of(ContactSurface.crowned(mm(diameter), mm(crown)), steel, ContactSurface.flat(), track);
    EllipticalContact ellipse = crowned.ellipse(N(force), mm(20));
    double[] result = new double[EllipticalContactKernel.RESULTS];
    EllipticalContactKernel.solve(force, e, 1 / diameter, 1 / (2 * crown), result);
    // Where the face cuts the ellipse so short that line contact presses harder, that is the pressure.
    double peak = Math.max(result[2], LineContactKernel.peakPressure(force, 20, diameter / 2, e));
    assertEquals(peak, ellipse.peakPressure().megapascal(), 1e-12 * peak);
    assertEquals(result[0], ellipse.majorSemiAxis().mm(), 1e-12 * result[0]);
    assertEquals(result[3], ellipse.approach().mm(), 1e-12 * result[3]);
  }

  @Property(tries = 100)
  void refusalsToo(@ForAll @DoubleRange(min = -1000, max = 0) double wrong) {
    String kernel = assertThrows(InputException.class, () -> BasicLifeKernel.roller(1000, wrong)).getMessage();
    LoadRatings ratings = LoadRatings.radialRoller(N(1000), N(1000));
    assertEquals(kernel, assertThrows(InputException.class, () -> RatingLife.basic(ratings, N(wrong))).getMessage());
  }

  private static void near(double expected, double actual) {
    assertEquals(expected, actual, ULPS * Math.abs(expected));
  }
}
