package holdfast.bearings;

import holdfast.quantity.Check;
import holdfast.tables.Source;
import holdfast.tables.Table;
import holdfast.tables.TableSet;

/** Track rollers: speed, track capacity by hardness, minimum load. Lengths in mm, speeds in mm/s and rpm, loads in N. */
public final class TrackRollerKernel {
  private static final Table HARDNESS = TableSet.bundled().table("bearings/track-rollers/catalogue-b/hardness-factors");
  private static final Curve FLAT = Curve.of(HARDNESS, "hardness", "flat");
  private static final Curve CROWNED = Curve.of(HARDNESS, "hardness", "crowned");
  /** Tensile strength at 40 HRC to which track capacities are stated, in MPa. */
  private static final double REFERENCE_STRENGTH = 1245;

  private TrackRollerKernel() {}

  /**
   * Speed of the outer ring on a track, {@code n = 60 v / (π D)}.
   *
   * @param trackSpeed v in mm/s, over 0
   * @param outsideDiameter D of the roller in mm, over 0
   * @return n in rpm
   * @throws holdfast.quantity.InputException if an argument is not above zero
   */
  @Source(document = "derivation", locator = "rolling without sliding", provenance = holdfast.tables.Provenance.DERIVED)
  public static double speedOnTrack(double trackSpeed, double outsideDiameter) {
    Check.positive(trackSpeed, "track speed v", "mm/s", "a roller that stands still is checked statically");
    return 60 * trackSpeed / (Math.PI * checkDiameter(outsideDiameter, "outside diameter D"));
  }

  /**
   * Speed of the outer ring on a cam, {@code n = nc Dc / D}.
   *
   * @param camRpm speed nc of the cam in rpm, over 0
   * @param camDiameter diameter Dc of the cam where the roller runs in mm, over 0
   * @param outsideDiameter D of the roller in mm, over 0
   * @return n in rpm
   * @throws holdfast.quantity.InputException if an argument is not above zero
   */
  @Source(document = "derivation", locator = "rolling without sliding", provenance = holdfast.tables.Provenance.DERIVED)
  public static double speedOnCam(double camRpm, double camDiameter, double outsideDiameter) {
    BasicLifeKernel.checkSpeed(camRpm);
    return camRpm * checkDiameter(camDiameter, "cam diameter") / checkDiameter(outsideDiameter, "outside diameter D");
  }

  /**
   * Hardness factor of the track capacity, 1 at 40 HRC, by linear interpolation.
   *
   * @param hrc hardness of the track in HRC, from 20 to 58
   * @param crowned whether the outer ring is crowned
   * @return factor on the track capacity at 40 HRC
   * @throws holdfast.quantity.InputException if the hardness is outside the table
   */
  @Source(document = "Track capacity catalogue B", locator = "table of track hardness factors")
  public static double hardnessFactor(double hrc, boolean crowned) {
    return (crowned ? CROWNED : FLAT).at(hrc, "track hardness HRC",
        "Track capacity catalogue B; tracks below 20 HRC are too soft for track rollers");
  }

  /**
   * Strength factor of the track capacity: flat ring {@code (Rm/1245)²}, crowned ring {@code (Rm/1245)³}.
   *
   * <p>The load of a line contact at a given stress goes with the square of the stress, that of a point contact with the
   * cube.
   *
   * @param strength tensile strength Rm of the track in MPa, from 755 to 2290
   * @param crowned whether the outer ring is crowned
   * @return factor on the track capacity at 40 HRC
   * @throws holdfast.quantity.InputException if the strength is outside the range of the tables
   */
  @Source(document = "Track capacity catalogue A", locator = "track capacity factors, square and cube of strength ratio")
  public static double strengthFactor(double strength, boolean crowned) {
    double r = Check.within(strength, 755, 2290, "tensile strength Rm of the track", "MPa", "20 to 58 HRC") / REFERENCE_STRENGTH;
    return crowned ? r * r * r : r * r;
  }

  /**
   * Minimum load for rolling without sliding, {@code C0/60}.
   *
   * @param c0r basic static load rating in N, over 0
   * @return load in N
   * @throws holdfast.quantity.InputException if the rating is not above zero
   */
  @Source(document = "Track roller load catalogue", locator = "minimum load 0.0167 C0")
  public static double minimumLoad(double c0r) {
    return Check.positive(c0r, "basic static load rating C0r", "N", "a rating is a force above zero") / 60;
  }

  /**
   * Speed for the life of a bearing both of whose rings may turn: the speed of one ring relative to the other.
   *
   * @param innerRpm speed of the inner ring, with sign
   * @param outerRpm speed of the outer ring, with sign
   * @return |ne - ni| in rpm
   * @throws holdfast.quantity.InputException if a speed is not finite
   */
  @Source(document = "derivation", locator = "elements roll by the relative motion",
      provenance = holdfast.tables.Provenance.DERIVED)
  public static double relativeSpeed(double innerRpm, double outerRpm) {
    Check.finite(innerRpm, "speed of the inner ring", "rpm");
    Check.finite(outerRpm, "speed of the outer ring", "rpm");
    return Math.abs(outerRpm - innerRpm);
  }

  private static double checkDiameter(double diameter, String name) {
    return Check.positive(diameter, name, "mm", "a roller has a diameter");
  }
}
