// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.threads;

import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.Units;
import holdfast.threads.ScrewThread;

/** Threads as case tables write them. */
final class CaseThreads {
  private CaseThreads() {}

  /** A standard thread; an inch thread that the standard series do not have (1-14, 15/16-12 UN) is made as a custom one. */
  static ScrewThread of(String text) {
    try {
      return ScrewThread.of(text);
    } catch (InputException e) {
      if (text.startsWith("M") || text.startsWith("#")) {
        throw e;
      }
      int dash = text.lastIndexOf('-');
      Length size = Units.inch(text.substring(0, dash));
      return ScrewThread.customUnified(size, Double.parseDouble(text.substring(dash + 1).replaceAll(" .*", "")));
    }
  }

  static double squareInches(double squareMillimetres) {
    return squareMillimetres / 645.16;
  }
}
