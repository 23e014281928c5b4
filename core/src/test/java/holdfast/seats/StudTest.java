// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.trace.Traced;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class StudTest {
  private static final Material STEEL = Material.of("C45+N");
  private final ShankSection section = ShankSection.drilled(mm(16), mm(4));
  private final StudLoad load = StudLoad.radial(kN(4), mm(18), mm(0.8)).tightened(kN(15), Nm(10));

  @Test
  void stressesOfADrilledStud() {
    StudStrength strength = StudStrength.of(section, load);
    double w = Math.PI * (16.0 * 16 * 16 * 16 - 256) / (32 * 16);
    assertEquals(4000 * 9.8 / w, strength.bending().megapascal(), 1e-9);
    assertEquals(15000 / (Math.PI / 4 * 240), strength.axial().megapascal(), 1e-9);
    assertEquals(10000 / (2 * w), strength.torsion().megapascal(), 1e-9);
    assertEquals(strength.equivalent().megapascal(), strength.explain().result().value());
    assertEquals(1, strength.margin(strength.tension()), 1e-12);
    assertEquals(4000, strength.radialLoadAt(strength.tension()).base(), 1e-9);
    assertEquals(0, strength.radialLoadAt(MPa(10)).base());
    assertEquals(List.of("short-stud"), codes(strength));
    assertTrue(strength.toString().startsWith("stud 16 mm, bore 4 mm: bending 97.8"), strength::toString);
    assertTrue(strength.shear().megapascal() > 0);
  }

  @Test
  void crossHoleAndPressedMouthRaiseTheStress() {
    StudStrength plain = StudStrength.of(section, load);
    StudStrength drilled = StudStrength.of(section.crossDrilled(mm(3)), load);
    assertTrue(drilled.bending().compareTo(plain.bending()) > 0);
    assertTrue(codes(drilled).contains("cross-hole"));
    // Kirsch's factor is that of the full section: three times its stress, whatever the hole takes from the section.
    assertEquals(3 * plain.tension().megapascal(), drilled.crossHolePeak().megapascal(), 1e-9);
    assertEquals(Math.PI * 4096 / 32 - 3 * 256 / 6.0, StudSectionKernel.netModulus(16, 0, 3), 1e-9);
    StudStrength pressed = StudStrength.of(section, load).pressed(MPa(80));
    assertTrue(pressed.equivalent().compareTo(plain.equivalent()) > 0);
    assertEquals(pressed.equivalent().megapascal(), pressed.explain().result().value());
  }

  @Test
  void catalogueAllowablesByDuty() {
    assertEquals(1372, StudStrength.catalogueAllowable(StudDuty.STATIC).megapascal());
    assertEquals(784, StudStrength.catalogueAllowable(StudDuty.REPEATED).megapascal());
    assertEquals(392, StudStrength.catalogueAllowable(StudDuty.REVERSED).megapascal());
  }

  @Test
  void fatigueByDutyAndCriterion() {
    StudMaterial material = new StudMaterial(MPa(350), MPa(900), MPa(700));
    StudStrength strength = StudStrength.of(section, load);
    StudFatigue repeated = strength.fatigue(StudDuty.REPEATED, 1.5, material, StudFatigueCriterion.GOODMAN);
    StudFatigue reversed = strength.fatigue(StudDuty.REVERSED, 1.5, material, StudFatigueCriterion.GOODMAN);
    StudFatigue resting = strength.fatigue(StudDuty.STATIC, 1.5, material, StudFatigueCriterion.GERBER);
    assertEquals(0.75 * strength.bending().megapascal(), repeated.amplitude().megapascal(), 1e-9);
    assertEquals(strength.axial().megapascal(), reversed.mean().megapascal(), 1e-9);
    assertTrue(reversed.margin() < repeated.margin());
    assertEquals(900 / strength.tension().megapascal(), resting.haighMargin(), 1e-9);
    assertEquals(700 / strength.tension().megapascal(), resting.margin(), 1e-9);
    for (StudFatigueCriterion criterion : StudFatigueCriterion.values()) {
      StudFatigue fatigue = strength.fatigue(StudDuty.REPEATED, 1.5, material, criterion);
      assertEquals(fatigue.margin(), fatigue.explain().result().value());
    }
    StudFatigue pressed =
        StudStrength.of(section, load).pressed(MPa(80)).fatigue(StudDuty.REVERSED, 1, material, StudFatigueCriterion.SODERBERG);
    assertTrue(codes(pressed).contains("fretting-at-mouth"));
    assertTrue(repeated.toString().startsWith("repeated load: margin "), repeated::toString);
  }

  @Test
  void deflectionAndTilt() {
    StudDeflection rigid = StudDeflection.of(section, load, STEEL, mm(20));
    StudDeflection elastic = rigid.onFoundation(MPa(100000));
    assertEquals(rigid.tilt().radian(), rigid.explain().result().value());
    assertEquals(elastic.tilt().radian(), elastic.explain().result().value());
    assertTrue(elastic.tilt().compareTo(rigid.tilt()) > 0);
    assertTrue(elastic.deflection().compareTo(rigid.deflection()) > 0);
    assertTrue(codes(rigid).contains("seat-taken-as-rigid"));
    assertFalse(codes(elastic).contains("seat-taken-as-rigid"));
    // Load spread over the width: slope at its middle F/(EI) (g²/2 + gB/2 ... ) = ∫ M dx / EI over gap and half width.
    double ei = STEEL.elasticModulus().megapascal() * StudSectionKernel.inertia(16, 4);
    double steps = 0;
    int n = 20000;
    for (int i = 0; i < n; i++) {
      steps += StudBendingKernel.momentAt(4000, 18, 0.8, 9.8 * (i + 0.5) / n) * 9.8 / n;
    }
    assertEquals(steps / ei, rigid.bendingSlope().radian(), 1e-8 * steps / ei);
    assertTrue(codes(StudDeflection.of(ShankSection.solid(mm(8)), load, STEEL, mm(20))).contains("tilt-above-limit"));
    assertTrue(rigid.toString().startsWith("stud 16 mm, bore 4 mm: deflection "), rigid::toString);
  }

  @Test
  void notchPolynomialsReachTheirLimits() {
    for (StudNotch notch : StudNotch.values()) {
      for (StudNotch.Loading loading : StudNotch.Loading.values()) {
        // Hardly any section left beside the notch depth: no concentration. Recalled sets hold this within 0.1.
        assertEquals(1, StudNotchKernel.concentration(notch, loading, 1000, 0.01, 500), 0.1, notch + " " + loading);
        assertTrue(StudNotchKernel.isValid(notch, loading, 20, 16, 1), notch + " " + loading);
        assertFalse(StudNotchKernel.isValid(notch, loading, 20, 16, 100), notch + " " + loading);
        assertFalse(StudNotchKernel.isValid(notch, loading, 20, 16, 0.03), notch + " " + loading);
        double blunt = StudNotchKernel.concentration(notch, loading, 20, 16, 1.9);
        assertTrue(StudNotchKernel.concentration(notch, loading, 20, 16, 1) > blunt, notch + " " + loading);
      }
    }
    // Shallow grooves tend to the edge notch of Inglis: 1 + 2 √(t/r), in torsion 1 + √(t/r).
    assertEquals(1 + 2 * Math.sqrt(10), StudNotchKernel.concentration(StudNotch.GROOVE, StudNotch.Loading.TENSION, 1e6, 1e6 - 20, 1), 0.4);
    assertEquals(1 + Math.sqrt(10), StudNotchKernel.concentration(StudNotch.GROOVE, StudNotch.Loading.TORSION, 1e6, 1e6 - 20, 1), 0.4);
  }

  @Test
  void concentrationExplainsItselfAndWarns() {
    StudConcentration groove =
        new StudConcentration(StudNotch.GROOVE, StudNotch.Loading.BENDING, mm(20), mm(16), mm(1));
    assertEquals(groove.factor(), groove.explain().result().value());
    assertEquals(List.of("recalled-polynomials"), codes(groove));
    double kf = groove.fatigueFactor(MPa(900));
    assertTrue(kf > 1 && kf < groove.factor());
    StudConcentration blunt =
        new StudConcentration(StudNotch.FILLET, StudNotch.Loading.TORSION, mm(20), mm(16), mm(100));
    assertEquals(List.of("recalled-polynomials", "notch-outside-range"), codes(blunt));
    assertTrue(groove.toString().startsWith("groove in bending, 20 mm to 16 mm, radius 1 mm: Kt = "), groove::toString);
  }

  @Test
  void notchSensitivity() {
    assertEquals(0.0254, StudNotchKernel.materialLength(2070), 1e-12);
    assertEquals(2, StudNotchKernel.fatigueFactor(2, 1, 0), 1e-15);
    assertEquals(1.5, StudNotchKernel.fatigueFactor(2, 1, 1), 1e-15);
    assertEquals(2 * 1000 / (Math.PI * 100), StudBendingKernel.doubleShear(1000, 10, 0), 1e-12);
  }

  @Test
  void wrongInputIsNamed() {
    refused("stud bore di", "from 0 mm", () -> ShankSection.drilled(mm(16), mm(16)));
    refused("cross hole diameter", "from 0 mm", () -> section.crossDrilled(mm(9)));
    refused("radial load F", "0 N or more", () -> StudLoad.radial(N(-1), mm(10), mm(1)));
    refused("gap g", "from 0 mm", () -> StudLoad.radial(N(1), mm(10), mm(-1)));
    refused("preload FV", "0 N or more", () -> load.tightened(N(-1), Nm(0)));
    refused("pressure of the fit", "0 MPa or more", () -> StudStrength.of(section, load).pressed(MPa(-1)));
    refused("fatigue notch factor Kf", "1 or more",
        () -> StudStrength.of(section, load)
            .fatigue(StudDuty.STATIC, 0.9, new StudMaterial(MPa(1), MPa(2), MPa(2)), StudFatigueCriterion.GOODMAN));
    refused("yield strength Re", "over 0 MPa up to 900 MPa", () -> new StudMaterial(MPa(300), MPa(900), MPa(901)));
    refused("engaged length L", "over 0 mm", () -> StudDeflection.of(section, load, STEEL, mm(0)));
    refused("foundation modulus c", "0 N/mm² or more",
        () -> StudDeflection.of(section, load, STEEL, mm(20)).onFoundation(MPa(-1)));
    refused("step D - d", "over 0 mm",
        () -> StudNotchKernel.concentration(StudNotch.FILLET, StudNotch.Loading.BENDING, 16, 16, 1));
    refused("tensile strength Rm", "from 550 MPa to 2500 MPa", () -> StudNotchKernel.materialLength(Double.NaN));
    refused("largest stress", "over 0 MPa", () -> StudFatigueKernel.firstYield(0, 0, 700));
    refused("length of the load", "over 0 mm", () -> StudBeamKernel.deflectionOfLoad(2, 2, 1, 1, 5, 1e6));
  }

  private static List<String> codes(Traced result) {
    return result.warnings().stream().map(warning -> warning.code()).collect(Collectors.toList());
  }

  private static void refused(String parameter, String permitted, org.junit.jupiter.api.function.Executable call) {
    InputException e = assertThrows(InputException.class, call);
    assertEquals(parameter, e.parameter());
    assertTrue(e.permitted().startsWith(permitted), e::getMessage);
  }
}
