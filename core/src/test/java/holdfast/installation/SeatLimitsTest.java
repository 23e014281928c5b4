// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.seats.FrictionBand;
import holdfast.seats.Material;
import holdfast.seats.OuterPart;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A press fit that breaks or bursts a part is not released. */
class SeatLimitsTest {
  private static final InstallationPlan PRESS = InstallationPlan.example();

  private static InstallationPlan plan(String material, double outside, String bore) {
    return plan(Material.of(material), outside, bore);
  }

  private static InstallationPlan plan(Material material, double outside, String bore) {
    MachineMember member = MachineMember.named("lever").body(OuterPart.ring(material, mm(outside)))
        .bore(bore, mm(16)).pressingFriction(FrictionBand.of(0.08, 0.2)).faceRunOut(um(12)).build();
    return new InstallationPlan(PRESS.job(), PRESS.roller(), member, PRESS.nut(), PRESS.duty());
  }

  private static Optional<LimitCheck> check(InstallationPlan plan, String part) {
    return plan.allLimits().checks().stream().filter(check -> check.name().startsWith("press fit, " + part)).findFirst();
  }

  @Test
  void bothPartsOfAPressFitAreAmongTheLimits() {
    for (String part : new String[] {"stud", "member"}) {
      LimitCheck check = check(PRESS, part).orElseThrow();
      assertEquals(LimitCheck.Consequence.STOP, check.consequence());
      assertTrue(check.margin().getAsDouble() > 1, check::toString);
      assertTrue(check(plan("C45+N", 50, "H7"), part).isEmpty(), "nothing presses a stud that slips in");
    }
  }

  /** S. P. Timoshenko's thick ring: the limit pressure of iron is Rm (D²-d²)/(D²+d²); half of it is permitted. */
  @Test
  void ironKeepsASafetyOfTwoAgainstFracture() {
    InstallationPlan iron = plan("EN-GJL-250", 40, "P7");
    LimitCheck check = check(iron, "member").orElseThrow();
    double strength = Material.of("EN-GJL-250").tensileStrength().orElseThrow().megapascal();
    double limit = strength * (40 * 40 - 18 * 18) / (40 * 40 + 18 * 18);
    assertEquals(limit / 2, check.permitted().base(), 1e-6 * limit);
    // Press harder until the margin passes 1: a stop, long before the iron would break.
    InstallationPlan harder = plan("EN-GJL-250", 30, "S7");
    LimitCheck broken = check(harder, "member").orElseThrow();
    assertTrue(broken.margin().getAsDouble() < 1 && broken.margin().getAsDouble() > 0.5, broken::toString);
    assertTrue(harder.stops().stream().anyMatch(stop -> stop.contains("half of its fracture")), harder.stops().toString());
  }

  @Test
  void aMemberThatYieldsStopsUnlessItsPlasticZoneIsWithinTheLimitAndShown() {
    InstallationPlan little = plan("C45+N", 60, "U7");
    LimitCheck yields = check(little, "member").orElseThrow();
    assertFalse(yields.holds(), yields::toString);
    assertEquals(LimitCheck.Consequence.WARNING, yields.consequence());
    assertTrue(SheetSectionsTest.labels(SheetSectionsTest.section(little, "Press or heat")).contains("The member yields"));
    InstallationPlan much = plan("C45+N", 22, "X7");
    assertEquals(LimitCheck.Consequence.STOP, check(much, "member").orElseThrow().consequence());
    assertTrue(much.stops().stream().anyMatch(stop -> stop.contains("'press fit, member yields' is exceeded")));
  }

  /** A housing stronger than the least value stated does not yield: then the stud bears the elastic pressure. */
  @Test
  void aHousingThatMayYieldDoesNotRelieveTheStud() {
    InstallationPlan little = plan("C45+N", 60, "U7");
    double elastic = little.seat().orElseThrow().pressure().greatest().base();
    assertEquals(elastic, check(little, "stud").orElseThrow().demand().base(), 1e-9 * elastic);
    double attained = little.seat().orElseThrow().atWork(InstallationPlan.SHOP, InstallationPlan.SHOP).pressure().greatest().base();
    assertTrue(attained < 0.999 * elastic, attained + " of " + elastic);
  }

  /** Aluminium grows away from steel when it is hot and grips it harder when it is cold. */
  @Test
  void theColdCountsWhereItPressesHarder() {
    InstallationPlan warm = plan(Material.of("6061-T6", "wrought, artificially aged, second source"), 50, "P7");
    Duty duty = Duty.of(PRESS.duty().spectrum()).life(PRESS.duty().wantedLife(), PRESS.duty().reliability()).staticSafety(2)
        .at(degC(-20)).lubricant(PRESS.duty().viscosity(), PRESS.duty().contamination()).track(PRESS.duty().track(), 45)
        .lubricatedForLife().build();
    InstallationPlan cold = new InstallationPlan(PRESS.job(), PRESS.roller(), warm.member(), PRESS.nut(), duty);
    assertEquals(warm.seat().orElseThrow().pressure().greatest().base(),
        check(warm, "member").orElseThrow().demand().base(), 1e-9);
    assertTrue(check(cold, "member").orElseThrow().demand().base() > check(warm, "member").orElseThrow().demand().base());
  }

  /** Catalogues permit loads under which the flange opens: with 85 N·m at most the bore carries, and the sheet warns. */
  @Test
  void aFlangeThatOpensUnderTheLoadWarnsAndDoesNotStop() {
    Duty heavy = Duty.of(kN(8), rpm(20)).life(hours(100), PRESS.duty().reliability()).staticSafety(1).at(degC(60))
        .lubricant(mm2PerS(900), PRESS.duty().contamination()).track(PRESS.duty().track(), 58).lubricatedForLife().build();
    InstallationPlan plan = new InstallationPlan(PRESS.job(), PRESS.roller(), PRESS.member(), PRESS.nut(), heavy);
    assertFalse(plan.faceStaysClosed(), plan.faceClosedFrom()::toString);
    assertTrue(plan.torqueWindow().isOpen());
    assertTrue(plan.stops().stream().noneMatch(stop -> stop.contains("torque") || stop.contains("wrench")), plan.stops()::toString);
    assertTrue(plan.sheet().text().replaceAll("\\s+", " ").contains("the flange opens on one side under the greatest load"));
    assertTrue(PRESS.faceStaysClosed());
    InstallationPlan loose = plan.withBore("H7");
    assertEquals(loose.tilt().totalIfLoose(), loose.tilt().total(), "an open face does not set the stud straight");
    assertTrue(PRESS.withBore("H7").tilt().total().radian() < loose.tilt().total().radian());
  }
}
