// SPDX-License-Identifier: Apache-2.0
package holdfast.sheet;

import holdfast.quantity.Force;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Mass;
import holdfast.quantity.OperatingTime;
import holdfast.quantity.Numbers;
import holdfast.quantity.Quantity;
import holdfast.quantity.Speed;
import holdfast.quantity.Stress;
import holdfast.quantity.Temperature;
import holdfast.quantity.Torque;
import holdfast.quantity.Unit;
import holdfast.trace.Message;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;

/** The units in which a sheet prints its quantities. Quantities are converted from full precision, never from print. */
public enum SheetUnits {
  /** Metric units alone. */
  METRIC("metric"),
  /** Inches, pounds and degrees Fahrenheit alone. */
  INCH("inch"),
  /** Both, metric first. */
  METRIC_AND_INCH("metric (inch)"),
  /** Both, inch first. */
  INCH_AND_METRIC("inch (metric)");

  /** Decimals of a size in inches: 0.00001 in is a quarter of a micrometre. */
  private static final int INCH_DECIMALS = 5;

  private final String label;

  SheetUnits(String label) {
    this.label = label;
  }

  /**
   * A quantity.
   *
   * @param quantity what is printed; angles, speeds of rotation, viscosities and times have one form only
   * @return for example {@code "18 mm (0.70866 in)"}
   */
  public String text(Quantity<?> quantity) {
    Objects.requireNonNull(quantity, "quantity");
    return both(metric(quantity), inch(quantity));
  }

  /**
   * A band of two quantities.
   *
   * @param low its low end
   * @param high its high end
   * @param <Q> their kind
   * @return for example {@code "1.463 kN … 26.71 kN (328.9 lbf … 6005 lbf)"}
   */
  public <Q extends Quantity<Q>> String span(Q low, Q high) {
    Objects.requireNonNull(low, "low");
    Objects.requireNonNull(high, "high");
    return both(metric(low) + " … " + metric(high), inch(low) + " … " + inch(high));
  }

  /**
   * Limits of size. Inches are rounded inwards to 0.00001 in and millimetres to 0.0001 mm, so that a converted limit never
   * accepts what the original refuses.
   *
   * @param low lower limit
   * @param high upper limit
   * @return for example {@code "17.964 mm … 17.975 mm (0.70725 in … 0.70767 in)"}
   */
  public String limits(Length low, Length high) {
    Objects.requireNonNull(low, "low");
    Objects.requireNonNull(high, "high");
    String inches = inches(low, RoundingMode.CEILING) + " … " + inches(high, RoundingMode.FLOOR);
    return both(millimetres(low, RoundingMode.CEILING) + " … " + millimetres(high, RoundingMode.FLOOR), inches);
  }

  /**
   * A pair of limit deviations, the upper first as on a drawing.
   *
   * @param upper upper limit deviation
   * @param lower lower limit deviation
   * @return for example {@code "-25 µm / -36 µm"}
   */
  public String deviations(Length upper, Length lower) {
    Objects.requireNonNull(upper, "upper");
    Objects.requireNonNull(lower, "lower");
    return both(
        micrometres(upper) + " / " + micrometres(lower),
        plus(upper) + inches(upper, RoundingMode.HALF_EVEN) + " / " + plus(lower) + inches(lower, RoundingMode.HALF_EVEN));
  }

  /**
   * A number as a shop reads it, rounded to the safe side in each of the units.
   *
   * @param quantity what is printed: kN or lbf, N·m or lbf·in, mm or in, g or oz, whole °C or °F, h
   * @param side the safe side
   * @param digits significant digits, 1 to 12; temperatures are whole degrees
   * @return for example {@code "21 kN (4700 lbf)"}
   * @throws holdfast.quantity.InputException if the digits are out of range
   */
  public String safe(Quantity<?> quantity, SafeRounding side, int digits) {
    Objects.requireNonNull(quantity, "quantity");
    Objects.requireNonNull(side, "side");
    return both(safe(quantity, side, digits, false), safe(quantity, side, digits, true));
  }

  private static String safe(Quantity<?> quantity, SafeRounding side, int digits, boolean inch) {
    if (quantity instanceof Temperature temperature) {
      Unit<Temperature> unit = inch ? KnownUnits.DEG_F : KnownUnits.DEG_C;
      return side.whole(temperature.in(unit)) + " " + unit.symbol();
    }
    if (quantity instanceof Force force) {
      return rounded(force, inch ? KnownUnits.LBF : KnownUnits.KN, side, digits);
    }
    if (quantity instanceof Torque torque) {
      return rounded(torque, inch ? KnownUnits.LBF_IN : KnownUnits.N_M, side, digits);
    }
    if (quantity instanceof Length length) {
      return rounded(length, inch ? KnownUnits.INCH : KnownUnits.MM, side, digits);
    }
    if (quantity instanceof Mass mass) {
      return rounded(mass, inch ? KnownUnits.OZ : KnownUnits.G, side, digits);
    }
    if (quantity instanceof OperatingTime time) {
      return rounded(time, KnownUnits.H, side, digits);
    }
    return quantity.toString();
  }

  private static <Q extends Quantity<Q>> String rounded(Q quantity, Unit<Q> unit, SafeRounding side, int digits) {
    return side.text(quantity.in(unit), digits) + " " + unit.symbol();
  }

  /**
   * A size that is no limit: millimetres to a hundredth; inches as a fraction of 64 where they are one, else to a thousandth.
   *
   * @param length the size
   * @return for example {@code "16 mm"} or {@code "3/4 in"}
   */
  public String size(Length length) {
    Objects.requireNonNull(length, "length");
    String mm = Numbers.significant(Math.rint(length.mm() * 100) / 100, 7) + " mm";
    return both(mm, fraction(length.in(KnownUnits.INCH)) + " in");
  }

  private static String fraction(double inches) {
    double parts = inches * 64;
    if (Math.abs(parts - Math.rint(parts)) > 1e-6 || Math.abs(parts) > 1e6) {
      return Numbers.significant(Math.rint(inches * 1000) / 1000, 7);
    }
    long whole = (long) Math.rint(parts) / 64;
    long rest = Math.abs((long) Math.rint(parts) % 64);
    long lower = 64;
    while (rest % 2 == 0 && rest > 0) {
      rest /= 2;
      lower /= 2;
    }
    String part = rest == 0 ? "" : rest + "/" + lower;
    return whole == 0 && !part.isEmpty() ? (inches < 0 ? "-" : "") + part : part.isEmpty() ? "" + whole : whole + "-" + part;
  }

  /**
   * Whether inches come first.
   *
   * @return true for inch sheets, with or without metric beside
   */
  public boolean inchFirst() {
    return this == INCH || this == INCH_AND_METRIC;
  }

  /**
   * The unit to write a force in.
   *
   * @return for example {@code "kN"}
   */
  public String forceUnit() {
    return both(KnownUnits.KN.symbol(), KnownUnits.LBF.symbol());
  }

  /**
   * The unit to write a torque in.
   *
   * @return for example {@code "N·m"}
   */
  public String torqueUnit() {
    return both(KnownUnits.N_M.symbol(), KnownUnits.LBF_IN.symbol());
  }

  /**
   * The unit to write a temperature in.
   *
   * @return for example {@code "°C"}
   */
  public String temperatureUnit() {
    return both(KnownUnits.DEG_C.symbol(), KnownUnits.DEG_F.symbol());
  }

  /**
   * A sentence, its quantities in the units of the sheet.
   *
   * @param message the sentence
   * @return for example {@code "the arm of 0.4252 in (10.8 mm) is short"}
   */
  public String text(Message message) {
    Objects.requireNonNull(message, "message");
    return message.text(this::text);
  }

  private String both(String metric, String inch) {
    if (metric.equals(inch)) {
      return metric;
    }
    return switch (this) {
      case METRIC -> metric;
      case INCH -> inch;
      case METRIC_AND_INCH -> metric + " (" + inch + ")";
      case INCH_AND_METRIC -> inch + " (" + metric + ")";
    };
  }

  /** One unit a quantity on the whole paper, however small or large; lengths keep the micrometre of the trade. */
  private static String metric(Quantity<?> quantity) {
    if (quantity instanceof Force force) {
      return in(force, KnownUnits.KN);
    }
    if (quantity instanceof Torque torque) {
      return in(torque, KnownUnits.N_M);
    }
    // Elastic moduli alone are large enough for GPa.
    return quantity.toString();
  }

  private static String inch(Quantity<?> quantity) {
    if (quantity instanceof Length length) {
      return inches(length, RoundingMode.HALF_EVEN);
    }
    if (quantity instanceof Force force) {
      return in(force, KnownUnits.LBF);
    }
    if (quantity instanceof Torque torque) {
      return in(torque, KnownUnits.LBF_IN);
    }
    if (quantity instanceof Stress stress) {
      return in(stress, KnownUnits.KSI);
    }
    if (quantity instanceof Temperature temperature) {
      return in(temperature, KnownUnits.DEG_F);
    }
    if (quantity instanceof Mass mass) {
      return in(mass, KnownUnits.OZ);
    }
    if (quantity instanceof Speed speed) {
      return in(speed, KnownUnits.FT_PER_MIN);
    }
    return quantity.toString();
  }

  private static <Q extends Quantity<Q>> String in(Q quantity, Unit<Q> unit) {
    return Numbers.significant(quantity.in(unit), 4) + " " + unit.symbol();
  }

  private static String inches(Length length, RoundingMode rounding) {
    // The division leaves dust in the 16th digit, which must not carry a limit over the next step.
    BigDecimal inches = new BigDecimal(Numbers.significant(length.in(KnownUnits.INCH), 12));
    return plain(inches.setScale(INCH_DECIMALS, rounding)) + " in";
  }

  /** At least four decimals, as inches are written in the shop. */
  private static String plain(BigDecimal inches) {
    BigDecimal stripped = inches.stripTrailingZeros();
    return (stripped.scale() < 4 ? stripped.setScale(4) : stripped).toPlainString();
  }

  private static String millimetres(Length length, RoundingMode rounding) {
    BigDecimal mm = new BigDecimal(Numbers.significant(length.mm(), 12)).setScale(4, rounding).stripTrailingZeros();
    return (mm.scale() < 3 ? mm.setScale(3) : mm).toPlainString() + " mm";
  }

  private static String micrometres(Length deviation) {
    return plus(deviation) + Numbers.significant(Math.rint(deviation.in(KnownUnits.UM) * 100) / 100, 7) + " µm";
  }

  private static String plus(Length deviation) {
    return deviation.mm() > 1e-9 ? "+" : "";
  }

  /** For example {@code "metric (inch)"}. */
  @Override
  public String toString() {
    return label;
  }
}
