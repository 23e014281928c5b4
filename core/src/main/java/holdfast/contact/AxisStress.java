// SPDX-License-Identifier: Apache-2.0
package holdfast.contact;

import holdfast.quantity.Length;
import holdfast.quantity.Stress;
import java.io.Serializable;
import java.util.Objects;

/**
 * Principal stresses below the centre of a contact; compression is negative.
 *
 * @param depth depth z below the surface
 * @param alongMajor stress parallel to the major axis of the contact
 * @param alongMinor stress parallel to the minor axis
 * @param normal stress normal to the surface
 */
public record AxisStress(Length depth, Stress alongMajor, Stress alongMinor, Stress normal) implements Serializable {
  public AxisStress {
    Objects.requireNonNull(depth, "depth");
    Objects.requireNonNull(alongMajor, "alongMajor");
    Objects.requireNonNull(alongMinor, "alongMinor");
    Objects.requireNonNull(normal, "normal");
  }

  static AxisStress at(double ratio, double poisson, double halfWidth, double pressure, Length depth) {
    double zeta = depth.mm() / halfWidth;
    return new AxisStress(
        depth,
        new Stress(pressure * AxisStressKernel.alongMajor(ratio, poisson, zeta)),
        new Stress(pressure * AxisStressKernel.alongMinor(ratio, poisson, zeta)),
        new Stress(pressure * AxisStressKernel.normal(ratio, zeta)));
  }

  /** The stresses and the depth. */
  @Override
  public String toString() {
    return "at " + depth + ": " + alongMajor + " along the major axis, " + alongMinor + " along the minor axis, " + normal
        + " normal";
  }
}
