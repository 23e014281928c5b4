// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.quantity.Numbers;
import holdfast.sheet.Block;
import holdfast.sheet.SheetUnits;
import java.util.HashMap;
import java.util.Map;

/** Draws fork, pin and roller along the pin, to scale: where the load goes. */
final class ForkPicture {
  /** Room for the pin with its ends, and for the roller. */
  private static final double WIDE = 300;

  private static final double HIGH = 150;
  private static final double MIDDLE = 210;
  private static final double AXIS = 104;

  private final Map<String, Object> values = new HashMap<>();
  private final double scale;

  private ForkPicture(YokePlan plan) {
    double length = plan.fork().gap().mm() + 2 * plan.fork().thickness().mm();
    this.scale = Math.min(WIDE / (1.1 * length), HIGH / plan.roller().outsideDiameter().mm());
  }

  static Block.Picture of(YokePlan plan) {
    return new ForkPicture(plan).draw(plan);
  }

  private Block.Picture draw(YokePlan plan) {
    SheetUnits u = plan.units();
    YokeRoller roller = plan.roller();
    double d = roller.bore().mm();
    double gap = plan.fork().gap().mm();
    double ear = plan.fork().thickness().mm();
    double high = Math.min(1.5 * d, roller.outsideDiameter().mm() * 0.9);
    box("ring", -roller.ringWidth().mm() / 2, roller.ringWidth().mm(), roller.outsideDiameter().mm());
    box("seat", -roller.seatWidth().mm() / 2, roller.seatWidth().mm(), (d + roller.outsideDiameter().mm()) / 2);
    box("left", -gap / 2 - ear, ear, high);
    box("right", gap / 2, ear, high);
    box("pin", -(gap / 2 + ear) * 1.04, (gap + 2 * ear) * 1.04, d);
    String title = "Pin, ears and roller along the pin, to scale";
    String description = "ears " + u.text(plan.fork().thickness()) + ", gap " + u.text(plan.fork().gap()) + ", pin "
        + u.text(roller.bore()) + ", load " + u.text(plan.duty().load()) + ", half of it in each ear; bending is greatest in"
        + " the middle of the pin, shear beside the ears";
    values.put("load", u.text(plan.duty().load()));
    values.put("half", u.text(plan.duty().load().times(0.5)));
    values.put("middle", px(MIDDLE));
    values.put("axis", px(AXIS));
    values.put("top", px(AXIS - roller.outsideDiameter().mm() * scale / 2));
    values.put("leftMiddle", px(MIDDLE - (gap + ear) / 2 * scale));
    values.put("rightMiddle", px(MIDDLE + (gap + ear) / 2 * scale));
    values.put("earFoot", px(AXIS + high * scale / 2));
    return new Block.Picture(title, description, "fork.svg", values);
  }

  private void box(String name, double from, double width, double height) {
    values.put(name + "X", px(MIDDLE + from * scale));
    values.put(name + "Y", px(AXIS - height * scale / 2));
    values.put(name + "W", px(width * scale));
    values.put(name + "H", px(height * scale));
  }

  private static String px(double value) {
    return Numbers.significant(Math.rint(value * 100) / 100, 6);
  }
}
