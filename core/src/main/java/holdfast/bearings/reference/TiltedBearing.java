// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

import holdfast.bearings.BearingFamily;
import holdfast.bearings.LoadRatings;
import holdfast.quantity.Angle;
import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.Length;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;

/**
 * A radial bearing of which lives with and without tilt are asked. Both rings are rigid in the model.
 *
 * @param ratings load ratings; the family must be that of the rolling elements
 * @param elements rollers or balls
 * @param clearance radial clearance s in operation (the whole play, not half of it); negative for preload
 * @param innerRing motion of the inner ring against the load
 * @param outerRing motion of the outer ring against the load
 * @param laminae laminae of one row, 2 to 4000 over all rows; the recalled method asks for 30 or more
 * @param refined whether this number is doubled until doubling it once more changes the life ratio by less than 0.5 %
 *     and the most loaded roller touches over 20 laminae (30 graded laminae are enough where rollers touch over their whole
 *     length, not for short contacts)
 * @param spacing how a roller is cut into laminae
 * @param edgeStress whether the recalled edge stress factor is applied
 * @param firstElement angle of the first rolling element from the load in rad, 0 or more and under one pitch
 */
public record TiltedBearing(
    LoadRatings ratings, RollingElements elements, Length clearance, RingMotion innerRing, RingMotion outerRing, int laminae,
    boolean refined, LaminaSpacing spacing, boolean edgeStress, double firstElement)
    implements Serializable {

  // Refuses what cannot be computed.
  public TiltedBearing {
    Objects.requireNonNull(ratings, "ratings");
    Objects.requireNonNull(elements, "elements");
    Objects.requireNonNull(clearance, "clearance");
    Objects.requireNonNull(innerRing, "innerRing");
    Objects.requireNonNull(outerRing, "outerRing");
    Objects.requireNonNull(spacing, "spacing");
    if (ratings.family() != elements.family()) {
      throw Inputs.refused("family of the ratings", ratings.family(), elements.family().toString(),
          "ratings and rolling elements belong to one bearing");
    }
    Inputs.clearance(clearance.mm(), elements.diameter().mm());
    int rows = elements instanceof RollerSet rollers ? rollers.rows() : 1;
    Check.within(laminae, 2, Math.floorDiv(Inputs.MOST_LAMINAE, rows), "number of laminae", "",
        "one lamina knows no tilt; more than 4000 gain nothing");
    Check.within(firstElement, 0, 2 * Math.PI / elements.count(), "angle of the first element", "rad",
        "elements are one pitch apart");
  }

  /**
   * A bearing without clearance whose inner ring rotates, with 30 graded laminae or more, one element under the load.
   *
   * @param ratings load ratings
   * @param elements rollers or balls of the same family
   * @return the bearing
   * @throws holdfast.quantity.InputException if the families differ
   */
  public static TiltedBearing of(LoadRatings ratings, RollingElements elements) {
    Objects.requireNonNull(elements, "elements");
    return new TiltedBearing(
        ratings, elements, new Length(0), RingMotion.ROTATING, RingMotion.STATIONARY, 30, true,
        LaminaSpacing.GRADED, elements.family() == BearingFamily.RADIAL_ROLLER, 0);
  }

  /**
   * A track roller without clearance: the inner ring stands still, the outer ring rotates.
   *
   * @param ratings load ratings
   * @param elements rollers or balls of the same family
   * @return the bearing
   * @throws holdfast.quantity.InputException if the families differ
   */
  public static TiltedBearing trackRoller(LoadRatings ratings, RollingElements elements) {
    Objects.requireNonNull(elements, "elements");
    return of(ratings, elements).rings(RingMotion.STATIONARY, RingMotion.ROTATING);
  }

  /**
   * The same bearing with a radial clearance.
   *
   * @param wanted s, the whole play; negative for preload
   * @return the bearing
   * @throws holdfast.quantity.InputException if the clearance is outside its range
   */
  public TiltedBearing clearance(Length wanted) {
    Objects.requireNonNull(wanted, "wanted");
    return new TiltedBearing(
        ratings, elements, wanted, innerRing, outerRing, laminae, refined, spacing, edgeStress, firstElement);
  }

  /**
   * The same bearing with other motions of its rings.
   *
   * @param inner motion of the inner ring against the load
   * @param outer motion of the outer ring against the load
   * @return the bearing
   */
  public TiltedBearing rings(RingMotion inner, RingMotion outer) {
    Objects.requireNonNull(inner, "inner");
    Objects.requireNonNull(outer, "outer");
    return new TiltedBearing(ratings, elements, clearance, inner, outer, laminae, refined, spacing, edgeStress, firstElement);
  }

  /**
   * The same bearing cut into a fixed number of laminae, without refinement.
   *
   * @param wanted laminae of one row, 2 or more
   * @return the bearing
   * @throws holdfast.quantity.InputException if the number is outside its range
   */
  public TiltedBearing laminae(int wanted) {
    return new TiltedBearing(
        ratings, elements, clearance, innerRing, outerRing, wanted, false, spacing, edgeStress, firstElement);
  }

  boolean refines() {
    return refined && elements instanceof RollerSet rollers && 2 * laminae * rollers.rows() <= Inputs.MOST_LAMINAE;
  }

  TiltedBearing doubled() {
    return new TiltedBearing(
        ratings, elements, clearance, innerRing, outerRing, 2 * laminae, true, spacing, edgeStress, firstElement);
  }

  /**
   * The same bearing cut in another way.
   *
   * @param wanted how a roller is cut
   * @return the bearing
   */
  public TiltedBearing spacing(LaminaSpacing wanted) {
    Objects.requireNonNull(wanted, "wanted");
    return new TiltedBearing(
        ratings, elements, clearance, innerRing, outerRing, laminae, refined, wanted, edgeStress, firstElement);
  }

  /**
   * The same bearing without the recalled edge stress factor.
   *
   * @return the bearing
   */
  public TiltedBearing withoutEdgeStress() {
    return new TiltedBearing(ratings, elements, clearance, innerRing, outerRing, laminae, refined, spacing, false, firstElement);
  }

  /**
   * The same bearing with its first element elsewhere. At half a pitch two elements share the load symmetrically.
   *
   * @param angle angle from the load, 0 or more and under one pitch
   * @return the bearing
   * @throws holdfast.quantity.InputException if the angle is outside its range
   */
  public TiltedBearing firstElementAt(Angle angle) {
    Objects.requireNonNull(angle, "angle");
    return new TiltedBearing(
        ratings, elements, clearance, innerRing, outerRing, laminae, refined, spacing, edgeStress, angle.radian());
  }

  /**
   * Life under a loading, against the same bearing without tilt.
   *
   * @param loading radial load, tilt or moment
   * @return the life
   * @throws holdfast.quantity.InputException if the loading does not suit the bearing
   */
  public TiltedLife life(Loading loading) {
    Objects.requireNonNull(loading, "loading");
    return TiltedLife.of(this, loading);
  }

  /**
   * Life with a tilt in the plane of the load.
   *
   * @param radial radial load Fr, over 0
   * @param tilt tilt of one raceway against the other, -0.2 rad to 0.2 rad
   * @return the life
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public TiltedLife life(Force radial, Angle tilt) {
    Objects.requireNonNull(radial, "radial");
    Objects.requireNonNull(tilt, "tilt");
    return life(Loading.radial(radial).tilted(tilt));
  }

  /**
   * Life ratios for many tilts in the plane of the load, cut as the last of them needs it. The life without tilt is found once.
   *
   * @param radial radial load Fr, over 0
   * @param tilts tilts of one raceway against the other, -0.2 rad to 0.2 rad, the greatest last; at least one
   * @return life ratios against the bearing without tilt (dimensionless), one for each tilt
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public List<Double> lifeRatios(Force radial, List<Angle> tilts) {
    Objects.requireNonNull(radial, "radial");
    Objects.requireNonNull(tilts, "tilts");
    if (tilts.isEmpty()) {
      throw Inputs.refused("tilts", "none", "one or more", "one ratio for each tilt");
    }
    Model model = Model.of(life(radial, tilts.get(tilts.size() - 1)).bearing());
    double aligned = model.life(Loading.radial(radial));
    return tilts.stream().map(tilt -> model.life(Loading.radial(radial).tilted(tilt)) / aligned).toList();
  }

  /**
   * Moment between the rings against the tilt in the plane of the load, for searches: its working memory is made once, so one
   * thread at a time may ask it. The number of laminae is that of this bearing.
   *
   * @param radial radial load Fr, over 0
   * @return moment in N·mm as a function of the tilt in rad, -0.2 to 0.2
   * @throws holdfast.quantity.InputException if the load is outside its range
   */
  public DoubleUnaryOperator moment(Force radial) {
    Objects.requireNonNull(radial, "radial");
    Loading loading = Loading.radial(radial);
    Model model = Model.of(this);
    return tilt -> {
      model.solve(loading.tilted(new Angle(tilt)));
      return model.workspace().momentAlong();
    };
  }
}
