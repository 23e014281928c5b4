// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.Fit;
import holdfast.fits.LimitDeviations;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.quantity.Unit;
import holdfast.sheet.Block;
import holdfast.sheet.SheetUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Draws the tolerance zones of a fit to scale about the zero line. */
final class FitPicture {
  private static final double TOP = 26;
  private static final double HEIGHT = 96;

  private final Fit fit;
  private final SheetUnits units;
  private final Unit<Length> unit;
  private final double highest;
  private final double scale;

  private FitPicture(Fit fit, SheetUnits units) {
    this.fit = fit;
    this.units = units;
    this.unit = units.inchFirst() ? KnownUnits.THOU : KnownUnits.UM;
    LimitDeviations hole = fit.hole().deviations();
    LimitDeviations shaft = fit.shaft().deviations();
    double high = Math.max(0, Math.max(drawn(hole.upper()), drawn(shaft.upper())));
    double low = Math.min(0, Math.min(drawn(hole.lower()), drawn(shaft.lower())));
    this.highest = high;
    this.scale = HEIGHT / (high - low);
  }

  static Block.Picture of(Fit fit, SheetUnits units, String inner) {
    return new FitPicture(fit, units).draw(inner);
  }

  private Block.Picture draw(String inner) {
    String title = "Tolerance zones of " + units.text(fit.nominalSize()) + " " + PartsSection.designation(fit, inner)
        + ", to scale, deviations in " + unit.symbol();
    LimitDeviations bore = fit.hole().deviations();
    LimitDeviations stud = fit.shaft().deviations();
    String description =
        "bore " + units.deviations(bore.upper(), bore.lower()) + ", " + inner + " " + units.deviations(stud.upper(), stud.lower())
            + " from the nominal size: " + fit.kind();
    List<Map<String, Object>> zones = new ArrayList<>();
    zones.add(zone("bore", bore, 110, "url(#hatch)"));
    zones.add(zone(inner, stud, 250, "#ddd"));
    return new Block.Picture(title, description, "tolerance-zones.svg",
        Map.of(
            "zones", zones,
            "zero", px(y(0)),
            "bottom", px(TOP + HEIGHT + 14)));
  }

  private Map<String, Object> zone(String name, LimitDeviations deviations, double x, String fill) {
    double upper = y(drawn(deviations.upper()));
    double lower = y(drawn(deviations.lower()));
    return Map.of(
        "name", name,
        "x", px(x),
        "middle", px(x + 40),
        "right", px(x + 84),
        "y", px(upper),
        "height", px(Math.max(lower - upper, 1)),
        "fill", fill,
        "upper", signed(deviations.upper()),
        "lower", signed(deviations.lower()),
        "labels", Map.of("upper", px(upper - 2), "lower", px(lower + 9)));
  }

  private double y(double deviation) {
    return TOP + (highest - deviation) * scale;
  }

  private double drawn(Length length) {
    return length.in(unit);
  }

  private String signed(Length deviation) {
    String text = Numbers.significant(Math.rint(drawn(deviation) * 100) / 100, 8);
    return text.startsWith("-") || text.equals("0") ? text.replace('-', '−') : "+" + text;
  }

  private static String px(double value) {
    return Numbers.significant(Math.rint(value * 100) / 100, 6);
  }
}
