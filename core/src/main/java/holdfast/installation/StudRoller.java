// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.bearings.LoadRatings;
import holdfast.fits.Feature;
import holdfast.lubrication.Openings;
import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.PlainText;
import holdfast.quantity.Torque;
import holdfast.rollers.MeasureSystem;
import holdfast.rollers.RollerKind;
import holdfast.seats.Material;
import java.util.Objects;
import java.util.Optional;

/**
 * A stud-type track roller as its drawing and its maker describe it.
 *
 * @param name what the sheet calls it
 * @param outsideDiameter outside diameter D of the outer ring, over 0
 * @param ringWidth width of the outer ring, over 0
 * @param crownRadius radius of the crown of the outer ring, over D/2; 0 for a flat ring
 * @param flangeDiameter diameter of the flange that is clamped against the machine member, over d1
 * @param ringGap distance from the clamped face to the near side of the outer ring, 0 or more
 * @param studDiameter nominal diameter d1 of the stud, over 0 and below D
 * @param studTolerance tolerance class of the stud such as {@code "h7"}, or its limit deviations such as
 *     {@code "+0.001/0 in"}
 * @param lengths lengths of stud and thread; null if they are not stated, then the grip is not looked at
 * @param thread designation of the stud's thread, for example {@code "M18x1.5"}
 * @param greaseBore diameter of the axial grease bore through the stud; 0 for a solid stud, else below d1
 * @param crossHole diameter of the radial hole in the shank, 0 for none or one that is not stated, else below d1; it counts
 *     where bending is greatest, at the mouth of the seat
 * @param material material of the stud, with the yield strength that its core has
 * @param seatRoughness roughness Rz of the stud; 0 if it is not known, then no interference is lost to smoothing
 * @param build rolling elements, seals, head and openings
 * @param ratings load ratings
 * @param ratingsFrom where the ratings come from
 * @param limits other limits as the maker states them
 * @param interior its rollers and their play, for the price of a loose seat; null if they are not known
 * @param endurance fatigue strength of the stud; null if it is not known
 */
public record StudRoller(
    String name,
    Length outsideDiameter,
    Length ringWidth,
    Length crownRadius,
    Length flangeDiameter,
    Length ringGap,
    Length studDiameter,
    String studTolerance,
    StudLengths lengths,
    String thread,
    Length greaseBore,
    Length crossHole,
    Material material,
    Length seatRoughness,
    RollerBuild build,
    LoadRatings ratings,
    ValueOrigin ratingsFrom,
    MakersLimits limits,
    RollerInterior interior,
    StudEndurance endurance)
    implements MountedRoller {

  // Refuses sizes that cannot belong to one roller.
  public StudRoller {
    PlainText.name(name, "name of the roller");
    Objects.requireNonNull(outsideDiameter, "outsideDiameter");
    Objects.requireNonNull(ringWidth, "ringWidth");
    Objects.requireNonNull(crownRadius, "crownRadius");
    Objects.requireNonNull(flangeDiameter, "flangeDiameter");
    Objects.requireNonNull(ringGap, "ringGap");
    Objects.requireNonNull(studDiameter, "studDiameter");
    Objects.requireNonNull(studTolerance, "studTolerance");
    Feature.SHAFT.require(studTolerance);
    Objects.requireNonNull(thread, "thread");
    Objects.requireNonNull(greaseBore, "greaseBore");
    Objects.requireNonNull(crossHole, "crossHole");
    Objects.requireNonNull(material, "material");
    Objects.requireNonNull(seatRoughness, "seatRoughness");
    Objects.requireNonNull(ratings, "ratings");
    Objects.requireNonNull(build, "build");
    Objects.requireNonNull(limits, "limits");
    Objects.requireNonNull(ratingsFrom, "ratingsFrom");
    Check.positive(outsideDiameter.mm(), "outside diameter D", "mm", "it is a size");
    Check.positive(ringWidth.mm(), "ring width", "mm", "it is a size");
    RacewayTilt.checkCrown(crownRadius, outsideDiameter);
    Check.notNegative(ringGap.mm(), "gap between clamped face and ring", "mm", "it is a distance");
    Check.positive(studDiameter.mm(), "stud diameter d1", "mm", "it is a size");
    Check.notNegative(seatRoughness.mm(), "roughness Rz of the stud", "mm", "0 stands for unknown");
    Check.notNegative(greaseBore.mm(), "grease bore", "mm", "0 stands for a solid stud");
    Check.notNegative(crossHole.mm(), "cross hole", "mm", "0 stands for none");
    if (studDiameter.compareTo(outsideDiameter) >= 0) {
      throw new InputException("stud diameter d1", studDiameter.toString(), "below D = " + outsideDiameter, "the stud is inside");
    }
    if (flangeDiameter.compareTo(studDiameter) <= 0) {
      throw new InputException(
          "flange diameter", flangeDiameter.toString(), "over d1 = " + studDiameter, "the flange is clamped beside the bore");
    }
    if (greaseBore.compareTo(studDiameter) >= 0) {
      throw new InputException("grease bore", greaseBore.toString(), "below d1 = " + studDiameter, "the bore is in the stud");
    }
    if (crossHole.compareTo(studDiameter) >= 0) {
      throw new InputException("cross hole", crossHole.toString(), "below d1 = " + studDiameter, "the hole is in the stud");
    }
    if (crossHole.mm() > 0 && build.seenOpenings().filter(seen -> !seen.radial()).isPresent()) {
      throw new InputException("cross hole", crossHole.toString(), "0 mm in a stud without radial opening",
          "the radial hole in the shank is that opening");
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
  public static StudRollerBuilder named(String name) {
    Objects.requireNonNull(name, "name");
    return new StudRollerBuilder(name);
  }

  @Override
  public Length seatDiameter() {
    return studDiameter;
  }

  @Override
  public MeasureSystem system() {
    return build.system();
  }

  @Override
  public RollerKind kind() {
    return build.kind();
  }

  @Override
  public boolean sealed() {
    return build.sealed();
  }

  @Override
  public Optional<RollerInterior> knownInterior() {
    return Optional.ofNullable(interior);
  }

  /**
   * Openings of the stud: as seen, else those usual for the size. A stated cross hole is an opening too.
   *
   * @return the openings
   */
  public Openings openings() {
    Openings found =
        build.seenOpenings().orElseGet(() -> Openings.usual(build.system(), studDiameter, outsideDiameter));
    return crossHole.mm() == 0 ? found : new Openings(found.axialBore(), found.head(), found.threadEnd(), true);
  }

  /**
   * Fatigue strength of the stud, if it is known.
   *
   * @return the strength
   */
  public Optional<StudEndurance> knownEndurance() {
    return Optional.ofNullable(endurance);
  }

  /**
   * The greatest tightening torque, if the maker states one.
   *
   * @return the torque
   */
  public Optional<Torque> statedTorque() {
    return limits.statedTorque();
  }
}
