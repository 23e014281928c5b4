package holdfast.installation;

import holdfast.fits.FitKind;
import holdfast.fits.LimitsOfSize;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.seats.Band;

/** Measured sizes and clearances as text: tenths of a micrometre, and for inch drawings hundredths of a thou beside them. */
final class MeasuredText {
  private final boolean inches;

  MeasuredText(boolean inches) {
    this.inches = inches;
  }

  String size(Length size) {
    String mm = size.text(KnownUnits.MM, 4);
    return inches ? size.text(KnownUnits.INCH, 5) + " (" + mm + ")" : mm;
  }

  String sizes(LimitsOfSize sizes) {
    String mm = sizes.lower().text(KnownUnits.MM, 4) + " … " + sizes.upper().text(KnownUnits.MM, 4);
    return inches
        ? sizes.lower().text(KnownUnits.INCH, 5) + " … " + sizes.upper().text(KnownUnits.INCH, 5) + " (" + mm + ")"
        : mm;
  }

  /** An amount without sign. */
  String amount(Length amount) {
    Length positive = amount.mm() < 0 ? amount.negated() : amount;
    String um = positive.text(KnownUnits.UM, 1);
    return inches ? positive.text(KnownUnits.INCH, 5) + " (" + um + ")" : um;
  }

  /** A clearance or an interference, in words. */
  String clearance(Length clearance) {
    return amount(clearance) + (clearance.mm() < 0 ? " interference" : " clearance");
  }

  /** A span of clearances, the loose end first. */
  String clearances(Band<Length> band) {
    FitKind kind = FitKind.of(band.least(), band.greatest());
    return kind == FitKind.TRANSITION
        ? clearance(band.greatest()) + " … " + clearance(band.least())
        : amount(band.greatest()) + " … " + clearance(band.least());
  }
}
