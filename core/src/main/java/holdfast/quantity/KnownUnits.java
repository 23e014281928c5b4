// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

import holdfast.tables.Source;
import java.util.ArrayList;
import java.util.List;

/**
 * The units in which quantities are read and printed, for {@code length.in(MM)} and {@code force.text(KN, 1)}.
 *
 * <p>The factors are exact by definition (inch 25.4 mm, pound 0.45359237 kg, standard gravity 9.80665 m/s²).
 */
@Source(document = "NIST SP 811", locator = "Appendix B.8")
public final class KnownUnits {
  private KnownUnits() {}

  /** Millimetre. */
  public static final Unit<Length> MM = Unit.of("mm", 1, Length::new);
  /** Micrometre. */
  public static final Unit<Length> UM = Unit.of("µm", 1e-3, Length::new, "um", "μm");
  /** Centimetre. */
  public static final Unit<Length> CM = Unit.of("cm", 10, Length::new);
  /** Metre. */
  public static final Unit<Length> M = Unit.of("m", 1000, Length::new);
  /** Inch. */
  public static final Unit<Length> INCH = Unit.of("in", 25.4, Length::new, "inch", "\"");
  /** Thousandth of an inch. */
  public static final Unit<Length> THOU = Unit.of("thou", 0.0254, Length::new, "mil");
  /** Tenth of a thou, 0.0001 in. */
  public static final Unit<Length> TENTH = Unit.of("tenth", 0.00254, Length::new, "tenths");
  /** Microinch. */
  public static final Unit<Length> UIN = Unit.of("µin", 25.4e-6, Length::new, "uin", "μin");
  /** Foot. */
  public static final Unit<Length> FT = Unit.of("ft", 304.8, Length::new);

  static final List<Unit<Length>> LENGTHS = List.of(MM, UM, CM, M, INCH, THOU, TENTH, UIN, FT);

  /** Square millimetre. */
  public static final Unit<Area> MM2 = Unit.of("mm²", 1, Area::new, "mm2");
  /** Square centimetre. */
  public static final Unit<Area> CM2 = Unit.of("cm²", 100, Area::new, "cm2");
  /** Square inch. */
  public static final Unit<Area> IN2 = Unit.of("in²", 645.16, Area::new, "in2");

  static final List<Unit<Area>> AREAS = List.of(MM2, CM2, IN2);

  /** Newton. */
  public static final Unit<Force> N = Unit.of("N", 1, Force::new);
  /** Kilonewton. */
  public static final Unit<Force> KN = Unit.of("kN", 1e3, Force::new);
  /** Meganewton. */
  public static final Unit<Force> MN = Unit.of("MN", 1e6, Force::new);
  /** Pound-force. */
  public static final Unit<Force> LBF = Unit.of("lbf", 4.4482216152605, Force::new);
  /** Kip, 1000 lbf. */
  public static final Unit<Force> KIP = Unit.of("kip", 4448.2216152605, Force::new);
  /** US ton-force, 2000 lbf. */
  public static final Unit<Force> TONF = Unit.of("tonf", 8896.443230521, Force::new);
  /** Kilogram-force. */
  public static final Unit<Force> KGF = Unit.of("kgf", 9.80665, Force::new, "kp");

  static final List<Unit<Force>> FORCES = List.of(N, KN, MN, LBF, KIP, TONF, KGF);

  /** The ways in which charts write pound times length: either first, lb for lbf, with any sign between. */
  private static String[] pound(String length) {
    List<String> names = new ArrayList<>(List.of(length + "Lbf"));
    for (String pound : new String[] {"lbf", "lb", "lbs"}) {
      for (String sign : new String[] {"·", " ", "-", "*", ".", ""}) {
        names.add(pound + sign + length);
        names.add(length + sign + pound);
      }
    }
    return names.toArray(new String[0]);
  }

  /** Newton metre. */
  public static final Unit<Torque> N_M = Unit.of("N·m", 1e3, Torque::new, "Nm", "N m", "N*m", "N-m", "N.m");
  /** Newton millimetre. */
  public static final Unit<Torque> N_MM = Unit.of("N·mm", 1, Torque::new, "Nmm", "N mm", "N*mm", "N-mm", "N.mm");
  /** Kilonewton metre. */
  public static final Unit<Torque> KN_M = Unit.of("kN·m", 1e6, Torque::new, "kNm", "kN m");
  /** Pound-force inch. */
  public static final Unit<Torque> LBF_IN =
      Unit.of("lbf·in", 112.9848290276167, Torque::new, pound("in"));
  /** Pound-force foot. */
  public static final Unit<Torque> LBF_FT =
      Unit.of("lbf·ft", 1355.8179483314004, Torque::new, pound("ft"));
  /** Ounce-force inch. */
  public static final Unit<Torque> OZF_IN = Unit.of("ozf·in", 112.9848290276167 / 16, Torque::new, "ozf in", "inOzf");
  /** Kilogram-force metre. */
  public static final Unit<Torque> KGF_M = Unit.of("kgf·m", 9806.65, Torque::new, "kgf m", "kgfm");

  static final List<Unit<Torque>> TORQUES = List.of(N_M, N_MM, KN_M, LBF_IN, LBF_FT, OZF_IN, KGF_M);

  /** Megapascal, N/mm². */
  public static final Unit<Stress> MPA = Unit.of("MPa", 1, Stress::new, "N/mm²", "N/mm2");
  /** Pascal. */
  public static final Unit<Stress> PA = Unit.of("Pa", 1e-6, Stress::new);
  /** Kilopascal. */
  public static final Unit<Stress> KPA = Unit.of("kPa", 1e-3, Stress::new);
  /** Gigapascal. */
  public static final Unit<Stress> GPA = Unit.of("GPa", 1e3, Stress::new);
  /** Bar. */
  public static final Unit<Stress> BAR = Unit.of("bar", 0.1, Stress::new);
  /** Pound-force per square inch. */
  public static final Unit<Stress> PSI =
      Unit.of("psi", 4.4482216152605 / 645.16, Stress::new, "lbf/in²", "lbf/in2");
  /** Kip per square inch. */
  public static final Unit<Stress> KSI = Unit.of("ksi", 4448.2216152605 / 645.16, Stress::new);
  /** Kilogram-force per square millimetre. */
  public static final Unit<Stress> KGF_PER_MM2 = Unit.of("kgf/mm²", 9.80665, Stress::new, "kgf/mm2");

  static final List<Unit<Stress>> STRESSES = List.of(MPA, PA, KPA, GPA, BAR, PSI, KSI, KGF_PER_MM2);

  /** Radian. */
  public static final Unit<Angle> RAD = Unit.of("rad", 1, Angle::new);
  /** Milliradian. */
  public static final Unit<Angle> MRAD = Unit.of("mrad", 1e-3, Angle::new);
  /** Degree. */
  public static final Unit<Angle> DEG = Unit.of("°", Math.PI / 180, Angle::new, "deg");
  /** Minute of arc. */
  public static final Unit<Angle> ARCMIN = Unit.of("′", Math.PI / 10800, Angle::new, "arcmin", "'");

  static final List<Unit<Angle>> ANGLES = List.of(RAD, MRAD, DEG, ARCMIN);

  /** Kelvin. */
  public static final Unit<TemperatureDifference> K = Unit.of("K", 1, TemperatureDifference::new);
  /** Fahrenheit degree as a difference. */
  public static final Unit<TemperatureDifference> DEG_F_DIFFERENCE =
      Unit.of("Δ°F", 5.0 / 9.0, TemperatureDifference::new, "F deg");

  static final List<Unit<TemperatureDifference>> TEMPERATURE_DIFFERENCES = List.of(K, DEG_F_DIFFERENCE);

  /** Revolution per minute. */
  public static final Unit<RotationalSpeed> RPM = Unit.of("rpm", 1, RotationalSpeed::new, "r/min", "1/min", "min⁻¹");
  /** Revolution per second. */
  public static final Unit<RotationalSpeed> RPS = Unit.of("1/s", 60, RotationalSpeed::new, "r/s", "s⁻¹");
  /** Radian per second. */
  public static final Unit<RotationalSpeed> RAD_PER_S = Unit.of("rad/s", 30 / Math.PI, RotationalSpeed::new);

  static final List<Unit<RotationalSpeed>> ROTATIONAL_SPEEDS = List.of(RPM, RPS, RAD_PER_S);

  /** Metre per second. */
  public static final Unit<Speed> M_PER_S = Unit.of("m/s", 1e3, Speed::new);
  /** Millimetre per second. */
  public static final Unit<Speed> MM_PER_S = Unit.of("mm/s", 1, Speed::new);
  /** Metre per minute. */
  public static final Unit<Speed> M_PER_MIN = Unit.of("m/min", 1000.0 / 60, Speed::new);
  /** Foot per minute. */
  public static final Unit<Speed> FT_PER_MIN = Unit.of("ft/min", 5.08, Speed::new, "fpm");

  static final List<Unit<Speed>> SPEEDS = List.of(M_PER_S, MM_PER_S, M_PER_MIN, FT_PER_MIN);

  /** Square millimetre per second. */
  public static final Unit<KinematicViscosity> MM2_PER_S = Unit.of("mm²/s", 1, KinematicViscosity::new, "mm2/s", "cSt");
  /** Stokes. */
  public static final Unit<KinematicViscosity> STOKES = Unit.of("St", 100, KinematicViscosity::new);

  static final List<Unit<KinematicViscosity>> KINEMATIC_VISCOSITIES = List.of(MM2_PER_S, STOKES);

  /** Gram. */
  public static final Unit<Mass> G = Unit.of("g", 1, Mass::new);
  /** Kilogram. */
  public static final Unit<Mass> KG = Unit.of("kg", 1e3, Mass::new);
  /** Ounce (avoirdupois). */
  public static final Unit<Mass> OZ = Unit.of("oz", 28.349523125, Mass::new);
  /** Pound (avoirdupois). */
  public static final Unit<Mass> LB = Unit.of("lb", 453.59237, Mass::new, "lbm");

  static final List<Unit<Mass>> MASSES = List.of(G, KG, OZ, LB);

  /** Joule. */
  public static final Unit<Work> J = Unit.of("J", 1e3, Work::new);
  /** Kilojoule. */
  public static final Unit<Work> KJ = Unit.of("kJ", 1e6, Work::new);
  /** Foot pound-force. */
  public static final Unit<Work> FT_LBF = Unit.of("ft·lbf", 1355.8179483314004, Work::new, "ft lbf");

  static final List<Unit<Work>> WORKS = List.of(J, KJ, FT_LBF);

  /** Kilonewton per millimetre. */
  public static final Unit<Stiffness> KN_PER_MM = Unit.of("kN/mm", 1e3, Stiffness::new, "N/µm", "N/um");
  /** Newton per millimetre. */
  public static final Unit<Stiffness> N_PER_MM = Unit.of("N/mm", 1, Stiffness::new);
  /** Pound-force per inch. */
  public static final Unit<Stiffness> LBF_PER_IN = Unit.of("lbf/in", 4.4482216152605 / 25.4, Stiffness::new);

  static final List<Unit<Stiffness>> STIFFNESSES = List.of(KN_PER_MM, N_PER_MM, LBF_PER_IN);

  /** Micrometre per metre and kelvin. */
  public static final Unit<ThermalExpansion> UM_PER_M_K =
      Unit.of("µm/(m·K)", 1e-6, ThermalExpansion::new, "um/(m·K)", "um/(m*K)", "1e-6/K", "10⁻⁶/K");
  /** Per kelvin. */
  public static final Unit<ThermalExpansion> PER_K = Unit.of("1/K", 1, ThermalExpansion::new, "K⁻¹");

  static final List<Unit<ThermalExpansion>> THERMAL_EXPANSIONS = List.of(UM_PER_M_K, PER_K);

  /** Hour. */
  public static final Unit<OperatingTime> H = Unit.of("h", 1, OperatingTime::new, "hr");
  /** Minute. */
  public static final Unit<OperatingTime> MIN = Unit.of("min", 1.0 / 60, OperatingTime::new);
  /** Day. */
  public static final Unit<OperatingTime> DAY = Unit.of("d", 24, OperatingTime::new);

  static final List<Unit<OperatingTime>> OPERATING_TIMES = List.of(H, MIN, DAY);

  /** Degree Celsius. */
  public static final Unit<Temperature> DEG_C = Unit.of("°C", 1, Temperature::new, "degC", "C");
  /** Degree Fahrenheit; °C = (°F - 32) · 5/9. */
  public static final Unit<Temperature> DEG_F = Unit.withOffset("°F", 5.0 / 9.0, -32, Temperature::new, "degF", "F");
  /** Kelvin as a temperature; °C = K - 273.15. */
  public static final Unit<Temperature> KELVIN = Unit.withOffset("K", 1, -273.15, Temperature::new);

  static final List<Unit<Temperature>> TEMPERATURES = List.of(DEG_C, DEG_F, KELVIN);

  private static final List<List<? extends Unit<?>>> KINDS = List.of(
      LENGTHS, AREAS, FORCES, TORQUES, STRESSES, ANGLES, TEMPERATURE_DIFFERENCES, ROTATIONAL_SPEEDS,
      SPEEDS, KINEMATIC_VISCOSITIES, MASSES, WORKS, STIFFNESSES, THERMAL_EXPANSIONS, OPERATING_TIMES, TEMPERATURES);

  static int kindOf(Unit<?> unit) {
    for (int kind = 0; kind < KINDS.size(); kind++) {
      if (KINDS.get(kind).contains(unit)) {
        return kind;
      }
    }
    throw new IllegalStateException("a unit without a kind: " + unit);
  }

  static Unit<?> unit(int kind, String symbol) {
    if (kind >= 0 && kind < KINDS.size()) {
      for (Unit<?> unit : KINDS.get(kind)) {
        if (unit.symbol().equals(symbol)) {
          return unit;
        }
      }
    }
    throw new InputException("unit in a stream", "'" + symbol + "'", "one of the known units", "no other can be written");
  }
}
