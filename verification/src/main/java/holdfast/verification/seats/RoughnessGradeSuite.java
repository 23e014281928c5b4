package holdfast.verification.seats;

import holdfast.quantity.KnownUnits;
import holdfast.seats.SurfaceRoughness;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/** Ra of the roughness grades in microinches. */
final class RoughnessGradeSuite implements Suite {
  @Override
  public String id() {
    return "seats/roughness-grades";
  }

  @Override
  public String title() {
    return "Roughness grades: Ra against the printed microinches";
  }

  @Override
  public List<String> calculations() {
    return List.of("holdfast.seats.SurfaceRoughness#ofGrade");
  }

  @Override
  public List<Comparison> run() {
    Table cases = Cases.table("seats/roughness-grades");
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < cases.size(); row++) {
      double printed = cases.number(row, "ra_microinch");
      result.add(
          Comparison.of(cases.address(row), Cases.source(cases, row), Evidence.PRINT)
              .disclosed(cases.text(row, "disclosed"))
              .numbers(
                  printed,
                  SurfaceRoughness.ofGrade(cases.text(row, "grade")).ra().least().in(KnownUnits.UIN),
                  printed * 0.02,
                  "µin",
                  "both series are rounded to preferred numbers, 1, 2, 4 … 63, 125 and 0.025, 0.05 … 1.6, 3.2"));
    }
    return result;
  }
}
