// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.quantity.Units.kN;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.mrad;
import static holdfast.quantity.Units.rpm;
import static holdfast.quantity.Units.um;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.bearings.LoadRatings;
import holdfast.bearings.OuterRing;
import holdfast.bearings.reference.RollerProfile;
import holdfast.fits.Fit;
import holdfast.fits.FitAtTemperature;
import holdfast.quantity.InputException;
import holdfast.quantity.Temperature;
import holdfast.quantity.ThermalExpansion;
import holdfast.trace.Warning;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import org.junit.jupiter.api.Test;

class SeatPriceTest {
  static final RollerInterior INTERIOR =
      RollerInterior.describe()
          .rollers(16, mm(3.5), mm(12), ValueOrigin.MEASURED)
          .pitchDiameter(mm(23), ValueOrigin.MEASURED)
          .clearance(um(20), ValueOrigin.STATED)
          .profile(RollerProfile.logarithmic(), ValueOrigin.ESTIMATED)
          .build();
  static final LoadRatings RATINGS = LoadRatings.trackRoller(kN(14.2), kN(17.5), OuterRing.DEFLECTING);

  static SeatPriceBuilder flat() {
    return SeatPrice.of(INTERIOR, RATINGS).duty(kN(2.1), rpm(180)).seat(mm(18), mm(16)).ring(mm(40), mm(0)).bending(mrad(0));
  }

  private static List<String> codes(SeatPrice price) {
    return price.warnings().stream().map(Warning::code).toList();
  }

  @Test
  void oneErrorNamesAllThatIsMissing() {
    InputException interior = assertThrows(
        InputException.class, () -> RollerInterior.describe().rollers(16, null, mm(12), ValueOrigin.STATED).build());
    assertEquals(
        "without roller diameter Dwe, pitch diameter Dpw, origin of the pitch diameter, radial internal clearance, origin of the"
            + " clearance, profile of the rollers, origin of the profile",
        interior.value());
    InputException price = assertThrows(InputException.class, () -> SeatPrice.of(INTERIOR, RATINGS).bending(mrad(0)).build());
    assertEquals(
        "without load, speed, stud diameter, seat length, diameter and crown of the ring (crown 0 mm for a flat ring), fit or clearance",
        price.value());
  }

  @Test
  void anEstimateIsCalledOne() {
    List<Warning> warnings = INTERIOR.warnings();
    assertEquals(1, warnings.size());
    assertTrue(warnings.get(0).message().contains("stated or measured: profile of the rollers;"), warnings::toString);
  }

  @Test
  void theLoosestPairCostsMostAndAnInterferingOneNothing() {
    SeatPrice slip = flat().fit(Fit.of(mm(18), "H7/h7")).build();
    assertEquals(2.2529, slip.loosest().tilt().studTilt().radian() * 1000, 5e-5, "36 µm over 16 mm, and the stud is thick");
    assertTrue(slip.loosest().lifeRatio() < slip.mean().orElseThrow().lifeRatio());
    assertTrue(slip.mean().orElseThrow().lifeRatio() < slip.tightest().lifeRatio());
    assertEquals(1, slip.tightest().lifeRatio(), "no clearance, no bending: no tilt");
    assertEquals(1, flat().fit(Fit.of(mm(18), "S7/h7")).build().lifeRatio());
    assertEquals(slip.alignedLife().hours(rpm(180)).hours() * slip.lifeRatio(), slip.hours(slip.loosest()).hours(), 1e-6);
  }

  @Test
  void aSquareFaceSavesTheLifeOfALooseSeatWhileTheNutHolds() {
    SeatPrice price = flat().face(um(8), mm(32)).fit(Fit.of(mm(18), "H7/h7")).build();
    assertEquals(0.25, price.loosest().seat().total().radian() * 1000, 1e-4);
    double tight = price.loosest().lifeRatioNutTight().orElseThrow();
    assertTrue(tight > 0.9 && price.lifeRatio() < 0.2, price::toString);
    assertTrue(codes(price).contains("play-used-up"), () -> codes(price).toString());
    SeatPrice unknown = flat().fit(Fit.of(mm(18), "H7/h7")).build();
    assertTrue(unknown.loosest().lifeRatioNutTight().isEmpty());
    assertTrue(codes(unknown).contains("face-not-known"), () -> codes(unknown).toString());
  }

  @Test
  void publishedLimitsAreCompared() {
    SeatPrice price = flat().fit(Fit.of(mm(18), "H7/h7")).build();
    List<MisalignmentCheck> checks = price.comparison();
    // At 0.148 C: flat track roller 1 mrad, needle 0.5 mrad, profiled 1.16 mrad and 1.2 mrad; three pairs each.
    assertEquals(12, checks.size());
    assertEquals(4, checks.stream().filter(c -> c.pair().equals("loosest pair") && !c.passes()).count());
    assertEquals(4, checks.stream().filter(c -> c.pair().equals("tightest pair") && c.passes()).count());
    assertEquals(2, checks.stream().filter(c -> c.pair().equals("mean pair") && c.passes()).count(), "1.126 mrad");
    assertEquals(4, codes(price).stream().filter("above-published-limit"::equals).count());
    SeatPrice heavy = flat().duty(kN(6), rpm(180)).fit(Fit.of(mm(18), "H7/h7")).build();
    assertTrue(codes(heavy).contains("no-limit-at-this-load"), "0.42 C");
    assertTrue(price.sources().stream().anyMatch(s -> s.document().equals("Bearing engineering manual")));
    assertTrue(price.sources().stream().anyMatch(s -> s.document().equals("ISO 286-1:2010")));
  }

  @Test
  void aCrownedRingTakesMostOfTheLean() {
    SeatPrice flat = flat().clearance(um(36)).build();
    SeatPrice crowned = flat().ring(mm(40), mm(500)).clearance(um(36)).build();
    assertTrue(crowned.lifeRatio() > 3 * flat.lifeRatio(), crowned::toString);
    assertTrue(codes(flat).contains("flat-ring-held"));
    assertTrue(codes(crowned).contains("crowned-ring-rocks"));
    RacewayTilt tilt = crowned.loosest().tilt();
    assertEquals(500 * tilt.ring().radian(), tilt.contactShift().mm(), 1e-12);
    assertTrue(crowned.comparison().stream().noneMatch(c -> c.limit().kind().toString().contains("flat ring")));
  }

  @Test
  void aHairOfLeanOnAnyCrownIsShared() {
    for (double um : new double[] {1e-300, 1e-15, 1e-9, 1e-6, 36}) {
      for (double crown : new double[] {Math.nextUp(17.5), 500, 1e9}) {
        RacewayTilt tilt = flat().ring(mm(35), mm(crown)).clearance(um(um)).build().loosest().tilt();
        assertTrue(tilt.raceways().radian() >= 0, tilt::toString);
        assertTrue(tilt.raceways().radian() <= tilt.studTilt().radian(), tilt::toString);
      }
    }
  }

  @Test
  void warmthThatOpensTheSeatCosts() {
    Fit fit = Fit.of(mm(18), "H7/h7");
    SeatPrice cold = flat().fit(fit).build();
    SeatPrice warm =
        flat()
            .fit(FitAtTemperature.uniform(fit, new ThermalExpansion(23e-6), new ThermalExpansion(11e-6), new Temperature(80)))
            .build();
    assertTrue(warm.lifeRatio() < cold.lifeRatio());
    assertTrue(warm.tightest().lifeRatio() < 1, "13 µm of clearance where there was none");
  }

  @Test
  void theDerivationEndsAtTheRatioAndAllWarnsOfMemory() {
    SeatPrice price = flat().face(um(8), mm(32)).fit(Fit.of(mm(18), "H7/k6")).build();
    assertEquals(price.lifeRatio(), price.explain().result().value());
    assertTrue(codes(price).containsAll(
        List.of("recalled-method", "ring-bending-not-covered", "interior-estimated", "no-printed-life-factor")));
    assertTrue(price.toString().startsWith("loosest pair: lean "), price::toString);
  }

  @Test
  void aPlanNeedsOnlyTheInside() throws IOException, ClassNotFoundException {
    SeatPrice price = SeatPrice.of(InstallationPlan.example().withBore("S6"), INTERIOR).build();
    // The bundled example presses its stud and states its face: face and bending lean it.
    assertEquals(InstallationPlan.example().withBore("S6").tilt().total(), price.loosest().tilt().studTilt());
    assertTrue(price.loosest().lifeRatioNutTight().isPresent());
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(price);
    }
    try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      assertEquals(price, in.readObject());
    }
  }
}
