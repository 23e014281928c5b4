// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

import holdfast.quantity.Angle;
import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.quantity.Stress;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** Radial roller bearing in laminae. */
final class RollerModel extends Model {
  private final RollerSet rollers;
  private final LaminaWorkspace w;
  private final double clearance;
  /** Ratings of the contacts, without the recalled division. */
  final double innerRating;
  final double outerRating;

  RollerModel(TiltedBearing bearing, RollerSet rollers) {
    super(bearing);
    this.rollers = rollers;
    int n = bearing.laminae();
    int rows = rollers.rows();
    w = new LaminaWorkspace(rollers.count(), n * rows);
    double[] middle = new double[n];
    double[] width = new double[n];
    bearing.spacing().cut(middle, width);
    double[] x = new double[n * rows];
    double[] share = new double[n * rows];
    double[] drop = new double[n * rows];
    double[] riser = new double[n * rows];
    for (int k = 0; k < n; k++) {
      Length at = rollers.length().times(middle[k]);
      double p = rollers.profile().drop(at, rollers.length(), rollers.diameter()).mm();
      double f = bearing.edgeStress() ? LaminaKernel.edgeStressFactor(middle[k]) : 1;
      for (int row = 0; row < rows; row++) {
        int i = row * n + k;
        x[i] = at.mm() + (row - 0.5 * (rows - 1)) * rollers.rowSpacing().mm();
        share[i] = width[k];
        drop[i] = p;
        riser[i] = f;
      }
    }
    LoadDistributionKernel.rollers(w, rollers.count(), bearing.firstElement());
    LoadDistributionKernel.laminae(w, n * rows, x, share, drop, riser, LaminaKernel.stiffness(rollers.length().mm()));
    clearance = bearing.clearance().mm();
    double gamma = rollers.diameter().ratio(rollers.pitchDiameter());
    double cr = bearing.ratings().dynamic().newton();
    innerRating = LaminaKernel.innerRating(cr, rollers.count(), rows, gamma);
    outerRating = LaminaKernel.outerRating(cr, rollers.count(), rows, gamma);
  }

  @Override
  void solve(Loading loading) {
    double fr = loading.radial().newton();
    if (loading.byMoment()) {
      LoadDistributionKernel.underMoment(
          w, fr, clearance, loading.momentAlong().newtonMillimetre(), loading.momentAcross().newtonMillimetre());
    } else {
      LoadDistributionKernel.tilted(w, fr, clearance, loading.tiltAlong().radian(), loading.tiltAcross().radian());
    }
  }

  @Override
  double life() {
    return LaminaLifeKernel.life(w, innerRating, outerRating, bearing.innerRing().rotates(), bearing.outerRing().rotates());
  }

  @Override
  double modifiedLife(DoubleUnaryOperator factor) {
    return LaminaLifeKernel.modifiedLife(
        w, innerRating, outerRating, bearing.innerRing().rotates(), bearing.outerRing().rotates(), factor);
  }

  @Override
  double recalledFactor() {
    return LaminaKernel.RECALLED_LIFE_FACTOR;
  }

  @Override
  EquilibriumWorkspace workspace() {
    return w;
  }

  @Override
  double greatestLoad() {
    double greatest = 0;
    for (int j = 0; j < rollers.count(); j++) {
      for (int row = 0; row < rollers.rows(); row++) {
        greatest = Math.max(greatest, load(j, row));
      }
    }
    return greatest;
  }

  @Override
  double load(int element) {
    return w.rollerLoad(element);
  }

  private double load(int j, int row) {
    return w.rollerLoad(j, row * bearing.laminae(), bearing.laminae());
  }

  @Override
  double greatestPressure() {
    double greatest = 0;
    for (int j = 0; j < rollers.count(); j++) {
      for (int k = 0; k < w.laminae(); k++) {
        greatest = Math.max(greatest, w.density(j, k));
      }
    }
    return pressure(greatest);
  }

  /** At the inner raceway, which is the more curved one. */
  private double pressure(double density) {
    double lineLoad = density / rollers.length().mm();
    double raceway = rollers.pitchDiameter().mm() - rollers.diameter().mm();
    return LaminaKernel.pressure(lineLoad, rollers.diameter().mm(), raceway);
  }

  @Override
  double touchingShare() {
    int first = mostLoaded();
    double touching = 0;
    for (int k = 0; k < bearing.laminae(); k++) {
      int lamina = first % w.laminae() + k;
      touching += w.laminaLoad(first / w.laminae(), lamina) > 0 ? w.share[lamina] : 0;
    }
    return touching;
  }

  @Override
  int touchingLaminae() {
    int first = mostLoaded();
    int touching = 0;
    for (int k = 0; k < bearing.laminae(); k++) {
      touching += w.laminaLoad(first / w.laminae(), first % w.laminae() + k) > 0 ? 1 : 0;
    }
    return touching;
  }

  /** The first lamina of the most loaded roller, counted through all places. */
  private int mostLoaded() {
    double greatest = -1;
    int first = 0;
    for (int j = 0; j < rollers.count(); j++) {
      for (int row = 0; row < rollers.rows(); row++) {
        double load = load(j, row);
        if (load > greatest) {
          greatest = load;
          first = j * w.laminae() + row * bearing.laminae();
        }
      }
    }
    return first;
  }

  @Override
  boolean touches(double c, double s, double slope) {
    double approach = c * w.displacement() + s * w.sideDisplacement() - 0.5 * clearance;
    // No lamina can touch: the profile only takes away, and none lies farther out than the reach.
    if (approach + w.reach * Math.abs(slope) <= TOUCHING) {
      return false;
    }
    for (int k = 0; k < w.laminae(); k++) {
      if (approach + w.reach * w.position[k] * slope - w.relief[k] > TOUCHING) {
        return true;
      }
    }
    return false;
  }

  @Override
  LoadDistribution distribution() {
    List<LoadDistribution.Element> elements = new ArrayList<>();
    int n = bearing.laminae();
    for (int row = 0; row < rollers.rows(); row++) {
      for (int j = 0; j < rollers.count(); j++) {
        List<LoadDistribution.Lamina> laminae = new ArrayList<>();
        for (int k = row * n; k < row * n + n; k++) {
          double q = w.laminaLoad(j, k);
          Stress pressure = new Stress(pressure(w.density(j, k)));
          laminae.add(new LoadDistribution.Lamina(new Length(w.position(k)), new Force(q), pressure));
        }
        elements.add(
            new LoadDistribution.Element(row + 1, new Angle(w.angle(j)), new Force(load(j, row)), new Angle(0), laminae));
      }
    }
    return new LoadDistribution(elements);
  }
}
