// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Check;
import holdfast.quantity.OperatingTime;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Life of several bearings until the first of them fails.
 *
 * @param lives lives of the bearings in hours, all of one reliability
 * @param slope Weibull slope e
 * @param life life of the system with that reliability
 */
public record SystemLife(List<OperatingTime> lives, double slope, OperatingTime life) implements Traced, Serializable {

  // Keeps an unmodifiable copy of the list.
  public SystemLife {
    Objects.requireNonNull(lives, "lives");
    Objects.requireNonNull(life, "life");
    Check.finite(slope, "Weibull slope e", "");
    lives = List.copyOf(lives);
  }

  /**
   * Life of a system.
   *
   * @param slope Weibull slope e, over 0; 10/9 for ball and 9/8 for roller bearings ({@link BearingFamily#weibullSlope})
   * @param lives lives of the bearings in hours, all of one reliability, over 0
   * @return [Σ Li^-e]^(-1/e)
   * @throws holdfast.quantity.InputException if there are no lives or a value is not above zero
   */
  public static SystemLife of(double slope, List<OperatingTime> lives) {
    Objects.requireNonNull(lives, "lives");
    double[] hours = lives.stream().mapToDouble(OperatingTime::hours).toArray();
    return new SystemLife(lives, slope, new OperatingTime(DutyKernel.systemLife(hours, slope)));
  }

  /**
   * Life of a system of bearings of one family.
   *
   * @param family family of all bearings
   * @param lives lives of the bearings in hours, all of one reliability, over 0
   * @return the life
   * @throws holdfast.quantity.InputException if there are no lives or a value is not above zero
   */
  public static SystemLife of(BearingFamily family, OperatingTime... lives) {
    Objects.requireNonNull(family, "family");
    Objects.requireNonNull(lives, "lives");
    return of(family.weibullSlope(), List.of(lives));
  }

  @Override
  public Derivation explain() {
    List<String> inputs = new ArrayList<>();
    lives.forEach(each -> inputs.add(each.toString()));
    Check.positive(slope, "Weibull slope e", "", "a slope above zero");
    return Derivation.of("Life of a system of " + lives.size() + " bearings")
        .step("L", "life until the first failure", "[Σ L_i^-e]^(-1/e)", life.hours(), "h", BearingSources.SYSTEM,
            inputs.toArray(new String[0]))
        .build();
  }

  @Override
  public List<Warning> warnings() {
    return List.of();
  }

  /** For example {@code "9787 h for 2 bearings"}. */
  @Override
  public String toString() {
    return life + " for " + lives.size() + " bearings";
  }
}
