// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.quantity.KnownUnits;
import holdfast.quantity.Numbers;
import holdfast.quantity.Torque;
import holdfast.quantity.Unit;
import holdfast.sheet.Block;
import holdfast.sheet.SheetUnits;
import holdfast.threads.TorqueWindow;
import java.util.Map;

/** Draws the torque window on a scale from zero, with the setting of the wrench. */
final class WindowPicture {
  private static final double LEFT = 20;
  private static final double WIDTH = 480;

  private WindowPicture() {}

  static Block.Picture of(TorqueWindow window, Torque setting, SheetUnits units) {
    Unit<Torque> unit = units.inchFirst() ? KnownUnits.LBF_IN : KnownUnits.N_M;
    double end = 1.15 * Math.max(Math.max(window.lowest().in(unit), window.highest().in(unit)), setting.in(unit));
    double low = LEFT + WIDTH * window.lowest().in(unit) / end;
    double high = LEFT + WIDTH * window.highest().in(unit) / end;
    // Numbers that would meet are turned away from each other.
    boolean apart = Math.abs(high - low) > 60;
    String title = "Torque window, to scale from zero, " + unit.symbol();
    String description =
        (window.isOpen() ? "window " : "no window: at least ")
            + units.text(window.lowest())
            + (window.isOpen() ? " … " : ", at most ")
            + units.text(window.highest())
            + ", wrench set to "
            + units.text(setting);
    return new Block.Picture(title, description, "torque-window.svg",
        Map.ofEntries(
            Map.entry("lowAnchor", apart ? "middle" : low <= high ? "end" : "start"),
            Map.entry("highAnchor", apart ? "middle" : low <= high ? "start" : "end"),
            Map.entry("lowName", units.text(window.lowLimit().content())),
            Map.entry("highName", units.text(window.highLimit().content())),
            Map.entry("low", px(low)),
            Map.entry("high", px(high)),
            Map.entry("width", px(Math.max(0, high - low))),
            Map.entry("setting", px(LEFT + WIDTH * setting.in(unit) / end)),
            Map.entry("lowText", text(window.lowest().in(unit))),
            Map.entry("highText", text(window.highest().in(unit))),
            Map.entry("settingText", text(setting.in(unit)))));
  }

  private static String text(double torque) {
    return Numbers.significant(torque, 4);
  }

  private static String px(double value) {
    return Numbers.significant(Math.rint(value * 100) / 100, 6);
  }
}
