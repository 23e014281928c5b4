// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

import holdfast.quantity.Angle;
import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.quantity.Stress;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** Deep groove ball bearing. */
final class BallModel extends Model {
  private final BallSet balls;
  private final BallWorkspace w;
  final double innerRating;
  final double outerRating;

  BallModel(TiltedBearing bearing, BallSet balls) {
    super(bearing);
    this.balls = balls;
    w = new BallWorkspace(balls.count());
    double dw = balls.diameter().mm();
    double dpw = balls.pitchDiameter().mm();
    double ri = balls.innerGroove().mm();
    double re = balls.outerGroove().mm();
    BallDistributionKernel.balls(w, balls.count(), bearing.firstElement());
    BallDistributionKernel.contacts(w, dw, dpw, ri, re, bearing.clearance().mm());
    double cr = bearing.ratings().dynamic().newton();
    innerRating = BallKernel.innerRating(cr, balls.count(), dw, dpw, ri, re);
    outerRating = BallKernel.outerRating(cr, balls.count(), dw, dpw, ri, re);
  }

  @Override
  void solve(Loading loading) {
    double fr = loading.radial().newton();
    double fa = loading.axial().newton();
    if (loading.byMoment()) {
      BallDistributionKernel.underMoment(
          w, fr, fa, loading.momentAlong().newtonMillimetre(), loading.momentAcross().newtonMillimetre());
    } else {
      BallDistributionKernel.tilted(w, fr, fa, loading.tiltAlong().radian(), loading.tiltAcross().radian());
    }
  }

  @Override
  double life() {
    return BallLifeKernel.life(w, innerRating, outerRating, bearing.innerRing().rotates(), bearing.outerRing().rotates());
  }

  @Override
  double modifiedLife(DoubleUnaryOperator factor) {
    return BallLifeKernel.modifiedLife(
        w, innerRating, outerRating, bearing.innerRing().rotates(), bearing.outerRing().rotates(), factor);
  }

  @Override
  double recalledFactor() {
    return 1;
  }

  @Override
  EquilibriumWorkspace workspace() {
    return w;
  }

  @Override
  double greatestLoad() {
    double greatest = 0;
    for (int j = 0; j < balls.count(); j++) {
      greatest = Math.max(greatest, w.ballLoad(j));
    }
    return greatest;
  }

  @Override
  double greatestPressure() {
    return pressure(greatestLoad());
  }

  @Override
  double load(int element) {
    return w.ballLoad(element);
  }

  private double pressure(double load) {
    double dw = balls.diameter().mm();
    double dpw = balls.pitchDiameter().mm();
    double inner = BallKernel.pressure(load, dw, dpw, balls.innerGroove().mm(), true);
    double outer = BallKernel.pressure(load, dw, dpw, balls.outerGroove().mm(), false);
    return Math.max(inner, outer);
  }

  @Override
  double touchingShare() {
    return 1;
  }

  @Override
  int touchingLaminae() {
    return 1;
  }

  @Override
  boolean touches(double c, double s, double slope) {
    double radial = w.centres + c * w.displacement() + s * w.sideDisplacement() - 0.5 * w.clearance;
    double axial = w.axialDisplacement() + w.circle * slope;
    return Math.hypot(radial, axial) > w.centres + TOUCHING;
  }

  @Override
  LoadDistribution distribution() {
    List<LoadDistribution.Element> elements = new ArrayList<>();
    for (int j = 0; j < balls.count(); j++) {
      double q = w.ballLoad(j);
      LoadDistribution.Lamina contact =
          new LoadDistribution.Lamina(new Length(0), new Force(q), new Stress(pressure(q)));
      elements.add(
          new LoadDistribution.Element(
              1, new Angle(w.angle(j)), new Force(q), new Angle(w.contactAngle(j)), List.of(contact)));
    }
    return new LoadDistribution(elements);
  }
}
