package holdfast.verification.fits;

import holdfast.fits.LimitDeviationsKernel;
import holdfast.fits.ToleranceGrade;
import holdfast.tables.Provenance;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/**
 * Standard tolerances against the reprints in which they were found. The case table names only reprints that agree, so
 * it guards against slips; how many documents confirm a cell stands in the table itself.
 */
final class StandardToleranceSuite implements Suite {
  @Override
  public String id() {
    return "fits/standard-tolerances";
  }

  @Override
  public String title() {
    return "Standard tolerances IT01 to IT18 against reprints";
  }

  @Override
  public List<String> calculations() {
    return List.of("holdfast.fits.ToleranceGrade#tolerance", "holdfast.fits.LimitDeviationsKernel");
  }

  @Override
  public List<Comparison> run() {
    Table cases = Cases.table("fits/standard-tolerances");
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < cases.size(); row++) {
      int grade = ToleranceGrade.of(cases.text(row, "grade")).code();
      double atEnd = LimitDeviationsKernel.standardTolerance(Sizes.upTo(cases, row), grade);
      double atStart = LimitDeviationsKernel.standardTolerance(Sizes.justOver(cases, row), grade);
      SourceRef source = Cases.source(cases, row);
      Evidence evidence = source.provenance() == Provenance.MEMORY ? Evidence.RECALLED : Evidence.RECOMBINED;
      result.add(
          Sizes.exact(
              cases.address(row),
              source,
              evidence,
              cases.text(row, "disclosed"),
              cases.number(row, "value"),
              atEnd == atStart ? atEnd : Double.NaN));
    }
    return result;
  }
}
