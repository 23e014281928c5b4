// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.quantity.Units.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.job.JobFile;
import holdfast.lubrication.Openings;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.seats.StudBendingKernel;
import holdfast.trace.Warning;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The radial hole in the shank weakens the stud, and its peak of stress is printed for what it is. */
class CrossHoleTest {
  private static final InstallationPlan PLAN = InstallationPlan.example().withBore("S6");

  private static InstallationPlan drilled(Length hole, Openings openings) {
    StudRoller r = PLAN.roller();
    RollerBuild b = r.build();
    StudRoller roller = new StudRoller(r.name(), r.outsideDiameter(), r.ringWidth(), r.crownRadius(), r.flangeDiameter(),
        r.ringGap(), r.studDiameter(), r.studTolerance(), r.lengths(), r.thread(), r.greaseBore(), hole, r.material(),
        r.seatRoughness(),
        new RollerBuild(b.system(), b.kind(), b.sealed(), b.head(), b.fittingInSocket(), b.eccentricCollar(), openings),
        r.ratings(), r.ratingsFrom(), r.limits(), r.interior(), r.endurance());
    return new InstallationPlan(PLAN.job(), roller, PLAN.member(), PLAN.nut(), PLAN.duty());
  }

  private static Optional<Warning> warning(InstallationPlan plan, String code) {
    return java.util.stream.Stream.concat(plan.allLimits().warnings().stream(), plan.stud().warnings().stream())
        .filter(warning -> warning.code().equals(code)).findFirst();
  }

  /** W of a hollow stud less the hole: 2/d (π (d⁴ - di⁴)/64 - dh (d³ - di³)/12), by hand for 18, 3 and 4 mm. */
  @Test
  void aStatedHoleCountsInBendingTighteningAndOnTheSheet() {
    InstallationPlan plan = drilled(mm(4), null);
    double modulus = 2 / 18.0 * (Math.PI * (18 * 18 * 18 * 18 - 81) / 64 - 4 * (18 * 18 * 18 - 27) / 12.0);
    assertEquals(2100 * 10.8 / modulus, plan.stud().bending().megapascal(), 1e-9);
    assertTrue(plan.stud().equivalent().compareTo(PLAN.stud().equivalent()) > 0);
    assertTrue(plan.tightening().sections().stream().anyMatch(section -> section.crossHole().equals(mm(4))));
    assertEquals(PLAN.deflection().tilt(), plan.deflection().tilt(), "a hole does not soften the whole stud");
    String text = plan.sheet().text().replaceAll("\\s+", " ");
    assertTrue(text.contains("grease bore 3 mm, cross hole 4 mm"), text);
    assertTrue(text.contains("elastic, 3σz - σθ"), text);
    assertTrue(warning(plan, "cross-hole").isPresent() && warning(plan, "cross-hole-not-stated").isEmpty());
  }

  /** Kirsch: three times the stress along the full section, less the hoop stress that the fit presses in. */
  @Test
  void aHoleOfUnknownDiameterIsTold() {
    double along = PLAN.stud().tension().megapascal();
    double pressure = PLAN.stud().fitPressure().megapascal();
    assertTrue(pressure > 50, "the fit presses");
    double peak = 3 * along + pressure * (18.0 * 18 + 9) / (18.0 * 18 - 9);
    assertEquals(peak, PLAN.stud().crossHolePeak().megapascal(), 1e-9 * peak);
    String told = warning(PLAN, "cross-hole-not-stated").orElseThrow().message();
    assertTrue(told.contains(PLAN.stud().crossHolePeak().toString()), told);
    assertTrue(warning(drilled(mm(0), Openings.none()), "cross-hole-not-stated").isEmpty());
    assertFalse(PLAN.sheet().text().contains("cross hole 0"));
  }

  @Test
  void aHoleThatCannotBeIsRefused() {
    assertThrows(InputException.class, () -> drilled(mm(18), null));
    assertThrows(InputException.class, () -> drilled(mm(-1), null));
    assertEquals("cross hole", assertThrows(InputException.class, () -> drilled(mm(4), Openings.none())).parameter());
    assertTrue(drilled(mm(4), null).roller().openings().radial());
  }

  @Test
  void aJobFileKeepsTheHole() {
    InstallationPlan plan = drilled(mm(4), null);
    assertEquals(List.of(plan), List.of(JobFile.parse(JobFile.text(plan))));
  }

  /** F/(dL)·(4 + 6a/L) by hand: 2100/(18·16)·(4 + 6·10.8/16) = 58.7 MPa. */
  @Test
  void aMouthThatTheLoadOpensIsTold() {
    double mouth = 2100 / (18.0 * 16) * (4 + 6 * 10.8 / 16);
    assertEquals(mouth, PLAN.mouthPressure().megapascal(), 1e-9);
    assertEquals(StudBendingKernel.mouthPressure(2100, 10.8, 18, 16), mouth, 1e-9);
    double least = Math.min(PLAN.seat().orElseThrow().attainedPressure().least().megapascal(),
        PLAN.seatAtWork().orElseThrow().pressure().least().megapascal());
    assertEquals(mouth > least, warning(PLAN, "seat-mouth-opens").isPresent(), least + " MPa");
    assertTrue(warning(PLAN, "seat-mouth-opens").isPresent(), least + " MPa");
    assertTrue(warning(PLAN.withBore("X7"), "seat-mouth-opens").isEmpty());
    assertTrue(warning(PLAN.withBore("H7"), "seat-mouth-opens").isEmpty(), "a loose bore presses nothing");
  }
}
