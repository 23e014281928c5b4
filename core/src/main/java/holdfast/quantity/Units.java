// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

import static holdfast.quantity.KnownUnits.*;

import java.util.Objects;

/**
 * Factories of quantities, named by unit symbol, for static import: {@code import static holdfast.quantity.Units.*;}
 * then {@code mm(25)}, {@code kN(2.1)}, {@code inch("5/8")}.
 */
public final class Units {
  private Units() {}

  /**
   * Makes a quantity.
   *
   * @param value number of units (millimetre)
   * @return the length
   * @throws InputException if the value is not finite
   */
  public static Length mm(double value) {
    return MM.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (micrometre)
   * @return the length
   * @throws InputException if the value is not finite
   */
  public static Length um(double value) {
    return UM.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (metre)
   * @return the length
   * @throws InputException if the value is not finite
   */
  public static Length m(double value) {
    return M.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (inch)
   * @return the length
   * @throws InputException if the value is not finite
   */
  public static Length inch(double value) {
    return INCH.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (thousandth of an inch)
   * @return the length
   * @throws InputException if the value is not finite
   */
  public static Length thou(double value) {
    return THOU.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (tenth of a thou, 0.0001 in)
   * @return the length
   * @throws InputException if the value is not finite
   */
  public static Length tenths(double value) {
    return TENTH.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (foot)
   * @return the length
   * @throws InputException if the value is not finite
   */
  public static Length ft(double value) {
    return FT.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (square millimetre)
   * @return the area
   * @throws InputException if the value is not finite
   */
  public static Area mm2(double value) {
    return MM2.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (newton)
   * @return the force
   * @throws InputException if the value is not finite
   */
  public static Force N(double value) {
    return N.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (kilonewton)
   * @return the force
   * @throws InputException if the value is not finite
   */
  public static Force kN(double value) {
    return KN.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (pound-force)
   * @return the force
   * @throws InputException if the value is not finite
   */
  public static Force lbf(double value) {
    return LBF.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (kip, 1000 lbf)
   * @return the force
   * @throws InputException if the value is not finite
   */
  public static Force kip(double value) {
    return KIP.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (newton metre)
   * @return the torque
   * @throws InputException if the value is not finite
   */
  public static Torque Nm(double value) {
    return N_M.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (newton millimetre)
   * @return the torque
   * @throws InputException if the value is not finite
   */
  public static Torque Nmm(double value) {
    return N_MM.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (pound-force inch)
   * @return the torque
   * @throws InputException if the value is not finite
   */
  public static Torque inLbf(double value) {
    return LBF_IN.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (pound-force foot)
   * @return the torque
   * @throws InputException if the value is not finite
   */
  public static Torque ftLbf(double value) {
    return LBF_FT.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (megapascal, N/mm²)
   * @return the stress
   * @throws InputException if the value is not finite
   */
  public static Stress MPa(double value) {
    return MPA.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (gigapascal)
   * @return the stress
   * @throws InputException if the value is not finite
   */
  public static Stress GPa(double value) {
    return GPA.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (pound-force per square inch)
   * @return the stress
   * @throws InputException if the value is not finite
   */
  public static Stress psi(double value) {
    return PSI.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (kip per square inch)
   * @return the stress
   * @throws InputException if the value is not finite
   */
  public static Stress ksi(double value) {
    return KSI.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (radian)
   * @return the angle
   * @throws InputException if the value is not finite
   */
  public static Angle rad(double value) {
    return RAD.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (milliradian)
   * @return the angle
   * @throws InputException if the value is not finite
   */
  public static Angle mrad(double value) {
    return MRAD.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (degree)
   * @return the angle
   * @throws InputException if the value is not finite
   */
  public static Angle deg(double value) {
    return DEG.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (kelvin)
   * @return the temperature difference
   * @throws InputException if the value is not finite
   */
  public static TemperatureDifference kelvin(double value) {
    return K.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (revolution per minute)
   * @return the rotational speed
   * @throws InputException if the value is not finite
   */
  public static RotationalSpeed rpm(double value) {
    return RPM.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (metre per second)
   * @return the speed
   * @throws InputException if the value is not finite
   */
  public static Speed mPerS(double value) {
    return M_PER_S.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (millimetre per second)
   * @return the speed
   * @throws InputException if the value is not finite
   */
  public static Speed mmPerS(double value) {
    return MM_PER_S.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (foot per minute)
   * @return the speed
   * @throws InputException if the value is not finite
   */
  public static Speed ftPerMin(double value) {
    return FT_PER_MIN.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (square millimetre per second)
   * @return the kinematic viscosity
   * @throws InputException if the value is not finite
   */
  public static KinematicViscosity mm2PerS(double value) {
    return MM2_PER_S.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (gram)
   * @return the mass
   * @throws InputException if the value is not finite
   */
  public static Mass g(double value) {
    return G.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (joule)
   * @return the work
   * @throws InputException if the value is not finite
   */
  public static Work joule(double value) {
    return J.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (micrometre per metre and kelvin)
   * @return the coefficient of thermal expansion
   * @throws InputException if the value is not finite
   */
  public static ThermalExpansion umPerMK(double value) {
    return UM_PER_M_K.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (hour)
   * @return the operating time
   * @throws InputException if the value is not finite
   */
  public static OperatingTime hours(double value) {
    return H.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (degree Celsius)
   * @return the temperature
   * @throws InputException if the value is not finite
   */
  public static Temperature degC(double value) {
    return DEG_C.of(value);
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units (degree Fahrenheit)
   * @return the temperature
   * @throws InputException if the value is not finite
   */
  public static Temperature degF(double value) {
    return DEG_F.of(value);
  }

  /**
   * Reads inches as the shop writes them.
   *
   * @param text {@code "5/8"}, {@code "1-1/2"}, {@code "1 1/2"} or {@code ".6250"}; no unit
   * @return the length
   * @throws InputException if the text is not such a number
   */
  public static Length inch(String text) {
    Objects.requireNonNull(text, "text");
    return INCH.of(UnitParser.number(text, "size in inches"));
  }
}
