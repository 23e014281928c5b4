// SPDX-License-Identifier: Apache-2.0
package holdfast.lubrication;

import holdfast.tables.Provenance;
import holdfast.tables.SourceRef;

/** The rules by which a port plan concludes. */
public enum PortRule {
  /** Exactly one port feeds. */
  ONE_FEED("one port feeds the roller, so that grease passes through it and not past it",
      new SourceRef("common practice", "pick one port, close the others", Provenance.COMMON_PRACTICE)),
  /** Every other opening is closed before mounting. */
  CLOSE_THE_OTHERS("an opening that is not used is closed by a plug or a fitting before mounting",
      SourceRef.published("Rolling bearings catalogue 17000 EN", "pages 966 to 985, cam followers, lubrication holes")),
  /** A port that is not drilled can neither feed nor leak. */
  PORT_MUST_EXIST("a port can feed only if the roller has it", SourceRef.derived("grease needs an opening")),
  /** Metric studs up to 4 mm are not drilled. */
  NO_HOLE_IN_SMALL_STUDS("metric studs up to 4 mm have no grease hole",
      SourceRef.published("Linear motion and cam follower catalogue", "pages F-8 to F-71, lubrication holes")),
  /** Metric studs up to 10 mm have the head port only. */
  HEAD_ONLY_UP_TO_10_MM("metric studs up to 10 mm have a port at the head end only, or none",
      SourceRef.published("Needle roller bearings catalogue 2300/E", "cam follower pages, lubrication holes")),
  /** Small inch rollers have the head port only. */
  HEAD_ONLY_SMALL_INCH("inch rollers of 1/2 in to 11/16 in outside diameter have a hole at the flange end only",
      SourceRef.published("Cam followers catalogue 2008", "tables on pages 8 to 23")),
  /** Larger studs have three ports. */
  THREE_PORTS("larger studs have three ports: head end, thread end, radial hole in the shank",
      SourceRef.published("Rolling bearings catalogue 17000 EN", "pages 966 to 985, cam followers, lubrication holes")),
  /** A hexagon socket takes the place of the head port. */
  SOCKET_TAKES_HEAD_PORT("a hexagon socket in the head removes the port there unless a fitting is built into the socket",
      SourceRef.published("Cam followers catalogue 2008", "technical section, pages 40 to 45")),
  /** The radial port is for feeding through the machine member. */
  RADIAL_NEEDS_MEMBER("the radial port is used when grease comes through the machine member; its seat needs a feed hole there",
      SourceRef.published("Rolling bearings catalogue 17000 EN", "pages 966 to 985, cam followers, lubrication holes")),
  /** The radial port reaches the raceway through the axial bore. */
  RADIAL_NEEDS_AXIAL_BORE("the radial port reaches the raceway only through the axial bore",
      SourceRef.derived("the radial hole ends in the axial bore")),
  /** An eccentric collar covers the radial port. */
  COLLAR_COVERS_RADIAL("with an eccentric collar the radial port cannot be used",
      SourceRef.published("Linear motion and cam follower catalogue", "pages F-8 to F-71, eccentric cam followers")),
  /** A closed bore wall closes the radial port. */
  SEAT_CLOSES_RADIAL("a radial port that faces the plain wall of its seat is closed by the seat",
      SourceRef.derived("the shank fills its bore; what passes is the clearance of the fit")),
  /** A feed hole that is not used is closed at its outer end. */
  CLOSE_MEMBER_CHANNEL("a feed hole in the machine member that is not used is closed at its outer end",
      SourceRef.derived("else grease leaves through the radial port and the feed hole")),
  /** Fitting or plug at the slot stays below the bottom of the slot. */
  BELOW_SLOT_BOTTOM("a plug at the slotted end is driven below the bottom of the slot, so that the tool can hold the head",
      SourceRef.commonPractice("the tool needs the whole depth of the slot")),
  /** The mark on the head shows the grease hole of the raceway. */
  MARK_OUTSIDE_LOAD_ZONE("the grease hole of the raceway is set outside the load zone; the mark on the head shows it",
      SourceRef.published("Needle roller bearings catalogue 2300/E", "section 11.3, mounting of cam followers")),
  /** Fittings and plugs are driven with a mandrel. */
  DRIVE_WITH_MANDREL("drive-in fittings and plugs are pressed in with a mandrel before mounting",
      SourceRef.published("Stud roller fitting page", "fitting of grease nipples and plugs")),
  /** Drive-in or threaded by size. */
  FITTING_BY_SIZE("inch rollers from 5 in outside diameter take threaded fittings and plugs, smaller ones drive-in ones",
      SourceRef.published("Cam followers catalogue 2008", "tables on pages 8 to 23"));

  private final String statement;
  private final SourceRef source;

  PortRule(String statement, SourceRef source) {
    this.statement = statement;
    this.source = source;
  }

  /**
   * What the rule says.
   *
   * @return one sentence without full stop
   */
  public String statement() {
    return statement;
  }

  /**
   * Where the rule comes from.
   *
   * @return document, locator and provenance
   */
  public SourceRef source() {
    return source;
  }

  @Override
  public String toString() {
    return statement + " [" + source() + "]";
  }
}
