package holdfast.installation;

import holdfast.quantity.KnownUnits;
import holdfast.quantity.Numbers;
import holdfast.quantity.Torque;
import holdfast.sheet.Block;
import holdfast.sheet.Templates;
import holdfast.threads.TorqueWindow;
import java.util.Map;

/** Draws the torque window on a scale from zero, with the setting of the wrench. */
final class WindowPicture {
  private static final double LEFT = 20;
  private static final double WIDTH = 480;

  private WindowPicture() {}

  static Block.Picture of(TorqueWindow window, Torque setting) {
    double end = 1.15 * Math.max(Math.max(nm(window.lowest()), nm(window.highest())), nm(setting));
    double low = LEFT + WIDTH * nm(window.lowest()) / end;
    double high = LEFT + WIDTH * nm(window.highest()) / end;
    String title = "Torque window, to scale from zero, N·m";
    String description =
        (window.isOpen() ? "window " : "no window: at least ")
            + window.lowest()
            + (window.isOpen() ? " … " : ", at most ")
            + window.highest()
            + ", wrench set to "
            + setting;
    String svg =
        Templates.render(
            "torque-window.svg",
            Map.of(
                "title", title,
                "description", description,
                "low", px(low),
                "high", px(high),
                "width", px(Math.max(0, high - low)),
                "setting", px(LEFT + WIDTH * nm(setting) / end),
                "lowText", text(window.lowest()),
                "highText", text(window.highest()),
                "settingText", text(setting)));
    return new Block.Picture(title, description, svg);
  }

  private static double nm(Torque torque) {
    return torque.in(KnownUnits.N_M);
  }

  private static String text(Torque torque) {
    return Numbers.significant(nm(torque), 4);
  }

  private static String px(double value) {
    return Numbers.significant(Math.rint(value * 100) / 100, 6);
  }
}
