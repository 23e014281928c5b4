// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Check;
import holdfast.tables.FromTables;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import holdfast.tables.Table;
import java.util.Arrays;
import java.util.Objects;

/**
 * Slope of a stud at the mouth of an elastic seat, interpolated between finite elements of solids of revolution: stud and ring of
 * Poisson's ratio 0.3, the outside of the ring held, the stud ending with the seat, a flange of 1.4 d and 0.05 d thickness. The
 * stud outside of the mouth is a beam that these compliances leave out. Ratios are dimensionless: engaged length over stud
 * diameter L/d, outside diameter of the ring over stud diameter D/d, modulus of the stud over that of the ring, bore of the stud
 * over its diameter.
 *
 * <p>The solids reach to L/d = 2.8 and D/d = 5; longer seats and wider members get the last value. Under 0.5 the ratio of the
 * moduli counts as 0.5, over 4 the compliance grows with the ratio: both are more than the true compliance. What a bore with play
 * adds, what the member itself gives way, and a pull that opens the joint are not in it.
 */
@Source(
    document = "stud seat models",
    locator = "compliances over L/d, D/d, ratio of moduli, bore and hold",
    provenance = Provenance.REFERENCE_COMPUTATION)
public final class SeatSlopeKernel {
  /** Least L/d. */
  public static final double SHORTEST = 0.3;
  /** Least D/d. */
  public static final double THINNEST = 1.3;
  /** Greatest bore of the stud over its diameter. */
  public static final double WIDEST = 0.65;

  private static final FromTables<Solids> SOLIDS =
      FromTables.of(tables -> new Solids(tables.table("seats/stud-seats/2026/seat-compliances")));

  private SeatSlopeKernel() {}

  /**
   * Slope at the mouth by a moment.
   *
   * @param hold how bore and face hold the stud
   * @param length L/d (dimensionless), 0.3 or more
   * @param wall D/d (dimensionless), 1.3 or more
   * @param moduli modulus of the stud over that of the member (dimensionless), over 0
   * @param bore bore of the stud over its diameter (dimensionless), 0 to 0.65
   * @return cM (dimensionless): slope over M/(E d³), E of the stud
   * @throws holdfast.quantity.InputException if a ratio is out of range
   */
  public static double momentCompliance(SeatHold hold, double length, double wall, double moduli, double bore) {
    Objects.requireNonNull(hold, "hold");
    check(length, wall, moduli, bore);
    Solids solids = SOLIDS.get();
    return Math.exp(solids.at(solids.moment[hold.place()], length, wall, moduli, bore)) * beyond(moduli);
  }

  /**
   * Slope at the mouth by a force in the plane of the mouth, which is also the shift of the mouth by a moment.
   *
   * @param hold how bore and face hold the stud
   * @param length L/d (dimensionless), 0.3 or more
   * @param wall D/d (dimensionless), 1.3 or more
   * @param moduli modulus of the stud over that of the member (dimensionless), over 0
   * @param bore bore of the stud over its diameter (dimensionless), 0 to 0.65
   * @return cF (dimensionless): slope over F/(E d²), E of the stud; negative where a clamped flange turns the other way
   * @throws holdfast.quantity.InputException if a ratio is out of range
   */
  public static double forceCompliance(SeatHold hold, double length, double wall, double moduli, double bore) {
    Objects.requireNonNull(hold, "hold");
    check(length, wall, moduli, bore);
    Solids solids = SOLIDS.get();
    return solids.at(solids.force[hold.place()], length, wall, moduli, bore)
        * Math.exp(solids.at(solids.moment[hold.place()], length, wall, moduli, bore)) * beyond(moduli);
  }

  /**
   * Slope at the mouth by a load on the stud.
   *
   * @param hold how bore and face hold the stud
   * @param force radial load F in N, 0 or more
   * @param arm distance a of its line of action from the mouth in mm, 0 or more
   * @param diameter stud diameter d in mm
   * @param modulus modulus of elasticity E of the stud in MPa
   * @param length L/d (dimensionless), 0.3 or more
   * @param wall D/d (dimensionless), 1.3 or more
   * @param moduli modulus of the stud over that of the member (dimensionless), over 0
   * @param bore bore of the stud over its diameter (dimensionless), 0 to 0.65
   * @return F (cM a/d + cF)/(E d²) in rad
   * @throws holdfast.quantity.InputException if an argument is out of range
   */
  public static double mouthSlope(SeatHold hold, double force, double arm, double diameter, double modulus, double length,
      double wall, double moduli, double bore) {
    Objects.requireNonNull(hold, "hold");
    StudBendingKernel.checkLoad(force, 0, arm);
    Check.positive(diameter, "stud diameter d", "mm", "a stud has a diameter");
    Check.positive(modulus, "modulus of elasticity E", "MPa", "an elastic body has stiffness");
    return force / modulus / diameter / diameter
        * (momentCompliance(hold, length, wall, moduli, bore) * (arm / diameter)
            + forceCompliance(hold, length, wall, moduli, bore));
  }

  /**
   * Radial force that a bore without friction carries while the nut keeps the flange closed.
   *
   * @param arm distance of the load from the mouth over the stud diameter (dimensionless), 0 or more
   * @param length L/d (dimensionless), 0.3 or more
   * @param wall D/d (dimensionless), 1.3 or more
   * @param moduli modulus of the stud over that of the member (dimensionless), over 0; counted from 0.5 to 4
   * @param bore bore of the stud over its diameter (dimensionless), 0 to 0.65
   * @return force over the load (dimensionless); the flange carries the rest; negative where the bore pulls the other way
   * @throws holdfast.quantity.InputException if a ratio is out of range
   */
  public static double boreForce(double arm, double length, double wall, double moduli, double bore) {
    Check.notNegative(arm, "arm over stud diameter", "", "the load lies outside of the seat");
    check(length, wall, moduli, bore);
    Solids solids = SOLIDS.get();
    return solids.at(solids.shares[0], length, wall, moduli, bore)
        + arm * solids.at(solids.shares[2], length, wall, moduli, bore);
  }

  /**
   * Moment about the mouth that a bore without friction carries while the nut keeps the flange closed.
   *
   * @param arm distance of the load from the mouth over the stud diameter (dimensionless), 0 or more
   * @param length L/d (dimensionless), 0.3 or more
   * @param wall D/d (dimensionless), 1.3 or more
   * @param moduli modulus of the stud over that of the member (dimensionless), over 0; counted from 0.5 to 4
   * @param bore bore of the stud over its diameter (dimensionless), 0 to 0.65
   * @return moment over load times stud diameter (dimensionless), in the sense of that of the load
   * @throws holdfast.quantity.InputException if a ratio is out of range
   */
  public static double boreMoment(double arm, double length, double wall, double moduli, double bore) {
    Check.notNegative(arm, "arm over stud diameter", "", "the load lies outside of the seat");
    check(length, wall, moduli, bore);
    Solids solids = SOLIDS.get();
    return solids.at(solids.shares[1], length, wall, moduli, bore)
        + arm * solids.at(solids.shares[3], length, wall, moduli, bore);
  }

  private static void check(double length, double wall, double moduli, double bore) {
    Check.atLeast(length, SHORTEST, "engaged length over stud diameter", "", "no shorter seat was computed");
    Check.atLeast(wall, THINNEST, "outside of the member over stud diameter", "", "no thinner wall was computed");
    Check.positive(moduli, "ratio of the moduli", "", "elastic bodies have stiffness");
    Check.within(bore, 0, WIDEST, "bore of the stud over its diameter", "", "no thinner tube was computed");
  }

  /** A member softer than those computed: the compliance cannot grow faster than the softness of the member. */
  private static double beyond(double moduli) {
    Solids solids = SOLIDS.get();
    return Math.max(1, moduli / solids.greatestModuli);
  }

  /** The table: logarithms of cM, cF over cM, and shares of the bore, over nodes in which they run smoothly. */
  private static final class Solids {
    final double[][] moment = new double[SeatHold.values().length][];
    final double[][] force = new double[SeatHold.values().length][];
    final double[][] shares = new double[4][];
    final double greatestModuli;
    private final double[] lengths;
    private final double[] walls;
    private final double[] moduli;
    private final double[] bores;

    Solids(Table table) {
      double[] firsts = nodes(table, "length");
      double[] ratios = nodes(table, "moduli");
      lengths = new double[firsts.length];
      for (int i = 0; i < firsts.length; i++) {
        lengths[i] = -1 / firsts[i];
      }
      walls = nodes(table, "wall");
      for (int i = 0; i < walls.length; i++) {
        walls[i] = -1 / walls[i];
      }
      moduli = new double[ratios.length];
      for (int i = 0; i < ratios.length; i++) {
        moduli[i] = Math.log(ratios[i]);
      }
      bores = nodes(table, "bore");
      greatestModuli = ratios[ratios.length - 1];
      for (SeatHold hold : SeatHold.values()) {
        double[] byMoment = column(table, hold.column() + "_moment");
        double[] byForce = column(table, hold.column() + "_force");
        for (int i = 0; i < byMoment.length; i++) {
          byForce[i] /= byMoment[i];
          byMoment[i] = Math.log(byMoment[i]);
        }
        moment[hold.place()] = byMoment;
        force[hold.place()] = byForce;
      }
      shares[0] = column(table, "bore_force_of_force");
      shares[1] = column(table, "bore_moment_of_force");
      shares[2] = column(table, "bore_force_of_moment");
      shares[3] = column(table, "bore_moment_of_moment");
    }

    private static double[] column(Table table, String name) {
      double[] values = new double[table.size()];
      for (int row = 0; row < values.length; row++) {
        values[row] = table.number(row, name);
      }
      return values;
    }

    private static double[] nodes(Table table, String name) {
      return Arrays.stream(column(table, name)).distinct().sorted().toArray();
    }

    /** Cubic through the four nearest nodes in each direction; nearest node beyond the ends. */
    double at(double[] values, double length, double wall, double ratio, double bore) {
      double x = between(-1 / length, lengths);
      double y = between(-1 / wall, walls);
      double z = between(Math.log(ratio), moduli);
      int firstX = first(x, lengths);
      int firstY = first(y, walls);
      int firstZ = first(z, moduli);
      int firstB = first(bore, bores);
      double sum = 0;
      for (int i = firstX; i < firstX + 4; i++) {
        double weightX = weight(x, lengths, firstX, i);
        for (int j = firstY; j < firstY + 4; j++) {
          double weightY = weightX * weight(y, walls, firstY, j);
          for (int k = firstZ; k < firstZ + 4; k++) {
            double weightZ = weightY * weight(z, moduli, firstZ, k);
            int row = ((i * walls.length + j) * moduli.length + k) * bores.length;
            for (int b = firstB; b < firstB + 4; b++) {
              sum += weightZ * weight(bore, bores, firstB, b) * values[row + b];
            }
          }
        }
      }
      return sum;
    }

    private static double between(double x, double[] nodes) {
      return Math.min(Math.max(x, nodes[0]), nodes[nodes.length - 1]);
    }

    private static int first(double x, double[] nodes) {
      int first = 0;
      while (first < nodes.length - 4 && x > nodes[first + 2]) {
        first++;
      }
      return first;
    }

    private static double weight(double x, double[] nodes, int first, int at) {
      double weight = 1;
      for (int i = first; i < first + 4; i++) {
        if (i != at) {
          weight *= (x - nodes[i]) / (nodes[at] - nodes[i]);
        }
      }
      return weight;
    }
  }
}
