package holdfast.installation;

import holdfast.bearings.LoadRatings;
import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.Temperature;
import holdfast.quantity.Torque;
import holdfast.seats.Material;
import java.io.Serializable;
import java.util.Optional;

/**
 * A stud-type track roller as its drawing and its maker describe it.
 *
 * @param name what the sheet calls it
 * @param outsideDiameter outside diameter D of the outer ring, over 0
 * @param ringWidth width of the outer ring, over 0
 * @param crownRadius radius of the crown of the outer ring; 0 for a flat ring
 * @param flangeDiameter diameter of the flange that is clamped against the machine member, over d1
 * @param ringGap distance from the clamped face to the near side of the outer ring, 0 or more
 * @param studDiameter nominal diameter d1 of the stud, over 0 and below D
 * @param studTolerance tolerance class of the stud, for example {@code "h7"}
 * @param thread designation of the stud's thread, for example {@code "M18x1.5"}
 * @param greaseBore diameter of the axial grease bore through the stud; 0 for a solid stud, else below d1
 * @param material material of the stud, with the yield strength that its core has
 * @param seatRoughness roughness Rz of the stud; 0 if it is not known, then no interference is lost to smoothing
 * @param ratings load ratings as the maker states them
 * @param coldest lowest temperature that the roller may take, as its maker states it
 * @param hottest highest temperature that the roller may take, as its maker states it; above the lowest
 * @param greatestTorque greatest tightening torque that the maker permits; null if it is not stated
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
    String thread,
    Length greaseBore,
    Material material,
    Length seatRoughness,
    LoadRatings ratings,
    Temperature coldest,
    Temperature hottest,
    Torque greatestTorque)
    implements Serializable {

  // Refuses sizes that cannot belong to one roller.
  public StudRoller {
    Check.positive(outsideDiameter.mm(), "outside diameter D", "mm", "it is a size");
    Check.positive(ringWidth.mm(), "ring width", "mm", "it is a size");
    Check.notNegative(crownRadius.mm(), "crown radius", "mm", "0 stands for a flat ring");
    Check.notNegative(ringGap.mm(), "gap between clamped face and ring", "mm", "it is a distance");
    Check.positive(studDiameter.mm(), "stud diameter d1", "mm", "it is a size");
    Check.notNegative(seatRoughness.mm(), "roughness Rz of the stud", "mm", "0 stands for unknown");
    Check.notNegative(greaseBore.mm(), "grease bore", "mm", "0 stands for a solid stud");
    if (studDiameter.compareTo(outsideDiameter) >= 0) {
      throw new InputException("stud diameter d1", studDiameter.toString(), "below D = " + outsideDiameter, "the stud is inside");
    }
    if (flangeDiameter.compareTo(studDiameter) <= 0) {
      throw new InputException(
          "flange diameter", flangeDiameter.toString(), "over d1 = " + studDiameter, "the flange is clamped beside the bore");
    }
    if (hottest.compareTo(coldest) <= 0) {
      throw new InputException("highest temperature", hottest.toString(), "above " + coldest, "it is not below the lowest");
    }
    if (greaseBore.compareTo(studDiameter) >= 0) {
      throw new InputException("grease bore", greaseBore.toString(), "below d1 = " + studDiameter, "the bore is in the stud");
    }
  }

  /**
   * Mean of stud and outside diameter: stands for the pitch diameter, which makers seldom state.
   *
   * @return (d1 + D)/2
   */
  public Length meanDiameter() {
    return studDiameter.plus(outsideDiameter).times(0.5);
  }

  /**
   * The greatest tightening torque, if the maker states one.
   *
   * @return the torque
   */
  public Optional<Torque> statedTorque() {
    return Optional.ofNullable(greatestTorque);
  }

  /**
   * Starts a description.
   *
   * @param name what the sheet shall call it
   * @return a builder
   */
  public static Builder named(String name) {
    return new Builder(name);
  }

  /** Collects the description. Not thread-safe. */
  public static final class Builder {
    private final String name;
    private Length outsideDiameter;
    private Length ringWidth;
    private Length crownRadius;
    private Length flangeDiameter;
    private Length ringGap;
    private Length studDiameter;
    private String studTolerance;
    private String thread;
    private Length greaseBore;
    private Material material;
    private Length seatRoughness;
    private LoadRatings ratings;
    private Temperature coldest;
    private Temperature hottest;
    private Torque greatestTorque;

    private Builder(String name) {
      this.name = name;
    }

    /**
     * States the outer ring.
     *
     * @param diameter outside diameter D
     * @param width width of the ring
     * @param crown radius of its crown; 0 mm for a flat ring
     * @return this builder
     */
    public Builder ring(Length diameter, Length width, Length crown) {
      this.outsideDiameter = diameter;
      this.ringWidth = width;
      this.crownRadius = crown;
      return this;
    }

    /**
     * States the flange that is clamped against the machine member.
     *
     * @param diameter diameter of the flange
     * @param gap distance from its clamped face to the near side of the outer ring
     * @return this builder
     */
    public Builder flange(Length diameter, Length gap) {
      this.flangeDiameter = diameter;
      this.ringGap = gap;
      return this;
    }

    /**
     * States the stud.
     *
     * @param diameter nominal diameter d1
     * @param toleranceClass its tolerance class, for example {@code "h7"}
     * @return this builder
     */
    public Builder stud(Length diameter, String toleranceClass) {
      this.studDiameter = diameter;
      this.studTolerance = toleranceClass;
      return this;
    }

    /**
     * States the thread.
     *
     * @param designation for example {@code "M18x1.5"}
     * @return this builder
     */
    public Builder thread(String designation) {
      this.thread = designation;
      return this;
    }

    /**
     * States the grease bore.
     *
     * @param diameter diameter of the axial bore; 0 mm for a solid stud
     * @return this builder
     */
    public Builder greaseBore(Length diameter) {
      this.greaseBore = diameter;
      return this;
    }

    /**
     * States the material of the stud.
     *
     * @param studMaterial the material, with the yield strength that its core has
     * @param rz roughness Rz of the seat; 0 mm if it is not known
     * @return this builder
     */
    public Builder material(Material studMaterial, Length rz) {
      this.material = studMaterial;
      this.seatRoughness = rz;
      return this;
    }

    /**
     * States the load ratings.
     *
     * @param makersRatings as the maker states them
     * @return this builder
     */
    public Builder ratings(LoadRatings makersRatings) {
      this.ratings = makersRatings;
      return this;
    }

    /**
     * States the temperatures that the roller may take.
     *
     * @param lowest lowest temperature
     * @param highest highest temperature
     * @return this builder
     */
    public Builder temperatures(Temperature lowest, Temperature highest) {
      this.coldest = lowest;
      this.hottest = highest;
      return this;
    }

    /**
     * States the greatest tightening torque that the maker permits. Optional.
     *
     * @param torque the torque
     * @return this builder
     */
    public Builder greatestTorque(Torque torque) {
      this.greatestTorque = torque;
      return this;
    }

    /**
     * Ends the description.
     *
     * @return the roller
     * @throws InputException if something is missing (one error names all of it) or cannot be
     */
    public StudRoller build() {
      new Missing("stud roller '" + name + "'")
          .need(outsideDiameter, "ring")
          .need(flangeDiameter, "flange")
          .need(studDiameter, "stud")
          .need(thread, "thread")
          .need(greaseBore, "grease bore (0 mm for a solid stud)")
          .need(material, "material of the stud")
          .need(ratings, "ratings")
          .need(coldest, "temperatures")
          .refuse();
      return new StudRoller(
          name,
          outsideDiameter,
          ringWidth,
          crownRadius,
          flangeDiameter,
          ringGap,
          studDiameter,
          studTolerance,
          thread,
          greaseBore,
          material,
          seatRoughness,
          ratings,
          coldest,
          hottest,
          greatestTorque);
    }
  }
}
