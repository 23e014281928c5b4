// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Check;
import holdfast.quantity.Numbers;
import holdfast.tables.Provenance;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.io.Serializable;
import java.util.Objects;

/**
 * How far the joint pressure of parts of unequal length departs from the closed form, which knows no ends: the range over
 * the cases computed with finite elements. A limit of the closed form, not a formula; ratios are pressure over the
 * pressure of the closed form.
 *
 * @param layout which part is shorter
 * @param middleLeast least pressure at mid-length, a ratio
 * @param middleGreatest greatest pressure at mid-length, a ratio
 * @param meanLeast least mean pressure, a ratio
 * @param meanGreatest greatest mean pressure, a ratio
 * @param nearEndLeast least pressure at a twentieth of the diameter from the end, a ratio
 * @param nearEndGreatest greatest pressure at a twentieth of the diameter from the end, a ratio
 */
public record EndEffect(
    Layout layout,
    double middleLeast,
    double middleGreatest,
    double meanLeast,
    double meanGreatest,
    double nearEndLeast,
    double nearEndGreatest)
    implements Serializable {
  public EndEffect {
    Objects.requireNonNull(layout, "layout");
    Check.finite(middleLeast, "least pressure at mid-length", "");
    Check.finite(middleGreatest, "greatest pressure at mid-length", "");
    Check.finite(meanLeast, "least mean pressure", "");
    Check.finite(meanGreatest, "greatest mean pressure", "");
    Check.finite(nearEndLeast, "least pressure near the end", "");
    Check.finite(nearEndGreatest, "greatest pressure near the end", "");
  }

  /** Which of both parts ends first. */
  public enum Layout {
    /** Both parts end together: the closed form is exact (within 0.03 % of the finite elements). */
    EQUAL("equal length"),
    /** The stud stands out of the housing on both sides. */
    HOUSING_SHORTER("housing shorter"),
    /** The stud ends inside the housing. */
    STUD_SHORTER("stud shorter");

    private final String label;

    Layout(String label) {
      this.label = label;
    }

    @Override
    public String toString() {
      return label;
    }
  }

  /**
   * The range for a layout.
   *
   * @param layout which part is shorter
   * @return the range over the computed cases; 1 throughout for parts of equal length
   */
  public static EndEffect of(Layout layout) {
    Objects.requireNonNull(layout, "layout");
    if (layout == Layout.EQUAL) {
      return new EndEffect(layout, 1, 1, 1, 1, 1, 1);
    }
    Table table = TableSet.bundled().table("seats/finite-elements/2.20/end-effects");
    double[] least = {Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE};
    double[] greatest = new double[3];
    String[] columns = {"middle", "mean", "at_005"};
    for (int row = 0; row < table.size(); row++) {
      for (int i = 0; i < 3 && table.text(row, "layout").equals(layout.toString()); i++) {
        least[i] = Math.min(least[i], table.number(row, columns[i]));
        greatest[i] = Math.max(greatest[i], table.number(row, columns[i]));
      }
    }
    return new EndEffect(layout, least[0], greatest[0], least[1], greatest[1], least[2], greatest[2]);
  }

  /**
   * Where the range comes from.
   *
   * @return the source
   */
  public static SourceRef source() {
    return new SourceRef("axisymmetric interference models", "cases E1 to E6", Provenance.REFERENCE_COMPUTATION);
  }

  @Override
  public String toString() {
    return layout
        + ": pressure over that of the closed form "
        + range(middleLeast, middleGreatest)
        + " at mid-length, "
        + range(meanLeast, meanGreatest)
        + " on average, "
        + range(nearEndLeast, nearEndGreatest)
        + " a twentieth of the diameter from the end, unbounded at a sharp end";
  }

  private static String range(double least, double greatest) {
    return Numbers.fixed(least, 2) + " … " + Numbers.fixed(greatest, 2);
  }
}
