// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.fits.InchFitClass;
import holdfast.fits.ToleranceClass;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Lower limit deviations of the force fits against the deviations s, t, u and x of ISO 286, on which their zones rest:
 * a plausibility of every row, recalled ones included. The ranges meet (0.95 in for 24 mm), but both systems round to
 * their own steps.
 */
final class InchForceFitSuite implements Suite {
  private static final Map<InchFitClass, String> ISO =
      Map.of(InchFitClass.FN2, "s6", InchFitClass.FN3, "t6", InchFitClass.FN4, "u6", InchFitClass.FN5, "x7");
  private static final SourceRef SOURCE = SourceRef.derived("fundamental deviation of ISO 286-1:2010, divided by 25.4 mm");
  /** The difference stated for the comparison of both systems over 0.12 in is 10.4 per cent, to its last digit. */
  private static final double SHARE = 0.1045;

  @Override
  public String id() {
    return "fits/inch-force-fits-and-iso";
  }

  @Override
  public String title() {
    return "Shafts of inch force fits against ISO deviations s, t, u, x";
  }

  @Override
  public List<String> calculations() {
    return List.of(InchCases.CLASS, InchCases.KERNEL, "holdfast.fits.ToleranceClass#limitDeviations");
  }

  @Override
  public List<Comparison> run() {
    List<Comparison> result = new ArrayList<>();
    for (Table table : InchCases.fits()) {
      for (int row = 0; row < table.size(); row++) {
        String iso = ISO.get(InchCases.fitClass(table, row));
        if (iso != null) {
          result.add(compare(table, row, iso));
        }
      }
    }
    return result;
  }

  private static Comparison compare(Table table, int row, String iso) {
    double middle = (table.number(row, "over_in") + table.number(row, "up_to_in")) / 2 * 25.4;
    double reference = ToleranceClass.of(iso).limitDeviations(new Length(middle)).lower().in(KnownUnits.THOU);
    double inch = InchCases.fit(table, row).shaft().lower().in(KnownUnits.THOU);
    boolean coarse = table.text(row, "over_in").equals("0") && iso.equals("x7");
    return Comparison.of("shaft against ISO " + iso + ": " + table.address(row), SOURCE, Evidence.RECONSTRUCTION)
        .disclosed(coarse ? "in the smallest range a step of 0.1 thou is 13 per cent of the value; 10.4 holds above it" : "")
        .numbers(inch, reference, SHARE * reference, "thou", "10.4 per cent: both systems round to their own steps");
  }
}
