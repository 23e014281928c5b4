// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import holdfast.quantity.Angle;
import holdfast.quantity.Area;
import holdfast.quantity.Force;
import holdfast.quantity.KinematicViscosity;
import holdfast.quantity.Length;
import holdfast.quantity.Mass;
import holdfast.quantity.OperatingTime;
import holdfast.quantity.Quantity;
import holdfast.quantity.RotationalSpeed;
import holdfast.quantity.Speed;
import holdfast.quantity.Stiffness;
import holdfast.quantity.Stress;
import holdfast.quantity.Torque;
import holdfast.quantity.Work;
import holdfast.tables.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Unit factors against NIST SP 811: parse "1 from-unit", divide by "1 to-unit". */
final class UnitFactorSuite implements Suite {
  private static final Map<String, Function<String, Quantity<?>>> PARSERS =
      Map.ofEntries(
          Map.entry("Length", Length::parse),
          Map.entry("Area", Area::parse),
          Map.entry("Force", Force::parse),
          Map.entry("Torque", Torque::parse),
          Map.entry("Stress", Stress::parse),
          Map.entry("Angle", Angle::parse),
          Map.entry("RotationalSpeed", RotationalSpeed::parse),
          Map.entry("Speed", Speed::parse),
          Map.entry("KinematicViscosity", KinematicViscosity::parse),
          Map.entry("Mass", Mass::parse),
          Map.entry("Work", Work::parse),
          Map.entry("Stiffness", Stiffness::parse),
          Map.entry("OperatingTime", OperatingTime::parse));

  @Override
  public String id() {
    return "units/conversion-factors";
  }

  @Override
  public String title() {
    return "Unit factors against the published conversion factors";
  }

  @Override
  public List<String> calculations() {
    return List.of("holdfast.quantity.KnownUnits");
  }

  @Override
  public List<Comparison> run() {
    Table cases = Cases.table("units/conversion-factors");
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < cases.size(); row++) {
      Function<String, Quantity<?>> parser = PARSERS.get(cases.text(row, "quantity"));
      double from = parser.apply("1 " + cases.text(row, "from")).base();
      double to = parser.apply("1 " + cases.text(row, "to")).base();
      double factor = cases.number(row, "factor");
      boolean rounded = cases.text(row, "basis").equals("printed to 7 digits");
      // Half a unit of the seventh significant digit, or the accuracy of a double.
      double tolerance = rounded ? 0.5 * Math.pow(10, Math.floor(Math.log10(factor)) - 6) : 4e-16 * factor;
      result.add(
          Cases.comparison(cases, row, rounded ? Evidence.PRINT : Evidence.RECONSTRUCTION)
              .numbers(factor, from / to, tolerance, "", rounded ? "half a unit of the 7th digit" : "exact by definition"));
    }
    return result;
  }
}
