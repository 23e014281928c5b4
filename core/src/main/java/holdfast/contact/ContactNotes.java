// SPDX-License-Identifier: Apache-2.0
package holdfast.contact;

import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.quantity.Stress;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Message;
import holdfast.trace.Warning;
import java.util.List;

/** Sources, common steps and common warnings of the contact results. */
final class ContactNotes {
  static final SourceRef GEOMETRY = SourceRef.memory("Johnson 1985", "section 4.1, gap of two curved surfaces");
  static final SourceRef HERTZ = SourceRef.memory("Johnson 1985", "section 4.2, Hertz theory");
  static final SourceRef ELLIPSE =
      SourceRef.derived("axis ratio from the complete elliptic integrals by the arithmetic-geometric mean");
  static final SourceRef BELOW =
      SourceRef.derived("largest value on the axis of the Hertz field, root of its derivative");
  /** Half-space theory asks for a contact much smaller than the bodies; a tenth of the radius is our reading of that. */
  static final double SMALL = 0.1;

  private ContactNotes() {}

  static void elasticity(Derivation.Builder steps, ContactPair pair) {
    ContactMaterial one = pair.rollerMaterial();
    ContactMaterial two = pair.trackMaterial();
    steps.step(
        "E*", "combined modulus", "1 / ((1 - ν1²)/E1 + (1 - ν2²)/E2)", pair.combinedModulus(), "MPa", GEOMETRY,
        "E1 = " + one.modulus(), "ν1 = " + Numbers.shortest(one.poisson()),
        "E2 = " + two.modulus(), "ν2 = " + Numbers.shortest(two.poisson()));
  }

  static void size(List<Warning> warnings, double halfWidth, double greater) {
    double radius = 1 / (2 * greater);
    if (halfWidth > SMALL * radius) {
      warnings.add(
          new Warning(
              "contact-not-small",
              Message.of("half width ", new Length(Numbers.rounded(halfWidth, 3)),
                  " is more than a tenth of the relative radius ",
                  new Length(Numbers.rounded(radius, 4)), ": the half-space theory of Hertz overstates the pressure"),
              SourceRef.commonPractice("contact half width up to a tenth of the relative radius")));
    }
  }

  static void yielding(List<Warning> warnings, ContactPair pair, double ratio, double pressure, Force force) {
    yielding(warnings, "roller", pair.rollerMaterial(), ratio, pressure, force);
    yielding(warnings, "track", pair.trackMaterial(), ratio, pressure, force);
  }

  private static void yielding(
      List<Warning> warnings, String body, ContactMaterial material, double ratio, double pressure, Force force) {
    double strength = material.yieldStrength().megapascal();
    if (strength == 0) {
      return;
    }
    double limit = strength / SubsurfaceKernel.largestEquivalent(ratio, material.poisson());
    if (pressure > limit) {
      warnings.add(
          new Warning(
              "yields-below-surface",
              Message.of("the ", body, " yields below the surface from a peak pressure of ", new Stress(limit),
                  "; at ", force, " it is ", new Stress(pressure),
                  " and the elastic figures no longer hold"),
              BELOW));
    }
  }
}
