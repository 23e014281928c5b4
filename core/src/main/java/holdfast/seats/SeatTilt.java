// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Angle;
import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Message;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * How far a stud can lean in its seat, worst case: the contributions of clearance or clamped faces and of bending add up
 * in one plane. While the nut is tight the clamped faces govern; without a clamped face, or once the nut is loose, the
 * clearance does.
 *
 * @param clearance greatest diametral clearance; 0 for a fit that interferes
 * @param stud stud diameter
 * @param engagement engaged length of the seat
 * @param clamped whether a shoulder is clamped by the nut
 * @param byClearance tilt that the clearance allows
 * @param byFaces tilt of the clamped faces together
 * @param byBending slope of the stud under load at the roller
 */
public record SeatTilt(
    Length clearance,
    Length stud,
    Length engagement,
    boolean clamped,
    Angle byClearance,
    Angle byFaces,
    Angle byBending)
    implements Traced, Serializable {
  private static final SourceRef GEOMETRY = SourceRef.derived("a rectangle d by L turned in a gap D");
  private static final SourceRef FACE = SourceRef.derived("a flat face leans by its run-out over its diameter");
  private static final SourceRef SUM = SourceRef.derived("worst case: all contributions lean the same way in one plane");

  public SeatTilt {
    Objects.requireNonNull(clearance, "clearance");
    Objects.requireNonNull(stud, "stud");
    Objects.requireNonNull(engagement, "engagement");
    Objects.requireNonNull(byClearance, "byClearance");
    Objects.requireNonNull(byFaces, "byFaces");
    Objects.requireNonNull(byBending, "byBending");
  }

  /**
   * Starts from a seat.
   *
   * @param greatestClearance greatest diametral clearance of the fit; a negative one interferes and counts as 0
   * @param stud stud diameter
   * @param engagement engaged length, chamfers not counted
   * @return a builder for a seat without clamped faces and bending
   */
  public static Builder of(Length greatestClearance, Length stud, Length engagement) {
    Objects.requireNonNull(greatestClearance, "greatestClearance");
    Objects.requireNonNull(stud, "stud");
    Objects.requireNonNull(engagement, "engagement");
    return new Builder(greatestClearance, stud, engagement);
  }

  /**
   * How square a face must be: the run-out over its diameter that uses a share of the permitted tilt.
   *
   * @param permitted permitted tilt, over 0 and below 90°
   * @param share share of it that the face may use, over 0 up to 1
   * @param faceDiameter diameter of the face, over 0
   * @return greatest run-out
   * @throws InputException if an argument is outside its range
   */
  public static Length squareness(Angle permitted, double share, Length faceDiameter) {
    Objects.requireNonNull(permitted, "permitted");
    Objects.requireNonNull(faceDiameter, "faceDiameter");
    return new Length(SeatGeometryKernel.squareness(permitted.radian(), share, faceDiameter.mm()));
  }

  /**
   * Tilt of the seat without bending.
   *
   * @return the faces' tilt if a shoulder is clamped, else the clearance's
   */
  public Angle bySeat() {
    return clamped ? byFaces : byClearance;
  }

  /**
   * Tilt passed on to the bearing.
   *
   * @return seat and bending together
   */
  public Angle total() {
    return bySeat().plus(byBending);
  }

  /**
   * Tilt if the nut comes loose.
   *
   * @return clearance and bending together
   */
  public Angle totalIfLoose() {
    return byClearance.plus(byBending);
  }

  /**
   * Sideways shift of a point of the roller by the tilt of the seat, without bending.
   *
   * @param distance distance of the point from the mouth of the seat, 0 or more
   * @return shift
   * @throws InputException if the distance is negative
   */
  public Length shiftAt(Length distance) {
    Objects.requireNonNull(distance, "distance");
    return new Length(SeatGeometryKernel.shift(bySeat().base(), distance.mm(), engagement.mm()));
  }

  /** Derivation of the total tilt. */
  @Override
  public Derivation explain() {
    Derivation.Builder steps = Derivation.of("Tilt of the stud in its seat");
    steps.step(
        "φ_s",
        "tilt by clearance, stud touching both mouths",
        "L·sin φ + d·cos φ = d + s",
        byClearance.base() * 1000,
        "mrad",
        GEOMETRY,
        "s = " + clearance,
        "d = " + stud,
        "L = " + engagement);
    steps.step("φ_f", "tilt of the clamped faces", "Σ atan(t/D_F)", byFaces.base() * 1000, "mrad", FACE);
    steps.step("φ_b", "slope by bending", "given", byBending.base() * 1000, "mrad", SUM);
    steps.step(
        "φ", "total tilt", clamped ? "φ_f + φ_b" : "φ_s + φ_b", total().base() * 1000, "mrad", SUM);
    return steps.build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    if (clamped && byFaces.compareTo(byClearance) > 0) {
      warnings.add(
          new Warning(
              "faces-bend-the-stud",
              Message.of("the clamped faces lean by ", byFaces, ", more than the ", byClearance,
                  " that the fit leaves free: tightening bends the stud or the shoulder does not seat"),
              FACE));
    }
    if (!clamped && clearance.mm() > 0) {
      warnings.add(
          new Warning("not-clamped", "nothing but the clearance limits the tilt: no shoulder is clamped", GEOMETRY));
    }
    return List.copyOf(warnings);
  }

  @Override
  public String toString() {
    return "tilt " + total() + (clamped ? " with the nut tight, " + totalIfLoose() + " if it comes loose" : "");
  }

  /** Collects what leans a stud. Not thread-safe. */
  public static final class Builder {
    private final Length clearance;
    private final Length stud;
    private final Length engagement;
    private boolean clamped;
    private double faces;
    private Angle bending = new Angle(0);

    private Builder(Length greatestClearance, Length stud, Length engagement) {
      this.clearance = greatestClearance.mm() > 0 ? greatestClearance : new Length(0);
      this.stud = stud;
      this.engagement = engagement;
    }

    /**
     * Adds a face that is clamped when the nut is tight: the shoulder of the stud, the face of the housing. Their tilts
     * add up.
     *
     * @param runout axial run-out of the face to the axis of its seat, 0 or more
     * @param faceDiameter diameter over which it is measured
     * @return this builder
     * @throws InputException if a value is out of range
     */
    public Builder clampedFace(Length runout, Length faceDiameter) {
      Objects.requireNonNull(runout, "runout");
      Objects.requireNonNull(faceDiameter, "faceDiameter");
      faces += SeatGeometryKernel.faceTilt(runout.mm(), faceDiameter.mm());
      clamped = true;
      return this;
    }

    /**
     * States the slope of the stud under load.
     *
     * @param slope slope at the roller, 0 or more
     * @return this builder
     * @throws InputException if the slope is negative
     */
    public Builder bending(Angle slope) {
      Objects.requireNonNull(slope, "slope");
      Check.notNegative(slope.base(), "slope by bending", "rad", "state its size");
      bending = slope;
      return this;
    }

    /**
     * Computes the tilt.
     *
     * @return the result
     * @throws InputException if the engagement is too short to stop the stud, or a size is out of range
     */
    public SeatTilt build() {
      double tilt = SeatGeometryKernel.clearanceTilt(clearance.mm(), stud.mm(), engagement.mm());
      return new SeatTilt(clearance, stud, engagement, clamped, new Angle(tilt), new Angle(faces), bending);
    }
  }
}
