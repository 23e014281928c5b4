// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Torque;
import holdfast.quantity.Unit;
import holdfast.tables.SourceRef;
import holdfast.trace.Caution;
import holdfast.trace.Derivation;
import holdfast.trace.SignalWord;
import holdfast.trace.Message;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The set torques at which the joint stays closed and nothing is overloaded, over friction band and tool deviation.
 *
 * @param tightening stud, nut, face and friction
 * @param demand what the joint asks
 * @param strength strength class of the stud
 * @param scatter the tool
 * @param rules what limits the torque from above
 * @param low limits from below
 * @param high limits from above
 */
public record TorqueWindow(
    Tightening tightening,
    JointDemand demand,
    PropertyClass strength,
    Scatter scatter,
    WindowRules rules,
    List<WindowLimit> low,
    List<WindowLimit> high)
    implements Traced, Serializable {
  /** Torque in lbf·ft from which wrenches are scaled in feet. */
  private static final double FEET = 40;

  // Keeps unmodifiable copies of the lists.
  public TorqueWindow {
    Objects.requireNonNull(tightening, "tightening");
    Objects.requireNonNull(demand, "demand");
    Objects.requireNonNull(strength, "strength");
    Objects.requireNonNull(scatter, "scatter");
    Objects.requireNonNull(rules, "rules");
    Objects.requireNonNull(low, "low");
    Objects.requireNonNull(high, "high");
    if (low.isEmpty() || high.isEmpty()) {
      throw new InputException("limits of the torque", "none", "at least one from below and one from above",
          "a window has two ends");
    }
    low = List.copyOf(low);
    high = List.copyOf(high);
  }

  /**
   * Computes a window.
   *
   * @param tightening stud, nut, face and friction
   * @param demand what the joint asks
   * @param strength strength class of the stud
   * @param scatter the tool
   * @param rules what limits the torque from above
   * @return the window, open or empty
   * @throws holdfast.quantity.InputException if face or friction have not been stated or the class does not cover the size
   */
  public static TorqueWindow of(
      Tightening tightening, JointDemand demand, PropertyClass strength, Scatter scatter, WindowRules rules) {
    Objects.requireNonNull(tightening, "tightening");
    Objects.requireNonNull(demand, "demand");
    Objects.requireNonNull(strength, "strength");
    Objects.requireNonNull(scatter, "scatter");
    Objects.requireNonNull(rules, "rules");
    WindowLimits limits = new WindowLimits(tightening, demand, strength, scatter, rules);
    return new TorqueWindow(tightening, demand, strength, scatter, rules, limits.low(), limits.high());
  }

  /**
   * The lowest set torque that always keeps the joint closed.
   *
   * @return the greatest of the limits from below
   */
  public Torque lowest() {
    return lowLimit().torque();
  }

  /**
   * The highest set torque that never overloads anything.
   *
   * @return the least of the limits from above
   */
  public Torque highest() {
    return highLimit().torque();
  }

  /**
   * The limit that sets the lower end.
   *
   * @return the limit
   */
  public WindowLimit lowLimit() {
    return low.stream().max(Comparator.comparing(WindowLimit::torque)).orElseThrow();
  }

  /**
   * The limit that sets the upper end.
   *
   * @return the limit
   */
  public WindowLimit highLimit() {
    return high.stream().min(Comparator.comparing(WindowLimit::torque)).orElseThrow();
  }

  /**
   * Whether there is a torque that satisfies all limits and tightens: with the tool at its least it passes the prevailing
   * torque.
   *
   * @return true if the lowest torque does not exceed the highest, and the highest makes a preload
   */
  public boolean isOpen() {
    return lowest().compareTo(highest()) <= 0 && tightens(highest());
  }

  private boolean tightens(Torque setting) {
    return setting.times(1 - scatter.deviation()).compareTo(tightening.prevailing()) > 0;
  }

  /**
   * The torque with the same factor of margin to both ends; half of the highest where the joint asks for so little that
   * this mean would hardly tighten it.
   *
   * @return the greater of √(lowest·highest) and half of the highest; empty if the window is
   */
  public Optional<Torque> target() {
    if (!isOpen()) {
      return Optional.empty();
    }
    double top = highest().newtonMillimetre();
    return Optional.of(new Torque(Math.max(Math.sqrt(lowest().newtonMillimetre() * top), 0.5 * top)));
  }

  /**
   * The target on a round number of the wrench's scale, inside the window.
   *
   * @return steps of 1, 2 or 5 times a power of ten of the scale, at most 5 % of the target; the target itself where none
   *     fits; empty if the window is. The scale is N·m for metric threads, lbf·in for inch threads, from 40 lbf·ft on
   *     lbf·ft
   */
  public Optional<Torque> wrenchSetting() {
    return target().map(this::onScale);
  }

  private Torque onScale(Torque target) {
    Unit<Torque> scale = scale(target);
    double wanted = target.in(scale);
    for (int power = (int) Math.floor(Math.log10(0.05 * wanted)); power >= -4; power--) {
      for (double digit : new double[] {5, 2, 1}) {
        double step = digit * Math.pow(10, power);
        Torque setting = scale.of(Math.rint(wanted / step) * step);
        if (step <= 0.05 * wanted && setting.compareTo(lowest()) >= 0 && setting.compareTo(highest()) <= 0) {
          return setting;
        }
      }
    }
    return target;
  }

  private Unit<Torque> scale(Torque target) {
    if (tightening.thread().system() == ThreadSystem.METRIC) {
      return KnownUnits.N_M;
    }
    return target.in(KnownUnits.LBF_FT) < FEET ? KnownUnits.LBF_IN : KnownUnits.LBF_FT;
  }

  /**
   * Preloads of a set torque with friction and tool.
   *
   * @param torque set torque
   * @return the band
   */
  public ScatteredPreload preload(Torque torque) {
    return new ScatteredPreload(tightening, torque, scatter);
  }

  /**
   * Changes that would open the window, each tried alone and evaluated anew.
   *
   * @return the changes; empty if the window is open
   */
  public List<WindowChange> changes() {
    return isOpen() ? List.of() : new WindowChanges(this).all();
  }

  /**
   * Cautions that belong to every torque.
   *
   * @return the cautions
   */
  public List<Caution> cautions() {
    return List.of(
        new Caution(
            SignalWord.NOTICE,
            "The torque is computed from stated friction and strength. The maker's instructions, local rules and the person"
                + " responsible come first.",
            SourceRef.commonPractice("computed torques are checked before use")),
        new Caution(
            SignalWord.CAUTION,
            "Tighten with a calibrated hand tool and steady pull. A stud that breaks or a wrench that slips throws the hand.",
            SourceRef.commonPractice("safe use of hand tools")),
        new Caution(
            SignalWord.NOTICE,
            "The torque holds for the stated condition of thread and face alone: wash off or add nothing else.",
            SourceRef.commonPractice("lubrication belongs to the torque")));
  }

  /** How the ends follow; the last step is the highest torque. */
  @Override
  public Derivation explain() {
    Derivation.Builder b = Derivation.of("Torque window of " + tightening + ", class " + strength);
    b.steps(demand.explain());
    for (WindowLimit limit : low) {
      b.step("MA,low", limit.meaning(), "set torque at which the limit is reached, tool low, friction high",
          limit.torque().newtonMillimetre(), "N·mm", limit.source());
    }
    for (WindowLimit limit : high) {
      b.step("MA,high", limit.meaning(), "set torque at which the limit is reached, tool high, face friction low",
          limit.torque().newtonMillimetre(), "N·mm", limit.source());
    }
    b.step("MA,min", "lowest torque", "greatest of the limits from below", lowest().newtonMillimetre(), "N·mm",
        lowLimit().source());
    return b.step("MA,max", "highest torque", "least of the limits from above", highest().newtonMillimetre(), "N·mm",
        highLimit().source()).build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>(tightening.warnings());
    if (rules.engagement() != null) {
      warnings.addAll(rules.engagement().warnings());
    }
    if (!isOpen()) {
      warnings.add(
          new Warning(
              "window-empty",
              Message.of("no torque satisfies both ends: at least ", lowest(), " (", lowLimit().content(), "), at most ",
                  highest(), " (", highLimit().content(), ")"),
              highLimit().source()));
    }
    wrenchSetting().ifPresent(setting -> warnings.addAll(scatter.warnings(setting)));
    return List.copyOf(warnings);
  }

  /** The greatest required preload that the upper end could satisfy; 0 if it makes none. */
  Force bearable() {
    return tightens(highest()) ? preload(highest()).worstCaseLeast() : new Force(0);
  }

  /** The ends with what sets them. */
  @Override
  public String toString() {
    return (isOpen() ? "torque " + lowest() + " … " + highest() : "no torque: at least " + lowest() + ", at most " + highest())
        + " (" + lowLimit().code() + " … " + highLimit().code() + ")";
  }
}
