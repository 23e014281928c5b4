// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.contact;

import holdfast.contact.ContactGeometryKernel;
import holdfast.contact.LineContactKernel;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Stress;
import holdfast.seats.StudBendingKernel;
import holdfast.seats.StudNotch;
import holdfast.seats.StudNotchKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/** Worked examples and printed shop constants. */
final class StudExampleSuite {
  private StudExampleSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "contact/stud-examples",
        "Bending, notches and shop constants",
        StudExampleSuite::row,
        "holdfast.seats.StudBendingKernel#moment",
        "holdfast.seats.StudBendingKernel#bendingStress",
        "holdfast.seats.StudBendingKernel#roundedBendingStress",
        "holdfast.seats.StudNotchKernel#concentration",
        "holdfast.contact.LineContactKernel#peakPressure");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    String printed = cases.text(row, "printed");
    Evidence evidence =
        switch (cases.text(row, "kind")) {
          case "example" -> Evidence.WORKED_EXAMPLE;
          case "reconstruction" -> Evidence.RECONSTRUCTION;
          case "practice" -> Evidence.PRACTICE;
          default -> Evidence.RECALLED;
        };
    result.add(
        Cases.comparison(cases, row, evidence)
            .numbers(
                Double.parseDouble(printed), compute(cases.text(row, "example")), Cases.halfLastDigit(printed), "",
                "half a unit of the last printed digit"));
  }

  private static double compute(String example) {
    return switch (example) {
      // Depth h of a rectangle: M = σ b h²/6 with the moment of a load spread over the whole length.
      case "P89" -> Math.sqrt(6 * StudBendingKernel.moment(9000, 3000, 0) / (100 * 30.0));
      case "P90" -> StudNotchKernel.concentration(StudNotch.FILLET, StudNotch.Loading.TORSION, 7.5, 3.75, 0.5625);
      case "P90b" -> StudNotchKernel.concentration(StudNotch.FILLET, StudNotch.Loading.TORSION, 7.5, 3.75, 0.9375);
      case "S1r" -> StudBendingKernel.roundedBendingStress(45000, 16);
      case "S1" -> StudBendingKernel.bendingStress(1, 1, 0);
      // One pound on one inch of length under one inch of diameter.
      case "S2" -> new Stress(
              LineContactKernel.peakPressure(
                  KnownUnits.LBF.of(1).base(), 25.4, 12.7, steel(KnownUnits.PSI.of(30e6).base())))
          .in(KnownUnits.PSI);
      // One kilogram-force on one millimetre of length under 1 mm relative radius.
      case "S3" -> new Stress(
              LineContactKernel.peakPressure(KnownUnits.KGF.of(1).base(), 1, 1, steel(206000)))
          .in(KnownUnits.KGF_PER_MM2);
      default -> throw new IllegalArgumentException("example " + example + " has no computation");
    };
  }

  private static double steel(double modulus) {
    return ContactGeometryKernel.combinedModulus(modulus, 0.3, modulus, 0.3);
  }
}
