// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Fundamental deviations of holes from those of the shafts of the same letter: EI = -es, and ES = -ei before the
 * correction Delta. J has no rule; K and N above IT8 up to 500 mm are set apart by the standard.
 */
final class HoleRuleSuite implements Suite {
  private static final String M6 =
      "exception of the standard: M6 over 250 up to 315 mm has ES = -9 instead of -20 + Delta, Delta being 9";

  @Override
  public String id() {
    return "fits/hole-rule";
  }

  @Override
  public String title() {
    return "Fundamental deviations of holes against the opposite ones of shafts";
  }

  @Override
  public List<String> calculations() {
    return List.of("holdfast.fits.ToleranceClass#limitDeviations", "holdfast.fits.LimitDeviationsKernel");
  }

  @Override
  public List<Comparison> run() {
    SourceRef source = SourceRef.memory("ISO 286-1:1988", "Annex A, general and special rule for holes");
    List<Comparison> result = new ArrayList<>();
    for (String part : List.of("a-to-m", "n-to-zc")) {
      Table table = TableSet.bundled().table("fits/iso-286-1/2010/hole-deviations-" + part);
      for (int row = 0; row < table.size(); row++) {
        String letter = table.text(row, "letter");
        boolean coarse = table.text(row, "from_grade").equals("IT9");
        boolean apart = coarse && (letter.equals("K") || (letter.equals("N") && table.number(row, "over_mm") < 500));
        if (!letter.equals("J") && !apart) {
          double shaft = Shafts.signed(letter.toLowerCase(Locale.ROOT), Sizes.upTo(table, row));
          boolean exception = table.text(row, "from_grade").equals("IT6");
          double rule = exception ? 9 - shaft : 0.0 - shaft;
          result.add(
              Sizes.exact(
                  table.address(row), source, Evidence.RECONSTRUCTION, exception ? M6 : "", table.number(row, "value"), rule));
        }
      }
    }
    return result;
  }
}
