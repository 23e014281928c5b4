// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.tables.FromTables;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import holdfast.tables.Table;

/**
 * Housings that are no concentric ring: a bore near the straight edge of a wide plate, and a bore in the middle of a
 * square block. Sizes are ratios: x is the distance from the centre of the bore to the nearest outline over the bore
 * diameter (edge distance e/d, or half side w/2d). Stresses are over the joint pressure.
 *
 * <p>Valid from x = 0.75; the finite elements reach to x = 3, beyond which the last ratio is kept: there the housing
 * differs from a wide plate by less than 5 %.
 */
public final class HousingShapeKernel {
  /** Least ratio for which there are results. */
  public static final double LEAST = 0.75;
  /** Greatest ratio for which there are results. */
  public static final double GREATEST = 3;

  private static final FromTables<Data> EDGE = Data.of("edge");
  private static final FromTables<Data> SQUARE = Data.of("square");

  private HousingShapeKernel() {}

  /**
   * Outside diameter, over the bore diameter, of the ring whose bore grows under pressure as that near an edge. Linear
   * between the finite-element results in the ratio to 2x.
   *
   * @param x edge distance over bore diameter (dimensionless), 0.75 or more
   * @return ratio of the equivalent ring; greater than 2x, for the plate helps on the other side
   * @throws InputException under 0.75
   */
  @Source(
      document = "plane-stress housing models",
      locator = "edge, equivalent ring",
      provenance = Provenance.REFERENCE_COMPUTATION)
  public static double edgeEquivalent(double x) {
    return 2 * check(x, "edge distance") * EDGE.get().equivalentOverSize(x);
  }

  /**
   * Greatest hoop stress at a bore near an edge, {@code (4x²+1)/(4x²-1)}: that of a ring of outside diameter 2e.
   *
   * @param x edge distance over bore diameter (dimensionless), 0.75 or more
   * @return stress over pressure
   * @throws InputException under 0.75
   */
  @Source(document = "Jeffery 1920", locator = "hole under pressure near a straight edge", provenance = Provenance.MEMORY)
  public static double edgeHoop(double x) {
    double q = 4 * check(x, "edge distance") * x;
    return (q + 1) / (q - 1);
  }

  /**
   * Stress along a straight edge at its point nearest to the bore, {@code 4/(4x²-1)}. It exceeds the hoop stress at the
   * bore where x is under 0.866.
   *
   * @param x edge distance over bore diameter (dimensionless), 0.75 or more
   * @return stress over pressure
   * @throws InputException under 0.75
   */
  @Source(document = "Jeffery 1920", locator = "hole under pressure near a straight edge", provenance = Provenance.MEMORY)
  public static double edgeOutline(double x) {
    return 4 / (4 * check(x, "edge distance") * x - 1);
  }

  /**
   * Outside diameter, over the bore diameter, of the ring whose bore grows under pressure as that of a square block.
   *
   * @param x half side over bore diameter (dimensionless), 0.75 or more
   * @return ratio of the equivalent ring
   * @throws InputException under 0.75
   */
  @Source(
      document = "plane-stress housing models",
      locator = "square, equivalent ring",
      provenance = Provenance.REFERENCE_COMPUTATION)
  public static double squareEquivalent(double x) {
    return 2 * check(x, "half side") * SQUARE.get().equivalentOverSize(x);
  }

  /**
   * Greatest hoop stress at the bore of a square block, on the diagonal: the finite-element results over those of a ring
   * of outside diameter w, linear between.
   *
   * @param x half side over bore diameter (dimensionless), 0.75 or more
   * @return stress over pressure
   * @throws InputException under 0.75
   */
  @Source(
      document = "plane-stress housing models",
      locator = "square, greatest hoop stress",
      provenance = Provenance.REFERENCE_COMPUTATION)
  public static double squareHoop(double x) {
    check(x, "half side");
    return edgeHoop(x) * SQUARE.get().hoopOverRing(x);
  }

  /**
   * Stress along the side of a square block at its middle: the finite-element results over {@link #edgeOutline}, linear
   * between.
   *
   * @param x half side over bore diameter (dimensionless), 0.75 or more
   * @return stress over pressure
   * @throws InputException under 0.75
   */
  @Source(
      document = "plane-stress housing models",
      locator = "square, stress at the middle of a side",
      provenance = Provenance.REFERENCE_COMPUTATION)
  public static double squareOutline(double x) {
    check(x, "half side");
    return edgeOutline(x) * SQUARE.get().outlineOverEdge(x);
  }

  private static double check(double x, String parameter) {
    if (!(x >= LEAST && x <= 1e6)) {
      throw new InputException(
          parameter + " over bore diameter",
          Numbers.significant(x, 4),
          "from 0.75 to 1000000",
          "a thinner wall has no result here; compute it with finite elements");
    }
    return x;
  }

  /** Results of one kind of model as ratios that vary slowly. */
  private static final class Data {
    final double[] x;
    final double[] equivalentOverSize;
    final double[] hoopOverRing;
    final double[] outlineOverEdge;

    Data(int size) {
      x = new double[size];
      equivalentOverSize = new double[size];
      hoopOverRing = new double[size];
      outlineOverEdge = new double[size];
    }

    static FromTables<Data> of(String kind) {
      return FromTables.of(tables -> read(tables.table("seats/finite-elements/2.20/housing-shapes"), kind));
    }

    private static Data read(Table table, String kind) {
      int count = 0;
      for (int row = 0; row < table.size(); row++) {
        count += table.text(row, "kind").equals(kind) ? 1 : 0;
      }
      Data data = new Data(count);
      int i = 0;
      for (int row = 0; row < table.size(); row++) {
        if (table.text(row, "kind").equals(kind)) {
          double x = table.number(row, "half_size");
          data.x[i] = x;
          data.equivalentOverSize[i] = table.number(row, "equivalent_diameter") / (2 * x);
          data.hoopOverRing[i] = table.number(row, "greatest_hoop") / edgeHoop(x);
          data.outlineOverEdge[i] = table.number(row, "outline_stress") / edgeOutline(x);
          i++;
        }
      }
      return data;
    }

    double equivalentOverSize(double at) {
      return at(equivalentOverSize, at);
    }

    double hoopOverRing(double at) {
      return at(hoopOverRing, at);
    }

    double outlineOverEdge(double at) {
      return at(outlineOverEdge, at);
    }

    private double at(double[] y, double at) {
      int last = x.length - 1;
      if (at >= x[last]) {
        return y[last];
      }
      int i = 0;
      while (at >= x[i + 1]) {
        i++;
      }
      return y[i] + (y[i + 1] - y[i]) * (at - x[i]) / (x[i + 1] - x[i]);
    }
  }
}
