// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.quantity.Force;
import holdfast.quantity.Length;
import java.util.Objects;

/** Collects the description of a yoke roller. Not thread-safe. */
public final class YokeRollerBuilder extends RollerBuilder<YokeRoller, YokeRollerBuilder> {
  private Length bore;
  private String boreTolerance;
  private final Choice inside = new Choice("inside of the yoke roller");
  private boolean innerRing;
  private Length seatWidth;
  private boolean ringHole;
  private Force pinLimit;

  YokeRollerBuilder(String name) {
    super(name);
  }

  @Override
  YokeRollerBuilder self() {
    return this;
  }

  /**
   * States the bore of a roller with inner ring.
   *
   * @param diameter nominal diameter d
   * @param tolerance its limit deviations, for example {@code "0/-0.010 mm"}, or its tolerance class
   * @param width width of the inner ring
   * @return this builder
   * @throws holdfast.quantity.InputException if a roller without inner ring is stated too
   */
  public YokeRollerBuilder bore(Length diameter, String tolerance, Length width) {
    this.bore = Objects.requireNonNull(diameter, "diameter");
    this.boreTolerance = Objects.requireNonNull(tolerance, "tolerance");
    this.seatWidth = Objects.requireNonNull(width, "width");
    this.innerRing = true;
    inside.make("bore");
    return this;
  }

  /**
   * States a roller without inner ring, whose needles run on the pin.
   *
   * @param diameter nominal diameter of the circle inscribed in the needles
   * @param tolerance its tolerance class, for example {@code "F6"}, or its limit deviations
   * @param width width over which the needles touch the pin
   * @return this builder
   * @throws holdfast.quantity.InputException if the bore of an inner ring is stated too
   */
  public YokeRollerBuilder withoutInnerRing(Length diameter, String tolerance, Length width) {
    this.bore = Objects.requireNonNull(diameter, "diameter");
    this.boreTolerance = Objects.requireNonNull(tolerance, "tolerance");
    this.seatWidth = Objects.requireNonNull(width, "width");
    this.innerRing = false;
    inside.make("withoutInnerRing");
    return this;
  }

  /**
   * States that the inner ring has a grease hole which meets the pin.
   *
   * @return this builder
   */
  public YokeRollerBuilder greaseHoleInRing() {
    this.ringHole = true;
    return this;
  }

  /**
   * States what the pin may bear by the maker of the roller. Optional.
   *
   * @param limit greatest radial load
   * @return this builder
   */
  public YokeRollerBuilder pinLimit(Force limit) {
    this.pinLimit = Objects.requireNonNull(limit, "limit");
    return this;
  }

  @Override
  void missing(Missing missing) {
    super.missing(missing);
    missing.need(bore, "bore (or the circle inscribed in the needles)");
  }

  @Override
  YokeRoller make() {
    return new YokeRoller(name, outsideDiameter(), ringWidth(), crownRadius(), bore, boreTolerance, innerRing, seatWidth,
        ringHole, measures(), kind, sealed, ratings, ratingsFrom, limits(pinLimit, null), interior);
  }

  /**
   * Ends the description.
   *
   * @return the roller
   * @throws holdfast.quantity.InputException if something is missing (one error names all of it) or cannot be
   */
  public YokeRoller build() {
    return make("yoke roller '" + name + "'");
  }
}
