// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.installation;

import static holdfast.quantity.Units.mm;

import holdfast.fits.Fit;
import holdfast.fits.TolerancedSize;
import holdfast.lubrication.FittingSize;
import holdfast.lubrication.Openings;
import holdfast.lubrication.Port;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Unit;
import holdfast.rollers.Deviations;
import holdfast.rollers.RollerKind;
import holdfast.rollers.RollerSeries;
import holdfast.rollers.RollerSize;
import holdfast.rollers.SpeedLimit;
import holdfast.rollers.StudSize;
import holdfast.seats.SeatGeometryKernel;
import holdfast.seats.SeatTilt;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Suites of the seat, the ports and the speed of rollers. */
final class RollerSuites {
  static final String HALF_DIGIT = "half a unit of the last printed digit";

  private RollerSuites() {}

  static List<Suite> all() {
    return List.of(
        suite("roller-geometry", "Shank, tilt by clearance and squareness of the face: worked numbers", RollerSuites::geometry,
            "holdfast.rollers.StudSize#shankLength", "holdfast.seats.SeatTilt#byClearance",
            "holdfast.seats.SeatGeometryKernel#squareness"),
        suite("roller-ports", "Printed grease holes against the rules of ports and fittings", RollerSuites::ports,
            "holdfast.lubrication.Openings#usual", "holdfast.lubrication.FittingSize#of"),
        suite("inch-seats", "Two practices for the hole of an inch stud", RollerSuites::inchSeat,
            "holdfast.rollers.RollerSeries#seatPractices", "holdfast.rollers.RollerTolerances"),
        suite("speed-factors", "Ratios of limits of speed", RollerSuites::speed, "holdfast.rollers.SpeedLimit#limit",
            "holdfast.rollers.RollerSpeedKernel#limit"),
        SeatPriceSuite.suite());
  }

  static Suite suite(String table, String title, RowSuite.Check check, String... calculations) {
    return RowSuite.of("installation/" + table, title, check, calculations);
  }

  private static RollerSize metric(Table cases, int row) {
    return RollerSeries.METRIC.size(mm(cases.number(row, "diameter")));
  }

  private static void geometry(Table cases, int row, List<Comparison> result) {
    String quantity = cases.text(row, "quantity");
    double computed =
        switch (quantity) {
          case "shank length" -> metric(cases, row).stud().shankLength().mm();
          case "tilt" -> {
            StudSize stud = metric(cases, row).stud();
            Length clearance = Fit.of(stud.diameter(), cases.text(row, "fit")).maximumClearance();
            yield SeatTilt.of(clearance, stud.diameter(), stud.shankLength()).build().byClearance().in(KnownUnits.MRAD);
          }
          case "squareness" -> SeatGeometryKernel.squareness(1e-3, 0.5, cases.number(row, "diameter"));
          default -> throw new IllegalStateException("no such quantity: " + quantity);
        };
    // Arithmetic on cited numbers checks slips, not the numbers; a rule of practice checks plausibility.
    Evidence evidence = quantity.equals("squareness") ? Evidence.PRACTICE : Evidence.RECOMBINED;
    result.add(
        Cases.comparison(cases, row, evidence)
            .numbers(cases.number(row, "value"), computed, Cases.halfLastDigit(cases.text(row, "value")),
                quantity.equals("tilt") ? "mrad" : "mm", HALF_DIGIT));
  }

  private static void ports(Table cases, int row, List<Comparison> result) {
    RollerSize size = RollerSeries.valueOf(cases.text(row, "series")).size(mm(cases.number(row, "outside_diameter")));
    Openings openings = Openings.usual(size);
    String names =
        Stream.of(Port.values())
            .filter(openings::has)
            .map(port -> port == Port.HEAD ? "head" : port == Port.RADIAL ? "radial" : "thread end")
            .collect(Collectors.joining(", "));
    // The rules and the printed holes come from the same catalogues: agreement guards against slips.
    result.add(
        Comparison.of(cases.address(row) + ", openings", Cases.source(cases, row), Evidence.RECOMBINED)
            .words(cases.text(row, "openings"), names.isEmpty() ? "none" : names));
    for (FittingSize fitting :
        FittingSize.of(size.series().system(), size.outsideDiameter(), size.stud().diameter())) {
      // The inch sizes and those by stud come from the catalogues that print the holes; the others from another one.
      boolean other = fitting.source().document().startsWith("Rolling bearings");
      result.add(
          Comparison.of(
                  cases.address(row) + ", fitting by " + fitting.source().document(),
                  Cases.source(cases, row),
                  other ? Evidence.PRINT : Evidence.RECOMBINED)
              .disclosed(other ? cases.text(row, "disclosed") : "")
              .words(cases.text(row, "fitting"), fitting.size()));
    }
  }

  private static void inchSeat(Table cases, int row, List<Comparison> result) {
    Length nominal = KnownUnits.INCH.of(0.625);
    Deviations stud = RollerSeries.INCH_STANDARD_STUD.size(KnownUnits.INCH.of(1.5)).tolerances().stud();
    Length lower;
    Length upper;
    if (cases.text(row, "practice").equals("1")) {
      Deviations hole = RollerSeries.INCH_STANDARD_STUD.seatPractices().get(0).deviations();
      lower = hole.lower();
      upper = hole.upper();
    } else {
      TolerancedSize hole = TolerancedSize.of(nominal, RollerSeries.INCH_STANDARD_STUD.seatPractices().get(1).designation());
      lower = hole.lower();
      upper = hole.upper();
    }
    String quantity = cases.text(row, "quantity");
    Length computed =
        switch (quantity) {
          case "hole upper deviation" -> upper;
          case "hole lower limit" -> nominal.plus(lower);
          case "hole upper limit" -> nominal.plus(upper);
          case "greatest clearance" -> upper.minus(stud.lower());
          case "greatest interference" -> stud.upper().minus(lower);
          default -> throw new IllegalStateException("no such quantity: " + quantity);
        };
    Unit<Length> unit = cases.text(row, "unit").equals("in") ? KnownUnits.INCH : KnownUnits.MM;
    result.add(
        Cases.comparison(cases, row, Evidence.RECOMBINED)
            .numbers(cases.number(row, "value"), computed.in(unit), Cases.halfLastDigit(cases.text(row, "value")),
                unit.symbol(), HALF_DIGIT));
  }

  private static void speed(Table cases, int row, List<Comparison> result) {
    SpeedLimit open = SpeedLimit.greased(RollerKind.valueOf(cases.text(row, "kind")), mm(16));
    SpeedLimit caged = SpeedLimit.greased(RollerKind.CAGED_NEEDLE, mm(16));
    String ratio = cases.text(row, "ratio");
    double computed =
        switch (ratio) {
          case "oil over grease" -> open.withOil().limit().ratio(open.limit());
          case "sealed over open" -> open.withSeals().limit().ratio(open.limit());
          case "full complement over caged" -> open.limit().ratio(caged.limit());
          case "axial over radial" -> open.withAxialLoad().limit().ratio(open.limit());
          default -> throw new IllegalStateException("no such ratio: " + ratio);
        };
    // Only the ratios of oil come from catalogues on which the calculation does not rest.
    Evidence evidence = ratio.startsWith("oil") ? Evidence.PRINT : Evidence.RECOMBINED;
    result.add(
        Cases.comparison(cases, row, evidence)
            .numbers(cases.number(row, "value"), computed, Cases.halfLastDigit(cases.text(row, "value")), "", HALF_DIGIT));
  }
}
