// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.tables.SourceRef;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;

/**
 * Coefficients of friction of a tightening as bands: in the thread and under the bearing face.
 *
 * @param threadLow least μG (dimensionless), over 0
 * @param threadHigh greatest μG (dimensionless), at least the least
 * @param faceLow least μK (dimensionless), over 0
 * @param faceHigh greatest μK (dimensionless), at least the least
 */
public record Friction(double threadLow, double threadHigh, double faceLow, double faceHigh) implements Serializable {
  /** Below this a warning is given. */
  public static final double USUAL_LOW = 0.03;
  /** Above this a warning is given. */
  public static final double USUAL_HIGH = 0.5;

  private static final SourceRef USUAL =
      SourceRef.published("VDI 2230 friction class sheet", "friction classes A to E, 0.04 to over 0.3");

  // Refuses friction of 0 or less and bands in the wrong order.
  public Friction {
    check(threadLow, threadHigh, "thread friction μG");
    check(faceLow, faceHigh, "face friction μK");
  }

  /**
   * The same band in thread and under the face.
   *
   * @param low least coefficient, over 0
   * @param high greatest coefficient, at least the least
   * @return the friction
   */
  public static Friction of(double low, double high) {
    return new Friction(low, high, low, high);
  }

  /**
   * Whether the band has no width.
   *
   * @return true if low and high are equal in thread and face
   */
  public boolean isExact() {
    return threadLow == threadHigh && faceLow == faceHigh;
  }

  List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    warn(warnings, threadLow, threadHigh, "thread friction μG");
    warn(warnings, faceLow, faceHigh, "face friction μK");
    return warnings;
  }

  private static void warn(List<Warning> warnings, double low, double high, String name) {
    if (low < USUAL_LOW || high > USUAL_HIGH) {
      warnings.add(
          new Warning(
              "friction-unusual",
              name + " from " + Numbers.shortest(low) + " to " + Numbers.shortest(high) + " is outside the usual "
                  + USUAL_LOW + " to " + USUAL_HIGH,
              USUAL));
    }
  }

  private static void check(double low, double high, String name) {
    Check.positive(low, "least " + name, "", "without friction nothing holds the nut");
    if (!(high >= low && high <= Check.GREATEST)) {
      throw new InputException(
          "greatest " + name, Numbers.shortest(high), "at least the least, " + Numbers.shortest(low), "a band from low to high");
    }
  }

  /** The bands as a practitioner would write them. */
  @Override
  public String toString() {
    String thread = band(threadLow, threadHigh);
    String face = band(faceLow, faceHigh);
    return thread.equals(face) ? "μ " + thread : "μG " + thread + ", μK " + face;
  }

  private static String band(double low, double high) {
    return low == high ? Numbers.shortest(low) : Numbers.shortest(low) + " … " + Numbers.shortest(high);
  }
}
