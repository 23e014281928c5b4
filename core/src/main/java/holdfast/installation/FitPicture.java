package holdfast.installation;

import holdfast.fits.Fit;
import holdfast.fits.LimitDeviations;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.sheet.Block;
import holdfast.sheet.Templates;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Draws the tolerance zones of a fit to scale about the zero line. */
final class FitPicture {
  private static final double TOP = 26;
  private static final double HEIGHT = 96;

  private final Fit fit;
  private final double highest;
  private final double scale;

  private FitPicture(Fit fit) {
    this.fit = fit;
    LimitDeviations hole = fit.hole().deviations();
    LimitDeviations shaft = fit.shaft().deviations();
    double high = Math.max(0, Math.max(um(hole.upper()), um(shaft.upper())));
    double low = Math.min(0, Math.min(um(hole.lower()), um(shaft.lower())));
    this.highest = high;
    this.scale = HEIGHT / (high - low);
  }

  static Block.Picture of(Fit fit) {
    return new FitPicture(fit).draw();
  }

  private Block.Picture draw() {
    String title = "Tolerance zones of " + fit.nominalSize() + " " + fit.designation() + ", to scale, deviations in µm";
    LimitDeviations bore = fit.hole().deviations();
    LimitDeviations stud = fit.shaft().deviations();
    String description =
        "bore " + bore + ", stud " + stud + " from the nominal size " + fit.nominalSize() + ": " + fit.kind();
    List<Map<String, Object>> zones = new ArrayList<>();
    zones.add(zone("bore", bore, 110, "url(#hatch)"));
    zones.add(zone("stud", stud, 250, "#ddd"));
    String svg =
        Templates.render(
            "tolerance-zones.svg",
            Map.of(
                "title", title,
                "description", description,
                "zones", zones,
                "zero", px(y(0)),
                "bottom", px(TOP + HEIGHT + 14)));
    return new Block.Picture(title, description, svg);
  }

  private Map<String, Object> zone(String name, LimitDeviations deviations, double x, String fill) {
    double upper = y(um(deviations.upper()));
    double lower = y(um(deviations.lower()));
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

  private double y(double um) {
    return TOP + (highest - um) * scale;
  }

  private static double um(Length length) {
    return length.in(KnownUnits.UM);
  }

  private static String signed(Length deviation) {
    String text = Numbers.significant(Math.rint(um(deviation) * 10) / 10, 8);
    return text.startsWith("-") || text.equals("0") ? text.replace('-', '−') : "+" + text;
  }

  private static String px(double value) {
    return Numbers.significant(Math.rint(value * 100) / 100, 6);
  }
}
