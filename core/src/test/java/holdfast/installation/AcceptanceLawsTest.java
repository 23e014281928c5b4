// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.quantity.Units.degC;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.umPerMK;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.fits.Conformity;
import holdfast.fits.Fit;
import holdfast.fits.Gauge;
import holdfast.fits.LimitsOfSize;
import holdfast.fits.MeasuredPart;
import holdfast.fits.PartAcceptance;
import holdfast.fits.TolerancedSize;
import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.quantity.ThermalExpansion;
import holdfast.seats.Band;
import holdfast.seats.FrictionBand;
import holdfast.seats.InterferenceFit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** Laws of acceptance, for the press fit S6/h7 of the example and for the slip fit H7/h7 of the same parts. */
class AcceptanceLawsTest {
  private static final InstallationPlan PRESS = InstallationPlan.example().withBore("S6");
  private static final InstallationPlan SLIP = withBore("H7");

  private static InstallationPlan withBore(String tolerance) {
    MachineMember member =
        new MachineMember("lever", PRESS.member().body(), tolerance, mm(16), FrictionBand.of(0.08, 0.20));
    return new InstallationPlan(PRESS.job(), PRESS.roller(), member, PRESS.nut(), PRESS.duty());
  }

  /** Readings as places in the tolerance, for bore and stud: 0 lower limit, 1 upper limit; three stations of two. */
  record Places(InstallationPlan plan, List<Double> bore, List<Double> stud, double uncertainty) {
    Acceptance judged() {
      return judged(uncertainty, 20, 20);
    }

    /** Parts of these sizes at 20 °C, as gauges at one temperature show them at another. */
    Acceptance judged(double guard, double parts, double gauges) {
      Fit fit = plan.fit();
      ThermalExpansion member = plan.member().body().material().thermalExpansion();
      ThermalExpansion roller = plan.roller().material().thermalExpansion();
      return Acceptance.of(
          plan, shown(fit.hole(), bore, guard, member, parts, gauges), shown(fit.shaft(), stud, guard, roller, parts, gauges));
    }
  }

  private static MeasuredPart shown(
      TolerancedSize drawing, List<Double> places, double guard, ThermalExpansion part, double parts, double gauges) {
    MeasuredPart empty = MeasuredPart.by(Gauge.of("gauge", mm(guard)).steelAt(degC(gauges))).at(degC(parts));
    MeasuredPart full = empty.station(mm(1)).at(degC(parts));
    List<Length> shown = new ArrayList<>();
    for (double place : places) {
      shown.add(full.shownFor(drawing.limits().lower().plus(drawing.tolerance().times(place)), part));
    }
    return stations(empty, shown);
  }

  private static MeasuredPart stations(MeasuredPart empty, List<Length> readings) {
    MeasuredPart part = empty;
    for (int i = 0; i < readings.size(); i += 2) {
      part = part.station(readings.get(i), readings.get(i + 1));
    }
    return part;
  }

  @Provide
  Arbitrary<Places> places() {
    return places(-0.3, 1.3);
  }

  /** Readings that conform: the uncertainty is 1.5 µm, at least 0.14 of each tolerance. */
  @Provide
  Arbitrary<Places> goodPlaces() {
    return places(0.14, 0.86);
  }

  private static Arbitrary<Places> places(double from, double to) {
    Arbitrary<List<Double>> six = Arbitraries.doubles().between(from, to).ofScale(6).list().ofSize(6).withoutEdgeCases();
    return Combinators.combine(
            Arbitraries.of(PRESS, SLIP), six, six, Arbitraries.doubles().between(0, 1.5).ofScale(4))
        .as((plan, bore, stud, um) -> new Places(plan, bore, stud, um / 1000));
  }

  /** Moving all readings of the bore moves all clearances by the same amount. */
  @Property(tries = 200)
  void shiftedReadingsShiftTheFit(@ForAll("places") Places places, @ForAll @DoubleRange(min = -10, max = 10) double micrometres) {
    double shift = micrometres / 1000;
    Acceptance before = places.judged();
    double share = shift / places.plan().fit().hole().tolerance().mm();
    List<Double> moved = places.bore().stream().map(p -> p + share).toList();
    Acceptance after = new Places(places.plan(), moved, places.stud(), places.uncertainty()).judged();
    assertEquals(before.fit().clearance().mm() + shift, after.fit().clearance().mm(), 1e-12);
    assertEquals(before.fit().minimumClearance().mm() + shift, after.fit().minimumClearance().mm(), 1e-12);
    assertEquals(before.fit().maximumClearance().mm() + shift, after.fit().maximumClearance().mm(), 1e-12);
    assertEquals(before.bore().outOfRound().mm(), after.bore().outOfRound().mm(), 1e-12);
    assertEquals(before.bore().taper().mm(), after.bore().taper().mm(), 1e-12);
    Optional<LimitsOfSize> zone = before.matchingStud();
    Optional<LimitsOfSize> movedZone = after.matchingStud();
    // Where the zone is all but empty, noise of binary fractions decides whether there is one.
    if (zone.isPresent() && movedZone.isPresent()) {
      assertEquals(zone.get().lower().mm() + shift, movedZone.get().lower().mm(), 1e-12);
      assertEquals(zone.get().upper().mm() + shift, movedZone.get().upper().mm(), 1e-12);
    }
  }

  /** The same parts give the same result at every temperature of part and gauge. */
  @Property(tries = 200)
  void temperaturesAreCorrected(
      @ForAll("places") Places places,
      @ForAll @DoubleRange(min = -10, max = 60) double parts,
      @ForAll @DoubleRange(min = -10, max = 60) double gauges) {
    Acceptance cold = places.judged();
    Acceptance warm = places.judged(places.uncertainty(), parts, gauges);
    assertEquals(cold.fit().clearance().mm(), warm.fit().clearance().mm(), 1e-12);
    assertEquals(cold.bore().margin().mm(), warm.bore().margin().mm(), 1e-12);
    assertEquals(cold.stud().margin().mm(), warm.stud().margin().mm(), 1e-12);
  }

  /** Part and gauge of one material at one temperature: what is read is the size at 20 °C. */
  @Property(tries = 200)
  void whatGrowsTogetherNeedsNoCorrection(
      @ForAll @DoubleRange(min = -10, max = 60) double celsius, @ForAll @DoubleRange(min = 5, max = 25) double expansion) {
    ThermalExpansion alpha = umPerMK(expansion);
    MeasuredPart part =
        MeasuredPart.by(Gauge.of("gauge", mm(0.001)).at(degC(celsius), alpha)).station(mm(17.97)).at(degC(celsius));
    assertEquals(17.97, part.readings(alpha).mean().mm(), 1e-12);
  }

  /** A greater uncertainty never proves what a smaller one does not. */
  @Property(tries = 200)
  void theGuardBandShrinksAcceptance(@ForAll("places") Places places, @ForAll @DoubleRange(min = 0, max = 4) double more) {
    Acceptance fine = places.judged();
    Acceptance coarse = places.judged(places.uncertainty() + more / 1000, 20, 20);
    for (boolean bore : new boolean[] {true, false}) {
      PartAcceptance with = bore ? fine.bore() : fine.stud();
      PartAcceptance less = bore ? coarse.bore() : coarse.stud();
      assertTrue(less.conformity() == with.conformity() || less.conformity() == Conformity.UNDECIDED);
      less.acceptanceZone()
          .ifPresent(
              zone -> {
                LimitsOfSize wide = with.acceptanceZone().orElseThrow();
                assertTrue(wide.contains(zone.lower()) && wide.contains(zone.upper()));
              });
    }
    assertTrue(coarse.seat().clearance().least().compareTo(fine.seat().clearance().least()) <= 0);
    assertTrue(coarse.seat().clearance().greatest().compareTo(fine.seat().clearance().greatest()) >= 0);
  }

  /** Parts that conform make a fit within the plan, and what follows stays within what the plan computed. */
  @Property(tries = 200)
  void conformingPartsMakeThePlannedFit(@ForAll("goodPlaces") Places places) {
    Acceptance parts = places.judged();
    assertEquals(Conformity.PROVEN, parts.bore().conformity());
    assertEquals(Conformity.PROVEN, parts.stud().conformity());
    assertEquals(Conformity.PROVEN, parts.fitConformity());
    assertTrue(parts.accepted());
    Fit planned = places.plan().fit();
    assertTrue(parts.fit().minimumClearance().compareTo(planned.minimumClearance()) >= 0);
    assertTrue(parts.fit().maximumClearance().compareTo(planned.maximumClearance()) <= 0);
    assertTrue(parts.seat().tilt().byClearance().compareTo(places.plan().tilt().byClearance()) <= 0);
    assertTrue(parts.seat().torqueToBeHeld().compareTo(places.plan().torqueToBeHeld()) <= 0);
    Optional<InterferenceFit> seat = places.plan().seat();
    seat.ifPresent(
        press -> {
          Band<Force> force = press.pressInForce(places.plan().member().pressingFriction());
          Band<Force> measured = parts.seat().pressing().orElseThrow().pressIn();
          assertTrue(force.contains(measured.least()) && force.contains(measured.greatest()), measured + " in " + force);
        });
  }

  /** A part of which a reading is out by more than the uncertainty never passes. */
  @Property(tries = 200)
  void oneBadReadingIsEnough(@ForAll("goodPlaces") Places places, @ForAll @DoubleRange(min = 1.3, max = 3) double bad) {
    List<Double> bore = new ArrayList<>(places.bore());
    bore.set(3, bad);
    Acceptance parts = new Places(places.plan(), bore, places.stud(), places.uncertainty()).judged();
    assertEquals(Conformity.DISPROVED, parts.verdict());
    assertTrue(parts.remedies().stream().anyMatch(r -> r.code().equals("bore-large")));
  }

  /** The order of the directions, and that of the stations, changes nothing. */
  @Property(tries = 200)
  void theOrderOfReadingIsIrrelevant(@ForAll("places") Places places, @ForAll long seed) {
    Acceptance before = places.judged();
    Acceptance after =
        new Places(places.plan(), shuffled(places.bore(), seed), shuffled(places.stud(), ~seed), places.uncertainty()).judged();
    assertEquals(before.verdict(), after.verdict());
    assertEquals(before.bore().sizes(), after.bore().sizes());
    assertEquals(before.stud().sizes(), after.stud().sizes());
    assertEquals(before.fit().clearance().mm(), after.fit().clearance().mm(), 1e-12);
    assertEquals(before.bore().outOfRound(), after.bore().outOfRound());
    assertEquals(before.bore().taper().mm(), after.bore().taper().mm(), 1e-12);
    assertEquals(before.remedies(), after.remedies());
  }

  /** Stations keep their readings; stations and the readings in them change places. */
  private static List<Double> shuffled(List<Double> places, long seed) {
    Random random = new Random(seed);
    List<List<Double>> stations = new ArrayList<>();
    for (int i = 0; i < places.size(); i += 2) {
      List<Double> station = new ArrayList<>(places.subList(i, i + 2));
      Collections.shuffle(station, random);
      stations.add(station);
    }
    Collections.shuffle(stations, random);
    return stations.stream().flatMap(List::stream).toList();
  }

  /** A stud anywhere in the matching zone makes the planned fit in this bore. */
  @Property(tries = 200)
  void aMatchedStudMakesThePlannedFit(@ForAll("places") Places places, @ForAll @DoubleRange(min = 0, max = 1) double where) {
    Acceptance before = places.judged();
    Optional<LimitsOfSize> zone = before.matchingStud();
    if (zone.isPresent()) {
      Length size = zone.get().lower().plus(zone.get().tolerance().times(where));
      MeasuredPart stud = stations(MeasuredPart.by(before.stud().measured().gauge()), Collections.nCopies(6, size));
      assertEquals(Conformity.PROVEN, Acceptance.of(places.plan(), before.bore().measured(), stud, degC(20)).fitConformity());
    }
  }
}
