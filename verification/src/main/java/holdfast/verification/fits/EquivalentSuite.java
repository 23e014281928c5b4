package holdfast.verification.fits;

import holdfast.fits.Fit;
import holdfast.quantity.Length;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/**
 * Equivalents on the other basis against the pairs of the preferred fits. Each fit of a pair was found in a reprint of
 * the list; that they are paired is recalled.
 */
final class EquivalentSuite implements Suite {
  @Override
  public String id() {
    return "fits/equivalents";
  }

  @Override
  public String title() {
    return "Hole-basis fits and their equivalents against the pairs of the preferred fits";
  }

  @Override
  public List<String> calculations() {
    return List.of("holdfast.fits.BasisChange#of", "holdfast.fits.Fit#onOtherBasis");
  }

  @Override
  public List<Comparison> run() {
    Table cases = Cases.table("fits/equivalents");
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < cases.size(); row++) {
      String computed = Fit.of(new Length(25), cases.text(row, "hole_basis")).onOtherBasis().to().designation();
      result.add(
          Comparison.of("equivalent of " + cases.text(row, "hole_basis"), Cases.source(cases, row), Evidence.RECALLED)
              .disclosed(cases.text(row, "disclosed"))
              .words(cases.text(row, "shaft_basis"), computed));
    }
    return result;
  }
}
