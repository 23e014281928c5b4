// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Check;
import holdfast.quantity.Force;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;

/**
 * Load ratings of one bearing as its maker states them, or as a computation from geometry gives them.
 *
 * @param family family of the bearing, which decides the exponents
 * @param dynamic basic dynamic load rating C (radial for radial bearings, axial for thrust bearings), over 0
 * @param staticRating basic static load rating C0, over 0
 * @param fatigueLimit fatigue load limit Cu, over 0; null if it is not known, then modified life estimates it from C0
 * @param outerRing what the ratings assume about the outer ring
 */
public record LoadRatings(BearingFamily family, Force dynamic, Force staticRating, Force fatigueLimit, OuterRing outerRing)
    implements Serializable {

  // Refuses ratings that are not above zero.
  public LoadRatings {
    Objects.requireNonNull(dynamic, "dynamic");
    Objects.requireNonNull(staticRating, "staticRating");
    Objects.requireNonNull(family, "family");
    Objects.requireNonNull(outerRing, "outerRing");
    Check.positive(dynamic.newton(), "basic dynamic load rating C", "N", "a rating is a force above zero");
    Check.positive(staticRating.newton(), "basic static load rating C0", "N", "a rating is a force above zero");
    if (fatigueLimit != null) {
      Check.positive(fatigueLimit.newton(), "fatigue load limit Cu", "N", "a limit is a force above zero");
    }
  }

  /**
   * Ratings of a radial ball bearing.
   *
   * @param dynamic Cr
   * @param staticRating C0r
   * @return the ratings, without fatigue load limit
   * @throws holdfast.quantity.InputException if a rating is not above zero
   */
  public static LoadRatings radialBall(Force dynamic, Force staticRating) {
    return new LoadRatings(BearingFamily.RADIAL_BALL, dynamic, staticRating, null, OuterRing.HOUSED);
  }

  /**
   * Ratings of a radial roller bearing.
   *
   * @param dynamic Cr
   * @param staticRating C0r
   * @return the ratings, without fatigue load limit
   * @throws holdfast.quantity.InputException if a rating is not above zero
   */
  public static LoadRatings radialRoller(Force dynamic, Force staticRating) {
    return new LoadRatings(BearingFamily.RADIAL_ROLLER, dynamic, staticRating, null, OuterRing.HOUSED);
  }

  /**
   * Ratings of a thrust ball bearing.
   *
   * @param dynamic Ca
   * @param staticRating C0a
   * @return the ratings, without fatigue load limit
   * @throws holdfast.quantity.InputException if a rating is not above zero
   */
  public static LoadRatings thrustBall(Force dynamic, Force staticRating) {
    return new LoadRatings(BearingFamily.THRUST_BALL, dynamic, staticRating, null, OuterRing.HOUSED);
  }

  /**
   * Ratings of a thrust roller bearing.
   *
   * @param dynamic Ca
   * @param staticRating C0a
   * @return the ratings, without fatigue load limit
   * @throws holdfast.quantity.InputException if a rating is not above zero
   */
  public static LoadRatings thrustRoller(Force dynamic, Force staticRating) {
    return new LoadRatings(BearingFamily.THRUST_ROLLER, dynamic, staticRating, null, OuterRing.HOUSED);
  }

  /**
   * Ratings of a track roller with needles or cylindrical rollers.
   *
   * @param dynamic Cr
   * @param staticRating C0r
   * @param outerRing whether the maker's ratings are for a rigid or a deflecting ring; must be stated
   * @return the ratings, without fatigue load limit
   * @throws holdfast.quantity.InputException if a rating is not above zero or the ring is {@link OuterRing#HOUSED}
   */
  public static LoadRatings trackRoller(Force dynamic, Force staticRating, OuterRing outerRing) {
    Objects.requireNonNull(outerRing, "outerRing");
    return trackRoller(BearingFamily.RADIAL_ROLLER, dynamic, staticRating, outerRing);
  }

  /**
   * Ratings of a track roller of either radial family.
   *
   * @param family {@link BearingFamily#RADIAL_ROLLER} or {@link BearingFamily#RADIAL_BALL}
   * @param dynamic Cr
   * @param staticRating C0r
   * @param outerRing whether the maker's ratings are for a rigid or a deflecting ring; must be stated
   * @return the ratings, without fatigue load limit
   * @throws holdfast.quantity.InputException if a rating is not above zero, the ring is {@link OuterRing#HOUSED}, or
   *     the family is a thrust family
   */
  public static LoadRatings trackRoller(BearingFamily family, Force dynamic, Force staticRating, OuterRing outerRing) {
    Objects.requireNonNull(family, "family");
    Objects.requireNonNull(outerRing, "outerRing");
    if (!outerRing.trackRoller()) {
      throw Refusal.of("outer ring", outerRing, "RIGID or DEFLECTING",
          "a track roller's ring is not seated in a housing; its maker states which of the two its ratings assume");
    }
    if (family.thrust()) {
      throw Refusal.of("family", family, "a radial family", "a track roller carries radial load");
    }
    return new LoadRatings(family, dynamic, staticRating, null, outerRing);
  }

  /**
   * The same ratings with a fatigue load limit.
   *
   * @param limit Cu, over 0
   * @return the ratings
   * @throws holdfast.quantity.InputException if the limit is not above zero
   */
  public LoadRatings withFatigueLimit(Force limit) {
    return new LoadRatings(family, dynamic, staticRating, Objects.requireNonNull(limit, "limit"), outerRing);
  }

  /**
   * The fatigue load limit, if it is known.
   *
   * @return Cu
   */
  public Optional<Force> knownFatigueLimit() {
    return Optional.ofNullable(fatigueLimit);
  }

  /** For example {@code "radial roller bearing, C = 14.2 kN, C0 = 17.5 kN"}. */
  @Override
  public String toString() {
    String text = family + ", C = " + dynamic + ", C0 = " + staticRating;
    text += fatigueLimit == null ? "" : ", Cu = " + fatigueLimit;
    return text + (outerRing.trackRoller() ? ", " + outerRing : "");
  }
}
