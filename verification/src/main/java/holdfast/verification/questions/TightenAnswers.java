// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.questions;

import static holdfast.quantity.Units.MPa;
import static holdfast.quantity.Units.Nm;
import static holdfast.quantity.Units.mm;

import holdfast.quantity.Force;
import holdfast.quantity.KnownUnits;
import holdfast.threads.ChartTorque;
import holdfast.threads.PropertyClass;
import holdfast.threads.ScatteredPreload;
import holdfast.threads.Scatter;
import holdfast.threads.ScrewThread;
import holdfast.threads.ThreadEngagement;
import holdfast.threads.Tightening;

/** Answers to the questions of tightening: 8 to 11. */
final class TightenAnswers {
  private static final ScrewThread THREAD = ScrewThread.of("M16x1.5");

  private TightenAnswers() {}

  static double of(int question, String quantity) {
    ChartTorque table = ChartTorque.of(THREAD, Nm(58));
    return switch (quantity) {
      case "preload by nut factor 0.20" -> table.preloadBy(0.20).newton();
      case "stress in the thread at the greatest torque" -> ChartTorque.of(THREAD, Nm(52)).stressBy(0.20).megapascal();
      case "torque of a general chart" -> table.generalChart(PropertyClass.of("8.8"), 0.20).in(KnownUnits.N_M);
      case "stress behind a general chart" -> ChartTorque
          .of(THREAD, table.generalChart(PropertyClass.of("8.8"), 0.20)).stressBy(0.20).megapascal();
      case "half width of the preload band" -> halfWidth();
      default -> throw QuestionSuites.unknown(question + " " + quantity);
    };
  }

  private static double halfWidth() {
    Tightening nut = Tightening.of(THREAD).bore(mm(6)).bearingFace(mm(24), mm(17)).friction(0.10, 0.16);
    ScatteredPreload preload = new ScatteredPreload(nut, Nm(58), Scatter.of(0.04));
    double least = preload.worstCaseLeast().newton();
    double greatest = preload.worstCaseGreatest().newton();
    return 100 * (greatest - least) / (greatest + least);
  }

  /** Half of a nut 0.8 d high, of the strengths on the page. */
  static String thinNut() {
    Force preload = KnownUnits.N.of(100 * THREAD.stressArea().in(KnownUnits.MM2));
    ThreadEngagement nut = ThreadEngagement.ofNut(THREAD, mm(6.4), MPa(500), MPa(230));
    return nut.strippingLoad().compareTo(preload) > 0 ? "enough" : "not enough";
  }
}
