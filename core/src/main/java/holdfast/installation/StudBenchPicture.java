// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.FitKind;
import holdfast.lubrication.Port;
import holdfast.lubrication.PortState;
import holdfast.quantity.Length;
import holdfast.sheet.Block;
import holdfast.sheet.SheetUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Draws this stud in this member, cut along its axis and to scale, with what the fitter does at each place. */
final class StudBenchPicture {
  private static final double WIDTH = 530;
  private static final double HEIGHT = 130;
  private static final double AXIS = 62;
  /** Room of the drawing between the columns of text. */
  private static final double ROOM = 200;
  private static final double LEFT = 165;
  private static final double TALLEST = 92;

  private final InstallationPlan plan;
  private final SheetUnits units;
  private final Drawing drawing = new Drawing("bench", WIDTH, HEIGHT);
  private final double scale;
  private final double face;
  private final boolean lengthsKnown;
  private final double stud;
  private final double washer;
  private final double nut;
  private final double thickness;
  private final double threaded;

  private StudBenchPicture(InstallationPlan plan) {
    this.plan = plan;
    this.units = plan.units().inchFirst() ? SheetUnits.INCH : SheetUnits.METRIC;
    StudRoller roller = plan.roller();
    double d = roller.studDiameter().mm();
    this.lengthsKnown = Grip.of(plan).isPresent();
    this.washer = plan.nut().stack() == null ? 0 : plan.nut().stack().washer().mm();
    this.nut = plan.nut().stack() == null ? 0.8 * d : plan.nut().stack().height().mm();
    double seat = plan.member().seatLength().mm();
    this.thickness = plan.member().thickness() == null ? seat : plan.member().thickness().mm();
    double needed = thickness + washer + nut;
    this.stud = roller.lengths() == null ? needed + 0.2 * d : roller.lengths().stud().mm();
    this.threaded = roller.lengths() == null ? stud - seat : roller.lengths().thread().mm();
    double left = roller.ringGap().mm() + roller.ringWidth().mm() + 0.05 * d;
    this.scale = Math.min(TALLEST / roller.outsideDiameter().mm(), (ROOM - 24) / (left + Math.max(stud, needed)));
    this.face = LEFT + 12 + left * scale;
  }

  static Block.Picture of(InstallationPlan plan) {
    return new StudBenchPicture(plan).draw();
  }

  private Block.Picture draw() {
    StudRoller roller = plan.roller();
    double half = roller.outsideDiameter().mm() / 2;
    double flange = roller.flangeDiameter().mm() / 2;
    double d = roller.studDiameter().mm();
    double gap = roller.ringGap().mm();
    double ring = roller.ringWidth().mm();
    double head = gap + ring + 0.05 * d;
    double seat = plan.member().seatLength().mm();
    double body = Math.min(half, Math.max(1.25 * flange, 0.9 * half));
    // The member, cut away above and below; behind the seat its bore is wider.
    both(0, seat, d / 2, body, Drawing.Fill.CUT);
    both(seat, thickness, 0.54 * d, body, Drawing.Fill.CUT);
    both(-gap, 0, d / 2, flange, Drawing.Fill.GREY);
    box(-head, 0, d / 2, Drawing.Fill.WHITE);
    both(-gap - ring, -gap, Math.max(d / 2, 0.62 * half), half, Drawing.Fill.GREY);
    box(0, stud - threaded, d / 2, Drawing.Fill.WHITE);
    box(stud - threaded, stud, 0.46 * d, Drawing.Fill.WHITE);
    both(thickness, thickness + washer, 0.54 * d, 0.98 * d, Drawing.Fill.WHITE);
    both(thickness + washer, thickness + washer + nut, 0.46 * d, 0.8 * d, Drawing.Fill.GREY);
    bores(head);
    drawing.axis(x(-head) - 8, x(stud) + 8, AXIS);
    labels(head, half, flange, d, seat);
    return drawing.picture("This stud in this " + plan.member().name()
        + (lengthsKnown ? ", to scale" : ", lengths of stud and nut not stated, those parts not to scale"), description());
  }

  private double x(double mm) {
    return face + scale * mm;
  }

  private void both(double from, double to, double inner, double outer, Drawing.Fill fill) {
    drawing.box(x(from), AXIS - scale * outer, scale * (to - from), scale * (outer - inner), fill);
    drawing.box(x(from), AXIS + scale * inner, scale * (to - from), scale * (outer - inner), fill);
  }

  private void box(double from, double to, double radius, Drawing.Fill fill) {
    drawing.box(x(from), AXIS - scale * radius, scale * (to - from), 2 * scale * radius, fill);
  }

  private void bores(double head) {
    double bore = plan.roller().greaseBore().mm() / 2;
    if (bore <= 0) {
      return;
    }
    box(-head, stud, bore, Drawing.Fill.WHITE);
    double plug = Math.max(2, 2 * bore);
    if (closed(Port.HEAD).isPresent()) {
      box(-head, -head + plug, bore, Drawing.Fill.BLACK);
    }
    if (closed(Port.THREAD_END).isPresent()) {
      box(stud - plug, stud, bore, Drawing.Fill.BLACK);
    }
  }

  private Optional<PortState> closed(Port port) {
    return plan.greasing().map(grease -> grease.ports().state(port)).filter(state -> state.use() != PortState.Use.ABSENT);
  }

  /** What stands at an end, in a word. */
  private String part(Port port) {
    return plan.greasing().isEmpty()
        ? plan.roller().greaseBore().mm() > 0 ? "plug" : "solid"
        : closed(port).map(state -> word(state.part())).orElse("no hole");
  }

  private static String word(PortState.Part part) {
    return switch (part) {
      case NONE -> "no hole";
      case FITTING -> "grease fitting";
      case BUILT_IN_FITTING -> "built-in fitting";
      case MEMBER_FEED_HOLE -> "feed hole";
      case PLUG, MEMBER_PLUG -> "plug";
      case SEAT_WALL, COLLAR -> "closed";
    };
  }

  private void labels(double head, double half, double flange, double d, double seat) {
    boolean press = plan.fit().kind() != FitKind.CLEARANCE;
    double headX = x(-head);
    drawing.arrow(headX - 1, AXIS, 1, 0, 30);
    Column left = new Column(true);
    left.add("load", x(-plan.roller().ringGap().mm() - plan.roller().ringWidth().mm()), AXIS - scale * half * 0.97);
    left.add(press ? "never push on ring or flange" : "never hammer", headX + 1, AXIS - scale * half * 0.7);
    left.add("head end: " + part(Port.HEAD), headX, AXIS - Math.max(1, 0.35 * scale * d));
    left.bold(press ? "PUSH HERE, on the middle" : "PUSH BY HAND, here", headX - 31, AXIS);
    left.add("mark on the head:", headX, AXIS + 0.45 * scale * d);
    left.add("away from the load", headX, AXIS + 0.45 * scale * d);
    left.draw();
    Column right = new Column(false);
    right.bold("nut: " + StudBench.setting(plan).text(units), x(thickness + washer + nut / 2), AXIS - scale * 0.8 * d);
    right.add(washer > 0 ? "washer " + text(plan.nut().stack().washer()) : "no washer", x(thickness + washer / 2),
        AXIS - scale * 0.7 * d);
    Grip.of(plan).map(Grip::showing).filter(length -> length.mm() > 0)
        .ifPresent(length -> right.add("thread shows: " + text(length), x(stud - length.mm() / 2), AXIS - 0.4 * scale * d));
    right.add("thread end: " + part(Port.THREAD_END), x(stud), AXIS);
    right.add("seat " + text(plan.member().seatLength()) + " long", x(seat / 2), AXIS + scale * d / 2);
    right.draw();
    double bottom = HEIGHT - 3;
    drawing.line(x(0), AXIS + scale * flange, x(0), bottom - Drawing.TEXT);
    drawing.text(x(0), bottom, Drawing.Anchor.MIDDLE, "shoulder: feeler enters nowhere", false);
    drawing.arrow(x(-plan.roller().ringGap().mm() - plan.roller().ringWidth().mm() / 2), AXIS - scale * half, 0, 1, 14);
  }

  private String text(Length length) {
    return units.size(length);
  }

  private String description() {
    return "from the left: roller with its head, where the stud is pushed; flange; member with a seat of "
        + text(plan.member().seatLength()) + "; washer, nut and thread end. Head end: " + part(Port.HEAD) + "; thread end: "
        + part(Port.THREAD_END);
  }

  /** A column of texts, each with a line to its place, spread so that no two meet. */
  private final class Column {
    private record Label(String text, double x, double y, boolean bold) {}

    private final boolean left;
    private final List<Label> labels = new ArrayList<>();

    Column(boolean left) {
      this.left = left;
    }

    void add(String text, double x, double y) {
      labels.add(new Label(text, x, y, false));
    }

    void bold(String text, double x, double y) {
      labels.add(new Label(text, x, y, true));
    }

    void draw() {
      double row = Drawing.TEXT + 2;
      double pitch = Math.min(24, (HEIGHT - 8) / labels.size());
      double top = AXIS - pitch * (labels.size() - 1) / 2;
      for (int i = 0; i < labels.size(); i++) {
        Label label = labels.get(i);
        double y = Math.max(row, top + i * pitch);
        drawing.text(left ? LEFT - 25 : WIDTH - 148, y + 3, left ? Drawing.Anchor.END : Drawing.Anchor.START, label.text(),
            label.bold());
        drawing.line(left ? LEFT - 22 : WIDTH - 151, y, label.x(), label.y());
      }
    }
  }
}
