// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.Feature;
import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.PlainText;
import holdfast.seats.FrictionBand;
import holdfast.seats.OuterPart;
import java.io.Serializable;
import java.util.Objects;

/**
 * The fork whose two ears hold the pin.
 *
 * @param name what the sheet calls it
 * @param ear material and shape of an ear round the bore
 * @param boreTolerance tolerance class of the bores such as {@code "N7"}, or their limit deviations
 * @param thickness thickness of an ear along the pin, over 0
 * @param gap gap between the ears, over 0
 * @param pressingFriction band of friction while the pin is pressed in
 * @param ringClamped whether the ears or spacers clamp the inner ring from both sides, so that play on the pin does not count
 * @param feedHole whether a feed hole in an ear meets the bore of the pin
 */
public record Fork(
    String name, OuterPart ear, String boreTolerance, Length thickness, Length gap, FrictionBand pressingFriction,
    boolean ringClamped, boolean feedHole)
    implements Serializable {

  // Refuses ears without thickness or gap.
  public Fork {
    Objects.requireNonNull(thickness, "thickness");
    Objects.requireNonNull(gap, "gap");
    PlainText.name(name, "name of the fork");
    Objects.requireNonNull(ear, "ear");
    Objects.requireNonNull(boreTolerance, "boreTolerance");
    Feature.HOLE.require(boreTolerance);
    Objects.requireNonNull(pressingFriction, "pressingFriction");
    Check.positive(thickness.mm(), "thickness of an ear", "mm", "it holds the pin");
    Check.positive(gap.mm(), "gap between the ears", "mm", "the roller runs in it");
  }

  /**
   * Starts a description.
   *
   * @param name what the sheet shall call it
   * @return a builder
   */
  public static Builder named(String name) {
    Objects.requireNonNull(name, "name");
    return new Builder(name);
  }

  /**
   * The same fork with other bores.
   *
   * @param tolerance tolerance class of the bores, or their limit deviations
   * @return the fork
   */
  public Fork withBore(String tolerance) {
    Objects.requireNonNull(tolerance, "tolerance");
    return new Fork(name, ear, tolerance, thickness, gap, pressingFriction, ringClamped, feedHole);
  }

  /** Collects the description. Not thread-safe. */
  public static final class Builder extends Description<Fork> {
    private final String name;
    private OuterPart ear;
    private Length thickness;
    private Length gap;
    private String bore;
    private FrictionBand friction;
    private boolean clamped;
    private boolean feedHole;

    private Builder(String name) {
      this.name = name;
    }

    /**
     * States the ears.
     *
     * @param part material and shape round the bore
     * @param along thickness along the pin
     * @param between gap between them
     * @return this builder
     */
    public Builder ears(OuterPart part, Length along, Length between) {
      this.ear = Objects.requireNonNull(part, "part");
      this.thickness = Objects.requireNonNull(along, "along");
      this.gap = Objects.requireNonNull(between, "between");
      return this;
    }

    /**
     * States the bores.
     *
     * @param tolerance tolerance class, for example {@code "N7"}, or limit deviations
     * @return this builder
     */
    public Builder bore(String tolerance) {
      this.bore = Objects.requireNonNull(tolerance, "tolerance");
      return this;
    }

    /**
     * States the friction while the pin is pressed in.
     *
     * @param band the band
     * @return this builder
     */
    public Builder pressingFriction(FrictionBand band) {
      this.friction = Objects.requireNonNull(band, "band");
      return this;
    }

    /**
     * States that ears or spacers clamp the inner ring from both sides. Optional.
     *
     * @return this builder
     */
    public Builder ringClamped() {
      this.clamped = true;
      return this;
    }

    /**
     * States that a feed hole in an ear meets the bore of the pin. Optional.
     *
     * @return this builder
     */
    public Builder feedHole() {
      this.feedHole = true;
      return this;
    }

    @Override
    void missing(Missing missing) {
      missing.need(name, "name").need(ear, "ears").need(bore, "bore").need(friction, "pressing friction");
    }

    @Override
    Fork make() {
      return new Fork(name, ear, bore, thickness, gap, friction, clamped, feedHole);
    }

    /**
     * Ends the description.
     *
     * @return the fork
     * @throws InputException if something is missing (one error names all of it) or cannot be
     */
    public Fork build() {
      return make("fork '" + name + "'");
    }
  }
}
