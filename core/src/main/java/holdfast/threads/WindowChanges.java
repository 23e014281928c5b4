// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.quantity.Stress;
import holdfast.quantity.Torque;
import holdfast.trace.Message;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoublePredicate;

/** Tries changes that might open an empty torque window: each alone, each evaluated anew. */
final class WindowChanges {
  private final TorqueWindow window;
  private final Tightening nut;

  WindowChanges(TorqueWindow window) {
    this.window = window;
    this.nut = window.tightening();
  }

  List<WindowChange> all() {
    List<WindowChange> changes = new ArrayList<>();
    friction(changes);
    tool(changes);
    strength(changes);
    demand(changes);
    if (nut.bore().mm() > 0) {
      boolean opens = opens(nut.bore(new Length(0)), window.strength(), window.scatter(), window.rules());
      changes.add(new WindowChange("solid-stud", Message.of("a stud without the axial bore of ", nut.bore()), opens));
    }
    WindowRules r = window.rules();
    String governing = window.highLimit().code();
    if (governing.equals("face-pressure")) {
      double factor = farthest(100, 1, k -> opensWith(r.facePressure(r.facePressure().times(k))));
      changes.add(
          change("larger-face", "a bearing area " + text(factor) + " times as large (hardened washer)", factor));
    }
    if (governing.equals("stripping")) {
      double factor = farthest(100, 1, k -> opensWith(r.engagement(longer(r.engagement(), k), r.strippingSafety())));
      changes.add(
          change("longer-engagement", "an engaged length " + text(factor) + " times as long", factor));
    }
    if (governing.equals("makers-maximum")) {
      boolean opens = opensWith(r.makersMaximum(null));
      changes.add(new WindowChange("ask-the-maker", "a greater torque than the maker allows: only with his consent", opens));
    }
    if (governing.equals("parts")) {
      boolean opens = opensWith(r.greatestPreload(null));
      changes.add(new WindowChange("stronger-parts", "parts that bear more preload", opens));
    }
    return changes;
  }

  private void friction(List<WindowChange> changes) {
    Friction f = nut.statedFriction();
    if (f.isExact()) {
      return;
    }
    double part = farthest(0, 1, k -> opens(nut.friction(narrowed(f, k)), window.strength(), window.scatter(), window.rules()));
    changes.add(
        new WindowChange(
            "narrower-friction",
            Double.isNaN(part)
                ? "friction exactly at the low end of the band"
                : "friction that does not exceed " + printed(narrowed(f, part)) + " (lubricate and test)",
            !Double.isNaN(part)));
  }

  private void tool(List<WindowChange> changes) {
    double now = window.scatter().deviation();
    if (now == 0) {
      return;
    }
    double part = farthest(0, 1, k -> opens(nut, window.strength(), Scatter.of(k * now), window.rules()));
    changes.add(
        new WindowChange(
            "better-tool",
            Double.isNaN(part)
                ? "a tool without any deviation"
                : "a tool with at most ± " + rounded(100 * part * now, RoundingMode.FLOOR) + " %",
            !Double.isNaN(part)));
  }

  private void strength(List<WindowChange> changes) {
    double yield = window.strength().yieldStress(nut.thread()).megapascal();
    double factor = farthest(20, 1, k -> opens(nut, stronger(yield * k), window.scatter(), window.rules()));
    changes.add(
        Double.isNaN(factor)
            ? new WindowChange("stronger-stud", "a stronger stud, up to 20 times the yield stress", false)
            : new WindowChange(
                "stronger-stud",
                Message.of("a stud with a yield stress of at least ", new Stress(Math.ceil(yield * factor)), " (now ",
                    new Stress(yield), ")"),
                true));
  }

  private void demand(List<WindowChange> changes) {
    JointDemand d = window.demand();
    Force bearable = window.bearable();
    if (bearable.newton() > 0) {
      changes.add(
          new WindowChange(
              "less-demand", Message.of("a required preload of at most ", bearable, " instead of ", d.requiredPreload()), true));
    }
    if (d.addedStudLoad().newton() > 0) {
      JointDemand without = d.axialLoad(new Force(0), 0).changes(d.embeddingLoss(), d.thermalLoss().times(-1));
      changes.add(
          new WindowChange(
              "less-added-load",
              Message.of("no working load along the stud and no heat that tightens it (they add ", d.addedStudLoad(), ")"),
              TorqueWindow.of(nut, without, window.strength(), window.scatter(), window.rules()).isOpen()));
    }
    if (nut.prevailing().newtonMillimetre() > 0) {
      boolean opens = opens(nut.prevailing(new Torque(0)), window.strength(), window.scatter(), window.rules());
      changes.add(
          new WindowChange("free-running-nut", Message.of("a nut without the prevailing torque of ", nut.prevailing()), opens));
    }
  }

  private static Friction narrowed(Friction f, double k) {
    return new Friction(
        f.threadLow(),
        f.threadLow() + k * (f.threadHigh() - f.threadLow()),
        f.faceLow(),
        f.faceLow() + k * (f.faceHigh() - f.faceLow()));
  }

  private static PropertyClass stronger(double yield) {
    return PropertyClass.ofMaterial("stronger stud", new Stress(yield), new Stress(yield));
  }

  private static ThreadEngagement longer(ThreadEngagement e, double factor) {
    return new ThreadEngagement(
        e.thread(), e.externalClass(), e.internalClass(), e.engaged().times(factor), e.studShear(), e.nutShear(),
        e.widthOverDiameter());
  }

  private boolean opensWith(WindowRules rules) {
    return opens(nut, window.strength(), window.scatter(), rules);
  }

  private boolean opens(Tightening nut2, PropertyClass strength, Scatter scatter, WindowRules rules) {
    return TorqueWindow.of(nut2, window.demand(), strength, scatter, rules).isOpen();
  }

  private static WindowChange change(String code, String words, double factor) {
    return new WindowChange(code, words, !Double.isNaN(factor));
  }

  /** The search goes up to a hundred times. */
  private static String text(double factor) {
    return Double.isNaN(factor) ? "up to 100" : "at least " + rounded(factor, RoundingMode.CEILING);
  }

  /** Three digits, rounded to the side that still opens the window. */
  private static String rounded(double value, RoundingMode side) {
    return Numbers.shortest(clean(value).round(new MathContext(3, side)).doubleValue());
  }

  /** The search leaves dust in the last digits, which must not carry a number over a step. */
  private static BigDecimal clean(double value) {
    return new BigDecimal(value).round(new MathContext(12, RoundingMode.HALF_EVEN));
  }

  /** Friction in thousandths, rounded down; the low end stays as it is stated. */
  private static Friction printed(Friction f) {
    return new Friction(f.threadLow(), down(f.threadHigh(), f.threadLow()), f.faceLow(), down(f.faceHigh(), f.faceLow()));
  }

  private static double down(double high, double low) {
    return Math.max(low, clean(high).setScale(3, RoundingMode.FLOOR).doubleValue());
  }

  /** The value farthest from one end that passes, by halving; NaN if even that end does not. Values near it must pass. */
  private static double farthest(double passing, double failing, DoublePredicate opens) {
    if (!opens.test(passing)) {
      return Double.NaN;
    }
    double good = passing;
    double bad = failing;
    for (int i = 0; i < 60; i++) {
      double middle = 0.5 * (good + bad);
      if (opens.test(middle)) {
        good = middle;
      } else {
        bad = middle;
      }
    }
    return good;
  }
}
