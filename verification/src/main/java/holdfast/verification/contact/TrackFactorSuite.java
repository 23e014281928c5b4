// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.contact;

import static holdfast.quantity.Units.kN;

import holdfast.contact.TrackCapacity;
import holdfast.contact.TrackCapacityKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/** Printed factors against the law of strength, and against the table of another catalogue. */
final class TrackFactorSuite {
  private TrackFactorSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "contact/track-factors",
        "Track capacity factors of three catalogues",
        TrackFactorSuite::row,
        "holdfast.contact.TrackCapacityKernel#strengthFactor",
        "holdfast.contact.TrackCapacityKernel#interpolate",
        "holdfast.contact.TrackCapacity#factor");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    boolean crowned = cases.text(row, "ring").equals("ellipse");
    String printed = cases.text(row, "printed");
    double half = Cases.halfLastDigit(printed);
    if (cases.text(row, "check").equals("law")) {
      int exponent = crowned ? TrackCapacityKernel.ELLIPSE : TrackCapacityKernel.LINE;
      double strength = cases.number(row, "strength");
      double reference = cases.number(row, "reference_strength");
      double step = cases.number(row, "strength_step") / 2;
      double computed = TrackCapacityKernel.strengthFactor(strength, reference, exponent);
      double tolerance = half + computed * exponent * (step / strength + step / reference);
      result.add(
          Cases.comparison(cases, row, Evidence.RECONSTRUCTION)
              .numbers(
                  Double.parseDouble(printed), computed, tolerance, "",
                  "half a unit of the last digit of the factor and of both printed strengths"));
    } else {
      double computed = new TrackCapacity(kN(1), cases.number(row, "hardness"), crowned).factor();
      result.add(
          Cases.comparison(cases, row, Evidence.PRINT)
              .numbers(Double.parseDouble(printed), computed, half, "", "half a unit of the last printed digit"));
    }
  }
}
