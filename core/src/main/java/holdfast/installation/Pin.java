// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.Feature;
import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.seats.Material;
import holdfast.seats.StudMaterial;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The pin that carries a yoke roller in its fork, ground to one size over its length.
 *
 * @param tolerance tolerance class such as {@code "h6"}, or limit deviations such as {@code "0/-0.009 mm"}
 * @param greaseBore diameter of the bore along the axis; 0 for a solid pin
 * @param crossHole diameter of the hole from the bore to the roller; 0 for none
 * @param through whether the bore opens at both ends of the pin
 * @param material material of the pin, with the yield strength that its core has
 * @param roughness roughness Rz of its surface; 0 if it is not known
 * @param surfaceHardness hardness of its surface in HRC, 20 to 70; null if it is not stated
 * @param endurance fatigue strength of the finished pin; null if it is not known
 * @param securing what keeps it from turning and walking out
 */
public record Pin(
    String tolerance, Length greaseBore, Length crossHole, boolean through, Material material, Length roughness,
    Double surfaceHardness, StudEndurance endurance, PinSecuring securing)
    implements Serializable {

  // Refuses a hole without a bore.
  public Pin {
    Objects.requireNonNull(greaseBore, "greaseBore");
    Objects.requireNonNull(crossHole, "crossHole");
    Objects.requireNonNull(roughness, "roughness");
    Objects.requireNonNull(tolerance, "tolerance");
    Feature.SHAFT.require(tolerance);
    Objects.requireNonNull(material, "material");
    Objects.requireNonNull(securing, "securing");
    Check.notNegative(greaseBore.mm(), "grease bore", "mm", "0 stands for a solid pin");
    Check.notNegative(crossHole.mm(), "cross hole", "mm", "0 stands for none");
    Check.notNegative(roughness.mm(), "roughness Rz of the pin", "mm", "0 stands for unknown");
    if (greaseBore.mm() == 0 && (crossHole.mm() > 0 || through)) {
      throw new InputException("grease bore", greaseBore.toString(), "over 0 mm with a cross hole or open ends",
          "the holes start from the bore");
    }
    if (surfaceHardness != null) {
      Check.within(surfaceHardness, 20, 70, "surface hardness of the pin", "HRC", "range of the scale for steel");
    }
  }

  /**
   * Starts a description.
   *
   * @param tolerance tolerance class, for example {@code "h6"}, or limit deviations
   * @param material material of the pin
   * @return a builder for a solid pin
   */
  public static Builder of(String tolerance, Material material) {
    Objects.requireNonNull(tolerance, "tolerance");
    Objects.requireNonNull(material, "material");
    return new Builder(tolerance, material);
  }

  /**
   * Hardness of the surface, if it is stated.
   *
   * @return HRC
   */
  public OptionalDouble statedHardness() {
    return surfaceHardness == null ? OptionalDouble.empty() : OptionalDouble.of(surfaceHardness);
  }

  /**
   * Fatigue strength of the pin, if it is known.
   *
   * @return its strengths with the notch factor of its middle
   */
  public Optional<StudEndurance> knownEndurance() {
    return Optional.ofNullable(endurance);
  }

  /** Collects the description. Not thread-safe. */
  public static final class Builder extends Description<Pin> {
    private final String tolerance;
    private final Material material;
    private Length bore = new Length(0);
    private Length cross = new Length(0);
    private boolean through;
    private Length roughness = new Length(0);
    private Double hardness;
    private StudEndurance endurance;
    private PinSecuring securing;

    private Builder(String tolerance, Material material) {
      this.tolerance = tolerance;
      this.material = material;
    }

    /**
     * States the holes for grease. Solid if they are not stated.
     *
     * @param along diameter of the bore along the axis
     * @param across diameter of the hole from there to the roller; 0 mm for none
     * @param bothEnds whether the bore opens at both ends of the pin
     * @return this builder
     */
    public Builder drilled(Length along, Length across, boolean bothEnds) {
      this.bore = Objects.requireNonNull(along, "along");
      this.cross = Objects.requireNonNull(across, "across");
      this.through = bothEnds;
      return this;
    }

    /**
     * States the roughness. Not known if it is not stated; then no interference is lost to smoothing.
     *
     * @param rz roughness Rz
     * @return this builder
     */
    public Builder roughness(Length rz) {
      this.roughness = Objects.requireNonNull(rz, "rz");
      return this;
    }

    /**
     * States the hardness of the surface, which a pin without inner ring over it needs as a raceway.
     *
     * @param hrc hardness in HRC
     * @return this builder
     */
    public Builder hardness(double hrc) {
      this.hardness = hrc;
      return this;
    }

    /**
     * States what the pin endures. Optional: without it the fatigue of the pin is not looked at.
     *
     * @param strengths endurance limit of the finished pin, tensile and yield strength
     * @param notchFactor fatigue notch factor Kf in the middle, 1 or more; 1 for a solid pin, or with the cross hole beside
     *     the load
     * @return this builder
     * @throws InputException if the notch factor is out of range
     */
    public Builder endurance(StudMaterial strengths, double notchFactor) {
      Objects.requireNonNull(strengths, "strengths");
      this.endurance = new StudEndurance(strengths, notchFactor);
      return this;
    }

    /**
     * States what keeps the pin in place.
     *
     * @param means the means
     * @return this builder
     */
    public Builder securedBy(PinSecuring means) {
      this.securing = Objects.requireNonNull(means, "means");
      return this;
    }

    @Override
    void missing(Missing missing) {
      missing.need(tolerance, "tolerance").need(material, "material").need(securing, "securing");
    }

    @Override
    Pin make() {
      return new Pin(tolerance, bore, cross, through, material, roughness, hardness, endurance, securing);
    }

    /**
     * Ends the description.
     *
     * @return the pin
     * @throws InputException if something is missing (one error names all of it) or cannot be
     */
    public Pin build() {
      return make("pin");
    }
  }
}
