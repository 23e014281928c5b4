// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.bearings.LoadRatings;
import holdfast.lubrication.HeadForm;
import holdfast.lubrication.Openings;
import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.RotationalSpeed;
import holdfast.quantity.Temperature;
import holdfast.quantity.Torque;
import holdfast.rollers.MeasureSystem;
import holdfast.rollers.RollerKind;
import holdfast.rollers.RollerSize;
import holdfast.seats.Material;
import java.util.Objects;

/** Collects the description of a stud roller. Not thread-safe. */
public final class StudRollerBuilder extends Description<StudRoller> {
  private final String name;
  private Length outsideDiameter;
  private Length ringWidth;
  private Length crownRadius;
  private Length flangeDiameter;
  private Length ringGap;
  private Length studDiameter;
  private String studTolerance;
  private String thread;
  private Length greaseBore;
  private Material material;
  private Length seatRoughness;
  private MeasureSystem system = MeasureSystem.METRIC;
  private RollerKind kind;
  private boolean sealed;
  private HeadForm head;
  private boolean fittingInSocket;
  private boolean eccentricCollar;
  private Openings openings;
  private LoadRatings ratings;
  private Temperature coldest;
  private Temperature hottest;
  private Force turning;
  private Force standing;
  private Force studLimit;
  private Force trackAt40Hrc;
  private RotationalSpeed speed;
  private Torque greatestTorque;
  private RollerInterior interior;

  StudRollerBuilder(String name) {
    this.name = name;
  }

  /**
   * States all that the dimension table of a series tells: ring, flange, stud, thread and system of measures. The flange
   * is taken as wide as the least face that the table asks of the machine member; where practices differ on the thread,
   * the first is taken: compare it with the part.
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
    boolean inch = size.series().system() == MeasureSystem.INCH;
    system = size.series().system();
    return ring(size.outsideDiameter(), size.ringWidth(), crown)
        .flange(size.faceDiameter(), size.stud().overhang())
        .stud(size.stud().diameter(), inch ? "+0.001/0 in" : "h7")
        .thread(size.stud().threads().get(0));
  }

  /**
   * States the outer ring.
   *
   * @param diameter outside diameter D
   * @param width width of the ring
   * @param crown radius of its crown; 0 mm for a flat ring
   * @return this builder
   */
  public StudRollerBuilder ring(Length diameter, Length width, Length crown) {
    this.outsideDiameter = Objects.requireNonNull(diameter, "diameter");
    this.ringWidth = Objects.requireNonNull(width, "width");
    this.crownRadius = Objects.requireNonNull(crown, "crown");
    return this;
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
   * States rolling elements and seals.
   *
   * @param rollingElements the kind of rolling elements
   * @param contactSeals whether the roller has contact seals
   * @return this builder
   */
  public StudRollerBuilder inside(RollerKind rollingElements, boolean contactSeals) {
    this.kind = Objects.requireNonNull(rollingElements, "rollingElements");
    this.sealed = contactSeals;
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
   * States that the head has a hexagon socket with a grease fitting built in.
   *
   * @return this builder
   */
  public StudRollerBuilder fittingInSocket() {
    this.head = HeadForm.HEXAGON_SOCKET;
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
   * States the system of measures of fittings and ports. Metric if it is not stated.
   *
   * @param measures metric or inch
   * @return this builder
   */
  public StudRollerBuilder system(MeasureSystem measures) {
    this.system = Objects.requireNonNull(measures, "measures");
    return this;
  }

  /**
   * States the load ratings.
   *
   * @param makersRatings as the maker states them
   * @return this builder
   */
  public StudRollerBuilder ratings(LoadRatings makersRatings) {
    this.ratings = Objects.requireNonNull(makersRatings, "makersRatings");
    return this;
  }

  /**
   * States the temperatures that the roller may take.
   *
   * @param lowest lowest temperature
   * @param highest highest temperature
   * @return this builder
   */
  public StudRollerBuilder temperatures(Temperature lowest, Temperature highest) {
    this.coldest = Objects.requireNonNull(lowest, "lowest");
    this.hottest = Objects.requireNonNull(highest, "highest");
    return this;
  }

  /**
   * States what the outer ring bears. Optional.
   *
   * @param whileTurning greatest radial load while it turns
   * @param atStandstill greatest radial load at standstill
   * @return this builder
   */
  public StudRollerBuilder ringLimits(Force whileTurning, Force atStandstill) {
    this.turning = Objects.requireNonNull(whileTurning, "whileTurning");
    this.standing = Objects.requireNonNull(atStandstill, "atStandstill");
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
   * States what a track bears. Optional.
   *
   * @param at40Hrc load that a track of 40 HRC takes from this roller
   * @return this builder
   */
  public StudRollerBuilder trackCapacity(Force at40Hrc) {
    this.trackAt40Hrc = Objects.requireNonNull(at40Hrc, "at40Hrc");
    return this;
  }

  /**
   * States the greatest speed. Optional: without it the published speed factor of the kind is taken.
   *
   * @param limit greatest speed of the outer ring
   * @return this builder
   */
  public StudRollerBuilder speedLimit(RotationalSpeed limit) {
    this.speed = Objects.requireNonNull(limit, "limit");
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
   * States rollers and play. Optional: without it the sheet does not say what a loose seat costs in life.
   *
   * @param rollersAndPlay the inside of the roller, each value with its origin
   * @return this builder
   */
  public StudRollerBuilder interior(RollerInterior rollersAndPlay) {
    this.interior = Objects.requireNonNull(rollersAndPlay, "rollersAndPlay");
    return this;
  }

  @Override
  void missing(Missing missing) {
    missing
        .need(name, "name")
        .need(outsideDiameter, "ring")
        .need(flangeDiameter, "flange")
        .need(studDiameter, "stud")
        .need(thread, "thread")
        .need(greaseBore, "grease bore (0 mm for a solid stud)")
        .need(material, "material of the stud")
        .need(kind, "inside (rolling elements and seals)")
        .need(head, "head")
        .need(ratings, "ratings")
        .need(coldest, "temperatures");
  }

  @Override
  StudRoller make() {
    return new StudRoller(
        name,
        outsideDiameter,
        ringWidth,
        crownRadius,
        flangeDiameter,
        ringGap,
        studDiameter,
        studTolerance,
        thread,
        greaseBore,
        material,
        seatRoughness,
        new RollerBuild(system, kind, sealed, head, fittingInSocket, eccentricCollar, openings),
        ratings,
        new MakersLimits(coldest, hottest, turning, standing, studLimit, trackAt40Hrc, speed, greatestTorque),
        interior);
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
