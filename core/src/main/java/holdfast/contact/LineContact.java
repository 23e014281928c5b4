// SPDX-License-Identifier: Apache-2.0
package holdfast.contact;

import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.quantity.Stress;
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
 * A roller on a track in line contact: both straight across and aligned.
 *
 * @param pair the two bodies
 * @param force normal force, over 0
 * @param length contact length without chamfers, over 0
 */
public record LineContact(ContactPair pair, Force force, Length length) implements Traced, Serializable {
  // Refuses contacts that are not lines.
  public LineContact {
    Objects.requireNonNull(pair, "pair");
    Objects.requireNonNull(force, "force");
    Objects.requireNonNull(length, "length");
    if (pair.roller().across() != 0 || pair.track().across() != 0 || pair.crossing().radian() != 0) {
      throw new InputException(
          "pair", pair.roller() + " on " + pair.track(), "straight across and not crossed", "else the contact is elliptical");
    }
    Check.positive(force.base(), "normal force F", "N", "no contact area without load");
    Check.positive(length.mm(), "contact length L", "mm", "line contact needs a length");
  }

  /**
   * Half width of the contact strip.
   *
   * @return b
   */
  public Length halfWidth() {
    return new Length(LineContactKernel.halfWidth(force.base(), length.mm(), radius(), pair.combinedModulus()));
  }

  /**
   * Peak pressure, in the middle of the strip.
   *
   * @return p0
   */
  public Stress peakPressure() {
    return new Stress(LineContactKernel.peakPressure(force.base(), length.mm(), radius(), pair.combinedModulus()));
  }

  /**
   * Mean pressure.
   *
   * @return force over area of the strip
   */
  public Stress meanPressure() {
    return new Stress(force.base() / (2 * halfWidth().mm() * length.mm()));
  }

  /**
   * Largest principal shear stress in the track.
   *
   * @return its value and depth
   */
  public StressPeak largestShear() {
    double nu = pair.trackMaterial().poisson();
    return peak(SubsurfaceKernel.largestShear(0, nu), SubsurfaceKernel.depthOfLargestShear(0, nu));
  }

  /**
   * Largest equivalent stress (von Mises) in the track.
   *
   * @return its value and depth
   */
  public StressPeak largestEquivalent() {
    double nu = pair.trackMaterial().poisson();
    return peak(SubsurfaceKernel.largestEquivalent(0, nu), SubsurfaceKernel.depthOfLargestEquivalent(0, nu));
  }

  /**
   * Shear stress parallel to the surface that reverses as the roller passes.
   *
   * @return its amplitude and depth
   */
  public StressPeak orthogonalShear() {
    return peak(SubsurfaceKernel.orthogonalShear(0), SubsurfaceKernel.depthOfOrthogonalShear(0));
  }

  /**
   * Stresses in the track below the middle of the strip.
   *
   * @param depth depth below the surface, 0 or more
   * @return the principal stresses
   * @throws InputException if the depth is negative
   */
  public AxisStress trackStress(Length depth) {
    Objects.requireNonNull(depth, "depth");
    return AxisStress.at(0, pair.trackMaterial().poisson(), halfWidth().mm(), peakPressure().megapascal(), depth);
  }

  /**
   * Approach of the roller's axis and a plane in the track. It depends on how deep the track is: line contact alone has
   * no approach. The roller counts as a solid cylinder that passes the load on to its opposite side.
   *
   * @param trackDepth thickness of the track over its support, 0 or more
   * @return compression of roller and track together
   * @throws InputException if the depth is negative
   */
  public Length approach(Length trackDepth) {
    Objects.requireNonNull(trackDepth, "trackDepth");
    double p = peakPressure().megapascal();
    double b = halfWidth().mm();
    ContactMaterial one = pair.rollerMaterial();
    ContactMaterial two = pair.trackMaterial();
    return new Length(
        LineContactKernel.compressionToAxis(p, b, one.modulus().megapascal(), one.poisson(), 1 / pair.roller().along())
            + LineContactKernel.compressionToDepth(p, b, two.modulus().megapascal(), two.poisson(), trackDepth.mm()));
  }

  /**
   * Force at which the peak pressure reaches a limit.
   *
   * @param permitted permitted peak pressure
   * @return the force
   * @throws InputException if the pressure is negative
   */
  public Force forceAt(Stress permitted) {
    Objects.requireNonNull(permitted, "permitted");
    return new Force(
        LineContactKernel.forceAtPressure(permitted.megapascal(), length.mm(), radius(), pair.combinedModulus()));
  }

  @Override
  public Derivation explain() {
    Derivation.Builder steps = Derivation.of("Line contact under " + force);
    steps.step(
        "R", "relative radius", "1 / (1/R1 + 1/R2)", radius(), "mm", ContactNotes.GEOMETRY,
        "roller " + pair.roller(), "track " + pair.track());
    ContactNotes.elasticity(steps, pair);
    steps.step(
        "b", "half width of the contact strip", "√(4 F R / (π L E*))", halfWidth().mm(), "mm", ContactNotes.HERTZ,
        "F = " + force, "L = " + length);
    steps.step(
        "τmax", "largest principal shear stress in the track", "largest ½ (σ1 - σ3) on the axis",
        largestShear().stress().megapascal(), "MPa", ContactNotes.BELOW, "depth " + largestShear().depth());
    steps.step(
        "p0", "peak pressure", "√(F E* / (π L R))", peakPressure().megapascal(), "MPa", ContactNotes.HERTZ,
        "F = " + force, "L = " + length);
    return steps.build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    ContactNotes.size(warnings, halfWidth().mm(), pair.greater());
    ContactNotes.yielding(warnings, pair, 0, peakPressure().megapascal(), force);
    warnings.add(
        new Warning(
            "ends-not-included",
            Message.of("line contact takes the pressure as even along ", length,
                ": a sharp end, a shorter track or a tilt raises it locally beyond the ", peakPressure(), " given"),
            SourceRef.memory("Johnson 1985", "section 5.4, ends of rollers")));
    return List.copyOf(warnings);
  }

  /** For example {@code line contact 20 mm under 5 kN: 1234 MPa over a width of 0.2 mm}. */
  @Override
  public String toString() {
    return "line contact " + length + " under " + force + ": peak " + peakPressure() + " over a width of "
        + Numbers.significant(2 * halfWidth().mm(), 4) + " mm";
  }

  private StressPeak peak(double stress, double depth) {
    return new StressPeak(new Stress(stress * peakPressure().megapascal()), new Length(depth * halfWidth().mm()));
  }

  private double radius() {
    return 1 / (2 * pair.sum());
  }
}
