// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.threads;

import holdfast.threads.JointKernel;
import holdfast.threads.ThreadGeometryKernel;
import holdfast.verification.NamedInputs;

/** Our values for the quantities of clamped joints in the reference computations. */
final class JointValues {
  private JointValues() {}

  static double value(String quantity, NamedInputs a) {
    return switch (quantity) {
      case "resilience of a piece" ->
          JointKernel.resilience(a.get("l"), a.get("E"), ThreadGeometryKernel.ringArea(a.get("d"), a.get("bore")));
      case "resilience of the parts" ->
          JointKernel.partResilience(
              a.get("l"), a.get("dW"), a.get("dh"), a.get("DA"), a.get("E"), a.yes("tapped"));
      case "resilience of the engaged thread" ->
          JointKernel.engagedResilience(
              a.get("d"), a.get("d3"), a.get("bore"), a.get("ES"), a.get("EM"), a.yes("tapped"));
      case "tangent of the cone" ->
          JointKernel.coneTangent(a.get("l"), a.get("dW"), a.get("DA"), a.yes("tapped"));
      case "stiffness of two frusta" -> JointKernel.frustumStiffness(a.get("d"), a.get("l"), a.get("E"));
      case "preload lost by embedding" -> JointKernel.embeddingLoss(a.get("fZ"), a.get("stud"), a.get("parts"));
      case "embedding by length" -> JointKernel.embeddingByLength(a.get("l"), a.get("d"));
      case "change of the preload by temperature" ->
          JointKernel.thermalChange(
              a.get("l"),
              a.get("alpha_s") * 1e-6,
              a.get("rise_s"),
              a.get("alpha_p") * 1e-6,
              a.get("rise_p"),
              a.get("stud"),
              a.get("parts"));
      case "preload against a moment" ->
          JointKernel.preloadAgainstMoment(a.get("M"), a.get("outer"), a.get("inner"));
      default -> throw new IllegalArgumentException("no such quantity: " + quantity);
    };
  }
}
