// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.Conformity;
import java.util.List;

/** What to do about a measured pair of bore and stud that does not pass. */
final class Remedies {
  private Remedies() {}

  static List<Remedy> of(Acceptance parts) {
    PartRemedies remedies = new PartRemedies(parts.plan().units());
    remedies.doubts("bore", parts.bore());
    remedies.doubts("stud", parts.stud());
    remedies.bore("bore", parts.bore(),
        remedies.matching("stud", parts.matchingStud(), parts.stud().drawing().limits()));
    remedies.bought("stud", parts.stud());
    remedies.form("bore", parts.bore(),
        "bore or ream again in one setting with a guided tool, if the limits still leave room; else fit a sleeve");
    remedies.form("stud", parts.stud(), "return it to its maker; a stud is not trued in the workshop");
    if (!parts.accepted() && parts.fitConformity() == Conformity.PROVEN) {
      remedies.add("concession", "The pair as measured makes the planned fit although a part is not shown to conform: it may be"
          + " joined only as a matched pair, with a concession signed by whoever answers for the drawing.", PartRemedies.MATCH);
    }
    if (!parts.stops().isEmpty()) {
      remedies.add("do-not-join", "Do not press this pair. A larger bore or a smaller stud, agreed with whoever answers for the"
          + " drawing, lowers the pressure.", PartRemedies.WORKSHOP);
    }
    return remedies.list();
  }

  static List<Remedy> of(YokeAcceptance parts) {
    PartRemedies remedies = new PartRemedies(parts.plan().units());
    parts.parts().forEach(part -> remedies.doubts(part.name(), part));
    String pin = remedies.matching("pin", parts.matchingPin(), parts.pin().drawing().limits());
    String again = "bore or ream both ears again in one setting, if the limits still leave room; else fit sleeves";
    remedies.bore(parts.firstEar().name(), parts.firstEar(), pin);
    remedies.bore(parts.secondEar().name(), parts.secondEar(), pin);
    remedies.bought(parts.pin().name(), parts.pin());
    remedies.bought(parts.rollerBore().name(), parts.rollerBore());
    remedies.form(parts.firstEar().name(), parts.firstEar(), again);
    remedies.form(parts.secondEar().name(), parts.secondEar(), again);
    remedies.form(parts.pin().name(), parts.pin(), "return it to its maker");
    remedies.form(parts.rollerBore().name(), parts.rollerBore(), "return the roller to its maker");
    if (!parts.accepted() && parts.fitConformity() == Conformity.PROVEN) {
      remedies.add("concession", "The parts as measured make the planned fits although one is not shown to conform: they may be"
          + " joined only as a matched set, with a concession signed by whoever answers for the drawing.", PartRemedies.MATCH);
    }
    if (!parts.stops().isEmpty()) {
      remedies.add("do-not-join", "Do not join this set: a smaller pin or larger bores, agreed with whoever answers for the"
          + " drawing.", PartRemedies.WORKSHOP);
    }
    return remedies.list();
  }
}
