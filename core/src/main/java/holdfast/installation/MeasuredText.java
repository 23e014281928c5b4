// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.FitKind;
import holdfast.fits.LimitsOfSize;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.quantity.Unit;
import holdfast.seats.Band;
import holdfast.sheet.SheetUnits;

/** Measured sizes and clearances in the units of the sheet: tenths of a micrometre, hundred-thousandths of an inch. */
final class MeasuredText {
  private final SheetUnits units;

  MeasuredText(SheetUnits units) {
    this.units = units;
  }

  String size(Length size) {
    return both(size.text(KnownUnits.MM, 4), inch(size));
  }

  String sizes(LimitsOfSize sizes) {
    String mm = sizes.lower().text(KnownUnits.MM, 4) + " … " + sizes.upper().text(KnownUnits.MM, 4);
    return both(mm, inch(sizes.lower()) + " … " + inch(sizes.upper()));
  }

  /** Sizes that are permitted: rounded inwards, so that what the text permits is permitted. */
  String zone(LimitsOfSize zone) {
    return both(inwards(zone, KnownUnits.MM, 4), inwards(zone, KnownUnits.INCH, 5));
  }

  private static String inwards(LimitsOfSize zone, Unit<Length> unit, int decimals) {
    double steps = Math.pow(10, decimals);
    // A limit that is a whole number of steps but for the noise of binary fractions stays where it is.
    double lower = Math.ceil(zone.lower().in(unit) * steps - 1e-6) / steps;
    double upper = Math.floor(zone.upper().in(unit) * steps + 1e-6) / steps;
    return Numbers.fixed(lower, decimals) + " " + unit.symbol() + " … " + Numbers.fixed(upper, decimals) + " " + unit.symbol();
  }

  /** An amount without sign. */
  String amount(Length amount) {
    Length positive = amount.mm() < 0 ? amount.negated() : amount;
    return both(positive.text(KnownUnits.UM, 1), inch(positive));
  }

  /** A clearance or an interference, in words. */
  String clearance(Length clearance) {
    return amount(clearance) + (clearance.mm() < 0 ? " interference" : " clearance");
  }

  /** A span of clearances or interferences, the smaller amount first; in a transition fit the loose end first. */
  String clearances(Band<Length> band) {
    return switch (FitKind.of(band.least(), band.greatest())) {
      case CLEARANCE -> amount(band.least()) + " … " + clearance(band.greatest());
      case INTERFERENCE -> amount(band.greatest()) + " … " + clearance(band.least());
      case TRANSITION -> clearance(band.greatest()) + " … " + clearance(band.least());
    };
  }

  private static String inch(Length length) {
    return length.text(KnownUnits.INCH, 5);
  }

  private String both(String metric, String inch) {
    return switch (units) {
      case METRIC -> metric;
      case INCH -> inch;
      case METRIC_AND_INCH -> metric + " (" + inch + ")";
      case INCH_AND_METRIC -> inch + " (" + metric + ")";
    };
  }
}
