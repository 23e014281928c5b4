// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/**
 * Shear areas of engaged threads and the loads that strip them. Any one unit of length; areas in its square; stresses
 * and forces to match. Use limits of size for the guaranteed strength. Allocation-free.
 */
public final class StrippingKernel {
  /** Tangent of half the thread angle. */
  private static final double TAN30 = 1 / Math.sqrt(3);
  /** The fit for the stud's thread has a hump before this ratio; a stronger nut never makes the stud's thread weaker. */
  private static final double HOLLOW = 2.016879471110874;

  private StrippingKernel() {}

  /**
   * Shear area of the stud's thread, π·D1·(m/P)·[P/2 + (d2 − D1)·tan 30°]; the inch handbook form is the same with p = 1/n.
   *
   * @param minorInternal D1 in the unit of all lengths, greatest minor diameter of the internal thread
   * @param pitchExternal d2 in the unit of all lengths, least pitch diameter of the stud
   * @param pitch P in the unit of all lengths, over 0
   * @param engaged m in the unit of all lengths, effective engaged length, over 0
   * @return ASG,B
   */
  @Source(document = "ISO/TR 16224:2012", locator = "shear area of the bolt thread", provenance = Provenance.MEMORY)
  @Source(document = "FED-STD-H28/2B", locator = "appendix B, shear area of the external thread")
  public static double externalShearArea(double minorInternal, double pitchExternal, double pitch, double engaged) {
    return shear(minorInternal, pitchExternal - minorInternal, pitch, engaged);
  }

  /**
   * Shear area of the nut's thread, π·d·(m/P)·[P/2 + (d − D2)·tan 30°].
   *
   * @param majorExternal d in the unit of all lengths, least major diameter of the stud
   * @param pitchInternal D2 in the unit of all lengths, greatest pitch diameter of the nut
   * @param pitch P in the unit of all lengths, over 0
   * @param engaged m in the unit of all lengths, effective engaged length, over 0
   * @return ASG,M
   */
  @Source(document = "ISO/TR 16224:2012", locator = "shear area of the nut thread", provenance = Provenance.MEMORY)
  @Source(document = "FED-STD-H28/2B", locator = "appendix B, shear area of the internal thread")
  public static double internalShearArea(double majorExternal, double pitchInternal, double pitch, double engaged) {
    return shear(majorExternal, majorExternal - pitchInternal, pitch, engaged);
  }

  /**
   * Engaged length at which the stud's shear area is twice its stress area, Le = 2·At/(π·K·[1/2 + 0.57735·n·(Es − K)]).
   *
   * @param stressArea At in the unit of all lengths squared
   * @param minorInternal K in the unit of all lengths, greatest minor diameter of the internal thread
   * @param pitchExternal Es in the unit of all lengths, least pitch diameter of the stud
   * @param pitch p = 1/n in the unit of all lengths
   * @return Le
   * @throws InputException if a value is outside its range
   */
  @Source(document = "FED-STD-H28/2B", locator = "appendix B, length of engagement")
  public static double engagementForFullStrength(
      double stressArea, double minorInternal, double pitchExternal, double pitch) {
    return 2 * Check.positive(stressArea, "stress area At", "", "a section carries the load")
        / externalShearArea(minorInternal, pitchExternal, pitch, 1);
  }

  /**
   * Shear area by a fixed part of the cylinder, c·π·Le·D, as simple rules take it.
   *
   * @param diameter D in the unit of all lengths, over 0
   * @param engaged Le in the unit of all lengths, over 0
   * @param part c (dimensionless), over 0 up to 1: 5/8 on the internal minor diameter, 3/4 or 7/8 on the external major diameter
   * @return the area
   * @throws InputException if a value is outside its range
   */
  @Source(document = "NASA TM-106943", locator = "eqs. (63) and (76), Table III")
  public static double cylinderShearArea(double diameter, double engaged, double part) {
    return Check.overUpTo(part, 0, 1, "part of the cylinder", "", "metal between the threads is missing")
        * Math.PI
        * Check.positive(engaged, "engaged length Le", "", "threads engage")
        * Check.positive(diameter, "diameter D", "", "a thread has a diameter");
  }

  /**
   * Strength ratio, RS = (τB,M·ASG,M)/(τB,B·ASG,B).
   *
   * @param internalStrength τB,M in the unit of the other strength, over 0
   * @param internalArea ASG,M in the unit of the other area, over 0
   * @param externalStrength τB,B in MPa or any other unit of stress, over 0
   * @param externalArea ASG,B in mm² or any other unit of area, over 0
   * @return RS; below 1 the nut's thread is the weaker
   */
  @Source(document = "ISO/TR 16224:2012", locator = "strength ratio", provenance = Provenance.MEMORY)
  public static double strengthRatio(
      double internalStrength, double internalArea, double externalStrength, double externalArea) {
    return load(internalStrength, internalArea, 1) / load(externalStrength, externalArea, 1);
  }

  /**
   * Load that strips a thread, F = c·τB·A.
   *
   * @param shearStrength τB in MPa, or a stress to match the area, over 0
   * @param area shear area in mm², or in another unit to match, over 0
   * @param correction product of the corrections (dimensionless), over 0
   * @return F
   * @throws InputException if a value is outside its range
   */
  @Source(document = "ISO/TR 16224:2012", locator = "stripping load", provenance = Provenance.MEMORY)
  public static double load(double shearStrength, double area, double correction) {
    return Check.positive(correction, "correction", "", "a part of the plain load")
        * Check.positive(shearStrength, "shear strength τB", "MPa", "a strength")
        * Check.positive(area, "shear area", "mm²", "threads engage");
  }

  /**
   * Correction for the widening of the nut, C1 = 3.8·(s/d) − (s/d)² − 2.61 from s/d = 1.4 to 1.9, 1 above.
   *
   * @param widthOverDiameter s/d (dimensionless), 1.4 or more
   * @return C1
   * @throws InputException if the nut is thinner-walled than 1.4·d
   */
  @Source(document = "ISO/TR 16224:2012", locator = "nut dilation", provenance = Provenance.MEMORY)
  public static double dilation(double widthOverDiameter) {
    if (!(widthOverDiameter >= 1.4 && widthOverDiameter <= Check.GREATEST)) {
      throw new InputException(
          "width across flats over diameter s/d",
          Numbers.shortest(widthOverDiameter),
          "1.4 or more",
          "the correction for the widening of the nut starts at 1.4");
    }
    return widthOverDiameter >= 1.9 ? 1 : 3.8 * widthOverDiameter - widthOverDiameter * widthOverDiameter - 2.61;
  }

  /**
   * Correction of the stud's thread for bending, C2.
   *
   * @param ratio RS (dimensionless), over 0; the fit ends at 2.2, and its value there is held
   * @return 0.897 up to RS = 1, then 5.594 − 13.682·RS + 14.107·RS² − 6.057·RS³ + 0.9353·RS⁴; where that curve sags by
   *     0.2 % (RS = 1.75 to 2.02) its lower value, so that the correction never falls with RS
   * @throws InputException if a value is outside its range
   */
  @Source(document = "ISO/TR 16224:2012", locator = "thread bending, bolt", provenance = Provenance.MEMORY)
  public static double externalBending(double ratio) {
    if (Check.positive(ratio, "strength ratio RS", "", "both threads have a strength") <= 1) {
      return 0.897;
    }
    double fit = externalFit(Math.min(ratio, 2.2));
    return ratio < HOLLOW ? Math.min(fit, externalFit(HOLLOW)) : fit;
  }

  /**
   * Correction of the nut's thread for bending, C3.
   *
   * @param ratio RS (dimensionless), over 0; the fit starts at 0.4, and its value there is held below
   * @return 0.728 + 1.769·RS − 2.896·RS² + 1.296·RS³ below RS = 1, then 0.897
   * @throws InputException if a value is outside its range
   */
  @Source(document = "ISO/TR 16224:2012", locator = "thread bending, nut", provenance = Provenance.MEMORY)
  public static double internalBending(double ratio) {
    double r = Math.max(0.4, Check.positive(ratio, "strength ratio RS", "", "both threads have a strength"));
    return r >= 1 ? 0.897 : 0.728 + r * (1.769 + r * (-2.896 + r * 1.296));
  }

  private static double externalFit(double r) {
    return 5.594 + r * (-13.682 + r * (14.107 + r * (-6.057 + r * 0.9353)));
  }

  private static double shear(double diameter, double overlap, double pitch, double engaged) {
    Check.positive(diameter, "diameter of the shear cylinder", "", "a thread has a diameter");
    Check.positive(pitch, "pitch P", "", "a thread has a pitch");
    Check.positive(engaged, "engaged length m", "", "threads engage");
    double tooth = 0.5 * pitch + Check.finite(overlap, "overlap of the threads", "") * TAN30;
    if (!(tooth > 0)) {
      throw new InputException(
          "overlap of the threads", Numbers.significant(overlap, 6), "over " + Numbers.significant(-0.5 * pitch / TAN30, 6),
          "with less the threads do not touch");
    }
    return Math.PI * diameter * (engaged / pitch) * tooth;
  }
}
