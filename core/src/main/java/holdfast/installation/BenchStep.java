// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import java.util.EnumSet;
import java.util.Set;

/** The steps of the bench card in the order of the work. Gauging comes before grease, which falsifies it. */
public enum BenchStep {
  /** Machine dead, locked and proved so. */
  ISOLATE("Isolate"),
  /** Burrs and dirt off the parts. */
  CLEAN("Clean and deburr"),
  /** Parts gauged and accepted. */
  CHECK("Check the parts"),
  /** Plugs, fittings and first grease, which nobody can reach later. */
  PORTS("Plugs, fittings, first grease"),
  /** Seat and thread in the state for which force and torque are computed. */
  OIL("Oil"),
  /** Stud or pin pressed or shrunk in. */
  PRESS("Press in"),
  /** Stud or pin slipped in. */
  SLIP("Slip in"),
  /** Shoulder home, roller free. */
  SEATED("Seated"),
  /** Nut tightened. */
  TIGHTEN("Tighten"),
  /** Nut locked. */
  LOCK("Lock"),
  /** Pin secured. */
  SECURE("Secure the pin"),
  /** Roller and track lubricated. */
  GREASE("Lubricate"),
  /** Energy back on. */
  RESTORE("Restore energy"),
  /** First strokes under watch. */
  RUN_IN("Run in"),
  /** Nut tightened again after settling. */
  TIGHTEN_AGAIN("Tighten again"),
  /** Nut or pin looked at after settling. */
  LOOK_AGAIN("Look again"),
  /** Next grease and replacement. */
  NEXT("Next");

  private final String title;

  BenchStep(String title) {
    this.title = title;
  }

  /**
   * The steps whose outcome this one takes up. One that a kind of mount has not is not waited for.
   *
   * @return steps that come before
   */
  public Set<BenchStep> needs() {
    return switch (this) {
      case ISOLATE -> EnumSet.noneOf(BenchStep.class);
      case CLEAN -> EnumSet.of(ISOLATE);
      case CHECK -> EnumSet.of(CLEAN);
      case PORTS -> EnumSet.of(CHECK);
      case OIL -> EnumSet.of(CHECK);
      case PRESS -> EnumSet.of(ISOLATE, CHECK, PORTS, OIL);
      case SLIP -> EnumSet.of(ISOLATE, CHECK, PORTS, OIL);
      case SEATED -> EnumSet.of(PRESS, SLIP);
      case TIGHTEN -> EnumSet.of(OIL, SEATED);
      case LOCK -> EnumSet.of(TIGHTEN);
      case SECURE -> EnumSet.of(SEATED);
      case GREASE -> EnumSet.of(PORTS, SEATED, LOCK, SECURE);
      case RESTORE -> EnumSet.of(ISOLATE, LOCK, SECURE, GREASE);
      case RUN_IN -> EnumSet.of(RESTORE);
      case TIGHTEN_AGAIN -> EnumSet.of(TIGHTEN, LOCK, RUN_IN);
      case LOOK_AGAIN -> EnumSet.of(LOCK, SECURE, RUN_IN);
      case NEXT -> EnumSet.of(GREASE);
    };
  }

  /** The heading on the card. */
  @Override
  public String toString() {
    return title;
  }
}
