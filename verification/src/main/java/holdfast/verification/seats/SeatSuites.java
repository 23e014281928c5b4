// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.seats;

import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import holdfast.verification.ValueSuite;
import java.util.List;

/** The suites of seats. */
public final class SeatSuites {
  private static final String[] REFERENCE = {
    "holdfast.seats.InternalClearanceKernel",
    "holdfast.seats.ThickRingKernel",
    "holdfast.seats.RotationKernel",
    "holdfast.seats.ElasticLimitKernel",
    "holdfast.seats.PlasticRingKernel",
    "holdfast.seats.PressForceKernel",
    "holdfast.seats.ThermalSeatKernel",
    "holdfast.seats.SeatGeometryKernel",
    "holdfast.seats.StudSectionKernel#shearCoefficient",
    "holdfast.seats.StudBeamKernel#shearDeflection",
    "holdfast.seats.StudBendingKernel",
    "holdfast.seats.PinKernel",
    "holdfast.seats.StudFatigueKernel#firstYield"
  };
  private static final String[] RECALLED = {
    "holdfast.seats.RoughnessLossKernel",
    "holdfast.seats.SeatGeometryKernel#chamferLength",
    "holdfast.seats.StudNotchKernel#isValid",
    "holdfast.seats.StudNotchKernel#materialLength",
    "holdfast.seats.StudNotchKernel#pressFit",
    "holdfast.seats.StudNotchKernel#fatigueFactor"
  };

  private SeatSuites() {}

  /**
   * All of them.
   *
   * @return the suites in the order of the report
   */
  public static List<Suite> all() {
    return List.of(
        RingExampleSuite.suite(),
        ShrinkFitSuite.suite(),
        AssemblyTemperatureSuite.suite(),
        InterferenceModelSuite.suite(),
        new JointProfileSuite(),
        HousingModelSuite.suite(),
        StudSeatModelSuite.suite(),
        PlasticRingSuite.suite(),
        MaterialValueSuite.suite(),
        new ExpansionRangeSuite(),
        RoughnessGradeSuite.suite(),
        ValueSuite.of("seats/reference-values", Evidence.REFERENCE, SeatValues::value, REFERENCE),
        ValueSuite.of("seats/recalled-formulas", Evidence.RECALLED, SeatValues::value, RECALLED));
  }
}
