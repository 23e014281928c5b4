// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import java.util.Objects;

/** Joint pressures at which stud or housing reach their elastic limit. Pressures and strengths in MPa. */
@Source(document = "derivation", locator = "yield theories on the stresses of a thick ring", provenance = Provenance.DERIVED)
@Source(document = "DIN 7190-1:2017", locator = "elastic limits, modified shear stress", provenance = Provenance.MEMORY)
public final class ElasticLimitKernel {
  private static final double SQRT3 = Math.sqrt(3);

  private ElasticLimitKernel() {}

  /**
   * Pressure at which the bore of a housing yields. With hoop stress h·p and radial stress -p: von Mises
   * {@code R/√(h²+h+1)}, Tresca {@code R/(h+1)}, modified shear {@code 2R/(√3·(h+1))}. For a ring
   * {@code h = (1+Q²)/(1-Q²)}.
   *
   * @param rule theory of yield
   * @param yield yield strength R in MPa, over 0
   * @param hoopFactor hoop stress at the bore over the pressure h (dimensionless), 1 or more
   * @return limit pressure in MPa
   * @throws InputException if a value is out of range
   */
  public static double housingPressure(YieldRule rule, double yield, double hoopFactor) {
    Objects.requireNonNull(rule, "rule");
    Check.positive(yield, "yield strength of the housing", "MPa", "a strength");
    checkHoop(hoopFactor);
    return switch (rule) {
      case VON_MISES -> yield / Math.sqrt(hoopFactor * hoopFactor + hoopFactor + 1);
      case TRESCA -> yield / (hoopFactor + 1);
      case MODIFIED_SHEAR -> 2 * yield / (SQRT3 * (hoopFactor + 1));
    };
  }

  /**
   * Pressure at which a stud yields. Hollow, at the wall of its hole: von Mises and Tresca {@code R·(1-Q²)/2}, modified
   * shear {@code R·(1-Q²)/√3}. Solid: von Mises and Tresca {@code R}, modified shear {@code 2R/√3}.
   *
   * @param rule theory of yield
   * @param yield yield strength R in MPa, over 0
   * @param holeRatio Q = hole over joint diameter (dimensionless), 0 (solid) to less than 1
   * @return limit pressure in MPa
   * @throws InputException if a value is out of range
   */
  public static double studPressure(YieldRule rule, double yield, double holeRatio) {
    Objects.requireNonNull(rule, "rule");
    Check.positive(yield, "yield strength of the stud", "MPa", "a strength");
    if (!(holeRatio >= 0 && holeRatio < 1)) {
      throw new InputException(
          "hole over joint diameter", Numbers.shortest(holeRatio), "from 0 to less than 1", "the stud needs a wall");
    }
    boolean modified = rule == YieldRule.MODIFIED_SHEAR;
    if (holeRatio == 0) {
      return modified ? 2 * yield / SQRT3 : yield;
    }
    return yield * (1 - holeRatio) * (1 + holeRatio) / (modified ? SQRT3 : 2);
  }

  /**
   * Pressure at which the hoop stress at the bore of a brittle housing reaches its tensile strength, {@code R_m/h}.
   *
   * @param tensile tensile strength R_m in MPa, over 0
   * @param hoopFactor hoop stress at the bore over the pressure h (dimensionless), 1 or more
   * @return limit pressure in MPa
   * @throws InputException if a value is out of range
   */
  public static double brittleHousingPressure(double tensile, double hoopFactor) {
    Check.positive(tensile, "tensile strength of the housing", "MPa", "a strength");
    checkHoop(hoopFactor);
    return tensile / hoopFactor;
  }

  private static void checkHoop(double hoopFactor) {
    if (!(hoopFactor >= 1 && hoopFactor <= Check.GREATEST)) {
      throw new InputException("hoop stress over pressure", Numbers.shortest(hoopFactor), "1 or more", "a housing is a ring");
    }
  }
}
