package holdfast.fits;

import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;

/** Sizes and deviations as they stand on a drawing. */
final class FitText {
  private FitText() {}

  /** A size in mm, at least three decimals; more only where a tenth of a micrometre is meant. */
  static String size(Length size) {
    String three = Numbers.fixed(size.mm(), 3);
    boolean exact = Math.abs(Double.parseDouble(three) - size.mm()) < 1e-6;
    return (exact ? three : Numbers.fixed(size.mm(), 4)) + " mm";
  }

  /** A deviation in µm with its sign, to a tenth of a micrometre where needed. */
  static String deviation(Length deviation) {
    double um = deviation.in(KnownUnits.UM);
    String text = Numbers.significant(Math.rint(um * 10) / 10, 8);
    return (um > 0 && !text.equals("0") ? "+" : "") + text + " µm";
  }
}
