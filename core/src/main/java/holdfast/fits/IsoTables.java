// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

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
  static final Table TOLERANCES = TableSet.bundled().table(FOLDER + "standard-tolerances");
  static final Table DELTA = TableSet.bundled().table(FOLDER + "hole-delta");
  static final List<Table> HOLES =
      List.of(
          TableSet.bundled().table(FOLDER + "hole-deviations-a-to-m"),
          TableSet.bundled().table(FOLDER + "hole-deviations-n-to-zc"));
  static final List<Table> SHAFTS =
      List.of(
          TableSet.bundled().table(FOLDER + "shaft-deviations-a-to-j"),
          TableSet.bundled().table(FOLDER + "shaft-deviations-k-to-zc"));

  /** What stands where the standard defines nothing. */
  static final int UNDEFINED = Integer.MIN_VALUE;

  static final int LETTERS = DeviationLetter.values().length;
  static final int GRADES = ToleranceGrade.values().length;
  static final int CLASSES = 2 * LETTERS * GRADES;
  static final IsoRanges RANGES =
      new IsoRanges(List.of(TOLERANCES, DELTA, HOLES.get(0), HOLES.get(1), SHAFTS.get(0), SHAFTS.get(1)));
  static final int COUNT = RANGES.count();

  /** Standard tolerance, index grade · COUNT + range. */
  static final int[] IT = new int[GRADES * COUNT];
  /** Upper limit deviation, index class · COUNT + range. */
  static final int[] UPPER = new int[CLASSES * COUNT];

  private static final int[] CORRECTION = new int[GRADES * COUNT];

  static {
    fill(IT, TOLERANCES);
    fill(CORRECTION, DELTA);
    Arrays.fill(UPPER, UNDEFINED);
    symmetric();
    HOLES.forEach(table -> deviations(table, Feature.HOLE));
    SHAFTS.forEach(table -> deviations(table, Feature.SHAFT));
    footnotes();
  }

  private IsoTables() {}

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
  static double farthest(double nominalSize) {
    if (nominalSize > IsoRanges.MAX) {
      return Double.POSITIVE_INFINITY;
    }
    int range = RANGES.ofWholeMillimetre[(int) Math.ceil(nominalSize)];
    int farthest = 0;
    for (int c = 0; c < CLASSES; c++) {
      int upper = UPPER[c * COUNT + range];
      if (upper != UNDEFINED) {
        farthest = Math.max(farthest, Math.max(upper, IT[c % GRADES * COUNT + range] - upper));
      }
    }
    return farthest / 1e5;
  }

  private static void fill(int[] target, Table table) {
    Arrays.fill(target, UNDEFINED);
    for (int row = 0; row < table.size(); row++) {
      int grade = ToleranceGrade.of(table.text(row, "grade")).index;
      Arrays.fill(target, grade * COUNT + first(table, row), grade * COUNT + last(table, row) + 1, hundredths(table, row));
    }
  }

  private static int first(Table table, int row) {
    return RANGES.startingOver(IsoRanges.whole(table, row, "over_mm"));
  }

  private static int last(Table table, int row) {
    return RANGES.endingAt(IsoRanges.whole(table, row, "up_to_mm"));
  }

  private static void symmetric() {
    for (int feature = 0; feature < 2; feature++) {
      for (int grade = 0; grade < GRADES; grade++) {
        int target = classIndex(feature, DeviationLetter.JS.index, grade) * COUNT;
        for (int range = 0; range < COUNT; range++) {
          int it = IT[grade * COUNT + range];
          UPPER[target + range] = it == UNDEFINED ? UNDEFINED : it / 2;
        }
      }
    }
  }

  private static void deviations(Table table, Feature feature) {
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
        int target = classIndex(feature.index, letter, grade) * COUNT;
        for (int range = first(table, row); range <= last(table, row); range++) {
          UPPER[target + range] = upper(value, IT[grade * COUNT + range], lower, delta, CORRECTION[grade * COUNT + range]);
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

  private static int upper(int value, int it, boolean lower, boolean delta, int correction) {
    if (it == UNDEFINED || (delta && correction == UNDEFINED)) {
      return UNDEFINED;
    }
    return value + (lower ? it : 0) + (delta ? correction : 0);
  }

  /** Up to and including 1 mm: no a, b, A, B; no N above IT8; no IT14 to IT18. */
  private static void footnotes() {
    int range = RANGES.endingAt(IsoRanges.SMALL);
    int it8 = ToleranceGrade.IT8.index;
    int it14 = ToleranceGrade.IT14.index;
    for (int feature = 0; feature < 2; feature++) {
      for (DeviationLetter letter : DeviationLetter.values()) {
        for (int grade = 0; grade < GRADES; grade++) {
          boolean coarseN = letter == DeviationLetter.N && feature == Feature.HOLE.index && grade > it8;
          if (letter.compareTo(DeviationLetter.B) <= 0 || coarseN || grade >= it14) {
            UPPER[classIndex(feature, letter.index, grade) * COUNT + range] = UNDEFINED;
          }
        }
      }
    }
    for (int grade = it14; grade < GRADES; grade++) {
      IT[grade * COUNT + range] = UNDEFINED;
    }
  }
}
