// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import java.util.Arrays;

/** Reads tolerance classes and fits, character by character, so that an error can say where the text went wrong. */
final class ClassText {
  private static final String CLASS = "tolerance class";
  private static final String FIT = "fit";
  private static final String CLASS_FORM =
      "a letter code (A to ZC for a hole, a to zc for a shaft) and a grade (01, 0 or 1 to 18), for example H7 or js6";
  private static final String FIT_FORM = "hole class, slash, shaft class, for example H7/p6";
  private static final String SIZED_FORM = "a nominal size in mm and a fit, for example 25 H7/p6";

  /** Letter codes by first and second letter, second index 0 for none; -1 where no code is. */
  private static final byte[] LETTERS = letters();

  private final String parameter;
  private final String form;
  private final String text;
  private int at;

  private ClassText(String parameter, String form, String text) {
    this.parameter = parameter;
    this.form = form;
    this.text = text;
  }

  static ToleranceClass toleranceClass(String text) {
    ClassText reader = new ClassText(CLASS, CLASS_FORM, text);
    ToleranceClass result = ToleranceClass.at(reader.readClass());
    reader.skipSpaces();
    if (!reader.atEnd()) {
      boolean fit = text.charAt(reader.at) == '/';
      throw reader.wrong(reader.here() + (fit ? ": this is a fit, not one class" : " is too much"));
    }
    return result;
  }

  static Fit fit(Length nominalSize, String text) {
    return new ClassText(FIT, FIT_FORM, text).readFit(nominalSize);
  }

  static Fit sizedFit(String text) {
    ClassText reader = new ClassText(FIT, SIZED_FORM, text);
    return reader.readFit(reader.readSize());
  }

  private Fit readFit(Length nominalSize) {
    int holeStart = at;
    ToleranceClass hole = ToleranceClass.at(readClass());
    if (hole.feature() != Feature.HOLE) {
      throw wrong(quoted(hole, holeStart) + " is a shaft class; the hole stands first, in capitals");
    }
    skipSpaces();
    if (atEnd() || text.charAt(at) != '/') {
      throw insteadOf("the slash and the shaft class");
    }
    at++;
    int shaftStart = at;
    ToleranceClass shaft = ToleranceClass.at(readClass());
    if (shaft.feature() != Feature.SHAFT) {
      throw wrong(quoted(shaft, shaftStart) + " is a hole class; the shaft stands last, in small letters");
    }
    skipSpaces();
    if (!atEnd()) {
      throw wrong(here() + " is too much");
    }
    return Fit.of(hole.at(nominalSize), shaft.at(nominalSize));
  }

  /** Reads letters and digits; gives the code of the class. */
  private int readClass() {
    skipSpaces();
    int start = at;
    while (!atEnd() && isLetter(text.charAt(at))) {
      at++;
    }
    if (at == start) {
      throw insteadOf("the letter code");
    }
    int letter = letterCode(start, at);
    boolean capitals = text.charAt(start) <= 'Z';
    skipSpaces();
    int gradeStart = at;
    while (!atEnd() && isDigit(text.charAt(at))) {
      at++;
    }
    int grade = grade(gradeStart, at);
    if (grade < 0) {
      throw gradeStart == at
          ? insteadOf("the grade")
          : wrong("'" + text.substring(gradeStart, at) + "' at character " + (gradeStart + 1) + " is not a grade");
    }
    return IsoTables.classIndex(capitals ? Feature.HOLE.index : Feature.SHAFT.index, letter, grade);
  }

  private int letterCode(int start, int end) {
    char first = text.charAt(start);
    boolean capital = first <= 'Z';
    int letter = -1;
    if (end - start <= 2) {
      char second = end - start == 2 ? text.charAt(start + 1) : 0;
      if (second != 0 && second <= 'Z' != capital) {
        throw wrong(
            "'" + text.substring(start, end) + "' at character " + (start + 1)
                + " mixes capital and small letters; capitals mean a hole, small letters a shaft");
      }
      char base = capital ? 'A' : 'a';
      letter = LETTERS[(first - base) * 27 + (second == 0 ? 0 : second - base + 1)];
    }
    if (letter < 0) {
      throw wrong("'" + text.substring(start, end) + "' at character " + (start + 1) + " is not a letter code; those are "
          + codes(capital));
    }
    return letter;
  }

  /** Index of the grade written between two positions, or -1. */
  private int grade(int start, int end) {
    int length = end - start;
    if (length == 1) {
      int digit = text.charAt(start) - '0';
      return digit + 1;
    }
    if (length == 2) {
      int value = (text.charAt(start) - '0') * 10 + text.charAt(start + 1) - '0';
      if (value == 1) {
        return 0;
      }
      return value >= 10 && value <= 18 ? value + 1 : -1;
    }
    return -1;
  }

  private Length readSize() {
    skipSpaces();
    int start = at;
    while (!atEnd() && !isLetter(text.charAt(at)) && !Character.isWhitespace(text.charAt(at))) {
      at++;
    }
    String number = text.substring(start, at);
    if (number.isEmpty()) {
      throw insteadOf("the nominal size");
    }
    if (!number.matches("-?(\\d+(\\.\\d*)?|\\.\\d+)")) {
      throw wrong("'" + number + "' at character " + (start + 1) + " is not a number"
          + (number.contains(",") ? "; the decimal sign is a point" : ""));
    }
    skipSpaces();
    if (text.startsWith("mm", at)) {
      at += 2;
    }
    return new Length(Double.parseDouble(number));
  }

  private void skipSpaces() {
    while (!atEnd() && Character.isWhitespace(text.charAt(at))) {
      at++;
    }
  }

  private boolean atEnd() {
    return at >= text.length();
  }

  /** The rest of the text with its place, the first character counted as 1. */
  private String here() {
    return "'" + text.substring(at).strip() + "' at character " + (at + 1);
  }

  private String quoted(ToleranceClass given, int from) {
    int start = from;
    while (Character.isWhitespace(text.charAt(start))) {
      start++;
    }
    return "'" + given + "' at character " + (start + 1);
  }

  private InputException insteadOf(String expected) {
    return wrong((atEnd() ? "the text ends" : here() + " stands") + " where " + expected + " must stand");
  }

  private InputException wrong(String reason) {
    return new InputException(parameter, "'" + text + "'", form, text.isBlank() ? "the text is empty" : reason);
  }

  private static boolean isLetter(char c) {
    return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private static String codes(boolean capitals) {
    StringBuilder codes = new StringBuilder();
    for (DeviationLetter letter : DeviationLetter.values()) {
      codes.append(codes.isEmpty() ? "" : " ").append(letter.text(capitals ? Feature.HOLE : Feature.SHAFT));
    }
    return codes.toString();
  }

  private static byte[] letters() {
    byte[] table = new byte[26 * 27];
    Arrays.fill(table, (byte) -1);
    for (DeviationLetter letter : DeviationLetter.values()) {
      String code = letter.name();
      table[(code.charAt(0) - 'A') * 27 + (code.length() == 1 ? 0 : code.charAt(1) - 'A' + 1)] = (byte) letter.index;
    }
    return table;
  }
}
