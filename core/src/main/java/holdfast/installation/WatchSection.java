// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.failures.FailureMode;
import holdfast.failures.FailureReading;
import holdfast.failures.Margin;
import holdfast.fits.FitKind;
import holdfast.sheet.Section;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Where this job is weakest, and how it would show: the table of failures read by the plan's own margins. */
final class WatchSection {
  /** A margin below this is worth an eye. */
  private static final double SLIM = 1.5;

  private static final int MOST = 4;

  private WatchSection() {}

  static Optional<Section> of(InstallationPlan plan) {
    Set<Margin> slim = slim(plan);
    if (plan.torqueToBeHeld().newtonMillimetre() > 0) {
      slim.add(Margin.HOLDING_TORQUE);
    }
    if (plan.fit().kind() == FitKind.CLEARANCE) {
      slim.add(Margin.SEAT_CLEARANCE);
    }
    return of(slim);
  }

  static Optional<Section> of(YokePlan plan) {
    Set<Margin> slim = slim(plan);
    if (plan.earFit().kind() == FitKind.CLEARANCE) {
      slim.add(Margin.SEAT_CLEARANCE);
    }
    return of(slim);
  }

  private static Optional<Section> of(Set<Margin> slim) {
    Section.Builder section = Section.of("Watch for");
    Set<String> seen = new LinkedHashSet<>();
    for (Margin margin : slim) {
      List<FailureMode> modes = FailureReading.linkedTo(margin);
      for (FailureMode mode : modes.subList(0, Math.min(1, modes.size()))) {
        if (seen.size() < MOST && seen.add(mode.symptom())) {
          section.entry("Slim " + margin + " shows as",
              mode.symptom() + "; check " + mode.checks().get(0) + "; " + mode.corrections().get(0), mode.source());
        }
      }
    }
    return seen.isEmpty() ? Optional.empty() : Optional.of(section.build());
  }

  private static Set<Margin> slim(MountingPlan plan) {
    Set<Margin> slim = new LinkedHashSet<>();
    for (LimitCheck check : plan.allLimits().checks()) {
      if (!check.holds() || check.margin().orElse(SLIM) < SLIM) {
        slim.add(check.reading());
      }
    }
    if (plan.lubrication().kappa() < 1) {
      slim.add(Margin.FILM);
    }
    return slim;
  }
}
