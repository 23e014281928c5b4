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
 * A crowned roller on a track, or any two bodies that touch at a point and flatten to an ellipse. Where the face cuts the
 * ends of the ellipse off, pressure and stresses are at least those of line contact over the whole face.
 *
 * @param pair the two bodies
 * @param force normal force, over 0
 * @param faceWidth width on which the major axis must find room, over 0
 */
public record EllipticalContact(ContactPair pair, Force force, Length faceWidth) implements Traced, Serializable {
  // Refuses lines and surfaces that touch at several places.
  public EllipticalContact {
    Objects.requireNonNull(pair, "pair");
    Objects.requireNonNull(force, "force");
    Objects.requireNonNull(faceWidth, "faceWidth");
    Check.positive(force.base(), "normal force F", "N", "no contact area without load");
    Check.positive(faceWidth.mm(), "face width", "mm", "room for the contact");
    EllipticalContactKernel.axisRatio(pair.greater(), pair.lesser());
  }

  /**
   * Major semi-axis.
   *
   * @return a
   */
  public Length majorSemiAxis() {
    return new Length(
        EllipticalContactKernel.majorSemiAxis(force.base(), pair.combinedModulus(), pair.sum(), axisRatio()));
  }

  /**
   * Minor semi-axis.
   *
   * @return b
   */
  public Length minorSemiAxis() {
    return new Length(axisRatio() * majorSemiAxis().mm());
  }

  /**
   * Axis ratio.
   *
   * @return k = b/a, over 0 up to 1
   */
  public double axisRatio() {
    return EllipticalContactKernel.axisRatio(pair.greater(), pair.lesser());
  }

  /**
   * Peak pressure: in the middle of the ellipse, or that of line contact over the face if it is greater.
   *
   * @return p0
   */
  public Stress peakPressure() {
    return new Stress(Math.max(ofEllipse(), ofLine()));
  }

  /**
   * Whether the face is so narrow that line contact over it presses harder than the ellipse.
   *
   * @return true if pressure and stresses are those of line contact
   */
  public boolean actsAsLine() {
    return ofLine() > ofEllipse();
  }

  private double ofEllipse() {
    return EllipticalContactKernel.peakPressure(force.base(), majorSemiAxis().mm(), minorSemiAxis().mm());
  }

  private double ofLine() {
    return LineContactKernel.peakPressure(force.base(), faceWidth.mm(), lineRadius(), pair.combinedModulus());
  }

  /** Relative radius across the major axis. */
  private double lineRadius() {
    return 1 / (2 * pair.greater());
  }

  private double stressRatio() {
    return actsAsLine() ? 0 : axisRatio();
  }

  private double halfWidth() {
    return actsAsLine()
        ? LineContactKernel.halfWidth(force.base(), faceWidth.mm(), lineRadius(), pair.combinedModulus())
        : minorSemiAxis().mm();
  }

  /**
   * Mean pressure of the whole ellipse.
   *
   * @return force over area of the ellipse
   */
  public Stress meanPressure() {
    return new Stress(force.base() / (Math.PI * majorSemiAxis().mm() * minorSemiAxis().mm()));
  }

  /**
   * Approach of distant points of the two bodies.
   *
   * @return δ
   */
  public Length approach() {
    return new Length(
        EllipticalContactKernel.approach(force.base(), pair.combinedModulus(), majorSemiAxis().mm(), axisRatio()));
  }

  /**
   * Largest principal shear stress in the track.
   *
   * @return its value and depth
   */
  public StressPeak largestShear() {
    double nu = pair.trackMaterial().poisson();
    return peak(
        SubsurfaceKernel.largestShear(stressRatio(), nu), SubsurfaceKernel.depthOfLargestShear(stressRatio(), nu));
  }

  /**
   * Largest equivalent stress (von Mises) in the track.
   *
   * @return its value and depth
   */
  public StressPeak largestEquivalent() {
    double nu = pair.trackMaterial().poisson();
    return peak(
        SubsurfaceKernel.largestEquivalent(stressRatio(), nu),
        SubsurfaceKernel.depthOfLargestEquivalent(stressRatio(), nu));
  }

  /**
   * Shear stress parallel to the surface that reverses as the roller passes in the direction of the minor axis.
   *
   * @return its amplitude and depth
   */
  public StressPeak orthogonalShear() {
    return peak(
        SubsurfaceKernel.orthogonalShear(stressRatio()), SubsurfaceKernel.depthOfOrthogonalShear(stressRatio()));
  }

  /**
   * Stresses in the track below the middle of the ellipse.
   *
   * @param depth depth below the surface, 0 or more
   * @return the principal stresses
   * @throws InputException if the depth is negative
   */
  public AxisStress trackStress(Length depth) {
    Objects.requireNonNull(depth, "depth");
    return AxisStress.at(
        stressRatio(), pair.trackMaterial().poisson(), halfWidth(), peakPressure().megapascal(), depth);
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
        Math.min(
            EllipticalContactKernel.forceAtPressure(
                permitted.megapascal(), pair.combinedModulus(), pair.greater(), pair.lesser()),
            LineContactKernel.forceAtPressure(
                permitted.megapascal(), faceWidth.mm(), lineRadius(), pair.combinedModulus())));
  }

  @Override
  public Derivation explain() {
    Derivation.Builder steps = Derivation.of("Elliptical contact under " + force);
    steps.step(
        "A + B", "curvature sum of the gap", "½ (1/R1 + 1/R1' + 1/R2 + 1/R2')", pair.sum(), "1/mm", ContactNotes.GEOMETRY,
        "roller " + pair.roller(), "track " + pair.track(), "crossing " + pair.crossing());
    steps.step(
        "B/A", "ratio of the curvatures of the gap", "½ √(Δ1² + Δ2² + 2 Δ1 Δ2 cos 2φ) = B - A",
        pair.greater() / pair.lesser(), "", ContactNotes.GEOMETRY);
    ContactNotes.elasticity(steps, pair);
    steps.step(
        "k", "axis ratio b/a", "(E(e)/k² - K(e)) / (K(e) - E(e)) = B/A, e² = 1 - k²", axisRatio(), "", ContactNotes.ELLIPSE);
    steps.step(
        "a", "major semi-axis", "(2 E(e)/(π k²) · 3F/(4 E* (A + B)))^(1/3)", majorSemiAxis().mm(), "mm", ContactNotes.HERTZ,
        "F = " + force);
    steps.step("b", "minor semi-axis", "k a", minorSemiAxis().mm(), "mm", ContactNotes.HERTZ);
    steps.step(
        "δ", "approach", "3 F K(e) / (2 π a E*)", approach().mm(), "mm", ContactNotes.HERTZ);
    steps.step(
        "τmax", "largest principal shear stress in the track", "largest ½ (σ1 - σ3) on the axis",
        largestShear().stress().megapascal(), "MPa", ContactNotes.BELOW, "depth " + largestShear().depth());
    steps.step(
        "p0", "peak pressure", actsAsLine() ? "√(F E* / (π L R)), line contact over the face" : "3F / (2 π a b)",
        peakPressure().megapascal(), "MPa", ContactNotes.HERTZ, "F = " + force, "L = " + faceWidth);
    return steps.build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    ContactNotes.size(warnings, minorSemiAxis().mm(), pair.greater());
    ContactNotes.yielding(warnings, pair, stressRatio(), peakPressure().megapascal(), force);
    if (2 * majorSemiAxis().mm() > faceWidth.mm()) {
      warnings.add(
          new Warning(
              "ellipse-truncated",
              Message.of("the ellipse is ", new Length(Numbers.rounded(2 * majorSemiAxis().mm(), 4)),
                  " long on a face of ", faceWidth,
                  ": its ends are cut off, the edges carry more than the ", peakPressure(), " given",
                  actsAsLine() ? ", which is that of line contact over the whole face" : ""),
              SourceRef.derived("the major axis 2a is compared with the face width")));
    }
    return List.copyOf(warnings);
  }

  /** For example {@code elliptical contact 2.4 mm × 0.3 mm under 5 kN: peak 1234 MPa}. */
  @Override
  public String toString() {
    return "elliptical contact " + Numbers.significant(2 * majorSemiAxis().mm(), 4) + " mm × "
        + Numbers.significant(2 * minorSemiAxis().mm(), 4) + " mm under " + force + ": peak " + peakPressure();
  }

  private StressPeak peak(double stress, double depth) {
    return new StressPeak(new Stress(stress * peakPressure().megapascal()), new Length(depth * halfWidth()));
  }
}
