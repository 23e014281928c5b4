// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.lubrication.HeadForm;
import holdfast.lubrication.Openings;
import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.Torque;
import holdfast.rollers.MeasureSystem;
import holdfast.rollers.RollerSize;
import holdfast.seats.Material;
import holdfast.seats.StudMaterial;
import java.util.Objects;
import java.util.function.Function;

/** Collects the description of a stud roller. Not thread-safe. */
public final class StudRollerBuilder extends RollerBuilder<StudRoller, StudRollerBuilder> {
  private Length flangeDiameter;
  private Length ringGap;
  private Length studDiameter;
  private String studTolerance;
  private StudLengths lengths;
  private String thread;
  private RollerSize tabulated;
  private Length tabulatedCrown;
  private Length greaseBore;
  private Length crossHole = new Length(0);
  private Material material;
  private Length seatRoughness;
  private HeadForm head;
  private boolean fittingInSocket;
  private boolean eccentricCollar;
  private Openings openings;
  private Force studLimit;
  private Torque greatestTorque;
  private StudEndurance endurance;

  StudRollerBuilder(String name) {
    super(name);
  }

  @Override
  StudRollerBuilder self() {
    return this;
  }

  /**
   * States all that the dimension table of a series tells: ring, flange, stud, thread and system of measures. The flange
   * is taken as wide as the least face that the table asks of the machine member; where practices differ on the thread,
   * the first is taken: compare it with the part. What is stated for itself, before or after, goes before the table.
   *
   * @param size the size
   * @param crown radius of the crown of the ring; 0 mm for a flat ring
   * @return this builder
   * @throws InputException if the size has no thread
   */
  public StudRollerBuilder size(RollerSize size, Length crown) {
    Objects.requireNonNull(size, "size");
    Objects.requireNonNull(crown, "crown");
    if (size.stud().threads().isEmpty()) {
      throw new InputException("threads of the stud", "none", "one or more", "the nut needs a thread");
    }
    tabulated = size;
    tabulatedCrown = crown;
    return this;
  }

  /** What was stated; else what the table tells; null without both. */
  private <T> T orTable(T stated, Function<RollerSize, T> tabulatedValue) {
    return stated == null && tabulated != null ? tabulatedValue.apply(tabulated) : stated;
  }

  @Override
  Length outsideDiameter() {
    return orTable(super.outsideDiameter(), RollerSize::outsideDiameter);
  }

  @Override
  Length ringWidth() {
    return orTable(super.ringWidth(), RollerSize::ringWidth);
  }

  @Override
  Length crownRadius() {
    return orTable(super.crownRadius(), size -> tabulatedCrown);
  }

  @Override
  MeasureSystem system() {
    return orTable(super.system(), size -> size.series().system());
  }

  private Length flangeDiameter() {
    return orTable(flangeDiameter, RollerSize::faceDiameter);
  }

  private Length studDiameter() {
    return orTable(studDiameter, size -> size.stud().diameter());
  }

  private String thread() {
    return orTable(thread, size -> size.stud().threads().get(0));
  }

  private HeadForm head() {
    return head == null && fittingInSocket ? HeadForm.HEXAGON_SOCKET : head;
  }

  /**
   * The tolerance that the printed series give their studs.
   *
   * @param system metric or inch
   * @return h7, or +0.001/0 in
   */
  public static String usualStudTolerance(MeasureSystem system) {
    return Objects.requireNonNull(system, "system") == MeasureSystem.INCH ? "+0.001/0 in" : "h7";
  }

  /**
   * States the flange that is clamped against the machine member.
   *
   * @param diameter diameter of the flange
   * @param gap distance from its clamped face to the near side of the outer ring
   * @return this builder
   */
  public StudRollerBuilder flange(Length diameter, Length gap) {
    this.flangeDiameter = Objects.requireNonNull(diameter, "diameter");
    this.ringGap = Objects.requireNonNull(gap, "gap");
    return this;
  }

  /**
   * States the stud.
   *
   * @param diameter nominal diameter d1
   * @param tolerance its tolerance class, for example {@code "h7"}, or its limit deviations, for example
   *     {@code "+0.001/0 in"}
   * @return this builder
   */
  public StudRollerBuilder stud(Length diameter, String tolerance) {
    this.studDiameter = Objects.requireNonNull(diameter, "diameter");
    this.studTolerance = Objects.requireNonNull(tolerance, "tolerance");
    return this;
  }

  /**
   * States how long stud and thread are, so that the grip is looked at. Optional.
   *
   * @param length length from the clamped face of the flange to the end of the stud
   * @param threadLength length of the thread, run-out included
   * @return this builder
   * @throws InputException if they leave no plain shank
   */
  public StudRollerBuilder lengths(Length length, Length threadLength) {
    this.lengths =
        new StudLengths(Objects.requireNonNull(length, "length"), Objects.requireNonNull(threadLength, "threadLength"));
    return this;
  }

  /**
   * States the thread.
   *
   * @param designation for example {@code "M18x1.5"}
   * @return this builder
   */
  public StudRollerBuilder thread(String designation) {
    this.thread = Objects.requireNonNull(designation, "designation");
    return this;
  }

  /**
   * States the grease bore.
   *
   * @param diameter diameter of the axial bore; 0 mm for a solid stud
   * @return this builder
   */
  public StudRollerBuilder greaseBore(Length diameter) {
    this.greaseBore = Objects.requireNonNull(diameter, "diameter");
    return this;
  }

  /**
   * States the radial hole in the shank. Optional: without it the bending counts the full section, and the sheet says so
   * where the size usually has such a hole.
   *
   * @param diameter diameter of the hole; 0 mm for none
   * @return this builder
   */
  public StudRollerBuilder crossHole(Length diameter) {
    this.crossHole = Objects.requireNonNull(diameter, "diameter");
    return this;
  }

  /**
   * States the material of the stud.
   *
   * @param studMaterial the material, with the yield strength that its core has
   * @param rz roughness Rz of the seat; 0 mm if it is not known
   * @return this builder
   */
  public StudRollerBuilder material(Material studMaterial, Length rz) {
    this.material = Objects.requireNonNull(studMaterial, "studMaterial");
    this.seatRoughness = Objects.requireNonNull(rz, "rz");
    return this;
  }

  /**
   * States the head.
   *
   * @param form slot, hexagon or hexagon socket
   * @return this builder
   */
  public StudRollerBuilder head(HeadForm form) {
    this.head = Objects.requireNonNull(form, "form");
    return this;
  }

  /**
   * States that the head has a hexagon socket with a grease fitting built in. Another form of head contradicts it.
   *
   * @return this builder
   */
  public StudRollerBuilder fittingInSocket() {
    this.fittingInSocket = true;
    return this;
  }

  /**
   * States that the stud sits in an eccentric collar. The fit is then that of the collar in the bore: state its diameter
   * and tolerance as those of the stud.
   *
   * @return this builder
   */
  public StudRollerBuilder eccentricCollar() {
    this.eccentricCollar = true;
    return this;
  }

  /**
   * States which openings the part in hand has. Optional: without it those usual for the size are taken, and the sheet
   * says so.
   *
   * @param seen the openings as drilled
   * @return this builder
   */
  public StudRollerBuilder openings(Openings seen) {
    this.openings = Objects.requireNonNull(seen, "seen");
    return this;
  }

  /**
   * States what the stud bears. Optional.
   *
   * @param limit greatest radial load
   * @return this builder
   */
  public StudRollerBuilder studLimit(Force limit) {
    this.studLimit = Objects.requireNonNull(limit, "limit");
    return this;
  }

  /**
   * States the greatest tightening torque that the maker permits. Optional.
   *
   * @param torque the torque
   * @return this builder
   */
  public StudRollerBuilder greatestTorque(Torque torque) {
    this.greatestTorque = Objects.requireNonNull(torque, "torque");
    return this;
  }

  /**
   * States what the stud endures. Optional: without it fatigue of the stud is compared with one catalogue's allowable
   * stress only.
   *
   * @param strengths endurance limit of the finished stud, tensile and yield strength
   * @param notchFactor fatigue notch factor Kf at the mouth of the seat, 1 or more; that of a cross hole, up to 3, if the hole
   *     can turn into the load
   * @return this builder
   * @throws InputException if the notch factor is out of range
   */
  public StudRollerBuilder endurance(StudMaterial strengths, double notchFactor) {
    Objects.requireNonNull(strengths, "strengths");
    this.endurance = new StudEndurance(strengths, notchFactor);
    return this;
  }

  @Override
  void missing(Missing missing) {
    super.missing(missing);
    missing
        .need(flangeDiameter(), "flange")
        .need(studDiameter(), "stud")
        .need(thread(), "thread")
        .need(greaseBore, "grease bore (0 mm for a solid stud)")
        .need(material, "material of the stud")
        .need(head(), "head");
  }

  @Override
  StudRoller make() {
    return new StudRoller(
        name,
        outsideDiameter(),
        ringWidth(),
        crownRadius(),
        flangeDiameter(),
        orTable(ringGap, size -> size.stud().overhang()),
        studDiameter(),
        orTable(studTolerance, size -> usualStudTolerance(size.series().system())),
        orTable(lengths, size -> new StudLengths(size.stud().length(), size.stud().threadLength())),
        thread(),
        greaseBore,
        crossHole,
        material,
        seatRoughness,
        new RollerBuild(measures(), kind, sealed, head(), fittingInSocket, eccentricCollar, openings),
        ratings,
        ratingsFrom,
        limits(studLimit, greatestTorque),
        interior,
        endurance);
  }

  /**
   * Ends the description.
   *
   * @return the roller
   * @throws holdfast.quantity.InputException if something is missing (one error names all of it) or cannot be
   */
  public StudRoller build() {
    return make("stud roller '" + name + "'");
  }
}
