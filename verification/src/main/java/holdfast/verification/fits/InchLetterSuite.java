// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.fits.AnsiGrade;
import holdfast.fits.Fit;
import holdfast.fits.InchFitClass;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Rows of inch fits rebuilt from other rows: the hole from its grade, the shaft from the deviation of its letter, read
 * in the class of the same letter whose rows are found best, and from its grade. A row is never rebuilt from itself.
 */
final class InchLetterSuite implements Suite {
  /** Class from which the deviation of a letter is read. */
  private static final Map<String, InchFitClass> ANCHOR =
      Map.of(
          "g", InchFitClass.RC1, "f", InchFitClass.RC3, "e", InchFitClass.RC6, "d", InchFitClass.RC7,
          "c", InchFitClass.RC8, "k", InchFitClass.LT4, "n", InchFitClass.LT5);
  private static final SourceRef RULE =
      SourceRef.derived("one letter is one deviation in one size range; tolerance of the grade");

  @Override
  public String id() {
    return "fits/inch-rows-rebuilt";
  }

  @Override
  public String title() {
    return "Rows of inch fits rebuilt from the letter in another class and the grades";
  }

  @Override
  public List<String> calculations() {
    return List.of(InchCases.FIT, InchCases.CLASS, InchCases.KERNEL, InchCases.GRADE);
  }

  @Override
  public List<Comparison> run() {
    ListedDifferences differences = new ListedDifferences("fits/inch-letter-differences");
    List<Comparison> result = new ArrayList<>();
    for (Table table : InchCases.fits()) {
      for (int row = 0; row < table.size(); row++) {
        Optional<String> rebuilt = rebuilt(InchCases.fitClass(table, row), InchCases.upTo(table, row));
        if (rebuilt.isPresent()) {
          String reason =
              differences.reason(
                  "class", table.text(row, "class"), "over_in", table.text(row, "over_in"),
                  "up_to_in", table.text(row, "up_to_in"));
          Fit fit = InchCases.fit(table, row);
          String ours = text(fit.hole().lower(), fit.hole().upper(), fit.shaft().lower(), fit.shaft().upper());
          result.add(
              Comparison.of(table.address(row), RULE, Evidence.RECONSTRUCTION).disclosed(reason).words(ours, rebuilt.get()));
        }
      }
    }
    differences.requireAllUsed();
    return result;
  }

  /** The four limits as the rule gives them, or nothing if no other class has the letter. */
  private static Optional<String> rebuilt(InchFitClass fitClass, Length size) {
    String zone = fitClass.shaftZone();
    String letter = zone.replaceAll("\\d", "");
    InchFitClass anchor = ANCHOR.get(letter);
    if (!letter.equals("h") && (anchor == null || anchor == fitClass)) {
      return Optional.empty();
    }
    Length tolerance = grade(zone).tolerance(size);
    Length zero = new Length(0);
    Length lower;
    Length upper;
    if (letter.equals("h")) {
      upper = zero;
      lower = tolerance.negated();
    } else if (letter.equals("k") || letter.equals("n")) {
      lower = anchor.at(size).shaft().lower();
      upper = lower.plus(tolerance);
    } else {
      upper = anchor.at(size).shaft().upper();
      lower = upper.minus(tolerance);
    }
    return Optional.of(text(zero, grade(fitClass.holeZone()).tolerance(size), lower, upper));
  }

  private static AnsiGrade grade(String zone) {
    return AnsiGrade.of(Integer.parseInt(zone.replaceAll("\\D", "")));
  }

  private static String text(Length holeLower, Length holeUpper, Length shaftLower, Length shaftUpper) {
    String hole = "hole " + thou(holeLower) + " to " + thou(holeUpper);
    return hole + ", shaft " + thou(shaftLower) + " to " + thou(shaftUpper) + " thou";
  }

  /** Table values have two decimals. */
  private static String thou(Length length) {
    return Numbers.significant(Double.parseDouble(Numbers.fixed(length.in(KnownUnits.THOU), 6)), 6);
  }
}
