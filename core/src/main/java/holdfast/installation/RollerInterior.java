// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.bearings.ClearanceGroup;
import holdfast.bearings.LoadRatings;
import holdfast.bearings.reference.RollerProfile;
import holdfast.bearings.reference.RollerSet;
import holdfast.bearings.reference.TiltedBearing;
import holdfast.quantity.Length;
import holdfast.tables.SourceRef;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;

/**
 * What the life of a tilted roller needs beyond the catalogue: its rollers, their pitch circle, the radial internal
 * clearance and the profile of the rollers, each with its origin. Catalogues seldom state any of it.
 *
 * @param rollers number, rows, Dwe, Lwe, Dpw and profile
 * @param clearance radial internal clearance at work, the whole play; negative for preload
 * @param rollersFrom origin of number, rows, diameter and length of the rollers
 * @param pitchFrom origin of the pitch diameter
 * @param clearanceFrom origin of the clearance
 * @param profileFrom origin of the profile
 */
public record RollerInterior(
    RollerSet rollers, Length clearance, ValueOrigin rollersFrom, ValueOrigin pitchFrom, ValueOrigin clearanceFrom,
    ValueOrigin profileFrom)
    implements Serializable {

  // Refuses a value without origin.
  public RollerInterior {
    Objects.requireNonNull(rollers, "rollers");
    Objects.requireNonNull(clearance, "clearance");
    Objects.requireNonNull(rollersFrom, "rollersFrom");
    Objects.requireNonNull(pitchFrom, "pitchFrom");
    Objects.requireNonNull(clearanceFrom, "clearanceFrom");
    Objects.requireNonNull(profileFrom, "profileFrom");
  }

  /**
   * Starts a description.
   *
   * @return a builder, with one row until another number is stated
   */
  public static Builder describe() {
    return new Builder();
  }

  /**
   * The track roller with this inside: the inner raceway stands still, the outer ring rotates.
   *
   * @param ratings load ratings of a radial roller bearing
   * @return the bearing
   * @throws holdfast.quantity.InputException if the ratings are of another family
   */
  public TiltedBearing bearing(LoadRatings ratings) {
    return TiltedBearing.trackRoller(ratings, rollers).clearance(clearance);
  }

  /**
   * Diameter of the inner raceway.
   *
   * @return pitch diameter less the diameter of a roller
   */
  public Length innerRaceway() {
    return rollers.pitchDiameter().minus(rollers.diameter());
  }

  /**
   * What is not known for sure.
   *
   * @return one warning that names all that is estimated; empty if everything is stated or measured
   */
  public List<Warning> warnings() {
    TreeSet<String> estimated = new TreeSet<>();
    name(estimated, rollersFrom, "rollers");
    name(estimated, pitchFrom, "pitch diameter");
    name(estimated, clearanceFrom, "internal clearance");
    name(estimated, profileFrom, "profile of the rollers");
    return estimated.isEmpty()
        ? List.of()
        : List.of(
            new Warning(
                "interior-estimated",
                "estimated, not stated or measured: " + String.join(", ", estimated) + "; ask the maker before the life ratio"
                    + " decides anything",
                SourceRef.commonPractice("as stated for this roller")));
  }

  private static void name(TreeSet<String> names, ValueOrigin origin, String name) {
    if (origin == ValueOrigin.ESTIMATED) {
      names.add(name);
    }
  }

  /** Rollers and clearance with their origins. */
  @Override
  public String toString() {
    return rollers + ", clearance " + clearance + " (rollers " + rollersFrom + ", pitch diameter " + pitchFrom
        + ", clearance " + clearanceFrom + ", profile " + profileFrom + ")";
  }

  /** Collects the description. Not thread-safe. */
  public static final class Builder {
    private Integer count;
    private Length diameter;
    private Length length;
    private ValueOrigin rollersFrom;
    private int rows = 1;
    private Length rowSpacing = new Length(0);
    private Length pitchDiameter;
    private ValueOrigin pitchFrom;
    private Length clearance;
    private ValueOrigin clearanceFrom;
    private RollerProfile profile;
    private ValueOrigin profileFrom;

    private Builder() {}

    /**
     * States the rollers or needles.
     *
     * @param z rollers of one row Z
     * @param dwe roller diameter Dwe; null if it is not known yet
     * @param lwe effective roller length Lwe: without the rounded ends
     * @param origin where the values come from
     * @return this builder
     */
    public Builder rollers(int z, Length dwe, Length lwe, ValueOrigin origin) {
      this.count = z;
      this.diameter = dwe;
      this.length = Objects.requireNonNull(lwe, "lwe");
      this.rollersFrom = Objects.requireNonNull(origin, "origin");
      return this;
    }

    /**
     * States several rows; one row otherwise.
     *
     * @param number number of rows
     * @param spacing distance between the middles of neighbouring rows
     * @return this builder
     */
    public Builder rows(int number, Length spacing) {
      this.rows = number;
      this.rowSpacing = Objects.requireNonNull(spacing, "spacing");
      return this;
    }

    /**
     * States the circle of the roller centres.
     *
     * @param dpw pitch diameter Dpw
     * @param origin where the value comes from
     * @return this builder
     */
    public Builder pitchDiameter(Length dpw, ValueOrigin origin) {
      this.pitchDiameter = Objects.requireNonNull(dpw, "dpw");
      this.pitchFrom = Objects.requireNonNull(origin, "origin");
      return this;
    }

    /**
     * States the radial internal clearance at work. The seat of a stud does not change it: the raceway lies outside of it.
     *
     * @param play the whole play; negative for preload
     * @param origin where the value comes from
     * @return this builder
     */
    public Builder clearance(Length play, ValueOrigin origin) {
      this.clearance = Objects.requireNonNull(play, "play");
      this.clearanceFrom = Objects.requireNonNull(origin, "origin");
      return this;
    }

    /**
     * States the group of the internal clearance before mounting. The greatest play of the group is taken, for it lets the ring
     * lean farthest; the groups are printed for cylindrical roller bearings.
     *
     * @param group the group
     * @param bore bore of the bearing, or raceway of the stud
     * @param origin where the group comes from
     * @return this builder
     * @throws holdfast.quantity.InputException if the table does not hold the bore
     */
    public Builder clearance(ClearanceGroup group, Length bore, ValueOrigin origin) {
      Objects.requireNonNull(group, "group");
      return clearance(group.greatest(bore), origin);
    }

    /**
     * States the profile of the rollers. It decides much of the life ratio.
     *
     * @param generatrix the profile
     * @param origin where it comes from
     * @return this builder
     */
    public Builder profile(RollerProfile generatrix, ValueOrigin origin) {
      this.profile = Objects.requireNonNull(generatrix, "generatrix");
      this.profileFrom = Objects.requireNonNull(origin, "origin");
      return this;
    }

    /**
     * Ends the description.
     *
     * @return the inside of the roller
     * @throws holdfast.quantity.InputException if something is missing (one error names all of it) or cannot be
     */
    public RollerInterior build() {
      new Missing("inside of the roller")
          .need(count, "number of rollers Z")
          .need(diameter, "roller diameter Dwe")
          .need(length, "effective roller length Lwe")
          .need(rollersFrom, "origin of the rollers")
          .need(pitchDiameter, "pitch diameter Dpw")
          .need(pitchFrom, "origin of the pitch diameter")
          .need(clearance, "radial internal clearance")
          .need(clearanceFrom, "origin of the clearance")
          .need(profile, "profile of the rollers")
          .need(profileFrom, "origin of the profile")
          .refuse();
      RollerSet set = new RollerSet(count, diameter, length, pitchDiameter, rows, rowSpacing, profile);
      return new RollerInterior(set, clearance, rollersFrom, pitchFrom, clearanceFrom, profileFrom);
    }
  }
}
