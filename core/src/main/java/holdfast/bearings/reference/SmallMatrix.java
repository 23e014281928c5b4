// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

/** Symmetric positive semidefinite systems of a handful of unknowns. */
final class SmallMatrix {
  private SmallMatrix() {}

  /**
   * Solves A x = b by Cholesky in place; a little stiffness keeps a singular A from dividing by zero.
   *
   * @param a row by row, n² entries; destroyed
   * @param b right-hand side; receives x
   * @param n number of unknowns
   * @return false if A is zero
   */
  static boolean solve(double[] a, double[] b, int n) {
    double trace = 0;
    for (int i = 0; i < n; i++) {
      trace += a[i * n + i];
    }
    if (!(trace > 0)) {
      return false;
    }
    double least = 1e-13 * trace;
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = a[i * n + j];
        for (int k = 0; k < j; k++) {
          sum -= a[i * n + k] * a[j * n + k];
        }
        a[i * n + j] = i == j ? Math.sqrt(Math.max(sum, least)) : sum / a[j * n + j];
      }
    }
    for (int i = 0; i < n; i++) {
      double sum = b[i];
      for (int k = 0; k < i; k++) {
        sum -= a[i * n + k] * b[k];
      }
      b[i] = sum / a[i * n + i];
    }
    for (int i = n - 1; i >= 0; i--) {
      double sum = b[i];
      for (int k = i + 1; k < n; k++) {
        sum -= a[k * n + i] * b[k];
      }
      b[i] = sum / a[i * n + i];
    }
    return true;
  }

  /**
   * Stiffness along one unknown when others adjust themselves: A_ii - A_if A_ff^-1 A_fi.
   *
   * @param a full symmetric matrix, row by row
   * @param size its order
   * @param i the unknown that is moved
   * @param free the unknowns that follow
   * @return the condensed stiffness
   */
  static double condensed(double[] a, int size, int i, int... free) {
    int n = free.length;
    double[] inner = new double[n * n];
    double[] x = new double[n];
    for (int r = 0; r < n; r++) {
      x[r] = a[i * size + free[r]];
      for (int c = 0; c < n; c++) {
        inner[r * n + c] = a[free[r] * size + free[c]];
      }
    }
    double value = a[i * size + i];
    if (solve(inner, x, n)) {
      for (int r = 0; r < n; r++) {
        value -= a[i * size + free[r]] * x[r];
      }
    }
    return Math.max(value, 0);
  }
}
