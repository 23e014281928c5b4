// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

/** Why a grade or a class does not exist for a size, and what exists instead. */
final class Undefined {
  private Undefined() {}

  static InputException grade(double nominalSize, int grade) {
    return new InputException(
        "standard tolerance " + ToleranceGrade.at(grade),
        "nominal size " + size(nominalSize),
        ranges(range -> IsoTables.get().tolerance(grade, range) != IsoTables.UNDEFINED),
        gradeReason(grade));
  }

  static InputException toleranceClass(double nominalSize, int code) {
    ToleranceClass refused = ToleranceClass.at(code);
    int range = LimitDeviationsKernel.range(nominalSize);
    List<String> permitted = new ArrayList<>();
    String somewhere = ranges(r -> defined(code, r));
    if (!somewhere.isEmpty()) {
      permitted.add(refused + " for " + somewhere);
    }
    String grades = gradesHere(refused, range);
    String letters = lettersHere(refused, range);
    if (!grades.isEmpty()) {
      permitted.add("for this size " + refused.letter().text(refused.feature()) + " in the grades " + grades);
    } else if (!letters.isEmpty()) {
      permitted.add("for this size one of the letters " + letters);
    }
    return new InputException(
        "tolerance class", refused + " at " + size(nominalSize), String.join(", or ", permitted), reason(refused, range));
  }

  private static String reason(ToleranceClass refused, int range) {
    int grade = refused.grade().index;
    boolean small = IsoTables.get().ranges.upTo[range] <= IsoRanges.SMALL;
    if (IsoTables.get().tolerance(grade, range) == IsoTables.UNDEFINED) {
      return gradeReason(grade);
    }
    if (small && refused.letter().compareTo(DeviationLetter.B) <= 0) {
      return "ISO 286-1:2010, Tables 2 and 4: a, b, A and B are not used for sizes up to and including 1 mm";
    }
    if (small && refused.letter() == DeviationLetter.N) {
      return "ISO 286-1:2010, Table 3: N above IT8 is not used for sizes up to and including 1 mm";
    }
    if (refused.feature() == Feature.HOLE && refused.letter() == DeviationLetter.K && grade > ToleranceGrade.IT8.index
        && IsoTables.get().ranges.over(range) >= 500) {
      return "ISO 286-1:2010, Table 3 as it reached us defines K over 500 mm up to IT8 only; sources differ: one catalogue"
          + " prints ES = 0 for K in all grades up to IT16";
    }
    boolean coarseWorks = defined(code(refused, ToleranceGrade.IT7.index), range);
    boolean corrected = refused.feature() == Feature.HOLE && refused.letter().compareTo(DeviationLetter.K) >= 0;
    if (corrected && coarseWorks && grade < ToleranceGrade.IT3.index) {
      return "ISO 286-1:2010, Table 3 gives the correction Delta for IT3 to IT8 only";
    }
    return "ISO 286-1:2010, Tables 2 to 5 define no such fundamental deviation for this size";
  }

  private static String gradeReason(int grade) {
    return grade <= ToleranceGrade.IT0.index
        ? "ISO 286-1:2010, Table 1 gives IT01 and IT0 up to 500 mm"
        : "ISO 286-1:2010, Table 1: IT14 to IT18 are not used for sizes up to and including 1 mm";
  }

  private static boolean defined(int code, int range) {
    return IsoTables.get().upper(code, range) != IsoTables.UNDEFINED;
  }

  private static int code(ToleranceClass like, int grade) {
    return IsoTables.classIndex(like.feature().index, like.letter().index, grade);
  }

  /** "5 to 7" or "6, 8": the grades of the letter that exist in a range. */
  private static String gradesHere(ToleranceClass like, int range) {
    List<String> runs = new ArrayList<>();
    for (int grade = 0; grade < IsoTables.GRADES; grade++) {
      if (defined(code(like, grade), range)) {
        int end = grade;
        while (end + 1 < IsoTables.GRADES && defined(code(like, end + 1), range)) {
          end++;
        }
        String from = ToleranceGrade.at(grade).number();
        runs.add(end == grade ? from : from + " to " + ToleranceGrade.at(end).number());
        grade = end;
      }
    }
    return String.join(", ", runs);
  }

  private static String lettersHere(ToleranceClass like, int range) {
    List<String> letters = new ArrayList<>();
    for (DeviationLetter letter : DeviationLetter.values()) {
      int code = IsoTables.classIndex(like.feature().index, letter.index, like.grade().index);
      if (defined(code, range)) {
        letters.add(letter.text(like.feature()));
      }
    }
    return String.join(" ", letters);
  }

  /** "over 24 mm up to 3150 mm": the sizes for which something is defined. */
  private static String ranges(IntPredicate defined) {
    List<String> runs = new ArrayList<>();
    for (int range = 0; range < IsoTables.get().count; range++) {
      if (defined.test(range)) {
        int over = IsoTables.get().ranges.over(range);
        while (range + 1 < IsoTables.get().count && defined.test(range + 1)) {
          range++;
        }
        runs.add("over " + over + " mm up to " + IsoTables.get().ranges.upTo[range] + " mm");
      }
    }
    return String.join(" and ", runs);
  }

  private static String size(double nominalSize) {
    return Numbers.shortest(nominalSize) + " mm";
  }
}
