// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.bearings.reference.TiltedBearing;
import holdfast.quantity.Angle;
import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Numbers;
import holdfast.quantity.PlainText;
import holdfast.sheet.Block;
import holdfast.sheet.SheetUnits;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;

/** Draws the life ratio against the tilt between the raceways for three loads, with marks at given tilts. */
public final class TiltPicture {
  private static final double LEFT = 46;
  private static final double WIDTH = 400;
  private static final double TOP = 44;
  private static final double HEIGHT = 200;
  private static final double HIGHEST = 1.1;
  private static final int POINTS = 81;
  /** Solid, dashed, dotted: told apart without colour. */
  private static final List<String> DASHES = List.of("none", "7 4", "1.5 3");

  private final TiltedBearing bearing;
  private final SheetUnits units;
  private final List<Force> loads;
  private final List<Mark> marks;
  private final double end;

  /**
   * A tilt to be marked.
   *
   * @param label what it is, short
   * @param tilt tilt between the raceways, 0 or more
   */
  public record Mark(String label, Angle tilt) implements Serializable {
    public Mark {
      Objects.requireNonNull(label, "label");
      PlainText.name(label, "label of a mark");
      Objects.requireNonNull(tilt, "tilt");
    }
  }

  private TiltPicture(TiltedBearing bearing, List<Force> loads, List<Mark> marks, SheetUnits units) {
    this.units = units;
    this.bearing = bearing;
    this.loads = loads;
    this.marks = marks;
    this.end = Math.max(4, Math.ceil(marks.stream().mapToDouble(mark -> mrad(mark.tilt())).max().orElse(0)));
  }

  /**
   * Draws the price of a seat: half of the load, the load and twice the load, with marks at the pairs.
   *
   * @param price the price
   * @return the picture; the same price gives the same picture
   */
  public static Block.Picture of(SeatPrice price) {
    Objects.requireNonNull(price, "price");
    return of(price, SheetUnits.METRIC);
  }

  /** The same with loads in the units of a sheet. */
  static Block.Picture of(SeatPrice price, SheetUnits units) {
    List<Mark> marks = price.pairs().stream().map(pair -> new Mark(pair.name(), pair.tilt().raceways())).toList();
    return new TiltPicture(
            price.bearing(), List.of(price.load().times(0.5), price.load(), price.load().times(2)), marks, units)
        .draw();
  }

  /** Draws the price of a lean, with one mark. */
  static Block.Picture of(LeanPrice price, String mark, SheetUnits units) {
    Force load = price.tilt().load();
    return new TiltPicture(
            price.life().bearing(), List.of(load.times(0.5), load, load.times(2)),
            List.of(new Mark(mark, price.tilt().raceways())), units)
        .draw();
  }

  /**
   * Draws any bearing.
   *
   * @param bearing the bearing
   * @param loads three radial loads, each over 0
   * @param marks tilts to be marked
   * @return the picture
   * @throws InputException if the loads are not three
   */
  public static Block.Picture of(TiltedBearing bearing, List<Force> loads, List<Mark> marks) {
    Objects.requireNonNull(bearing, "bearing");
    Objects.requireNonNull(loads, "loads");
    Objects.requireNonNull(marks, "marks");
    if (loads.size() != 3) {
      throw new InputException("loads", loads.size() + " of them", "three", "the picture has three kinds of line");
    }
    return new TiltPicture(bearing, List.copyOf(loads), List.copyOf(marks), SheetUnits.METRIC).draw();
  }

  private Block.Picture draw() {
    String title = "Life ratio against the tilt between the raceways, for three loads";
    List<Map<String, Object>> lines = new ArrayList<>();
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < loads.size(); i++) {
      Force load = loads.get(i);
      lines.add(
          Map.of("path", path(load), "dash", DASHES.get(i), "load", units.text(load),
              "y", px(TOP + 16 + 18 * i), "text", px(TOP + 20 + 18 * i)));
      words.append(
          units.text(load) + ": " + ratio(load, 1) + " at 1 mrad, " + ratio(load, 2) + " at 2 mrad; ");
    }
    String description = words + String.join(", ", marks.stream().map(m -> m.label() + " at " + m.tilt()).toList());
    return new Block.Picture(title, description, "tilt-life.svg",
        Map.of(
            "lines", lines, "columns", columns(), "rows", rows(),
            "marks", drawn()));
  }

  private String path(Force load) {
    StringBuilder path = new StringBuilder();
    List<Angle> tilts =
        IntStream.range(0, POINTS).mapToObj(i -> KnownUnits.MRAD.of(end * i / (POINTS - 1))).toList();
    List<Double> ratios = bearing.lifeRatios(load, tilts);
    for (int i = 0; i < POINTS; i++) {
      path.append(i == 0 ? "M " : " L ").append(px(x(mrad(tilts.get(i))))).append(' ').append(px(y(ratios.get(i))));
    }
    return path.toString();
  }

  private double life(Force load, double mrad) {
    return bearing.life(load, KnownUnits.MRAD.of(mrad)).lifeRatio();
  }

  private String ratio(Force load, double mrad) {
    return Numbers.significant(life(load, mrad), 2);
  }

  private List<Map<String, Object>> columns() {
    List<Map<String, Object>> columns = new ArrayList<>();
    double step = Math.max(1, Math.ceil(end / 8));
    for (double tilt = 0; tilt <= end; tilt += step) {
      columns.add(Map.of("x", px(x(tilt)), "text", Numbers.significant(tilt, 3)));
    }
    return columns;
  }

  private List<Map<String, Object>> rows() {
    List<Map<String, Object>> rows = new ArrayList<>();
    for (int i = 0; i <= 5; i++) {
      rows.add(Map.of("y", px(y(i / 5.0)), "text", Numbers.fixed(i / 5.0, 1)));
    }
    return rows;
  }

  /** Labels stand over the plot in three steps that fall to the right, so that no mark runs through the label of another. */
  private List<Map<String, Object>> drawn() {
    List<Map<String, Object>> drawn = new ArrayList<>();
    List<Mark> sorted = marks.stream().sorted(Comparator.comparing(Mark::tilt)).toList();
    for (int i = 0; i < sorted.size(); i++) {
      Mark mark = sorted.get(i);
      double x = x(mrad(mark.tilt()));
      double label = 12 + 11 * (i % 3);
      boolean right = x < LEFT + 0.75 * WIDTH;
      drawn.add(
          Map.of("x", px(x), "label", px(label), "top", px(label + 2), "beside", px(right ? x + 3 : x - 3),
              "anchor", right ? "start" : "end", "text", mark.label() + ": " + mark.tilt()));
    }
    return drawn;
  }

  private double x(double mrad) {
    return LEFT + WIDTH * mrad / end;
  }

  private static double y(double ratio) {
    return TOP + HEIGHT * (1 - Math.min(ratio, HIGHEST) / HIGHEST);
  }

  private static double mrad(Angle tilt) {
    return tilt.in(KnownUnits.MRAD);
  }

  private static String px(double value) {
    return Numbers.significant(Math.rint(value * 100) / 100, 6);
  }
}
