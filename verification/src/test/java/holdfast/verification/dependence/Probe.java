// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.dependence;

/** What the probed calculations report to, and the one of them whose result is falsified. Not thread-safe on purpose. */
public final class Probe {
  /** The falsified result is so many times the right one. */
  static final double FACTOR = 1.01;

  /** Set where a calculation ran. */
  static boolean[] ran = new boolean[0];

  /** Number of the calculation whose result is falsified; -1 for none. */
  static int falsified = -1;

  private Probe() {}

  /** Called at the begin of a probed method. */
  public static void enter(int calculation) {
    ran[calculation] = true;
  }

  /** Called before a probed method returns. */
  public static double leave(double result, int calculation) {
    return calculation == falsified ? result * FACTOR : result;
  }

  /** Called before a probed method returns. */
  public static int leave(int result, int calculation) {
    return calculation == falsified ? result + 1 : result;
  }

  /** Called before a probed method returns. */
  public static boolean leave(boolean result, int calculation) {
    return calculation == falsified ? !result : result;
  }

  /** Called before a method returns that fills an array: the last one among its parameters. */
  public static void leave(double[] result, int calculation) {
    if (calculation == falsified) {
      for (int i = 0; i < result.length; i++) {
        result[i] *= FACTOR;
      }
    }
  }
}
