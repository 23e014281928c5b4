// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.Stress;
import holdfast.quantity.Torque;
import java.io.Serializable;
import java.util.Objects;

/**
 * What limits the torque from above besides the strength class. Values of infinity in the kernels stand for limits that
 * are not stated; here they are null. Immutable: each method that states something returns new rules.
 *
 * @param utilisation part ν of the yield stress that tightening may use (dimensionless), over 0 up to 1; 0.9 is usual
 * @param facePressure greatest pressure under the face, null if not stated
 * @param engagement engaged thread, null if not stated
 * @param strippingSafety safety against stripping, 1 or more
 * @param greatestPreload greatest preload that the parts bear, null if not stated
 * @param makersMaximum greatest torque that the maker allows, null if not stated
 */
public record WindowRules(
    double utilisation,
    Stress facePressure,
    ThreadEngagement engagement,
    double strippingSafety,
    Force greatestPreload,
    Torque makersMaximum)
    implements Serializable {

  // Refuses what is no limit.
  public WindowRules {
    Check.overUpTo(utilisation, 0, 1, "utilisation ν of the yield stress", "", "a part of the yield stress");
    Check.within(strippingSafety, 1, 100, "safety against stripping", "", "1 is no safety");
    if (facePressure != null) {
      Check.positive(facePressure.megapascal(), "greatest face pressure", "MPa", "a pressure");
    }
    if (greatestPreload != null) {
      Check.positive(greatestPreload.newton(), "greatest preload", "N", "a tension");
    }
    if (makersMaximum != null) {
      Check.positive(makersMaximum.newtonMillimetre(), "maker's maximum torque", "N·mm", "a torque");
    }
  }

  /**
   * The usual rules: 90 % of the yield stress and nothing else.
   *
   * @return the rules
   */
  public static WindowRules usual() {
    return new WindowRules(0.9, null, null, 1, null, null);
  }

  /**
   * States the part of the yield stress that tightening may use.
   *
   * @param part ν (dimensionless), over 0 up to 1
   * @return new rules
   */
  public WindowRules utilisation(double part) {
    return new WindowRules(part, facePressure, engagement, strippingSafety, greatestPreload, makersMaximum);
  }

  /**
   * States the greatest pressure under the face.
   *
   * @param limit over 0; null if nothing limits it
   * @return new rules
   */
  public WindowRules facePressure(Stress limit) {
    return new WindowRules(utilisation, limit, engagement, strippingSafety, greatestPreload, makersMaximum);
  }

  /**
   * States the engaged thread.
   *
   * @param thread engagement of stud and nut
   * @param safety safety against stripping, 1 or more
   * @return new rules
   */
  public WindowRules engagement(ThreadEngagement thread, double safety) {
    Objects.requireNonNull(thread, "thread");
    return new WindowRules(utilisation, facePressure, thread, safety, greatestPreload, makersMaximum);
  }

  /**
   * States the greatest preload that the clamped parts bear.
   *
   * @param limit over 0; null if nothing limits it
   * @return new rules
   */
  public WindowRules greatestPreload(Force limit) {
    return new WindowRules(utilisation, facePressure, engagement, strippingSafety, limit, makersMaximum);
  }

  /**
   * States the greatest torque that the maker allows.
   *
   * @param limit over 0; null if nothing limits it
   * @return new rules
   */
  public WindowRules makersMaximum(Torque limit) {
    return new WindowRules(utilisation, facePressure, engagement, strippingSafety, greatestPreload, limit);
  }

  /**
   * States a nut of the usual height by its property class: it bears its proof load before its thread strips or it jams, so that
   * no preload may pass it. A smaller greatest preload that is stated already stays.
   *
   * @param thread a metric coarse thread, M3 to M39
   * @param propertyClass property class of the nut, for example {@code "8"}
   * @return new rules
   * @throws holdfast.quantity.InputException if no proof load of such a nut is known
   */
  public WindowRules nut(ScrewThread thread, String propertyClass) {
    Force proof = NutProofLoads.of(thread, propertyClass);
    return greatestPreload == null || proof.compareTo(greatestPreload) < 0 ? greatestPreload(proof) : this;
  }
}
