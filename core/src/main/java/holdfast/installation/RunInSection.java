// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.sheet.Block;
import holdfast.sheet.Section;
import holdfast.tables.SourceRef;
import holdfast.trace.Cautions;

/** What to look at before the machine is handed back, and after its first hours. */
final class RunInSection {
  private static final SourceRef RUN_IN = SourceRef.commonPractice("run-in of track rollers");
  private static final SourceRef SETTLE =
      SourceRef.commonPractice("paint, burrs and roughness settle: tighten again after 24 to 100 hours");
  private static final SourceRef INK = SourceRef.commonPractice("contact pattern by marking ink");
  private static final SourceRef WARM =
      SourceRef.published("Rolling bearings catalogue 17000 EN", "temperature after relubrication: it rises, then drops");

  private RunInSection() {}

  static Section of(InstallationPlan plan) {
    return turn(plan)
        .notice(Block.Weight.ADVICE,
            "After the first heat cycle, and after 24 to 100 hours, put the wrench on the nut again, with the machine isolated"
                + " again.", SETTLE, INK, WARM)
        .blank("H4  Run-in released by; second tightening", plan.units().torqueUnit())
        .build();
  }

  static Section of(YokePlan plan) {
    return turn(plan)
        .notice(Block.Weight.ADVICE,
            "After the first heat cycle, and after 24 to 100 hours, look at plates, rings and screws that secure the pin, with"
                + " the machine isolated again: nothing has walked or turned.", SETTLE, INK, WARM)
        .blank("H4  Run-in released by; second look at the pin", "")
        .build();
  }

  private static Section.Builder turn(MountingPlan plan) {
    return Section.of("Run in")
        .cautions(Cautions.of("before-energy-returns"))
        .notice(Block.Weight.ADVICE,
            "Turn the roller by hand a full circle: it turns freely and has no feel of notches. Then let the machine go through"
                + " its whole stroke slowly: nothing touches, the roller never stops turning.", RUN_IN)
        .blank("Ink pattern across the ring", plan.roller().crowned() ? "a band in the middle" : "even over the width")
        .blank("Temperature of the roller", "settles; a rise after greasing drops again");
  }
}
