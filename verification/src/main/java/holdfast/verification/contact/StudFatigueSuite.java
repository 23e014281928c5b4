package holdfast.verification.contact;

import holdfast.seats.StudFatigueKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/** Margins in the Haigh diagram; the lines themselves are recalled, the search only solves them. */
final class StudFatigueSuite implements Suite {
  @Override
  public String id() {
    return "contact/stud-fatigue";
  }

  @Override
  public String title() {
    return "Fatigue margins against a root search on the limit line";
  }

  @Override
  public List<String> calculations() {
    return List.of(
        "holdfast.seats.StudFatigueKernel#goodman",
        "holdfast.seats.StudFatigueKernel#gerber",
        "holdfast.seats.StudFatigueKernel#soderberg");
  }

  @Override
  public List<Comparison> run() {
    Table cases = Cases.table("contact/stud-fatigue");
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < cases.size(); row++) {
      double amplitude = cases.number(row, "amplitude");
      double mean = cases.number(row, "mean");
      double computed =
          switch (cases.text(row, "criterion")) {
            case "Goodman" -> StudFatigueKernel.goodman(amplitude, mean, 320, 950);
            case "Gerber" -> StudFatigueKernel.gerber(amplitude, mean, 320, 950);
            default -> StudFatigueKernel.soderberg(amplitude, mean, 320, 700);
          };
      double value = cases.number(row, "value");
      result.add(
          Comparison.of(cases.address(row), Cases.source(cases, row), Evidence.REFERENCE)
              .disclosed(cases.text(row, "disclosed"))
              .numbers(value, computed, 2e-14 * value, "", "printed digits"));
    }
    return result;
  }
}
