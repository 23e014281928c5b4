// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.bearings;

import holdfast.bearings.BearingType;
import holdfast.bearings.EquivalentLoadKernel;
import holdfast.bearings.FactorFcKernel;
import holdfast.bearings.PointContactKernel;
import holdfast.bearings.ReliabilityKernel;
import holdfast.bearings.StaticLoadKernel;
import holdfast.bearings.StaticRatingKernel;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;
import java.util.Set;

/** Cells of the factor tables computed anew by the formulas behind them. */
final class FactorSuites {
  private static final String HALF = "half a unit of the last printed digit";
  private static final SourceRef CLOSED_FORM = SourceRef.memory("ISO/TR 1281-1", "fc in closed form");
  private static final SourceRef HERTZ = SourceRef.memory("ISO 76:2006", "f0 from the contact stresses 4200 and 4600 MPa");
  // E = 207 GPa, ν = 0.3 and grooves of 0.52, 0.53 and 0.54 Dw are recalled and leave these cells just outside rounding.
  private static final String F0_REASON =
      "rounded differently by up to 0.004: modulus and groove radii of the calculation are recalled";
  private static final Set<String> F0_DIFFERENT = Set.of("thrust 0.12", "radial 0.13", "thrust 0.17", "thrust 0.25");
  private static final Set<String> NOT_INTERPOLATED = Set.of("12 0.353 y_single", "26 y_single", "26 y_double_low",
      "26 x_double", "26 y_double", "26 e", "12 y0_double", "36 y0_double");

  private FactorSuites() {}

  static List<Suite> all() {
    return List.of(
        new RowSuite("bearings/fc-radial-ball", "fc of radial ball bearings against the closed form",
            List.of("holdfast.bearings.FactorFcKernel#radialBall"), () -> table("iso-281/2007/fc-radial-ball"),
            FactorSuites::radialBall),
        new RowSuite("bearings/fc-radial-roller", "fc of radial roller bearings against the closed form",
            List.of("holdfast.bearings.FactorFcKernel#radialRoller"), () -> table("iso-281/2007/fc-radial-roller"),
            (t, row, result) -> {
              double gamma = t.number(row, "ratio");
              result.add(cell(t, row, "fc", ClosedFormFactor.radialRoller(gamma),
                  FactorFcKernel.radialRoller(gamma), CLOSED_FORM));
            }),
        new RowSuite("bearings/fc-thrust-ball", "fc of thrust ball bearings against the closed form",
            List.of("holdfast.bearings.FactorFcKernel#thrustBall"), () -> table("iso-281/2007/fc-thrust-ball"),
            (t, row, result) -> {
              double gamma = t.number(row, "ratio");
              double alpha = t.number(row, "alpha");
              result.add(cell(t, row, "fc", ClosedFormFactor.thrustBall(gamma, alpha),
                  FactorFcKernel.thrustBall(Math.toRadians(alpha), gamma), CLOSED_FORM));
            }),
        new RowSuite("bearings/fc-thrust-roller", "fc of thrust roller bearings against the closed form",
            List.of("holdfast.bearings.FactorFcKernel#thrustRoller"), () -> table("iso-281/2007/fc-thrust-roller"),
            (t, row, result) -> {
              double gamma = t.number(row, "ratio");
              double alpha = t.number(row, "alpha");
              result.add(cell(t, row, "fc", ClosedFormFactor.thrustRoller(gamma, alpha),
                  FactorFcKernel.thrustRoller(Math.toRadians(alpha), gamma), CLOSED_FORM));
            }),
        new RowSuite("bearings/f0", "f0 against the load of the harder contact at the permissible stress",
            List.of("holdfast.bearings.StaticRatingKernel#f0", "holdfast.bearings.PointContactKernel#loadAtStress"),
            () -> table("iso-76/2006/f0"), FactorSuites::f0),
        new RowSuite("bearings/thrust-ball-factors", "X, Y and e of thrust ball bearings, printed values against the formulas",
            List.of("holdfast.bearings.EquivalentLoadKernel#angleX", "holdfast.bearings.EquivalentLoadKernel#angleY",
                "holdfast.bearings.EquivalentLoadKernel#angleE"),
            () -> table("iso-281/2007/xy-thrust-ball"), FactorSuites::thrustBallFactors),
        new RowSuite("bearings/radial-ball-factors", "Y of radial ball bearings against continuity at Fa/Fr = e",
            List.of("holdfast.bearings.EquivalentLoadKernel#radialBallY"), () -> table("iso-281/2007/xy-radial-ball"),
            FactorSuites::continuity),
        new RowSuite("bearings/relative-axial-load", "Relative axial load of one and two rows against the load on a ball",
            List.of("holdfast.bearings.EquivalentLoadKernel#relativeAxialLoad"), () -> table("iso-281/2007/xy-radial-ball"),
            FactorSuites::relativeAxialLoad),
        new RowSuite("bearings/factors-between-angles",
            "X, Y and e between tabulated angles against rows of the national adoption",
            List.of("holdfast.bearings.EquivalentLoadKernel#radialBallX", "holdfast.bearings.EquivalentLoadKernel#radialBallY",
                "holdfast.bearings.EquivalentLoadKernel#radialBallE"),
            () -> table("gost-18855/2013/xy-radial-ball-additions"), FactorSuites::betweenAngles),
        new RowSuite("bearings/static-factors-between-angles",
            "X0 and Y0 between tabulated angles against rows of the national adoption",
            List.of("holdfast.bearings.StaticLoadKernel#x0", "holdfast.bearings.StaticLoadKernel#y0"),
            () -> table("gost-18854/2013/x0-y0-additions"), FactorSuites::staticBetweenAngles),
        new RowSuite("bearings/reliability-factor", "a1 of the table against the three-parameter distribution",
            List.of("holdfast.bearings.ReliabilityKernel#a1"), () -> table("iso-281/2007/a1"),
            (t, row, result) -> result.add(
                Comparison.of(t.address(row), t.cell(row, "a1").source(), Evidence.RECONSTRUCTION)
                    .numbers(t.number(row, "a1"), ReliabilityKernel.a1(t.number(row, "reliability")),
                        Cases.halfLastDigit(t.text(row, "a1")), "", HALF))),
        new RowSuite("bearings/viscosity-grades", "Limits of the viscosity grades against ten percent of the mid viscosity",
            List.of(), () -> table("iso-3448/1992/viscosity-grades"), FactorSuites::grades));
  }

  private static Table table(String path) {
    return TableSet.bundled().table("bearings/" + path);
  }

  /** One cell: printed, against the formula; the kernel must give the printed cell at the tabulated argument. */
  private static Comparison cell(Table t, int row, String column, double formula, double kernel, SourceRef source) {
    double printed = t.number(row, column);
    // A kernel that does not return the cell itself fails through NaN, which agrees with nothing.
    double computed = Math.abs(kernel - printed) < 1e-9 ? formula : Double.NaN;
    return Comparison.of(t.address(row) + ", " + column, source, Evidence.RECONSTRUCTION)
        .numbers(printed, computed, Cases.halfLastDigit(t.text(row, column)), "", HALF);
  }

  private static void radialBall(Table t, int row, List<Comparison> result) {
    double g = t.number(row, "ratio");
    result.add(cell(t, row, "single_row", ClosedFormFactor.radialBall(g, 0.52, 0.52, 0.95),
        FactorFcKernel.radialBall(BearingType.DEEP_GROOVE_BALL, 1, g), CLOSED_FORM));
    result.add(cell(t, row, "double_row", ClosedFormFactor.radialBall(g, 0.52, 0.52, 0.90),
        FactorFcKernel.radialBall(BearingType.DEEP_GROOVE_BALL, 2, g), CLOSED_FORM));
    result.add(cell(t, row, "self_aligning", ClosedFormFactor.radialBall(g, 0.53, 0.5 * (1 + 1 / g), 1),
        FactorFcKernel.radialBall(BearingType.SELF_ALIGNING_BALL, 2, g), CLOSED_FORM));
    result.add(cell(t, row, "magneto", ClosedFormFactor.radialBall(g, 0.52, Double.POSITIVE_INFINITY, 0.95),
        FactorFcKernel.radialBall(BearingType.MAGNETO_BALL, 1, g), CLOSED_FORM));
  }

  private static void f0(Table t, int row, List<Comparison> result) {
    double g = t.number(row, "ratio");
    double radial = Math.min(PointContactKernel.innerLoadAtStress(4200, 1, g, 0.52),
        PointContactKernel.outerLoadAtStress(4200, 1, g, 0.53)) / 5;
    // At γ = 0 the spherical raceway is a plane.
    double sphere = g == 0 ? 1e12 : 0.5 * (1 + 1 / g);
    double selfAligning = Math.min(PointContactKernel.innerLoadAtStress(4600, 1, g, 0.53),
        PointContactKernel.outerLoadAtStress(4600, 1, g, sphere)) / 5;
    double thrust = Math.min(PointContactKernel.innerLoadAtStress(4200, 1, g, 0.54),
        PointContactKernel.outerLoadAtStress(4200, 1, g, 0.54));
    f0Cell(t, row, "radial", radial, BearingType.DEEP_GROOVE_BALL, result);
    f0Cell(t, row, "self_aligning", selfAligning, BearingType.SELF_ALIGNING_BALL, result);
    if (t.has(row, "thrust")) {
      f0Cell(t, row, "thrust", thrust, BearingType.THRUST_BALL, result);
    }
  }

  private static void f0Cell(Table t, int row, String column, double formula, BearingType type, List<Comparison> result) {
    double printed = t.number(row, column);
    double kernel = StaticRatingKernel.f0(type, t.number(row, "ratio"));
    double computed = Math.abs(kernel - printed) < 1e-9 ? formula : Double.NaN;
    String reason = F0_DIFFERENT.contains(column + " " + t.text(row, "ratio")) ? F0_REASON : "";
    result.add(Comparison.of(t.address(row) + ", " + column, HERTZ, Evidence.RECONSTRUCTION).disclosed(reason)
        .numbers(printed, computed, Cases.halfLastDigit(t.text(row, column)), "", HALF));
  }

  private static void thrustBallFactors(Table t, int row, List<Comparison> result) {
    double alpha = Math.toRadians(t.number(row, "alpha"));
    BearingType type = BearingType.THRUST_BALL;
    printed(t, row, "x_single", EquivalentLoadKernel.angleX(type, 1, alpha, true), result);
    printed(t, row, "x_double_low", EquivalentLoadKernel.angleX(type, 2, alpha, false), result);
    printed(t, row, "y_double_low", EquivalentLoadKernel.angleY(type, 2, alpha, false), result);
    printed(t, row, "x_double", EquivalentLoadKernel.angleX(type, 2, alpha, true), result);
    printed(t, row, "e", EquivalentLoadKernel.angleE(type, alpha), result);
  }

  private static void printed(Table t, int row, String column, double computed, List<Comparison> result) {
    // Two decimals throughout; trailing zeros are dropped in the table.
    result.add(Comparison.of(t.address(row) + ", " + column, t.cell(row, column).source(), Evidence.RECONSTRUCTION)
        .numbers(t.number(row, column), computed, 0.005, "", HALF));
  }

  /** X Fr + Y Fa must meet the branch up to e: Y = Ylow + (1 - X)/e; e, printed to 0.01, decides how well. */
  private static void continuity(Table t, int row, List<Comparison> result) {
    double alpha = t.number(row, "alpha");
    double e = t.number(row, "e");
    SourceRef source = SourceRef.derived("both branches of P meet at Fa/Fr = e");
    if (alpha != 5) {
      double x = t.number(row, "x_single");
      result.add(Comparison.of(t.address(row) + ", y_single", source, Evidence.RECONSTRUCTION)
          .numbers(t.number(row, "y_single"), (1 - x) / e, 0.005 + (0.005 * (1 - x) / e + 0.005) / e, "",
              "half a unit of the last printed digit of Y, X and e"));
    }
    if (alpha != 0) {
      double x = t.number(row, "x_double");
      result.add(Comparison.of(t.address(row) + ", y_double", source, Evidence.RECONSTRUCTION)
          .numbers(t.number(row, "y_double"), t.number(row, "y_double_low") + (1 - x) / e,
              0.01 + (0.005 * (1 - x) / e + 0.005) / e, "", "half a unit of the last printed digit of both Y, X and e"));
    }
  }

  /**
   * Both heads of a row belong to one load on a ball. For radial contact all rows share it, for angular contact one row
   * carries it; C0r is that of all rows, so f0, which cancels, may have any value.
   */
  private static void relativeAxialLoad(Table t, int row, List<Comparison> result) {
    if (!t.has(row, "f0_fa_over_c0r")) {
      return;
    }
    double alpha = Math.toRadians(t.number(row, "alpha"));
    BearingType type = alpha == 0 ? BearingType.DEEP_GROOVE_BALL : BearingType.ANGULAR_CONTACT_BALL;
    double balls = 12 * 9.525 * 9.525;
    double tolerance = Cases.halfLastDigit(t.text(row, "f0_fa_over_c0r"))
        + Cases.halfLastDigit(t.text(row, "fa_over_zdw2")) / Math.cos(alpha);
    for (int rows = 1; rows <= 2; rows++) {
      double fa = t.number(row, "fa_over_zdw2") * balls * (alpha == 0 ? rows : 1);
      double computed = EquivalentLoadKernel.relativeAxialLoad(type, rows, 14.2, fa, 14.2 * rows * balls * Math.cos(alpha));
      result.add(Comparison.of(t.address(row) + ", i = " + rows, t.cell(row, "f0_fa_over_c0r").source(), Evidence.RECONSTRUCTION)
          .numbers(t.number(row, "f0_fa_over_c0r"), computed, tolerance, "",
              "half a unit of the last printed digit of both heads"));
    }
  }

  private static void betweenAngles(Table t, int row, List<Comparison> result) {
    double alpha = Math.toRadians(t.number(row, "alpha"));
    double load = t.has(row, "f0_fa_over_c0r") ? t.number(row, "f0_fa_over_c0r") : 0;
    between(t, row, "x_single", EquivalentLoadKernel.radialBallX(1, alpha, load), result);
    between(t, row, "y_single", EquivalentLoadKernel.radialBallY(1, alpha, load), result);
    between(t, row, "y_double_low", EquivalentLoadKernel.radialBallYLow(2, alpha, load), result);
    between(t, row, "x_double", EquivalentLoadKernel.radialBallX(2, alpha, load), result);
    between(t, row, "y_double", EquivalentLoadKernel.radialBallY(2, alpha, load), result);
    between(t, row, "e", EquivalentLoadKernel.radialBallE(2, alpha, load), result);
  }

  private static void staticBetweenAngles(Table t, int row, List<Comparison> result) {
    double alpha = Math.toRadians(t.number(row, "alpha"));
    BearingType type = BearingType.ANGULAR_CONTACT_BALL;
    between(t, row, "x0_single", StaticLoadKernel.x0(type, 1, alpha), result);
    between(t, row, "y0_single", StaticLoadKernel.y0(type, 1, alpha), result);
    between(t, row, "x0_double", StaticLoadKernel.x0(type, 2, alpha), result);
    between(t, row, "y0_double", StaticLoadKernel.y0(type, 2, alpha), result);
  }

  private static void between(Table t, int row, String column, double computed, List<Comparison> result) {
    boolean byLoad = t.descriptor().columns().containsKey("f0_fa_over_c0r") && t.has(row, "f0_fa_over_c0r");
    String place = t.text(row, "alpha") + (byLoad ? " " + t.text(row, "f0_fa_over_c0r") : "");
    String reason = NOT_INTERPOLATED.contains(place + " " + column)
        ? "the added row does not lie on the line between its neighbours as printed" : "";
    result.add(Comparison.of(t.address(row) + ", " + column, t.cell(row, column).source(), Evidence.PRINT).disclosed(reason)
        .numbers(t.number(row, column), computed, 0.01, "",
            "half a unit of the last printed digit of the row and of those beside it"));
  }

  private static void grades(Table t, int row, List<Comparison> result) {
    double mid = t.number(row, "mid");
    for (String end : List.of("least", "greatest")) {
      result.add(Comparison.of(t.address(row) + ", " + end, t.cell(row, end).source(), Evidence.RECONSTRUCTION)
          .numbers(t.number(row, end), mid * (end.equals("least") ? 0.9 : 1.1), Cases.halfLastDigit(t.text(row, end)),
              "mm²/s", HALF));
    }
  }
}
