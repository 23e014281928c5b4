// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.contact;

import static holdfast.quantity.Units.*;

import holdfast.contact.ContactMaterial;
import holdfast.contact.ContactPair;
import holdfast.contact.ContactSurface;
import holdfast.contact.EllipticalContactKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/** Worked examples of two textbooks. */
final class ContactExampleSuite {
  private ContactExampleSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "contact/contact-examples",
        "Worked examples of Hertz contact",
        ContactExampleSuite::row,
        "holdfast.contact.EllipticalContactKernel#peakPressure",
        "holdfast.contact.LineContactKernel#peakPressure",
        "holdfast.contact.ContactGeometryKernel#greater",
        "holdfast.contact.SubsurfaceKernel#largestShear");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    String printed = cases.text(row, "printed");
    Evidence evidence = cases.text(row, "kind").equals("chart") ? Evidence.CHART : Evidence.WORKED_EXAMPLE;
    result.add(
        Cases.comparison(cases, row, evidence)
            .numbers(
                Double.parseDouble(printed), compute(cases.text(row, "example")), Cases.halfLastDigit(printed),
                cases.text(row, "unit").equals("1") ? "" : cases.text(row, "unit"), "half a unit of the last printed digit"));
  }

  private static double compute(String example) {
    ContactMaterial steel = ContactMaterial.of(GPa(200), 0.29);
    ContactSurface cylinder = ContactSurface.cylinder(mm(80));
    return switch (example) {
      case "P67" -> ContactPair.of(
              new ContactSurface(1 / 60.0, 1 / 130.0), steel, new ContactSurface(1 / 80.0, 1 / 200.0), steel)
          .crossedAt(deg(60))
          .ellipse(kN(4.5), mm(100))
          .peakPressure()
          .megapascal();
      case "P68" -> ContactPair.of(
              new ContactSurface(1 / 4.76, 1 / 4.76), steel, new ContactSurface(-1 / 4.86, 1 / 18.24), steel)
          .ellipse(kN(1.75), mm(100))
          .peakPressure()
          .megapascal();
      case "P71" -> ContactPair.of(cylinder, steel, cylinder, steel).line(kN(24.1), mm(20)).peakPressure().megapascal();
      case "P72" -> ContactPair.of(cylinder, steel, cylinder, steel)
          .line(kN(24.1), mm(20))
          .largestShear()
          .stress()
          .megapascal();
      case "P73" -> EllipticalContactKernel.coefficientMajor(EllipticalContactKernel.axisRatio(4 / 3.0, 1));
      case "P74" -> EllipticalContactKernel.coefficientMinor(EllipticalContactKernel.axisRatio(4 / 3.0, 1));
      default -> throw new IllegalArgumentException("example " + example + " has no computation");
    };
  }
}
