// SPDX-License-Identifier: Apache-2.0
package holdfast.job;

import static holdfast.job.Key.optional;
import static holdfast.job.Key.required;

import holdfast.bearings.Cleanliness;
import holdfast.bearings.Contamination;
import holdfast.bearings.ContaminationLevel;
import holdfast.bearings.OuterRing;
import holdfast.contact.ContactSurface;
import holdfast.fits.ToleranceClass;
import holdfast.installation.NutLocking;
import holdfast.installation.PinSecuring;
import holdfast.installation.ThreadCondition;
import holdfast.installation.ValueOrigin;
import holdfast.lubrication.HeadForm;
import holdfast.lubrication.Port;
import holdfast.lubrication.TradeFactor;
import holdfast.quantity.Angle;
import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.quantity.KinematicViscosity;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.RotationalSpeed;
import holdfast.quantity.Speed;
import holdfast.quantity.Stress;
import holdfast.quantity.ThermalExpansion;
import holdfast.quantity.Torque;
import holdfast.rollers.MeasureSystem;
import holdfast.rollers.RollerKind;
import holdfast.rollers.RollerSeries;
import holdfast.rollers.RollerSize;
import holdfast.seats.Ductility;
import holdfast.seats.FrictionBand;
import holdfast.seats.HousingShape;
import holdfast.seats.Material;
import holdfast.seats.MaterialGroup;
import holdfast.seats.StudDuty;
import holdfast.sheet.SheetUnits;
import holdfast.threads.ScrewThread;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The keys of a job file: reader, writer, template, reference page and JSON Schema are made from these lists and from nothing
 * else.
 */
final class Schema {
  // ---- kinds ----
  private static final Kind<ContaminationLevel> LEVELS = Kind.words("cleanliness", ContaminationLevel.values());
  private static final Map<HousingShape.Kind, String> SHAPES =
      Map.of(HousingShape.Kind.RING, "ring", HousingShape.Kind.EDGE, "edge", HousingShape.Kind.BLOCK, "block");
  static final Kind<Force> FORCE =
      Kind.quantity("force", "2.1 kN or 600 lbf", Force::parse, List.of(KnownUnits.KN, KnownUnits.N),
          List.of(KnownUnits.LBF, KnownUnits.N));
  static final Kind<Torque> TORQUE =
      Kind.quantity("torque", "75 N·m or 325 lbf·in", Torque::parse, List.of(KnownUnits.N_M, KnownUnits.N_MM),
          List.of(KnownUnits.LBF_IN, KnownUnits.LBF_FT, KnownUnits.N_MM));
  static final Kind<Stress> STRESS =
      Kind.quantity("stress", "590 MPa or 60 ksi", Stress::parse, List.of(KnownUnits.MPA),
          List.of(KnownUnits.KSI, KnownUnits.PSI, KnownUnits.MPA));
  static final Kind<RotationalSpeed> SPEED =
      Kind.quantity("speed", "180 rpm", RotationalSpeed::parse, List.of(KnownUnits.RPM), List.of(KnownUnits.RPM));
  static final Kind<KinematicViscosity> VISCOSITY =
      Kind.quantity("kinematic viscosity", "150 mm²/s (or 150 cSt)", KinematicViscosity::parse,
          List.of(KnownUnits.MM2_PER_S), List.of(KnownUnits.MM2_PER_S));
  static final Kind<Angle> ANGLE =
      Kind.quantity("angle", "1 mrad", Angle::parse, List.of(KnownUnits.MRAD, KnownUnits.RAD),
          List.of(KnownUnits.MRAD, KnownUnits.RAD));
  static final Kind<ThermalExpansion> EXPANSION =
      Kind.quantity("thermal expansion", "11.5 µm/(m·K)", ThermalExpansion::parse,
          List.of(KnownUnits.UM_PER_M_K, KnownUnits.PER_K), List.of(KnownUnits.UM_PER_M_K, KnownUnits.PER_K));
  static final Kind<ValueOrigin> ORIGIN = Kind.words("origin", ValueOrigin.values());
  static final Kind<String> TOLERANCE = new Kind<>("tolerance", false,
      "a class such as H7, or deviations with their unit such as +0.0005/0 in", List.of(), Schema::tolerance,
      (text, system) -> text);
  static final Kind<String> THREAD = new Kind<>("thread", false, "a designation such as M18x1.5 or 5/8-18 UNF", List.of(),
      text -> {
        ScrewThread.of(text.strip());
        return text.strip();
      }, (text, system) -> text);
  static final Kind<RollerSize> SIZE = new Kind<>("size of a series", false,
      "series and outside diameter, such as metric 40 mm, inch 1-1/2 in, inch heavy stud 1-1/2 in", List.of(), Schema::size,
      (size, system) -> seriesName(size.series()) + " " + Kind.LENGTH.write().text(size.outsideDiameter(), system));
  static final Kind<HousingShape> SHAPE = new Kind<>("shape", false,
      "ring 50 mm (outside diameter), wide plate, edge 30 mm (distance of the bore's axis from it), block 60 mm (side)",
      List.of(), Schema::shape, (shape, system) -> shape.kind() == HousingShape.Kind.WIDE
          ? "wide plate"
          : SHAPES.get(shape.kind()) + " " + Kind.LENGTH.write().text(shape.size(), system));
  static final Kind<ContactSurface> TRACK = new Kind<>("track", false,
      "flat, cam 60 mm (radius), inside 300 mm (radius of a concave track), rail 200 mm (radius of its head)", List.of(),
      Schema::track, Schema::trackText);
  static final Kind<Material> MATERIAL = new Kind<>("material", false,
      "a name of the table of materials, with its condition behind a stroke where there are several, such as C45+N or"
          + " 16MnCr5 | core", List.of(),
      text -> {
        String[] parts = text.split("\\|", 2);
        try {
          return parts.length == 1 ? Material.of(parts[0].strip()) : Material.of(parts[0].strip(), parts[1].strip());
        } catch (InputException e) {
          throw new InputException(e.parameter(), e.value(), e.permitted(),
              "the table of materials does not hold it; state its values under own-material");
        }
      },
      (material, system) -> materialName(material).orElseThrow());
  static final Kind<FrictionBand> PRESSING = new Kind<>("friction of a seat", false,
      Kind.NUMBER_RANGE.accepts() + "; or general, or oiled, for what their documents give", List.of(),
      text -> switch (text.strip()) {
        case "general" -> FrictionBand.general();
        case "oiled" -> FrictionBand.pressingOiled();
        default -> {
          Kind.Range<Double> range = Kind.NUMBER_RANGE.read().apply(text);
          yield FrictionBand.of(range.least(), range.greatest());
        }
      },
      (band, system) -> band.equals(FrictionBand.general()) ? "general" : band.equals(FrictionBand.pressingOiled()) ? "oiled"
          : Kind.NUMBER_RANGE.write().text(new Kind.Range<>(band.least(), band.greatest()), system));
  static final Kind<Contamination> CONTAMINATION = new Kind<>("cleanliness", false,
      "a level of ISO 281:2007, Table 13 (" + String.join(", ", LEVELS.words())
          + "), also 'at 0.5' of the way through its range; a"
          + " figure of its Annex A such as figure A.11; or eC 0.4", List.of(), Schema::contamination, Schema::contaminationText);
  static final Kind<Optional<Port>> FEED = feed();
  static final Kind<TradeFactor> DIRT = trade("Fc");
  static final Kind<TradeFactor> MOISTURE = trade("Fm");
  static final Kind<TradeFactor> VIBRATION = new Kind<>("vibration", false,
      () -> "its peak velocity, such as 6 mm/s, or one of " + String.join(", ", conditions("Fv")), List.of(),
      text -> conditions("Fv").contains(text.strip()) || !Character.isDigit(text.strip().charAt(0))
          ? TradeFactor.of("Fv", text.strip())
          : TradeFactor.of("Fv", Speed.parse(text).mmPerS()),
      (factor, system) -> factor.condition());

  // ---- the job ----
  static final Key<Boolean> IN_FORK = required("mounting",
      Kind.words("mounting", ordered("stud in a member", false, "pin in a fork", true)), "what holds the roller",
      "stud in a member");
  static final Key<String> JOB = required("job", Kind.NAME, "what the papers call the job", "guide lever, line 2 (invented)");
  static final Key<SheetUnits> UNITS = optional("print-in", Kind.words("units", SheetUnits.values()), "units of the papers",
      "metric for metric rollers, inch and metric for inch rollers, because gauges and taps of both kinds lie about", "metric");

  static final Key<String> ROLLER_LIST = optional("roller-list", Kind.NAME,
      "file beside this one that lists rollers: the one called roller.name, and its stud, are taken from there and not stated"
          + " here", "roller and stud are stated here", "rollers.yaml");

  // ---- the roller ----
  static final Key<String> ROLLER = required("roller.name", Kind.NAME, "what the papers call the roller",
      "stud roller 40 x 20 (invented)");
  static final Key<RollerSize> ROLLER_SIZE = optional("roller.size", SIZE,
      "size of a printed series: gives ring, flange, stud and thread where they are not stated", "each is stated",
          "metric 40 mm");
  static final Key<Length> OUTSIDE = optional("roller.outside-diameter", Kind.LENGTH, "outside diameter D of the outer ring",
      "that of the size", "40 mm");
  static final Key<Length> WIDTH = optional("roller.ring-width", Kind.LENGTH, "width of the outer ring", "that of the size",
      "20 mm");
  static final Key<Length> CROWN = optional("roller.crown-radius", Kind.lengthOr("flat"), "radius of the crown of the outer ring",
      "flat, the harder case for a misaligned ring", "500 mm");
  static final Key<RollerKind> ELEMENTS = required("roller.rolling-elements",
      Kind.words("rolling elements", ordered("caged needle rollers", RollerKind.CAGED_NEEDLE, "full complement of needle rollers",
          RollerKind.FULL_COMPLEMENT_NEEDLE, "two rows of cylindrical rollers", RollerKind.DOUBLE_ROW_CYLINDRICAL)),
      "kind of rolling elements", "caged needle rollers");
  static final Key<Boolean> SEALS = required("roller.seals", Kind.words("seals", ordered("none", false, "contact", true)),
      "whether the roller has contact seals", "none");
  static final Key<MeasureSystem> MEASURES = optional("roller.measures", Kind.words("measures", MeasureSystem.values()),
      "system of measures of fittings and ports", "that of the size, or metric", "metric");
  static final Key<Force> DYNAMIC = required("roller.ratings.dynamic", FORCE, "basic dynamic load rating C by the maker",
      "14.2 kN");
  static final Key<Force> STATIC = required("roller.ratings.static", FORCE, "basic static load rating C0 by the maker",
      "17.5 kN");
  static final Key<OuterRing> RING = required("roller.ratings.outer-ring",
      Kind.words("outer ring", ordered("rigid", OuterRing.RIGID, "deflecting", OuterRing.DEFLECTING)),
      "whether the ratings hold for a rigid outer ring or for one that deflects on its track: it matters which", "deflecting");
  static final Key<Force> FATIGUE_LIMIT = optional("roller.ratings.fatigue-limit", FORCE, "fatigue load limit Cu by the maker",
      "estimated from C0", "2.1 kN");
  static final Key<ValueOrigin> RATINGS_FROM = optional("roller.ratings.origin", ORIGIN, "where the ratings come from",
      "stated: as the maker states them", "stated");
  static final Key<Kind.Range<holdfast.quantity.Temperature>> TEMPERATURES = required("roller.limits.temperatures",
      Kind.temperatures(), "temperatures that the maker permits", "-20 °C … 110 °C");
  static final Key<Force> TURNING = optional("roller.limits.load-turning", FORCE, "greatest radial load while the ring turns",
      "not limited by it", "8.4 kN");
  static final Key<Force> STANDING = optional("roller.limits.load-standing", FORCE, "greatest radial load at standstill",
      "not limited by it", "13 kN");
  static final Key<Force> HOLDER = optional("roller.limits.load-on-stud", FORCE,
      "greatest radial load of the stud, or of the pin",
      "only its stresses limit it", "9 kN");
  static final Key<Force> TRACK_CAPACITY = optional("roller.limits.track-load-40-hrc", FORCE,
      "load that a flat track of 40 HRC bears", "only the contact pressure is looked at", "4.2 kN");
  static final Key<RotationalSpeed> SPEED_LIMIT = optional("roller.limits.speed", SPEED, "greatest speed with grease",
      "by the published factor of the rolling elements", "4000 rpm");
  static final Key<Torque> TORQUE_LIMIT = optional("roller.limits.torque", TORQUE, "greatest tightening torque",
      "only the stresses of the stud limit it", "85 N·m");
  static final Key<Integer> Z = optional("roller.internal-geometry.rollers", Kind.COUNT, "number of rollers Z of a row",
      "the inside is not known, and what a misaligned seat costs in life is not counted", "16");
  static final Key<Length> DWE = optional("roller.internal-geometry.roller-diameter", Kind.LENGTH, "roller diameter Dwe",
      "with the number of rollers", "3.5 mm");
  static final Key<Length> LWE = optional("roller.internal-geometry.roller-length", Kind.LENGTH, "effective roller length Lwe",
      "with the number of rollers", "12 mm");
  static final Key<ValueOrigin> ROLLERS_FROM = optional("roller.internal-geometry.rollers-origin", ORIGIN,
      "where number, diameter and length come from", "with the number of rollers", "stated");
  static final Key<Integer> ROWS = optional("roller.internal-geometry.rows", Kind.COUNT, "number of rows", "1", "1");
  static final Key<Length> ROW_SPACING = optional("roller.internal-geometry.row-spacing", Kind.LENGTH,
      "distance of the middles of two rows", "0 mm, for one row", "14 mm");
  static final Key<Length> DPW = optional("roller.internal-geometry.pitch-diameter", Kind.LENGTH, "pitch diameter Dpw",
      "with the number of rollers", "23 mm");
  static final Key<ValueOrigin> DPW_FROM = optional("roller.internal-geometry.pitch-diameter-origin", ORIGIN,
      "where the pitch diameter comes from", "with the number of rollers", "stated");
  static final Key<Length> CLEARANCE = optional("roller.internal-geometry.clearance", Kind.LENGTH, "radial internal clearance",
      "with the number of rollers", "20 µm");
  static final Key<ValueOrigin> CLEARANCE_FROM = optional("roller.internal-geometry.clearance-origin", ORIGIN,
      "where the clearance comes from", "with the number of rollers", "estimated");
  static final Key<ProfileKind> PROFILE = optional("roller.internal-geometry.profile", Kind.words("profile",
      ProfileKind.values()),
      "profile of the rollers", "with the number of rollers", "logarithmic");
  static final Key<Length> PROFILE_RADIUS = optional("roller.internal-geometry.profile-radius", Kind.LENGTH,
      "radius of crowned rollers", "with the profile crowned", "2000 mm");
  static final Key<List<Length>> PROFILE_DROPS = optional("roller.internal-geometry.profile-drops", Kind.lengths(),
      "drops of a given profile at equal stations from end to end", "with the profile given", "4 µm, 0 µm, 4 µm");
  static final Key<ValueOrigin> PROFILE_FROM = optional("roller.internal-geometry.profile-origin", ORIGIN,
      "where the profile comes from", "with the number of rollers", "estimated");

  /** Profiles by their names; what they need stands in keys of their own. */
  enum ProfileKind { LOGARITHMIC, STRAIGHT, CROWNED, GIVEN }

  // ---- the stud ----
  static final Key<Length> STUD = optional("stud.diameter", Kind.LENGTH, "nominal diameter d1 of the stud", "that of the size",
      "18 mm");
  static final Key<String> STUD_TOLERANCE = optional("stud.tolerance", TOLERANCE, "tolerance of the stud",
      "with a size h7 for metric and +0.001/0 in for inch studs, as the series print them", "h7");
  static final Key<String> STUD_THREAD = optional("stud.thread", THREAD, "thread of the stud", "that of the size", "M18x1.5");
  static final Key<Length> STUD_LENGTH = optional("stud.length", Kind.LENGTH, "length of the stud behind the flange",
      "that of the size; else grip and thread showing are not looked at", "36.5 mm");
  static final Key<Length> THREAD_LENGTH = optional("stud.thread-length", Kind.LENGTH, "length of its thread, run-out counted",
      "that of the size; else with the length of the stud", "19 mm");
  static final Key<Length> GREASE_BORE = required("stud.grease-bore", Kind.lengthOr("none"), "diameter of the axial grease bore",
      "3 mm");
  static final Key<Length> STUD_CROSS = optional("stud.cross-hole", Kind.lengthOr("none"),
      "diameter of the radial hole in the shank", "the stress of the stud counts the full section", "3 mm");
  static final Key<Length> FLANGE = optional("stud.flange-diameter", Kind.LENGTH, "diameter of the flange that is clamped",
      "that of the size", "32 mm");
  static final Key<Length> GAP = optional("stud.ring-gap", Kind.LENGTH,
      "distance from the clamped face to the near side of the outer ring", "that of the size", "0.8 mm");
  static final Materials STUD_MATERIAL = new Materials("stud", "stud", "16MnCr5");
  static final Key<Length> STUD_ROUGHNESS = optional("stud.roughness", Kind.LENGTH, "roughness Rz of the stud's seat",
      "not known: no interference is lost to smoothing", "2 µm");
  static final Key<HeadForm> HEAD = required("stud.head", Kind.words("head", HeadForm.values()), "what the head of the stud has",
      "slot");
  static final Key<Boolean> FITTING = optional("stud.fitting-in-socket", Kind.YES_NO,
      "whether a grease fitting is built into the hexagon socket", "no", "no");
  static final Key<Boolean> COLLAR = optional("stud.eccentric-collar", Kind.YES_NO,
      "whether the stud sits in an eccentric collar, whose diameter and tolerance are then stated as the stud's", "no", "no");
  static final Key<Boolean> OPEN_AXIAL = optional("stud.openings.axial-bore", Kind.YES_NO, "whether an axial bore is drilled",
      "the openings usual for the size", "yes");
  static final Key<Boolean> OPEN_HEAD = optional("stud.openings.head", Kind.YES_NO, "whether the head end is open",
      "the openings usual for the size", "yes");
  static final Key<Boolean> OPEN_THREAD = optional("stud.openings.thread-end", Kind.YES_NO, "whether the thread end is open",
      "the openings usual for the size", "yes");
  static final Key<Boolean> OPEN_RADIAL = optional("stud.openings.radial", Kind.YES_NO, "whether the shank has a radial hole",
      "the openings usual for the size", "yes");
  static final Endurance STUD_ENDURANCE = new Endurance("stud");

  // ---- the member ----
  static final Key<String> MEMBER = required("member.name", Kind.NAME, "what the papers call the machine member", "guide lever");
  static final Materials MEMBER_MATERIAL = new Materials("member", "member", "C45+N");
  static final Key<HousingShape> MEMBER_SHAPE = required("member.shape", SHAPE, "shape of the member round the bore",
      "ring 50 mm");
  static final Key<Length> MEMBER_ROUGHNESS = optional("member.roughness", Kind.LENGTH, "roughness Rz of the bore",
      "not known: no interference is lost to smoothing", "4 µm");
  static final Key<String> BORE = required("member.bore", TOLERANCE, "tolerance of the bore", "H7");
  static final Key<Length> SEAT_LENGTH = required("member.seat-length", Kind.LENGTH,
      "length over which stud and bore touch, chamfers not counted", "16 mm");
  static final Key<FrictionBand> PRESSING_FRICTION = required("member.pressing-friction", PRESSING,
      "coefficient of friction while the stud is pressed in", "0.08 … 0.20");
  static final Key<Length> RUN_OUT = optional("member.face-run-out", Kind.LENGTH,
      "greatest axial run-out of the clamped face against the bore, over the flange's diameter",
      "not stated: the clearance alone tells how far the stud can lean", "12 µm");
  static final Key<Length> THICKNESS = optional("member.thickness", Kind.LENGTH, "thickness of the member between flange and nut",
      "as long as the seat", "17 mm");
  static final Key<Boolean> FEED_HOLE = optional("member.feed-hole", Kind.YES_NO,
      "whether a feed hole in the member meets the radial hole of the stud", "no", "no");

  // ---- the nut ----
  static final Key<Length> FACE_OUTER = optional("nut.face-outer", Kind.LENGTH,
      "outer diameter of the face on which the nut turns", "standard face of the thread: a metric hexagon over a medium hole, an"
          + " inch hex nut over a narrow plain washer", "24.8 mm");
  static final Key<Length> FACE_INNER = optional("nut.face-inner", Kind.LENGTH,
      "inner diameter of that face: bore, chamfer or washer bore, the largest", "with the outer diameter", "19 mm");
  static final Key<ThreadCondition> CONDITION = required("nut.thread-condition",
      Kind.words("condition", ThreadCondition.values()), "what lies on thread and face while the nut is tightened: friction and"
          + " torque hold for it alone", "oiled");
  static final Key<Kind.Range<Double>> FRICTION = required("nut.friction", Kind.NUMBER_RANGE,
      "coefficient of friction in thread and face", "0.10 … 0.16");
  static final Key<Torque> TORQUE_SET = required("nut.torque", TORQUE, "torque to which the wrench is set", "75 N·m");
  static final Key<Double> WRENCH_ERROR = optional("nut.wrench-error", Kind.PERCENT, "greatest error of the wrench",
      "4 %, as ISO 6789 permits over 10 N·m", "4 %");
  static final Key<Double> RESERVE = optional("nut.reserve", Kind.NUMBER,
      "factor on the preload that keeps the joint closed, for vibration and shock", "1.5 (common practice)", "1.5");
  static final Key<Length> ENGAGED = optional("nut.engaged-length", Kind.LENGTH, "engaged length of thread without countersinks",
      "stripping of the thread is not looked at", "13 mm");
  static final Key<Stress> NUT_SHEAR = optional("nut.shear-strength", STRESS, "shear strength of the nut",
      "with the engaged length", "480 MPa");
  static final Key<Length> NUT_HEIGHT = optional("nut.height", Kind.LENGTH, "height of the nut",
      "grip and thread showing are not looked at", "14.8 mm");
  static final Key<Length> WASHER = optional("nut.washer", Kind.lengthOr("none"), "thickness of the washer under the nut",
      "with the height of the nut", "none");
  static final Key<NutLocking> LOCKING = optional("nut.locking", Kind.words("locking", NutLocking.values()),
      "what keeps the nut from working loose", "none: nothing but the preload", "lock washer");
  static final Key<Torque> PREVAILING = optional("nut.prevailing-torque", TORQUE,
      "prevailing torque of a self-locking nut, measured while it is run down", "none", "6 N·m");

  // ---- the pin and its fork ----
  static final Key<Length> RING_BORE = required("roller.bore.diameter", Kind.LENGTH, "nominal bore d of the roller", "20 mm");
  static final Key<String> RING_TOLERANCE = required("roller.bore.tolerance", TOLERANCE, "tolerance of that bore", "0/-0.010 mm");
  static final Key<Length> RING_SEAT = required("roller.bore.width", Kind.LENGTH, "width of the roller on the pin", "25 mm");
  static final Key<Boolean> INNER_RING = optional("roller.bore.inner-ring", Kind.YES_NO,
      "whether the roller has an inner ring", "yes", "yes");
  static final Key<Boolean> RING_HOLE = optional("roller.bore.grease-hole", Kind.YES_NO,
      "whether the inner ring has a grease hole", "no", "yes");
  static final Key<String> PIN_TOLERANCE = required("pin.tolerance", TOLERANCE, "tolerance of the pin", "h6");
  static final Materials PIN_MATERIAL = new Materials("pin", "pin", "16MnCr5");
  static final Key<Length> PIN_BORE = optional("pin.grease-bore", Kind.lengthOr("none"), "diameter of the bore along the pin",
      "none",
      "4 mm");
  static final Key<Length> PIN_CROSS = optional("pin.cross-hole", Kind.lengthOr("none"), "diameter of the hole across the pin",
      "none", "3 mm");
  static final Key<Boolean> PIN_THROUGH = optional("pin.bore-through", Kind.YES_NO, "whether the bore opens at both ends",
      "no", "no");
  static final Key<Length> PIN_ROUGHNESS = optional("pin.roughness", Kind.LENGTH, "roughness Rz of the pin",
      "not known: no interference is lost to smoothing", "2 µm");
  static final Key<Double> PIN_HARDNESS = optional("pin.surface-hardness-hrc", Kind.NUMBER, "surface hardness of the pin in HRC",
      "not stated: needles on the pin cannot be judged", "60");
  static final Key<PinSecuring> SECURING = required("pin.secured-by", Kind.words("securing", PinSecuring.values()),
      "what keeps the pin in its place", "keeper plate");
  static final Endurance PIN_ENDURANCE = new Endurance("pin");
  static final Key<String> FORK = required("fork.name", Kind.NAME, "what the papers call the fork", "tension fork");
  static final Materials FORK_MATERIAL = new Materials("fork", "ears", "C45+N");
  static final Key<HousingShape> EAR_SHAPE = required("fork.ear-shape", SHAPE, "shape of an ear round its bore", "ring 46 mm");
  static final Key<Length> EAR_ROUGHNESS = optional("fork.roughness", Kind.LENGTH, "roughness Rz of the bores",
      "not known: no interference is lost to smoothing", "4 µm");
  static final Key<Length> EAR_THICKNESS = required("fork.ear-thickness", Kind.LENGTH, "thickness of an ear", "12 mm");
  static final Key<Length> EAR_GAP = required("fork.gap", Kind.LENGTH, "distance between the ears", "26 mm");
  static final Key<String> EAR_BORE = required("fork.bore", TOLERANCE, "tolerance of the bores of the ears", "H7");
  static final Key<FrictionBand> EAR_FRICTION = required("fork.pressing-friction", PRESSING,
      "coefficient of friction while the pin is pressed in", "0.08 … 0.20");
  static final Key<Boolean> CLAMPED = optional("fork.ring-clamped", Kind.YES_NO,
      "whether the inner ring is clamped between the ears", "no", "yes");
  static final Key<Boolean> EAR_FEED = optional("fork.feed-hole", Kind.YES_NO, "whether a feed hole in an ear meets the pin",
      "no", "no");

  // ---- the duty ----
  static final Key<Force> LOAD = optional("duty.load", FORCE, "radial load on the roller", "it stands in the steps", "2.1 kN");
  static final Key<RotationalSpeed> ROTATION = optional("duty.speed", SPEED, "speed of the outer ring", "it stands in the steps",
      "180 rpm");
  static final Key<Force> STEP_LOAD = required("load", FORCE, "radial load in this step", "2.1 kN");
  static final Key<RotationalSpeed> STEP_SPEED = required("speed", SPEED, "speed in this step", "180 rpm");
  static final Key<Double> STEP_SHARE = required("share", Kind.PERCENT, "its share of the time", "60 %");
  static final Element.Repeat STEPS = new Element.Repeat("duty.steps", "steps of load and speed, whose shares add up to 100 %",
      "one load and one speed", List.of(STEP_LOAD, STEP_SPEED, STEP_SHARE));
  static final Key<holdfast.quantity.OperatingTime> LIFE = required("duty.life", Kind.DURATION,
      "hours that the roller shall run, standstill counted", "20000 h");
  static final Key<Double> RELIABILITY = optional("duty.reliability", Kind.PERCENT, "reliability with which it shall reach them",
      "90 %, that of the basic rating life", "90 %");
  static final Key<Double> STATIC_SAFETY = required("duty.static-safety", Kind.NUMBER,
      "wanted safety S0 of the greatest load against the static rating: 1 to 2 normal, 2 to 3 impact", "2");
  static final Key<holdfast.quantity.Temperature> WORK = required("duty.temperature", Kind.TEMPERATURE,
      "temperature of stud and member at work", "60 °C");
  static final Key<KinematicViscosity> OIL = required("duty.viscosity", VISCOSITY,
      "viscosity of the oil, or of the grease's base oil, at that temperature", "150 mm²/s");
  static final Key<Contamination> CLEANLINESS = optional("duty.cleanliness", CONTAMINATION, "how clean the lubricant stays",
      "it follows from dirt and seals", "slight contamination");
  static final Key<ContactSurface> TRACK_SHAPE = required("duty.track", TRACK, "surface on which the roller runs", "flat");
  static final Key<Double> TRACK_HARDNESS = required("duty.track-hardness-hrc", Kind.NUMBER,
      "hardness of the track in HRC, 20 to 58",
      "45");
  static final Key<Angle> TRACK_ANGLE = optional("duty.track-misalignment", ANGLE,
      "angle between track and roller that the structure holds", "not stated: the seat alone is looked at", "0.5 mrad");
  static final Key<Optional<Port>> FEED_PORT = required("duty.grease-port", FEED,
      "port to which the works has access for greasing", "head end");
  static final Key<Boolean> UPRIGHT = optional("duty.axis", Kind.words("axis", ordered("level", false, "upright", true)),
      "how the axis of the roller stands", "level", "level");
  static final Key<TradeFactor> DUST = optional("duty.dirt", DIRT, "dirt at the place", "clean", "light, non-abrasive dust");
  static final Key<TradeFactor> WATER = optional("duty.moisture", MOISTURE, "water at the place", "dry",
      "humidity mostly below 80 %");
  static final Key<TradeFactor> SHAKING = optional("duty.vibration", VIBRATION, "vibration at the place", "quiet", "6 mm/s");
  static final Key<StudDuty> LOAD_CHANGE = optional("duty.load-change", Kind.words("change of load", StudDuty.values()),
      "how the load on stud or pin changes", "not stated: its fatigue is not looked at", "repeated");

  // ---- the fleet ----
  static final Key<String> PLACE = required("name", Kind.NAME, "what the place is called", "strander 1");
  static final Key<Double> PLACE_HOURS = required("hours-per-year", Kind.NUMBER, "hours that it runs in a year", "4000");
  static final Key<holdfast.quantity.OperatingTime> PLACE_AGE = optional("age", Kind.DURATION, "age of the roller there",
      "0 h, a new one",
      "1200 h");
  static final Element.Repeat PLACES = new Element.Repeat("fleet.places", "places that run this roller", "a single roller",
      List.of(PLACE, PLACE_HOURS, PLACE_AGE));
  static final Key<Double> FLEET_RELIABILITY = optional("fleet.reliability", Kind.PERCENT,
      "reliability wanted of the whole group until it is replaced", "with the places", "50 %");
  static final Key<Double> LEAD_YEARS = optional("fleet.lead-time-years", Kind.NUMBER, "years until ordered spares arrive",
      "with the places", "0.25");
  static final Key<Double> SERVICE = optional("fleet.service-level", Kind.PERCENT,
      "probability that a spare is there when it is needed",
      "with the places", "95 %");

  private Schema() {}

  private static final List<Element> HEAD_KEYS = List.of(JOB, IN_FORK, UNITS, ROLLER_LIST);
  private static final List<Element> ROLLER_KEYS = List.of(ROLLER, ROLLER_SIZE, OUTSIDE, WIDTH, CROWN, ELEMENTS, SEALS, MEASURES,
      DYNAMIC, STATIC, RING, FATIGUE_LIMIT, RATINGS_FROM, TEMPERATURES, TURNING, STANDING, HOLDER, TRACK_CAPACITY, SPEED_LIMIT,
      TORQUE_LIMIT, Z, DWE, LWE, ROLLERS_FROM, ROWS, ROW_SPACING, DPW, DPW_FROM, CLEARANCE, CLEARANCE_FROM, PROFILE,
      PROFILE_RADIUS, PROFILE_DROPS, PROFILE_FROM);
  private static final List<Element> STUD_KEYS = join(List.of(STUD, STUD_TOLERANCE, STUD_THREAD, STUD_LENGTH, THREAD_LENGTH,
      GREASE_BORE, STUD_CROSS, FLANGE, GAP),
      STUD_MATERIAL.keys(), List.of(STUD_ROUGHNESS, HEAD, FITTING, COLLAR, OPEN_AXIAL, OPEN_HEAD, OPEN_THREAD, OPEN_RADIAL),
      STUD_ENDURANCE.keys());
  private static final List<Element> MEMBER_KEYS = join(List.of(MEMBER), MEMBER_MATERIAL.keys(),
      List.of(MEMBER_SHAPE, MEMBER_ROUGHNESS, BORE, SEAT_LENGTH, PRESSING_FRICTION, RUN_OUT, THICKNESS, FEED_HOLE));
  private static final List<Element> NUT_KEYS = List.of(FACE_OUTER, FACE_INNER, CONDITION, FRICTION, TORQUE_SET, WRENCH_ERROR,
      RESERVE,
      ENGAGED, NUT_SHEAR, NUT_HEIGHT, WASHER, LOCKING, PREVAILING);
  private static final List<Element> PIN_KEYS = join(List.of(PIN_TOLERANCE), PIN_MATERIAL.keys(),
      List.of(PIN_BORE, PIN_CROSS, PIN_THROUGH, PIN_ROUGHNESS, PIN_HARDNESS, SECURING), PIN_ENDURANCE.keys());
  private static final List<Element> FORK_KEYS = join(List.of(FORK), FORK_MATERIAL.keys(),
      List.of(EAR_SHAPE, EAR_ROUGHNESS, EAR_THICKNESS, EAR_GAP, EAR_BORE, EAR_FRICTION, CLAMPED, EAR_FEED));
  private static final List<Element> DUTY_KEYS = List.of(LOAD, ROTATION, STEPS, LIFE, RELIABILITY, STATIC_SAFETY, WORK, OIL,
      CLEANLINESS, TRACK_SHAPE, TRACK_HARDNESS, TRACK_ANGLE, FEED_PORT, UPRIGHT, DUST, WATER, SHAKING, LOAD_CHANGE);
  private static final List<Element> FLEET_KEYS = List.of(PLACES, FLEET_RELIABILITY, LEAD_YEARS, SERVICE);

  private static final List<Element> YOKE_KEYS = join(without(ROLLER_KEYS, List.of(ROLLER_SIZE, TORQUE_LIMIT)),
      List.of(RING_BORE, RING_TOLERANCE, RING_SEAT, INNER_RING, RING_HOLE));

  private static final List<Element> STUD_JOB =
      join(HEAD_KEYS, ROLLER_KEYS, STUD_KEYS, MEMBER_KEYS, NUT_KEYS, DUTY_KEYS, FLEET_KEYS);
  private static final List<Element> FORK_JOB = join(HEAD_KEYS, YOKE_KEYS, PIN_KEYS, FORK_KEYS, DUTY_KEYS, FLEET_KEYS);

  /**
   * Keys that stand together or not at all.
   *
   * @param keys the keys; the first names the group
   */
  record Together(List<Element> keys) {}

  /**
   * Keys of which either one or the other are needed.
   *
   * @param one the first
   * @param others what is needed without it
   */
  record Either(Element one, List<Element> others) {}

  private static final List<Together> STUD_GROUPS = List.of(
      new Together(List.of(Z, DWE, LWE, ROLLERS_FROM, DPW, DPW_FROM, CLEARANCE, CLEARANCE_FROM, PROFILE, PROFILE_FROM)),
      new Together(List.of(TURNING, STANDING)), new Together(List.of(ENGAGED, NUT_SHEAR)), new Together(List.of(NUT_HEIGHT,
          WASHER)),
      new Together(List.of(STUD_LENGTH, THREAD_LENGTH)), new Together(List.of(FACE_OUTER, FACE_INNER)),
      new Together(List.of(OPEN_AXIAL, OPEN_HEAD, OPEN_THREAD, OPEN_RADIAL)), new Together(List.of(LOAD, ROTATION)),
      new Together(List.of(PLACES, FLEET_RELIABILITY, LEAD_YEARS, SERVICE)), STUD_MATERIAL.together(), MEMBER_MATERIAL.together(),
      new Together(STUD_ENDURANCE.keys()));
  private static final List<Together> FORK_GROUPS = List.of(STUD_GROUPS.get(0), STUD_GROUPS.get(1), STUD_GROUPS.get(7),
      STUD_GROUPS.get(8), PIN_MATERIAL.together(), FORK_MATERIAL.together(), new Together(PIN_ENDURANCE.keys()));
  private static final List<Either> STUD_CHOICES = List.of(
      new Either(ROLLER_SIZE, List.of(OUTSIDE, WIDTH, STUD, STUD_TOLERANCE, STUD_THREAD, FLANGE, GAP)),
      new Either(STEPS, List.of(LOAD)), STUD_MATERIAL.either(), MEMBER_MATERIAL.either());
  private static final List<Either> FORK_CHOICES = List.of(new Either(STEPS, List.of(LOAD)),
      PIN_MATERIAL.either(), FORK_MATERIAL.either());

  static List<Together> groups(boolean inFork) {
    return inFork ? FORK_GROUPS : STUD_GROUPS;
  }

  static List<Either> choices(boolean inFork) {
    return inFork ? FORK_CHOICES : STUD_CHOICES;
  }

  /** The keys of a job in the order in which they are written. */
  static List<Element> of(boolean inFork) {
    return inFork ? FORK_JOB : STUD_JOB;
  }

  /** The keys that describe the roller alone, in a list of rollers as in a job. */
  static List<Element> ofRoller(boolean inFork) {
    return inFork ? YOKE_KEYS : join(ROLLER_KEYS, STUD_KEYS);
  }

  @SafeVarargs
  private static List<Element> join(List<? extends Element>... parts) {
    List<Element> all = new ArrayList<>();
    for (List<? extends Element> part : parts) {
      all.addAll(part);
    }
    return List.copyOf(all);
  }

  private static List<Element> without(List<Element> all, List<Element> left) {
    return all.stream().filter(Predicate.not(left::contains)).toList();
  }

  private static <T> Map<String, T> ordered(String first, T one, String second, T two) {
    Map<String, T> map = new LinkedHashMap<>();
    map.put(first, one);
    map.put(second, two);
    return map;
  }

  private static <T> Map<String, T> ordered(String first, T one, String second, T two, String third, T three) {
    Map<String, T> map = ordered(first, one, second, two);
    map.put(third, three);
    return map;
  }

  private static String tolerance(String text) {
    String stripped = text.strip();
    if (stripped.isEmpty() || Character.isLetter(stripped.charAt(0))) {
      ToleranceClass.of(stripped);
    }
    return stripped;
  }

  /** The shortest text by which the table gives this material back; empty if it is not one of the table's. */
  static Optional<String> materialName(Material material) {
    return Material.all().stream().filter(material::equals).findFirst().map(known -> {
      boolean single = Material.all().stream().filter(other -> other.name().equals(known.name())).count() == 1;
      return single ? known.name() : known.name() + " | " + known.condition();
    });
  }

  private static Contamination contamination(String text) {
    String stripped = text.strip();
    if (stripped.startsWith("eC ")) {
      return Contamination.ofFactor(Kind.number(stripped.substring(3)));
    }
    for (Cleanliness cleanliness : Cleanliness.values()) {
      if (stripped.equals("figure " + cleanliness.figure())) {
        return Contamination.of(cleanliness);
      }
    }
    int at = stripped.indexOf(" at ");
    return at < 0
        ? Contamination.of(LEVELS.read().apply(stripped))
        : Contamination.of(LEVELS.read().apply(stripped.substring(0, at)), Kind.number(stripped.substring(at + 4)));
  }

  private static String contaminationText(Contamination contamination, MeasureSystem system) {
    if (contamination instanceof Contamination.Given given) {
      return "eC " + Kind.exact(given.eC());
    }
    if (contamination instanceof Contamination.OfEquation equation) {
      return "figure " + equation.cleanliness().figure();
    }
    Contamination.OfLevel level = (Contamination.OfLevel) contamination;
    return LEVELS.write().text(level.level(), system) + (level.position() == 0 ? "" : " at " + Kind.exact(level.position()));
  }

  private static String seriesName(RollerSeries series) {
    return switch (series) {
      case METRIC -> "metric";
      case INCH_STANDARD_STUD -> "inch";
      case INCH_HEAVY_STUD -> "inch heavy stud";
    };
  }

  private static RollerSize size(String text) {
    String stripped = text.strip();
    RollerSeries found = null;
    for (RollerSeries series : RollerSeries.values()) {
      boolean longer = found == null || seriesName(series).length() > seriesName(found).length();
      if (stripped.startsWith(seriesName(series) + " ") && longer) {
        found = series;
      }
    }
    if (found == null) {
      throw new InputException("size", "'" + Fault.shortened(text) + "'", SIZE.accepts(), "the series is not named first");
    }
    return found.size(Length.parse(stripped.substring(seriesName(found).length()).strip()));
  }

  private static HousingShape shape(String text) {
    String stripped = text.strip();
    if (stripped.equals("wide plate") || stripped.equals("wide")) {
      return HousingShape.wide();
    }
    for (Map.Entry<HousingShape.Kind, String> kind : SHAPES.entrySet()) {
      if (stripped.startsWith(kind.getValue() + " ")) {
        return new HousingShape(kind.getKey(), Length.parse(stripped.substring(kind.getValue().length()).strip()));
      }
    }
    throw new InputException("shape", "'" + Fault.shortened(text) + "'", SHAPE.accepts(), "it is none of them");
  }

  private static ContactSurface track(String text) {
    String stripped = text.strip();
    if (stripped.equals("flat")) {
      return ContactSurface.flat();
    }
    int blank = stripped.indexOf(' ');
    String word = blank < 0 ? stripped : stripped.substring(0, blank);
    String rest = blank < 0 ? "" : stripped.substring(blank + 1).strip();
    return switch (word) {
      case "cam" -> ContactSurface.cam(Length.parse(rest));
      case "inside" -> ContactSurface.concave(Length.parse(rest));
      case "rail" -> ContactSurface.rail(Length.parse(rest));
      case "curvatures" -> {
        String[] both = rest.split(",", -1);
        if (both.length != 2) {
          throw new InputException("curvatures", "'" + Fault.shortened(text) + "'", "two numbers in 1/mm with a comma between",
              "along and across the track");
        }
        yield new ContactSurface(Kind.number(both[0].strip()), Kind.number(both[1].strip()));
      }
      default -> throw new InputException("track", "'" + Fault.shortened(text) + "'", TRACK.accepts(), "it is none of them");
    };
  }

  private static String trackText(ContactSurface track, MeasureSystem system) {
    if (track.equals(ContactSurface.flat())) {
      return "flat";
    }
    double radius = 1 / (track.along() == 0 ? track.across() : track.along());
    String length = Kind.LENGTH.write().text(new Length(Math.abs(radius)), system);
    String text = (track.along() == 0 ? "rail " : radius > 0 ? "cam " : "inside ") + length;
    return track(text).equals(track) ? text : "curvatures " + Kind.exact(track.along()) + ", " + Kind.exact(track.across());
  }

  private static Kind<Optional<Port>> feed() {
    Map<String, Optional<Port>> ports = new LinkedHashMap<>();
    ports.put("head end", Optional.of(Port.HEAD));
    ports.put("thread end", Optional.of(Port.THREAD_END));
    ports.put("radial hole", Optional.of(Port.RADIAL));
    ports.put("none, lubricated for life", Optional.empty());
    return Kind.words("port", ports);
  }

  private static List<String> conditions(String factor) {
    return TradeFactor.all().stream().filter(f -> f.factor().equals(factor)).map(TradeFactor::condition).toList();
  }

  private static Kind<TradeFactor> trade(String factor) {
    return new Kind<>("condition", false,
        () -> "the beginning of just one of: " + String.join("; ", conditions(factor)), List.of(),
        text -> TradeFactor.of(factor, text.strip()), (value, system) -> value.condition());
  }

  /** The keys of a material: a name of the table, or values of one's own. */
  record Materials(String section, String part, String example) {
    Key<Material> name() {
      return optional(section + ".material", MATERIAL, "material of the " + part, "its values are stated", example);
    }

    Key<String> ownName() {
      return optional(section + ".own-material.name", Kind.NAME, "name of a material whose values are stated here",
          "the material is one of the table", "cast steel of the works (invented)");
    }

    Key<String> ownCondition() {
      return optional(section + ".own-material.condition", Kind.NAME, "its condition", "none", "as cast");
    }

    Key<MaterialGroup> group() {
      return optional(section + ".own-material.group", Kind.words("group", MaterialGroup.values()), "what it is",
          "with its name", "steel");
    }

    Key<Ductility> ductility() {
      return optional(section + ".own-material.ductility", Kind.words("ductility", Ductility.values()),
          "how it fails", "with its name", "ductile");
    }

    Key<Stress> modulus() {
      return optional(section + ".own-material.elastic-modulus", STRESS, "elastic modulus E", "with its name", "210000 MPa");
    }

    Key<Double> poisson() {
      return optional(section + ".own-material.poisson-ratio", Kind.NUMBER, "Poisson's ratio ν", "with its name", "0.3");
    }

    Key<ThermalExpansion> expansion() {
      return optional(section + ".own-material.thermal-expansion", EXPANSION, "coefficient of thermal expansion α",
          "with its name",
          "11.5 µm/(m·K)");
    }

    Key<Double> density() {
      return optional(section + ".own-material.density-kg-m3", Kind.NUMBER, "density in kg/m³", "not known", "7850");
    }

    Key<Stress> yieldStrength() {
      return optional(section + ".own-material.yield-strength", STRESS, "yield strength", "not known", "370 MPa");
    }

    Key<Stress> tensile() {
      return optional(section + ".own-material.tensile-strength", STRESS, "tensile strength", "not known", "630 MPa");
    }

    Key<String> source() {
      return optional(section + ".own-material.source", Kind.NAME, "where the values come from", "with its name",
          "certificate of the batch (invented)");
    }

    Together together() {
      return new Together(List.of(ownName(), group(), ductility(), modulus(), poisson(), expansion(), source()));
    }

    Either either() {
      return new Either(ownName(), List.of(name()));
    }

    List<Element> keys() {
      return List.of(name(), ownName(), ownCondition(), group(), ductility(), modulus(), poisson(), expansion(), density(),
          yieldStrength(),
          tensile(), source());
    }
  }

  /** What a stud or pin endures. */
  record Endurance(String section) {
    Key<Stress> endurance() {
      return optional(section + ".endurance.limit", STRESS, "endurance limit of the finished part, fully reversed",
          "not known: fatigue is compared with one catalogue's nominal stress only", "280 MPa");
    }

    Key<Stress> tensile() {
      return optional(section + ".endurance.tensile-strength", STRESS, "its tensile strength", "with the endurance limit",
          "900 MPa");
    }

    Key<Stress> yieldStrength() {
      return optional(section + ".endurance.yield-strength", STRESS, "its yield strength", "with the endurance limit", "590 MPa");
    }

    Key<Double> notch() {
      return optional(section + ".endurance.notch-factor", Kind.NUMBER, "fatigue notch factor Kf at the mouth of the seat",
          "with the endurance limit", "2.5");
    }

    List<Element> keys() {
      return List.of(endurance(), tensile(), yieldStrength(), notch());
    }
  }
}
