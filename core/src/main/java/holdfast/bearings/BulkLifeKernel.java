// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.InputException;
import holdfast.tables.Source;
import java.util.Objects;
import java.util.stream.IntStream;

/** Lives of many bearings at once: parallel arrays in, one array out, no allocation per bearing. */
@Source(document = "ISO 281:2007", locator = "9.1, equation (29)")
public final class BulkLifeKernel {
  private static final int CHUNK = 4096;

  private BulkLifeKernel() {}

  /**
   * Modified rating lives in hours of the bearings from one index to another. Lubrication enters by ν and Dpw, so κ is
   * computed for each bearing.
   *
   * <p>Powers come from tables, so a life differs from that of {@link LifeModificationKernel#life} by up to 1e-12 of its
   * value. Bearings outside the range of the tables (C/P or P/C over 10⁶, speeds over 10⁶ rpm and the like) are computed by
   * that kernel itself.
   *
   * @param from first index
   * @param to index after the last
   * @param family families
   * @param c basic dynamic load ratings in N
   * @param cu fatigue load limits in N
   * @param p dynamic equivalent loads in N
   * @param rpm speeds in rpm
   * @param viscosity viscosities ν at operating temperature in mm²/s
   * @param dpw pitch diameters in mm
   * @param contamination contamination factors eC (dimensionless)
   * @param reliability reliabilities in %
   * @param hours receives the lives in h
   * @throws InputException if an array is too short or a value is outside its range; the message names the index
   */
  public static void hours(int from, int to, BearingFamily[] family, double[] c, double[] cu, double[] p, double[] rpm,
      double[] viscosity, double[] dpw, double[] contamination, double[] reliability, double[] hours) {
    Objects.requireNonNull(family, "family");
    Objects.requireNonNull(c, "c");
    Objects.requireNonNull(cu, "cu");
    Objects.requireNonNull(p, "p");
    Objects.requireNonNull(rpm, "rpm");
    Objects.requireNonNull(viscosity, "viscosity");
    Objects.requireNonNull(dpw, "dpw");
    Objects.requireNonNull(contamination, "contamination");
    Objects.requireNonNull(reliability, "reliability");
    Objects.requireNonNull(hours, "hours");
    checkLengths(to, family.length, c.length, cu.length, p.length, rpm.length, viscosity.length, dpw.length,
        contamination.length, reliability.length, hours.length);
    if (from < 0) {
      throw Refusal.of("first bearing", from, "0 or more", "bearings are counted from 0");
    }
    // Neighbours mostly share their reliability: its factor is kept while it repeats.
    double percent = 90;
    double a1 = 1;
    for (int i = from; i < to; i++) {
      try {
        if (reliability[i] != percent) {
          a1 = ReliabilityKernel.a1(reliability[i]);
          percent = reliability[i];
        }
        double kappa = family[i] != null
            && TabulatedLife.covers(c[i], cu[i], p[i], rpm[i], viscosity[i], dpw[i], contamination[i])
            ? TabulatedLife.kappa(viscosity[i], rpm[i], dpw[i]) : 0;
        hours[i] = TabulatedLife.decided(kappa)
            ? TabulatedLife.hours(family[i], a1, c[i], cu[i], p[i], rpm[i], kappa, contamination[i])
            : exact(family[i], c[i], cu[i], p[i], rpm[i], viscosity[i], dpw[i], contamination[i], reliability[i]);
      } catch (InputException e) {
        throw new InputException("bearing " + i + ": " + e.parameter(), e.value(), e.permitted(), e.reason());
      }
    }
  }

  private static double exact(BearingFamily family, double c, double cu, double p, double rpm, double viscosity, double dpw,
      double contamination, double reliability) {
    double kappa = LubricationKernel.kappa(viscosity, rpm, dpw);
    return BasicLifeKernel.hours(
        LifeModificationKernel.life(family, c, cu, p, reliability, kappa, contamination), rpm);
  }

  /**
   * The same for all bearings, on all processors of the machine.
   *
   * @param family families
   * @param c basic dynamic load ratings in N
   * @param cu fatigue load limits in N
   * @param p dynamic equivalent loads in N
   * @param rpm speeds in rpm
   * @param viscosity viscosities ν at operating temperature in mm²/s
   * @param dpw pitch diameters in mm
   * @param contamination contamination factors eC (dimensionless)
   * @param reliability reliabilities in %
   * @param hours receives the lives in h
   * @throws InputException if the arrays differ in length or a value is outside its range; the message names the index
   */
  public static void hoursInParallel(BearingFamily[] family, double[] c, double[] cu, double[] p, double[] rpm,
      double[] viscosity, double[] dpw, double[] contamination, double[] reliability, double[] hours) {
    Objects.requireNonNull(family, "family");
    Objects.requireNonNull(c, "c");
    Objects.requireNonNull(cu, "cu");
    Objects.requireNonNull(p, "p");
    Objects.requireNonNull(rpm, "rpm");
    Objects.requireNonNull(viscosity, "viscosity");
    Objects.requireNonNull(dpw, "dpw");
    Objects.requireNonNull(contamination, "contamination");
    Objects.requireNonNull(reliability, "reliability");
    Objects.requireNonNull(hours, "hours");
    int size = family.length;
    Refusal.sameLength(size, c.length, "ratings C");
    Refusal.sameLength(size, hours.length, "lives");
    int chunks = (size + CHUNK - 1) / CHUNK;
    IntStream.range(0, chunks).parallel().forEach(chunk ->
        hours(chunk * CHUNK, Math.min(size, (chunk + 1) * CHUNK), family, c, cu, p, rpm, viscosity, dpw, contamination,
            reliability, hours));
  }

  private static void checkLengths(int to, int... lengths) {
    for (int length : lengths) {
      if (length < to) {
        throw Refusal.of("array", length + " entries", to + " entries or more", "parallel arrays have one entry per bearing");
      }
    }
  }
}
