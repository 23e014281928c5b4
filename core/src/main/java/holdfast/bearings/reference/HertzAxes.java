package holdfast.bearings.reference;

/**
 * Axis ratio χ of a contact ellipse from its curvature difference, by the complete elliptic integrals with parameter
 * 1 - 1/χ² (arithmetic-geometric mean).
 */
final class HertzAxes {
  private HertzAxes() {}

  /** Solves 1 - 2/(χ²-1) [K/E - 1] = F for χ; the left side rises from 0 to 1. */
  static double ratio(double difference) {
    double low = 1 + 1e-9;
    double high = 1e6;
    while (true) {
      double chi = Math.sqrt(low * high);
      if (chi <= low || chi >= high) {
        return chi;
      }
      if (1 - 2 / (chi * chi - 1) * (k(chi) / e(chi) - 1) < difference) {
        low = chi;
      } else {
        high = chi;
      }
    }
  }

  /** Complete elliptic integral of the first kind. */
  static double k(double chi) {
    double a = 1;
    double g = 1 / chi;
    for (int i = 0; i < 12; i++) {
      double next = 0.5 * (a + g);
      g = Math.sqrt(a * g);
      a = next;
    }
    return 0.5 * Math.PI / a;
  }

  /** Complete elliptic integral of the second kind. */
  static double e(double chi) {
    double a = 1;
    double g = 1 / chi;
    double sum = 0.5 * (1 - g * g);
    double power = 1;
    for (int i = 0; i < 12; i++) {
      double c = 0.5 * (a - g);
      double next = 0.5 * (a + g);
      g = Math.sqrt(a * g);
      a = next;
      sum += power * c * c;
      power *= 2;
    }
    return 0.5 * Math.PI / a * (1 - sum);
  }
}
