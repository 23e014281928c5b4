// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.tables.FromTables;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import holdfast.tables.Table;
import java.util.Arrays;

/**
 * Tolerances and fundamental deviations of ISO metric threads: look-ups. Sizes in mm, deviations in µm as the table
 * prints them. Allocation-free.
 */
@Source(document = "ISO 965-1:2013", locator = "Tables 1 to 5", provenance = Provenance.MEMORY)
public final class MetricToleranceKernel {
  private static final int DEVIATION = 0;
  private static final int CREST_EXTERNAL = 1;
  private static final int PITCH_EXTERNAL = 2;
  private static final int CREST_INTERNAL = 3;
  private static final int PITCH_INTERNAL = 4;

  private static final FromTables<Data> DATA =
      FromTables.of(tables -> new Data(tables.table("threads/iso-965-1/2013/tolerances")));

  private static final class Data {
    final int[] kind;
    final char[] grade;
    final double[] pitch;
    final double[] over;
    final double[] to;
    final double[] value;

    Data(Table table) {
      int n = table.size();
      kind = new int[n];
      grade = new char[n];
      pitch = table.numbers("pitch");
      over = table.numbers("d_over");
      to = table.numbers("d_to");
      value = table.numbers("value");
      for (int row = 0; row < n; row++) {
        kind[row] =
            Arrays.asList("fundamental deviation", "Td", "Td2", "TD1", "TD2").indexOf(table.text(row, "kind"));
        grade[row] = table.text(row, "grade").charAt(0);
      }
    }
  }

  private MetricToleranceKernel() {}

  /**
   * Fundamental deviation: es of e, f, g, h; EI of G, H.
   *
   * @param position tolerance position letter
   * @param pitch P in mm
   * @return deviation in µm; negative for e, f and g, 0 for h and H
   * @throws InputException if the standard does not have this position for this pitch
   */
  public static double fundamentalDeviation(char position, double pitch) {
    return position == 'h' || position == 'H' ? 0 : find(DEVIATION, position, pitch, Double.NaN);
  }

  /**
   * Tolerance of the major diameter of the external thread, Td.
   *
   * @param grade 4, 6 or 8
   * @param pitch P in mm
   * @return Td in µm
   * @throws InputException if the standard does not have this grade for this pitch
   */
  public static double externalCrest(int grade, double pitch) {
    return find(CREST_EXTERNAL, digit(grade), pitch, Double.NaN);
  }

  /**
   * Tolerance of the pitch diameter of the external thread, Td2.
   *
   * @param grade 3 to 9
   * @param diameter d in mm
   * @param pitch P in mm
   * @return Td2 in µm
   * @throws InputException if the standard does not have this grade for this size
   */
  public static double externalPitch(int grade, double diameter, double pitch) {
    return find(PITCH_EXTERNAL, digit(grade), pitch, diameter);
  }

  /**
   * Tolerance of the minor diameter of the internal thread, TD1.
   *
   * @param grade 4 to 8
   * @param pitch P in mm
   * @return TD1 in µm
   * @throws InputException if the standard does not have this grade for this pitch
   */
  public static double internalCrest(int grade, double pitch) {
    return find(CREST_INTERNAL, digit(grade), pitch, Double.NaN);
  }

  /**
   * Tolerance of the pitch diameter of the internal thread, TD2.
   *
   * @param grade 4 to 8
   * @param diameter d in mm
   * @param pitch P in mm
   * @return TD2 in µm
   * @throws InputException if the standard does not have this grade for this size
   */
  public static double internalPitch(int grade, double diameter, double pitch) {
    return find(PITCH_INTERNAL, digit(grade), pitch, diameter);
  }

  private static char digit(int grade) {
    return grade >= 0 && grade <= 9 ? (char) ('0' + grade) : '?';
  }

  private static double find(int kind, char grade, double pitch, double diameter) {
    Data data = DATA.get();
    for (int i = 0; i < data.value.length; i++) {
      if (data.kind[i] == kind
          && data.grade[i] == grade
          && Math.abs(data.pitch[i] - pitch) < 1e-6
          && (Double.isNaN(diameter) || (diameter > data.over[i] && diameter <= data.to[i]))) {
        return data.value[i];
      }
    }
    throw new InputException(
        kind == DEVIATION ? "tolerance position" : "tolerance grade",
        grade + " at P = " + Numbers.shortest(pitch) + " mm" + (Double.isNaN(diameter)
            ? ""
            : ", d = " + Numbers.shortest(diameter) + " mm"),
        "one that ISO 965-1 has for this size",
        "positions e f g h G H; grades Td 4 6 8, Td2 3 to 9, TD1 and TD2 4 to 8, not every one at every pitch");
  }
}
