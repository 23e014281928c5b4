package holdfast.verification.fits;

import holdfast.fits.Fit;
import holdfast.quantity.Length;
import holdfast.tables.Provenance;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/** Every row of the inch fits through the public API: guards against slips, because our tables come from these rows. */
final class InchLimitDeviationSuite implements Suite {
  @Override
  public String id() {
    return "fits/inch-limit-deviations";
  }

  @Override
  public String title() {
    return "Limit deviations of every inch fit";
  }

  @Override
  public List<String> calculations() {
    return List.of(InchCases.FIT, InchCases.CLASS, InchCases.KERNEL);
  }

  @Override
  public List<Comparison> run() {
    Table cases = Cases.table(id());
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < cases.size(); row++) {
      Fit fit = InchCases.fit(cases, row);
      add(result, cases, row, "hole_lower", fit.hole().lower());
      add(result, cases, row, "hole_upper", fit.hole().upper());
      add(result, cases, row, "shaft_lower", fit.shaft().lower());
      add(result, cases, row, "shaft_upper", fit.shaft().upper());
    }
    return result;
  }

  private static void add(List<Comparison> result, Table cases, int row, String column, Length computed) {
    SourceRef source = Cases.source(cases, row);
    Evidence evidence = source.provenance() == Provenance.MEMORY ? Evidence.RECALLED : Evidence.RECOMBINED;
    String name = cases.address(row) + ", " + column.replace('_', ' ') + " limit deviation";
    result.add(
        InchCases.exact(name, source, evidence, cases.text(row, "disclosed"), cases.number(row, column), computed));
  }
}
