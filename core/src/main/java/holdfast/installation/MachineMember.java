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
import java.util.Optional;

/**
 * The lever, arm or block that takes the stud.
 *
 * @param name what the sheet calls it
 * @param body material and shape round the bore
 * @param boreTolerance tolerance class of the bore such as {@code "N7"}, or its limit deviations such as
 *     {@code "+0.0005/0 in"}
 * @param seatLength length over which stud and bore touch, chamfers not counted, over 0
 * @param pressingFriction band of friction while the stud is pressed in
 * @param faceRunOut greatest axial run-out of the clamped face against the bore, over the diameter of the roller's
 *     flange; null if neither drawing nor measurement states it
 * @param thickness thickness between the clamped face and the face under nut or washer, at least the seat length; null if it
 *     is not stated, then the grip is not looked at
 * @param feedHole whether a feed hole in the member meets the radial port of the stud
 */
public record MachineMember(
    String name,
    OuterPart body,
    String boreTolerance,
    Length seatLength,
    FrictionBand pressingFriction,
    Length faceRunOut,
    Length thickness,
    boolean feedHole)
    implements Serializable {

  // Refuses a seat without length.
  public MachineMember {
    Objects.requireNonNull(seatLength, "seatLength");
    PlainText.name(name, "name of the machine member");
    Objects.requireNonNull(body, "body");
    Objects.requireNonNull(boreTolerance, "boreTolerance");
    Feature.HOLE.require(boreTolerance);
    Objects.requireNonNull(pressingFriction, "pressingFriction");
    Check.positive(seatLength.mm(), "seat length", "mm", "the stud needs a seat");
    if (thickness != null && thickness.compareTo(seatLength) < 0) {
      throw new InputException("thickness of the member", thickness.toString(), "at least the seat length, " + seatLength,
          "the seat is in the member");
    }
    if (faceRunOut != null) {
      Check.notNegative(faceRunOut.mm(), "run-out of the face", "mm", "leave it out if it is not stated");
    }
  }

  /**
   * A member whose face run-out is not stated and which has no feed hole.
   *
   * @param name what the sheet calls it
   * @param body material and shape round the bore
   * @param boreTolerance tolerance class of the bore, or its limit deviations
   * @param seatLength length over which stud and bore touch, over 0
   * @param pressingFriction band of friction while the stud is pressed in
   */
  public MachineMember(
      String name, OuterPart body, String boreTolerance, Length seatLength, FrictionBand pressingFriction) {
    this(name, body, boreTolerance, seatLength, pressingFriction, null, null, false);
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
   * The same member with another bore.
   *
   * @param tolerance tolerance class of the bore, or its limit deviations
   * @return the member
   */
  public MachineMember withBore(String tolerance) {
    Objects.requireNonNull(tolerance, "tolerance");
    return new MachineMember(name, body, tolerance, seatLength, pressingFriction, faceRunOut, thickness, feedHole);
  }

  /**
   * The run-out of the face, if it is stated.
   *
   * @return the greatest axial run-out
   */
  public Optional<Length> statedRunOut() {
    return Optional.ofNullable(faceRunOut);
  }

  /** Collects the description. Not thread-safe. */
  public static final class Builder extends Description<MachineMember> {
    private final String name;
    private OuterPart body;
    private String bore;
    private Length seat;
    private FrictionBand friction;
    private Length runOut;
    private Length thickness;
    private boolean feedHole;

    private Builder(String name) {
      this.name = name;
    }

    /**
     * States material and shape round the bore.
     *
     * @param housing the body
     * @return this builder
     */
    public Builder body(OuterPart housing) {
      this.body = Objects.requireNonNull(housing, "housing");
      return this;
    }

    /**
     * States the bore.
     *
     * @param tolerance tolerance class, for example {@code "N7"}, or limit deviations, for example {@code "+0.0005/0 in"}
     * @param length length over which stud and bore touch
     * @return this builder
     */
    public Builder bore(String tolerance, Length length) {
      this.bore = Objects.requireNonNull(tolerance, "tolerance");
      this.seat = Objects.requireNonNull(length, "length");
      return this;
    }

    /**
     * States the friction while the stud is pressed in.
     *
     * @param band the band
     * @return this builder
     */
    public Builder pressingFriction(FrictionBand band) {
      this.friction = Objects.requireNonNull(band, "band");
      return this;
    }

    /**
     * States how square the clamped face is to the bore. Optional.
     *
     * @param greatest greatest axial run-out over the diameter of the flange
     * @return this builder
     */
    public Builder faceRunOut(Length greatest) {
      this.runOut = Objects.requireNonNull(greatest, "greatest");
      return this;
    }

    /**
     * States the thickness between the clamped face and the face under nut or washer, so that the grip is looked at. Optional.
     *
     * @param betweenFaces the thickness, at least the seat length
     * @return this builder
     */
    public Builder thickness(Length betweenFaces) {
      this.thickness = Objects.requireNonNull(betweenFaces, "betweenFaces");
      return this;
    }

    /**
     * States that a feed hole in the member meets the radial port of the stud. Optional.
     *
     * @return this builder
     */
    public Builder feedHole() {
      this.feedHole = true;
      return this;
    }

    @Override
    void missing(Missing missing) {
      missing
          .need(name, "name")
          .need(body, "body")
          .need(bore, "bore")
          .need(friction, "pressing friction");
    }

    @Override
    MachineMember make() {
      return new MachineMember(name, body, bore, seat, friction, runOut, thickness, feedHole);
    }

    /**
     * Ends the description.
     *
     * @return the member
     * @throws holdfast.quantity.InputException if something is missing (one error names all of it) or cannot be
     */
    public MachineMember build() {
      return make("machine member '" + name + "'");
    }
  }
}
