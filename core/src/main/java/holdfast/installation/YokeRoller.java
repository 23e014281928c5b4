// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.bearings.LoadRatings;
import holdfast.fits.Feature;
import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.PlainText;
import holdfast.rollers.MeasureSystem;
import holdfast.rollers.RollerKind;
import java.util.Objects;
import java.util.Optional;

/**
 * A yoke-type track roller as its drawing and its maker describe it: it has a bore and sits on a pin.
 *
 * @param name what the sheet calls it
 * @param outsideDiameter outside diameter D of the outer ring, over 0
 * @param ringWidth width of the outer ring, over 0
 * @param crownRadius radius of the crown of the outer ring, over D/2; 0 for a flat ring
 * @param bore nominal diameter d of the bore of the inner ring, or of the circle inscribed in the needles; over 0, below D
 * @param boreTolerance its limit deviations such as {@code "0/-0.010 mm"}, or its tolerance class such as {@code "F6"}
 * @param innerRing whether it has an inner ring; without one the pin is the raceway
 * @param seatWidth width over which the roller sits on the pin: inner ring, or needles; over 0
 * @param ringHole whether a grease hole in the inner ring meets the pin; without inner ring the needles are open to it
 * @param system metric or inch
 * @param kind its rolling elements
 * @param sealed whether it has contact seals
 * @param ratings load ratings
 * @param ratingsFrom where the ratings come from
 * @param limits other limits as the maker states them
 * @param interior its rollers and their play; null if they are not known
 */
public record YokeRoller(
    String name,
    Length outsideDiameter,
    Length ringWidth,
    Length crownRadius,
    Length bore,
    String boreTolerance,
    boolean innerRing,
    Length seatWidth,
    boolean ringHole,
    MeasureSystem system,
    RollerKind kind,
    boolean sealed,
    LoadRatings ratings,
    ValueOrigin ratingsFrom,
    MakersLimits limits,
    RollerInterior interior)
    implements MountedRoller {

  // Refuses sizes that cannot belong to one roller.
  public YokeRoller {
    Objects.requireNonNull(outsideDiameter, "outsideDiameter");
    Objects.requireNonNull(ringWidth, "ringWidth");
    Objects.requireNonNull(crownRadius, "crownRadius");
    Objects.requireNonNull(bore, "bore");
    Objects.requireNonNull(seatWidth, "seatWidth");
    Objects.requireNonNull(ratings, "ratings");
    PlainText.name(name, "name of the roller");
    Objects.requireNonNull(boreTolerance, "boreTolerance");
    Feature.HOLE.require(boreTolerance);
    Objects.requireNonNull(system, "system");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(ratingsFrom, "ratingsFrom");
    Objects.requireNonNull(limits, "limits");
    Check.positive(outsideDiameter.mm(), "outside diameter D", "mm", "it is a size");
    Check.positive(ringWidth.mm(), "ring width", "mm", "it is a size");
    RacewayTilt.checkCrown(crownRadius, outsideDiameter);
    Check.positive(bore.mm(), "bore d", "mm", "it is a size");
    Check.positive(seatWidth.mm(), "width on the pin", "mm", "it is a size");
    if (bore.compareTo(outsideDiameter) >= 0) {
      throw new InputException("bore d", bore.toString(), "below D = " + outsideDiameter, "the bore is inside");
    }
    if (!ratings.outerRing().trackRoller()) {
      throw new InputException("ratings", ratings.toString(), "those of a track roller (LoadRatings.trackRoller)",
          "the maker's ratings hold for a rigid or for a deflecting outer ring, and it matters which");
    }
  }

  /**
   * Starts a description.
   *
   * @param name what the sheet shall call it
   * @return a builder
   */
  public static YokeRollerBuilder named(String name) {
    Objects.requireNonNull(name, "name");
    return new YokeRollerBuilder(name);
  }

  @Override
  public Length seatDiameter() {
    return bore;
  }

  @Override
  public Optional<RollerInterior> knownInterior() {
    return Optional.ofNullable(interior);
  }
}
