// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.tables.FromTables;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * The tables of ISO 286-1:2010 as arrays of integers, read once. Unit: hundredth of a micrometre, in which every cell
 * and every half of a cell is whole, so that sums are exact.
 */
final class IsoTables {
  static final String FOLDER = "fits/iso-286-1/2010/";
  /** What stands where the standard defines nothing. */
  static final int UNDEFINED = Integer.MIN_VALUE;

  static final int LETTERS = DeviationLetter.values().length;
  static final int GRADES = ToleranceGrade.values().length;
  static final int CLASSES = 2 * LETTERS * GRADES;

  private static final FromTables<IsoTables> TABLES = FromTables.of(IsoTables::new);

  final Table tolerances;
  final Table delta;
  final List<Table> holes;
  final List<Table> shafts;
  final IsoRanges ranges;
  /** Number of ranges. */
  final int count;
  /** Standard tolerance, index grade · count + range. */
  private final int[] it;
  /** Upper limit deviation, index class · count + range. */
  private final int[] upper;

  private final int[] correction;

  private IsoTables(TableSet tables) {
    tolerances = tables.table(FOLDER + "standard-tolerances");
    delta = tables.table(FOLDER + "hole-delta");
    holes = List.of(tables.table(FOLDER + "hole-deviations-a-to-m"), tables.table(FOLDER + "hole-deviations-n-to-zc"));
    shafts = List.of(tables.table(FOLDER + "shaft-deviations-a-to-j"), tables.table(FOLDER + "shaft-deviations-k-to-zc"));
    ranges = new IsoRanges(List.of(tolerances, delta, holes.get(0), holes.get(1), shafts.get(0), shafts.get(1)));
    count = ranges.count();
    it = filled(tolerances);
    correction = filled(delta);
    upper = new int[CLASSES * count];
    Arrays.fill(upper, UNDEFINED);
    symmetric();
    holes.forEach(table -> deviations(table, Feature.HOLE));
    shafts.forEach(table -> deviations(table, Feature.SHAFT));
    footnotes();
  }

  static IsoTables get() {
    return TABLES.get();
  }

  /** Standard tolerance of a grade. */
  int tolerance(int grade, int range) {
    return it[grade * count + range];
  }

  /** Upper limit deviation of a class, or {@link #UNDEFINED}. */
  int upper(int toleranceClass, int range) {
    return upper[toleranceClass * count + range];
  }

  /** Standard tolerance of a class. */
  int toleranceOf(int toleranceClass, int range) {
    return it[toleranceClass % GRADES * count + range];
  }

  static int classIndex(int feature, int letter, int grade) {
    return (feature * LETTERS + letter) * GRADES + grade;
  }

  /** A cell in hundredths of a micrometre; refuses a cell that is not whole there, for nothing is rounded silently. */
  private static int hundredths(Table table, int row) {
    double exact = table.number(row, "value") * 100;
    long whole = Math.round(exact);
    if (Math.abs(exact - whole) > 1e-6 || whole % 2 != 0) {
      throw new IllegalStateException(table.address(row) + ": finer than a fiftieth of a micrometre");
    }
    return Math.toIntExact(whole);
  }

  /** How far from the nominal size any class reaches, mm; without end over the sizes of the standard. */
  double farthest(double nominalSize) {
    if (nominalSize > IsoRanges.MAX) {
      return Double.POSITIVE_INFINITY;
    }
    int range = ranges.ofWholeMillimetre[(int) Math.ceil(nominalSize)];
    int farthest = 0;
    for (int c = 0; c < CLASSES; c++) {
      int top = upper(c, range);
      if (top != UNDEFINED) {
        farthest = Math.max(farthest, Math.max(top, toleranceOf(c, range) - top));
      }
    }
    return farthest / 1e5;
  }

  private int[] filled(Table table) {
    int[] target = new int[GRADES * count];
    Arrays.fill(target, UNDEFINED);
    for (int row = 0; row < table.size(); row++) {
      int grade = ToleranceGrade.of(table.text(row, "grade")).index;
      Arrays.fill(target, grade * count + first(table, row), grade * count + last(table, row) + 1, hundredths(table, row));
    }
    return target;
  }

  private int first(Table table, int row) {
    return ranges.startingOver(IsoRanges.whole(table, row, "over_mm"));
  }

  private int last(Table table, int row) {
    return ranges.endingAt(IsoRanges.whole(table, row, "up_to_mm"));
  }

  private void symmetric() {
    for (int feature = 0; feature < 2; feature++) {
      for (int grade = 0; grade < GRADES; grade++) {
        int target = classIndex(feature, DeviationLetter.JS.index, grade) * count;
        for (int range = 0; range < count; range++) {
          int tolerance = tolerance(grade, range);
          upper[target + range] = tolerance == UNDEFINED ? UNDEFINED : tolerance / 2;
        }
      }
    }
  }

  private void deviations(Table table, Feature feature) {
    // A row for fewer grades is an exception to a row for more, so it is written later.
    List<Integer> rows = new ArrayList<>();
    for (int row = 0; row < table.size(); row++) {
      rows.add(row);
    }
    rows.sort(Comparator.comparingInt(row -> from(table, row) - to(table, row)));
    for (int row : rows) {
      int letter = DeviationLetter.valueOf(table.text(row, "letter").toUpperCase(Locale.ROOT)).index;
      int value = hundredths(table, row);
      boolean lower = table.text(row, "limit").equalsIgnoreCase("EI");
      boolean delta = feature == Feature.HOLE && table.text(row, "delta").equals("yes");
      for (int grade = from(table, row); grade <= to(table, row); grade++) {
        int target = classIndex(feature.index, letter, grade) * count;
        for (int range = first(table, row); range <= last(table, row); range++) {
          upper[target + range] = upper(value, tolerance(grade, range), lower, delta, correction[grade * count + range]);
        }
      }
    }
  }

  static int from(Table table, int row) {
    return ToleranceGrade.of(table.text(row, "from_grade")).index;
  }

  static int to(Table table, int row) {
    return ToleranceGrade.of(table.text(row, "to_grade")).index;
  }

  private static int upper(int value, int tolerance, boolean lower, boolean delta, int correction) {
    if (tolerance == UNDEFINED || (delta && correction == UNDEFINED)) {
      return UNDEFINED;
    }
    return value + (lower ? tolerance : 0) + (delta ? correction : 0);
  }

  /** Up to and including 1 mm: no a, b, A, B; no N above IT8; no IT14 to IT18. */
  private void footnotes() {
    int range = ranges.endingAt(IsoRanges.SMALL);
    int it8 = ToleranceGrade.IT8.index;
    int it14 = ToleranceGrade.IT14.index;
    for (int feature = 0; feature < 2; feature++) {
      for (DeviationLetter letter : DeviationLetter.values()) {
        for (int grade = 0; grade < GRADES; grade++) {
          boolean coarseN = letter == DeviationLetter.N && feature == Feature.HOLE.index && grade > it8;
          if (letter.compareTo(DeviationLetter.B) <= 0 || coarseN || grade >= it14) {
            upper[classIndex(feature, letter.index, grade) * count + range] = UNDEFINED;
          }
        }
      }
    }
    for (int grade = it14; grade < GRADES; grade++) {
      it[grade * count + range] = UNDEFINED;
    }
  }
}
