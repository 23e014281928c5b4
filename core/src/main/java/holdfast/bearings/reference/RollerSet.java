// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

import holdfast.bearings.BearingFamily;
import holdfast.quantity.Check;
import holdfast.quantity.Length;
import java.util.Objects;

/**
 * Cylindrical rollers or needles of a radial bearing.
 *
 * @param count rollers of one row Z, 3 to 1000
 * @param diameter roller diameter Dwe, over 0 and under Dpw
 * @param length effective roller length Lwe, over 0
 * @param pitchDiameter pitch diameter Dpw
 * @param rows rows i, 1 to 20
 * @param rowSpacing distance between the middles of neighbouring rows, at least Lwe if there are several rows
 * @param profile profile of the rollers; the raceways are taken as straight
 */
public record RollerSet(
    int count, Length diameter, Length length, Length pitchDiameter, int rows, Length rowSpacing, RollerProfile profile)
    implements RollingElements {

  // Refuses what is no bearing.
  public RollerSet {
    Objects.requireNonNull(diameter, "diameter");
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(pitchDiameter, "pitchDiameter");
    Objects.requireNonNull(rowSpacing, "rowSpacing");
    Inputs.elements(count);
    ProfileKernel.diameter(diameter.mm());
    LaminaKernel.length(length.mm());
    Inputs.pitch(pitchDiameter.mm(), diameter.mm(), count);
    Check.within(rows, 1, 20, "rows i", "", "a bearing has at least one row");
    if (rows > 1) {
      Check.within(rowSpacing.mm(), length.mm(), 10_000, "distance between rows", "mm", "rows do not overlap");
    }
    Objects.requireNonNull(profile, "profile");
  }

  /**
   * One row of rollers with the recalled logarithmic profile.
   *
   * @param count Z, 3 to 1000
   * @param diameter Dwe, over 0
   * @param length Lwe, over 0
   * @param pitchDiameter Dpw, over Dwe
   * @return the rollers
   * @throws holdfast.quantity.InputException if a value is outside its range
   */
  public static RollerSet of(int count, Length diameter, Length length, Length pitchDiameter) {
    return new RollerSet(count, diameter, length, pitchDiameter, 1, new Length(0), RollerProfile.logarithmic());
  }

  /**
   * The same rollers with another profile.
   *
   * @param wanted the profile
   * @return the rollers
   */
  public RollerSet profile(RollerProfile wanted) {
    Objects.requireNonNull(wanted, "wanted");
    return new RollerSet(count, diameter, length, pitchDiameter, rows, rowSpacing, wanted);
  }

  /**
   * The same rollers in several rows.
   *
   * @param wanted number of rows, 1 to 20
   * @param spacing distance between the middles of neighbouring rows
   * @return the rollers
   * @throws holdfast.quantity.InputException if a value is outside its range
   */
  public RollerSet rows(int wanted, Length spacing) {
    Objects.requireNonNull(spacing, "spacing");
    return new RollerSet(count, diameter, length, pitchDiameter, wanted, spacing, profile);
  }

  @Override
  public BearingFamily family() {
    return BearingFamily.RADIAL_ROLLER;
  }

  /** For example {@code "14 rollers 5 mm × 10 mm on 30 mm, logarithmic profile [recalled]"}. */
  @Override
  public String toString() {
    return count + " rollers " + diameter + " × " + length + " on " + pitchDiameter + (rows > 1 ? " in " + rows + " rows" : "")
        + ", " + profile;
  }
}
