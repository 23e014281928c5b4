// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.questions;

import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/** The suite of the questions. */
public final class QuestionSuites {
  private QuestionSuites() {}

  /**
   * The suites of this subject.
   *
   * @return the suites in the order of the report
   */
  public static List<Suite> all() {
    return List.of(
        new RowSuite(
            "questions",
            "Questions of the bench: the answers of the page against values published or computed elsewhere",
            List.of(
                "holdfast.fits.Fit#of",
                "holdfast.seats.SeatTilt#of",
                "holdfast.seats.InterferenceFit#pressInForce",
                "holdfast.seats.ThermalAssembly",
                "holdfast.threads.ChartTorque",
                "holdfast.threads.ScatteredPreload",
                "holdfast.threads.ThreadEngagement#ofNut",
                "holdfast.seats.StudStrength#bending",
                "holdfast.contact.TrackCapacity#factor",
                "holdfast.bearings.RatingLife#basic",
                "holdfast.bearings.LoadSpectrum#meanLoad",
                "holdfast.bearings.OscillatingLife#millionCycles",
                "holdfast.rollers.SpeedLimit#limit",
                "holdfast.rollers.RollingStart#leastLoad",
                "holdfast.rollers.RingAccelerationKernel",
                "holdfast.rollers.EccentricCollar",
                "holdfast.lubrication.GreaseQuantity#mass",
                "holdfast.lubrication.PortPlan#of",
                "holdfast.fleet.FleetPlan"),
            () -> Cases.table("questions/answers"),
            QuestionSuites::compare));
  }

  private static void compare(Table cases, int row, List<Comparison> result) {
    String printed = cases.text(row, "printed");
    String quantity = cases.text(row, "quantity");
    int question = (int) cases.number(row, "question");
    Comparison.Builder comparison =
        Comparison.of(
                cases.address(row) + ": " + cases.text(row, "inputs"),
                Cases.source(cases, row),
                Evidence.valueOf(cases.text(row, "evidence")))
            .disclosed(cases.text(row, "disclosed"));
    if (question == 11 || question == 23) {
      result.add(comparison.words(printed, question == 11 ? TightenAnswers.thinNut() : LubricateAnswers.fitting()));
      return;
    }
    double computed =
        question <= 7 ? SeatAnswers.of(question, quantity)
            : question <= 11 ? TightenAnswers.of(question, quantity)
            : question <= 21 ? LoadAnswers.of(question, quantity)
            : LubricateAnswers.of(question, quantity);
    boolean stated = cases.has(row, "tolerance");
    result.add(
        comparison.numbers(
            Double.parseDouble(printed),
            computed,
            stated ? cases.number(row, "tolerance") : Cases.halfLastDigit(printed),
            cases.text(row, "unit"),
            stated ? cases.text(row, "reason") : "half a unit of the last printed digit"));
  }

  static IllegalStateException unknown(String quantity) {
    return new IllegalStateException("no such quantity: " + quantity);
  }
}
