// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Length;
import holdfast.seats.FitLimits.PartLimit;
import holdfast.tables.SourceRef;
import holdfast.trace.Message;
import holdfast.trace.Warning;
import java.util.ArrayList;
import java.util.List;

/** What the reader of an interference fit must know. */
final class FitWarnings {
  private FitWarnings() {}

  static List<Warning> of(InterferenceFit fit) {
    List<Warning> warnings = new ArrayList<>();
    grip(fit, warnings);
    warnings.addAll(fit.housing().shape().warnings(fit.interference().joint()));
    FitLimits limits = fit.limits(YieldRule.VON_MISES);
    part(fit, "stud", limits.stud(), warnings);
    part(fit, "housing", limits.housing(), warnings);
    if (fit.stud().material().brittle() || fit.housing().material().brittle()) {
      warnings.add(
          new Warning(
              "brittle-part",
              "a brittle part can break without yielding when it is pressed, struck or notched; keep well below its limit",
              SourceRef.commonPractice("grey iron and hardened steel are not driven hard")));
    }
    if (fit.stud().roughness().mm() == 0 && fit.housing().roughness().mm() == 0 && fit.smoothing() != RoughnessRule.NONE) {
      warnings.add(
          new Warning(
              "roughness-unknown",
              "no roughness was stated, so no interference is lost to smoothing; the real grip is weaker",
              fit.smoothing().source()));
    }
    return List.copyOf(warnings);
  }

  private static void grip(InterferenceFit fit, List<Warning> warnings) {
    double least = fit.interference().least().mm();
    double loss = fit.smoothingLoss().mm();
    if (fit.effectiveInterference().greatest().mm() == 0) {
      warnings.add(
          new Warning(
              "no-grip",
              Message.of("smoothing takes ", fit.smoothingLoss(), ", all of the greatest interference ",
                  fit.interference().greatest()),
              fit.smoothing().source()));
    } else if (least - loss <= 0) {
      warnings.add(
          new Warning(
              "loosest-pair-without-grip",
              Message.of("the loosest pair has ", (least < 0 ? "a clearance of " : "an interference of "),
                  new Length(Math.abs(least)), " before and no grip after smoothing of ", fit.smoothingLoss()),
              fit.smoothing().source()));
    }
  }

  private static void part(InterferenceFit fit, String part, PartLimit limit, List<Warning> warnings) {
    if (limit.knownStrength().isEmpty()) {
      warnings.add(
          new Warning(
              part + "-strength-unknown",
              part + ": " + limit.criterion() + ", so its limit was not checked",
              SourceRef.derived("a limit needs a strength")));
    } else if (limit.exceeded()) {
      warnings.add(
          limit.brittle()
              ? new Warning(
                  part + "-breaks",
                  Message.of("the ", part, " is brittle and may break: ", limit.words()),
                  SourceRef.derived("greatest principal stress at the bore against tensile strength"))
              : new Warning(
                  part + "-yields",
                  Message.of("the ", part, " yields: ", limit.words(), "; the elastic result no longer holds",
                      fit.validity() == InterferenceFit.Validity.ELASTIC_PLASTIC
                          ? ", the forces are those of the elastic-plastic method" : ""),
                  SourceRef.derived("equivalent stress at the critical radius against yield strength")));
    }
  }
}
