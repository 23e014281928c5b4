// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.trace.Step;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What results of bearings say of themselves: steps, warnings and their ends, words. */
class BearingReportsTest {
  private static final LoadRatings BALL = LoadRatings.radialBall(kN(29.1), kN(17.9));
  private static final LoadedBearing GROOVE = LoadedBearing.of(BearingType.DEEP_GROOVE_BALL, deg(0), BALL).withF0(14);
  private static final LoadRatings ROLLER = LoadRatings.radialRoller(kN(14.2), kN(17.5));

  private static List<String> codes(Traced result) {
    return result.warnings().stream().map(Warning::code).toList();
  }

  private static Step step(Traced result, String symbol) {
    return result.explain().steps().stream().filter(s -> s.symbol().equals(symbol)).findFirst().orElseThrow();
  }

  @Test
  void theEquivalentLoadIsTheSumOfItsPrintedFactors() {
    for (BearingType type : BearingType.values()) {
      boolean thrust = type.family().thrust();
      double alpha = thrust ? 60 : type == BearingType.DEEP_GROOVE_BALL ? 0 : 30;
      LoadRatings ratings = new LoadRatings(type.family(), kN(100), kN(120), null, OuterRing.HOUSED);
      int rows = thrust ? 2 : 1;
      LoadedBearing bearing = new LoadedBearing(type, rows, deg(alpha), ratings, 14);
      for (double fa : new double[] {0.5, 12}) {
        EquivalentLoad load = bearing.dynamicLoad(kN(4), kN(fa));
        double sum = step(load, "X").value() * 4000 + step(load, "Y").value() * fa * 1000;
        assertEquals(load.load().newton(), sum, 1e-9 * sum, type + " " + fa);
        boolean above = fa / 4 > step(load, "e").value();
        assertEquals(above ? "table, Fa/Fr > e" : "table, Fa/Fr ≤ e", step(load, "X").expression(), type + " " + fa);
        assertEquals(step(load, "X").expression(), step(load, "Y").expression());
        assertEquals(EquivalentLoadKernel.loadDependent(type),
            load.explain().steps().stream().anyMatch(s -> s.symbol().equals("f0 Fa/C0r")), type.toString());
      }
    }
  }

  @Test
  void aLoadOfOneDirectionNeedsNoFactors() {
    LoadedBearing thrust = LoadedBearing.of(BearingType.THRUST_BALL, deg(90), LoadRatings.thrustBall(kN(10), kN(10)));
    assertEquals("Fa", thrust.dynamicLoad(kN(0), kN(1)).explain().result().expression());
    LoadedBearing cylindrical = LoadedBearing.of(BearingType.CYLINDRICAL_ROLLER, deg(0), ROLLER);
    EquivalentLoad radial = cylindrical.dynamicLoad(kN(2), kN(0));
    assertEquals("Fr", radial.explain().result().expression());
    assertEquals(1, radial.explain().steps().size());
    assertEquals("P = 2 kN (Fr = 2 kN, Fa = 0 N)", radial.toString());
  }

  @Test
  void warningsOfTheEquivalentLoad() {
    // f0 Fa/C0r runs from 0.172 to 6.89 in the table: 7.8, 0.078 and 0.78.
    Warning over = GROOVE.dynamicLoad(kN(1), kN(10)).warnings().get(0);
    assertTrue(over.message().contains("ask the maker"), over.message());
    Warning under = GROOVE.dynamicLoad(kN(1), kN(0.1)).warnings().get(0);
    assertEquals("relative-axial-load-outside-table", under.code());
    assertFalse(under.message().contains("ask the maker"), under.message());
    assertEquals(List.of(), codes(GROOVE.dynamicLoad(kN(1), kN(1))));
    assertTrue(codes(GROOVE.dynamicLoad(kN(30), kN(0))).contains("load-above-C"));
    // Exactly a hundredth of C is the guiding least load.
    assertEquals(List.of(), codes(GROOVE.dynamicLoad(N(291), N(0))));
    assertEquals(List.of("load-below-minimum"), codes(GROOVE.dynamicLoad(N(290), N(0))));
  }

  @Test
  void staticSafetyAtItsGuidingValueIsEnough() {
    // 17.9/8.95 = 2, ISO 76:2006, Table 4 for quiet running.
    StaticLoad just = GROOVE.staticLoad(kN(8.95), kN(0), Running.QUIET);
    assertTrue(just.sufficient());
    assertEquals(List.of(), codes(just));
    assertEquals("max(X0 Fr + Y0 Fa, Fr)", step(just, "P0").expression());
    assertEquals("P0 = 8.95 kN, S0 = 2", just.toString().replace("2.00", "2"));
    LoadedBearing thrust = LoadedBearing.of(BearingType.THRUST_BALL, deg(60), LoadRatings.thrustBall(kN(100), kN(120)));
    // Fr tan 60° = 1732 N against 0.44 Fa = 1716 N and 1760 N.
    StaticLoad slanting = thrust.staticLoad(kN(1), kN(3.9), Running.NORMAL);
    assertEquals(List.of("radial-share-high"), codes(slanting));
    assertEquals("2.3 Fr tan α + Fa", step(slanting, "P0").expression());
    assertEquals(List.of(), codes(thrust.staticLoad(kN(1), kN(4), Running.NORMAL)));
    assertEquals(List.of(), codes(thrust.withRows(2).staticLoad(kN(1), kN(3.9), Running.NORMAL)));
  }

  @Test
  void ratingsSayTheirFormulasAndLimits() {
    GeometryRatings small = BearingGeometry.balls(BearingType.DEEP_GROOVE_BALL, 1, 9, mm(25.4), mm(120), deg(0)).ratings();
    assertEquals("bm fc (i cos α)^0.7 Z^(2/3) Dw^1.8", small.explain().result().expression());
    GeometryRatings large = BearingGeometry.balls(BearingType.DEEP_GROOVE_BALL, 1, 9, mm(26), mm(120), deg(0)).ratings();
    assertEquals("bm fc (i cos α)^0.7 Z^(2/3) 3.647 Dw^1.4", large.explain().result().expression());
    assertEquals("f0 i Z Dw² cos α", step(large, "C0").expression());
    assertTrue(large.warnings().get(0).message().endsWith("0.52 Dw (inner ring) and 0.53 Dw (outer ring)"));
    GeometryRatings thrust = BearingGeometry.balls(BearingType.THRUST_BALL, 1, 12, mm(8), mm(80), deg(90)).ratings();
    assertEquals("bm fc Z^(2/3) Dw^1.8", thrust.explain().result().expression());
    assertTrue(thrust.warnings().get(0).message().endsWith("0.54 Dw"));
    assertEquals(List.of("groove-radii"), codes(thrust));
    GeometryRatings steep = BearingGeometry.balls(BearingType.THRUST_BALL, 1, 12, mm(8), mm(80), deg(80)).ratings();
    assertEquals(List.of("groove-radii", "factor-beyond-column"), codes(steep));
    assertEquals("bm fc (cos α)^0.7 tan α Z^(2/3) Dw^1.8", steep.explain().result().expression());
    GeometryRatings aligning = BearingGeometry.balls(BearingType.SELF_ALIGNING_BALL, 2, 12, mm(8), mm(50), deg(10)).ratings();
    assertTrue(aligning.warnings().get(0).message().endsWith("0.53 Dw (inner ring)"));
    // Rollers longer than 2.5 diameters: 20 mm on 8 mm is the limit.
    assertEquals(List.of("roller-factor-is-greatest"), codes(rollers(20)));
    assertEquals(List.of("roller-factor-is-greatest", "long-rollers"), codes(rollers(20.1)));
    assertFalse(rollers(20).explain().steps().stream().anyMatch(s -> s.symbol().equals("f0")));
    assertTrue(step(rollers(20), "Cu").expression().startsWith("C0/8.2"));
    assertTrue(step(small, "Cu").expression().startsWith("C0/22"));
    assertTrue(small.toString().startsWith("C = "), small.toString());
  }

  private static GeometryRatings rollers(double length) {
    return BearingGeometry.rollers(BearingType.NEEDLE_ROLLER, 1, 20, mm(8), mm(length), mm(80), deg(0)).ratings();
  }

  @Test
  void aTrackRollerKeepsItsLimitsAndRefusesThoseThatCannotBe() {
    TrackRoller bare = TrackRoller.of(LoadRatings.trackRoller(kN(13), kN(18), OuterRing.RIGID), mm(40), false);
    TrackRoller full = bare.withRingLimits(kN(9), kN(12)).withStudLimit(kN(8)).withTrackCapacity(kN(3)).withSpeedLimit(rpm(600));
    assertEquals(List.of(kN(9), kN(12), kN(8), kN(3)),
        List.of(full.dynamicLimit(), full.staticLimit(), full.studLimit(), full.trackCapacity()));
    assertEquals(rpm(600), full.speedLimit());
    assertEquals(BasicLifeKernel.roller(13, 2), full.life(kN(2)).millionRevolutions(), 1e-9);
    assertEquals("greatest radial load of the turning ring", refused(() -> bare.withRingLimits(kN(0), kN(1))));
    assertEquals("greatest radial load of the ring at standstill", refused(() -> bare.withRingLimits(kN(1), kN(0))));
    assertEquals("track capacity at 40 HRC", refused(() -> bare.withTrackCapacity(kN(0))));
    assertEquals("speed n", refused(() -> bare.withSpeedLimit(rpm(0))));
    assertEquals("family", refused(
        () -> LoadRatings.trackRoller(BearingFamily.THRUST_BALL, kN(1), kN(1), OuterRing.RIGID)));
    PermissibleLoad load = PermissibleLoad.of(full, hours(500), Reliability.L10, rpm(600), 1.5, 40);
    assertEquals("3 kN, governed by track", load.toString());
    // The greatest speed itself is permitted; all limits are stated.
    assertEquals(List.of("rigid-ring-rating"), codes(load));
  }

  private static String refused(Runnable call) {
    return assertThrows(InputException.class, call::run).parameter();
  }

  @Test
  void theModifiedLifeSaysHowItsFilmWasFound() {
    Lubrication slow = Lubrication.of(mm2PerS(60), rpm(999), mm(30));
    Lubrication fast = Lubrication.of(mm2PerS(60), rpm(1000), mm(30));
    Contamination half = Contamination.ofFactor(0.5);
    ModifiedLife life = RatingLife.modified(ROLLER, kN(2.1), Reliability.L10, slow, half);
    assertEquals("45000 n^-0.83 Dpw^-0.5", step(life, "ν1").expression());
    assertEquals("ν / ν1", step(life, "κ").expression());
    assertEquals("simplified, from C0", step(life, "Cu").expression());
    assertEquals("4500 n^-0.5 Dpw^-0.5",
        step(RatingLife.modified(ROLLER, kN(2.1), Reliability.L10, fast, half), "ν1").expression());
    ModifiedLife given = RatingLife.modified(ROLLER.withFatigueLimit(kN(2)), kN(2), Reliability.L10,
        Lubrication.ofKappa(4, mm(30)), half);
    assertEquals("as given", step(given, "κ").expression());
    assertEquals("as stated", step(given, "Cu").expression());
    assertEquals(List.of(), codes(given));
    assertTrue(given.toString().startsWith("L10m = "), given.toString());
    assertEquals("(C/P)^(10/3)", step(given, "L10").expression());
    LoadRatings ball = BALL.withFatigueLimit(kN(1));
    ModifiedLife severe = RatingLife.modified(ball, kN(30), Reliability.MEDIAN, Lubrication.ofKappa(4.1, mm(30)),
        Contamination.ofFactor(0));
    assertEquals(List.of("load-above-C", "load-above-C0", "reliability-below-table", "kappa-above-4", "contamination-severe"),
        codes(severe));
    assertEquals("(C/P)^3", step(severe, "L10").expression());
  }

  @Test
  void additivesAreSaidToCountOrNot() {
    Lubrication film = Lubrication.ofKappa(0.5, mm(30)).withProvenAdditives();
    LoadRatings known = ROLLER.withFatigueLimit(kN(2));
    ModifiedLife counts = RatingLife.modified(known, kN(2), Reliability.L10, film, Contamination.ofFactor(0.2));
    assertEquals(LifeModificationKernel.withAdditives(BearingFamily.RADIAL_ROLLER, 0.5, 0.2, 0.2, 1), counts.modification(), 1e-12);
    assertTrue(counts.warnings().get(0).message().endsWith("aISO up to 3"), counts.warnings().toString());
    ModifiedLife not = RatingLife.modified(known, kN(2), Reliability.L10, film, Contamination.ofFactor(0.19));
    assertTrue(not.warnings().get(0).message().endsWith("the additives do not count"), not.warnings().toString());
    Lubrication thick = Lubrication.ofKappa(1, mm(30)).withProvenAdditives();
    assertEquals(List.of(), codes(RatingLife.modified(known, kN(2), Reliability.L10, thick, Contamination.ofFactor(0.2))));
  }

  @Test
  void quantitiesOfBearingsReadAsWords() {
    assertEquals("90 %", Reliability.L10.toString());
    assertTrue(Reliability.L10.compareTo(Reliability.MEDIAN) > 0 && Reliability.MEDIAN.compareTo(Reliability.L10) < 0);
    assertEquals("κ = 2 (given)", Lubrication.ofKappa(2, mm(30)).toString().replace("2.00", "2"));
    assertTrue(Lubrication.of(mm2PerS(60), rpm(180), mm(30)).toString().endsWith("at 180 rpm, Dpw = 30 mm)"));
    assertEquals("radial roller bearing, C = 14.2 kN, C0 = 17.5 kN", ROLLER.toString());
    assertTrue(ROLLER.withFatigueLimit(kN(2)).toString().endsWith(", Cu = 2 kN"));
    assertEquals(BearingFamily.THRUST_ROLLER, LoadRatings.thrustRoller(kN(1), kN(1)).family());
    // A wheel of 1000/π mm rolls a metre each turn: 64 million turns are 64000 km.
    assertEquals(64e9, RatingLife.basic(LoadRatings.radialBall(kN(4), kN(4)), kN(1)).distance(mm(1000 / Math.PI)).mm(), 1);
    assertEquals("deep groove ball bearing, 1 row of 9 × 8 mm on 40 mm",
        BearingGeometry.balls(BearingType.DEEP_GROOVE_BALL, 1, 9, mm(8), mm(40), deg(0)).toString());
    assertEquals(0.5 * 0.2, BearingGeometry.balls(BearingType.THRUST_BALL, 1, 9, mm(8), mm(40), deg(60)).ratio(), 1e-12);
    assertEquals(0, BearingGeometry.balls(BearingType.THRUST_BALL, 1, 9, mm(8), mm(40), deg(90)).ratio());
  }
}
