// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.bearings.LoadRatings;
import holdfast.quantity.Angle;
import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.quantity.OperatingTime;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;

/**
 * How much life the lean of a roller leaves, as the verdict of a plan counts it, or why it is not counted. The lean is that of
 * the loosest pair in the shop or at work, with the nut as stated, a stated misalignment of the track added.
 *
 * @param lean lean of the roller against its track
 * @param factor life over the life of the aligned roller, over 0 up to 1 (dimensionless); 1 if the lean is not counted
 * @param price what the lean costs; null if it is not counted
 * @param whyNot why the lean is not counted; empty if it is
 */
public record CountedLean(Angle lean, double factor, LeanPrice price, String whyNot) implements Serializable {
  public CountedLean {
    Objects.requireNonNull(lean, "lean");
    Check.within(factor, 0, 1, "life factor of a lean", "", "a lean gives no life");
    Objects.requireNonNull(whyNot, "whyNot");
    if ((price == null) == whyNot.isEmpty()) {
      throw new InputException("price of a lean", price == null ? "none" : "known", "known, or a reason why it is not",
          "a lean is counted or the reason is said");
    }
  }

  static CountedLean of(MountingPlan plan, Angle ofSeat) {
    return at(plan, ofSeat.plus(plan.duty().statedTrackMisalignment().orElse(new Angle(0))));
  }

  /** The same job with another lean, for a search. */
  static CountedLean at(MountingPlan plan, Angle lean) {
    MountedRoller roller = plan.roller();
    Optional<RollerInterior> interior = roller.knownInterior();
    if (interior.isEmpty()) {
      return new CountedLean(lean, 1, null, "the inside of the roller (number, size and profile of its rollers, play) is not"
          + " stated; ask the maker");
    }
    Force load = plan.duty().constant() ? plan.duty().load() : plan.meanLoad();
    LoadRatings ratings = roller.ratings();
    try {
      LeanPrice price =
          LeanPrice.of(interior.get(), ratings, load, lean, roller.crownRadius(), roller.outsideDiameter());
      // A slight lean can widen the load zone; no life is granted for that.
      return new CountedLean(lean, Math.min(1, price.lifeRatio()), price, "");
    } catch (InputException outside) {
      return new CountedLean(lean, 1, null, "it is out of the range of the method: " + outside.getMessage());
    }
  }

  /**
   * Whether the factor counts the lean.
   *
   * @return false if there is a reason why not
   */
  public boolean counted() {
    return price != null;
  }

  OperatingTime of(OperatingTime aligned) {
    return aligned.times(factor);
  }

  /** For example {@code "0.75 of the aligned life at a lean of 0.63 mrad"}. */
  @Override
  public String toString() {
    return counted()
        ? Numbers.significant(factor, 3) + " of the aligned life at a lean of " + lean
        : "the lean of " + lean + " is not counted because " + whyNot;
  }
}
