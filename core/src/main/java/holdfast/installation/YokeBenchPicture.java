// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.lubrication.Port;
import holdfast.sheet.Block;
import holdfast.sheet.SheetUnits;

/** Draws this pin in this fork, cut along its axis and to scale, with what the fitter does at each place. */
final class YokeBenchPicture {
  private static final double WIDTH = 530;
  private static final double HEIGHT = 136;
  private static final double AXIS = 61;
  private static final double ROOM = 190;
  private static final double TALLEST = 90;
  private static final double MIDDLE = WIDTH / 2;

  private final YokePlan plan;
  private final double scale;
  private final Drawing drawing = new Drawing("bench", WIDTH, HEIGHT);

  private YokeBenchPicture(YokePlan plan) {
    this.plan = plan;
    double wide = plan.fork().gap().mm() + 2 * plan.fork().thickness().mm();
    this.scale = Math.min(TALLEST / plan.roller().outsideDiameter().mm(), (ROOM - 20) / (1.1 * wide));
  }

  static Block.Picture of(YokePlan plan) {
    return new YokeBenchPicture(plan).draw();
  }

  private Block.Picture draw() {
    double half = scale * plan.roller().outsideDiameter().mm() / 2;
    double pin = scale * plan.roller().bore().mm() / 2;
    double gap = scale * plan.fork().gap().mm() / 2;
    double ear = scale * plan.fork().thickness().mm();
    double ring = scale * plan.roller().ringWidth().mm() / 2;
    double inner = scale * plan.roller().seatWidth().mm() / 2;
    double high = Math.min(0.9 * half, 1.7 * pin);
    double end = gap + ear + 0.05 * (gap + ear);
    both(MIDDLE - ring, 2 * ring, pin + 0.6 * (half - pin), half, Drawing.Fill.GREY);
    if (plan.roller().innerRing()) {
      both(MIDDLE - inner, 2 * inner, pin, pin + 0.3 * (half - pin), Drawing.Fill.WHITE);
    }
    both(MIDDLE - gap - ear, ear, pin, Math.max(high, pin + 4), Drawing.Fill.CUT);
    both(MIDDLE + gap, ear, pin, Math.max(high, pin + 4), Drawing.Fill.CUT);
    drawing.box(MIDDLE - end, AXIS - pin, 2 * end, 2 * pin, Drawing.Fill.WHITE);
    bore(end);
    drawing.axis(MIDDLE - end - 6, MIDDLE + end + 6, AXIS);
    boolean press = !plan.pressed().isEmpty();
    drawing.arrow(MIDDLE, AXIS - half, 0, 1, 14);
    drawing.arrow(MIDDLE - end - 1, AXIS, 1, 0, 24);
    left(18, "load", MIDDLE - 4, AXIS - half - 6, false);
    left(42, "ear, supported while it is pressed", MIDDLE - gap - ear / 2, AXIS - pin - 3, false);
    left(66, press ? "PUSH HERE, on the pin" : "PUSH BY HAND, here", MIDDLE - end - 25, AXIS, true);
    left(90, end(Port.HEAD), MIDDLE - end, AXIS + pin / 2, false);
    right(18, "roller " + units().size(plan.roller().ringWidth()) + " wide", MIDDLE + ring / 2, AXIS - half + 2);
    right(42, "ear " + units().size(plan.fork().thickness()) + " thick", MIDDLE + gap + ear / 2, AXIS - pin - 3);
    right(66, plan.pin().securing().toString(), MIDDLE + end, AXIS - pin / 2);
    right(90, end(Port.THREAD_END), MIDDLE + end, AXIS + pin / 2);
    drawing.text(MIDDLE, HEIGHT - 14, Drawing.Anchor.MIDDLE,
        plan.greasing().isPresent() ? "cross hole and grease hole of the ring: beside the load" : "", false);
    drawing.text(MIDDLE, HEIGHT - 3, Drawing.Anchor.MIDDLE, press ? "spacer in the gap while you press" : "", false);
    return drawing.picture("This pin in this " + plan.fork().name() + ", to scale",
        "from the left: end of the pin, where it is pushed; first ear; roller in the gap; second ear; "
            + plan.pin().securing());
  }

  private void both(double x, double w, double innerY, double outerY, Drawing.Fill fill) {
    drawing.box(x, AXIS - outerY, w, outerY - innerY, fill).box(x, AXIS + innerY, w, outerY - innerY, fill);
  }

  private void bore(double end) {
    double bore = scale * plan.pin().greaseBore().mm() / 2;
    double to = plan.pin().through() ? MIDDLE + end : MIDDLE + Math.min(end, bore);
    drawing.box(MIDDLE - end, AXIS - bore, to - MIDDLE + end, 2 * bore, Drawing.Fill.WHITE);
    double cross = scale * plan.pin().crossHole().mm() / 2;
    double pin = scale * plan.roller().bore().mm() / 2;
    drawing.box(MIDDLE - cross, AXIS - pin, 2 * cross, pin - bore, Drawing.Fill.WHITE);
  }

  private String end(Port port) {
    if (plan.greasing().isEmpty()) {
      return plan.pin().greaseBore().mm() > 0 && (port == Port.HEAD || plan.pin().through()) ? "plug" : "closed end";
    }
    boolean open = PinGreasing.open(plan).contains(port);
    return !open ? "closed end" : port == plan.greasing().get().feed() ? "grease fitting" : "plug";
  }

  private SheetUnits units() {
    return plan.units().inchFirst() ? SheetUnits.INCH : SheetUnits.METRIC;
  }

  private void left(double y, String text, double x, double at, boolean bold) {
    drawing.text(150, y + 3, Drawing.Anchor.END, text, bold).line(153, y, x, at);
  }

  private void right(double y, String text, double x, double at) {
    drawing.text(366, y + 3, Drawing.Anchor.START, text, false).line(363, y, x, at);
  }
}
