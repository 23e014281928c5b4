// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/** Scatter of the preload. Pure numbers, N, mm and N·mm. Allocation-free. */
public final class ScatterKernel {
  private ScatterKernel() {}

  /**
   * Tightening factor of a symmetric scatter, αA = (1 + s)/(1 − s).
   *
   * @param scatter s (dimensionless), 0 or more, below 1
   * @return αA = FM,max/FM,min, at least 1
   * @throws InputException if a value is outside its range
   */
  @Source(document = "VDI 2230-1:2015", locator = "tightening factor", provenance = Provenance.MEMORY)
  public static double tighteningFactor(double scatter) {
    Check.within(scatter, 0, Math.nextDown(1.0), "scatter s", "", "a part of the mean preload");
    return (1 + scatter) / (1 - scatter);
  }

  /**
   * Symmetric scatter of a tightening factor, s = (αA − 1)/(αA + 1).
   *
   * @param tighteningFactor αA (dimensionless), 1 or more
   * @return s
   * @throws InputException if a value is outside its range
   */
  @Source(document = "VDI 2230-1:2015", locator = "tightening factor", provenance = Provenance.MEMORY)
  public static double scatter(double tighteningFactor) {
    Check.atLeast(tighteningFactor, 1, "tightening factor αA", "", "greatest over least preload");
    return (tighteningFactor - 1) / (tighteningFactor + 1);
  }

  /**
   * Least preload of a greatest one, FM,min = FM,max/αA.
   *
   * @param greatest FM in N,max, 0 or more
   * @param tighteningFactor αA (dimensionless), 1 or more
   * @return FM,min in the same unit
   * @throws InputException if a value is outside its range
   */
  @Source(document = "VDI 2230-1:2015", locator = "tightening factor; used by the reference value guide, step 4")
  public static double leastPreload(double greatest, double tighteningFactor) {
    Check.notNegative(greatest, "greatest preload", "N", "a tension");
    return greatest / Check.atLeast(tighteningFactor, 1, "tightening factor αA", "", "greatest over least");
  }

  /**
   * Greatest preload by nut factor and uncertainty, T/(K·D)·(1 + u) + Pth.
   *
   * @param nominal T/(K·D) in N, 0 or more
   * @param uncertainty u (dimensionless), 0 or more, below 1
   * @param thermal gain by temperature Pth in N, 0 or more
   * @return P0,max
   * @throws InputException if a value is outside its range
   */
  @Source(document = "NASA TM-106943", locator = "eq. (12)")
  public static double greatestByUncertainty(double nominal, double uncertainty, double thermal) {
    Check.notNegative(nominal, "nominal preload", "N", "a tension");
    Check.within(uncertainty, 0, Math.nextDown(1.0), "uncertainty u", "", "a part of the nominal preload");
    return nominal * (1 + uncertainty) + Check.notNegative(thermal, "thermal preload", "N", "a gain");
  }

  /**
   * Least preload by nut factor, uncertainty and relaxation with Prelax = r·P0,min: (T/(K·D)·(1 − u) − Pth)/(1 + r).
   *
   * @param nominal T/(K·D) in N, 0 or more
   * @param uncertainty u (dimensionless), 0 or more, below 1
   * @param thermal loss by temperature Pth in N, 0 or more
   * @param relaxation r (dimensionless), 0 or more; 0.05 in the document
   * @return P0,min; 0 where the loss takes all of it, since a stud does not push
   * @throws InputException if a value is outside its range
   */
  @Source(document = "NASA TM-106943", locator = "eqs. (11), (13), (16)")
  public static double leastByUncertainty(double nominal, double uncertainty, double thermal, double relaxation) {
    Check.notNegative(nominal, "nominal preload", "N", "a tension");
    Check.within(uncertainty, 0, Math.nextDown(1.0), "uncertainty u", "", "a part of the nominal preload");
    Check.notNegative(thermal, "thermal preload", "N", "a loss");
    return Math.max(0, nominal * (1 - uncertainty) - thermal)
        / (1 + Check.notNegative(relaxation, "relaxation r", "", "a part of the least preload"));
  }

  /**
   * Preload by nut factor, F = T/(K·d).
   *
   * @param torque T in N·mm, 0 or more
   * @param nutFactor K (dimensionless), over 0
   * @param diameter d in mm, over 0
   * @return F, in force units of the torque over the diameter
   * @throws InputException if a value is outside its range
   */
  @Source(document = "NASA TM-106943", locator = "eq. (1)")
  public static double preloadByNutFactor(double torque, double nutFactor, double diameter) {
    return Check.notNegative(torque, "torque T", "N·mm", "tightening")
        / (Check.positive(nutFactor, "nut factor K", "", "friction and pitch resist")
            * Check.positive(diameter, "nominal diameter d", "mm", "a thread has a diameter"));
  }

  /**
   * Torque by nut factor, T = K·F·d.
   *
   * @param preload F in N, 0 or more
   * @param nutFactor K (dimensionless), over 0
   * @param diameter d in mm, over 0
   * @return T
   * @throws InputException if a value is outside its range
   */
  @Source(document = "Shigley 9", locator = "section 8-8, T = K F d")
  public static double torqueByNutFactor(double preload, double nutFactor, double diameter) {
    return Check.notNegative(preload, "preload F", "N", "a tension")
        * Check.positive(nutFactor, "nut factor K", "", "friction and pitch resist")
        * Check.positive(diameter, "nominal diameter d", "mm", "a thread has a diameter");
  }
}
