// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Check;
import holdfast.quantity.KinematicViscosity;
import holdfast.quantity.Numbers;
import holdfast.quantity.PlainText;
import holdfast.quantity.Temperature;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import holdfast.trace.Derivation;
import holdfast.trace.Message;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * A lubricating oil, or the base oil of a grease, known by its viscosity at two temperatures.
 *
 * @param name what it is called
 * @param first first temperature
 * @param atFirst viscosity there
 * @param second second temperature
 * @param atSecond viscosity there
 */
public record Oil(String name, Temperature first, KinematicViscosity atFirst, Temperature second, KinematicViscosity atSecond)
    implements Serializable {
  private static final double T40 = 40;
  private static final double T100 = 100;

  // The kernel refuses impossible pairs.
  public Oil {
    PlainText.name(name, "name of the oil");
    Objects.requireNonNull(first, "first");
    Objects.requireNonNull(atFirst, "atFirst");
    Objects.requireNonNull(second, "second");
    Objects.requireNonNull(atSecond, "atSecond");
    ViscosityKernel.atTemperature(
        first.celsius(), atFirst.mm2PerS(), second.celsius(), atSecond.mm2PerS(), first.celsius());
  }

  /**
   * An oil of two measured viscosities.
   *
   * @param first first temperature
   * @param atFirst viscosity there
   * @param second second temperature
   * @param atSecond viscosity there, lower at the higher temperature
   * @return the oil
   * @throws holdfast.quantity.InputException if the viscosities are impossible
   */
  public static Oil ofTwoPoints(
      Temperature first, KinematicViscosity atFirst, Temperature second, KinematicViscosity atSecond) {
    return new Oil("oil", first, atFirst, second, atSecond);
  }

  /**
   * An oil of an ISO viscosity grade, with the mid viscosity of the grade at 40 °C.
   *
   * @param grade for example 68 for ISO VG 68
   * @param viscosityIndex viscosity index VI, from 0 to 250; 95 is usual for mineral oil
   * @return the oil
   * @throws holdfast.quantity.InputException if there is no such grade or the index is outside its range
   */
  public static Oil isoVg(int grade, double viscosityIndex) {
    Table table = TableSet.bundled().table("bearings/iso-3448/1992/viscosity-grades");
    int row = table.find("grade", Integer.toString(grade));
    if (row < 0) {
      StringBuilder grades = new StringBuilder();
      for (int i = 0; i < table.size(); i++) {
        grades.append(i == 0 ? "" : ", ").append(table.text(i, "grade"));
      }
      throw Refusal.of("ISO viscosity grade", grade, "", "one of " + grades, "ISO 3448");
    }
    return named("ISO VG " + grade + ", VI " + Numbers.significant(viscosityIndex, 4), table.number(row, "mid"), viscosityIndex);
  }

  /**
   * An oil of known viscosity at 40 °C and viscosity index.
   *
   * @param at40 viscosity at 40 °C
   * @param viscosityIndex viscosity index VI, from 0 to 250
   * @return the oil
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static Oil ofIndex(KinematicViscosity at40, double viscosityIndex) {
    Objects.requireNonNull(at40, "at40");
    return named(at40 + " at 40 °C, VI " + Numbers.significant(viscosityIndex, 4), at40.mm2PerS(), viscosityIndex);
  }

  private static Oil named(String name, double at40, double index) {
    double at100 = ViscosityKernel.at100(at40, index);
    return new Oil(name, new Temperature(T40), new KinematicViscosity(at40), new Temperature(T100),
        new KinematicViscosity(at100));
  }

  /**
   * Viscosity at a temperature.
   *
   * @param temperature from -60 to 250 °C
   * @return ν with its derivation
   * @throws holdfast.quantity.InputException if the temperature is outside the range
   */
  public AtTemperature at(Temperature temperature) {
    Objects.requireNonNull(temperature, "temperature");
    double nu = ViscosityKernel.atTemperature(
        first.celsius(), atFirst.mm2PerS(), second.celsius(), atSecond.mm2PerS(), temperature.celsius());
    return new AtTemperature(this, temperature, new KinematicViscosity(Check.positive(nu, "viscosity ν", "mm²/s",
        "the relation gives no viscosity at this temperature")));
  }

  /**
   * Viscosity index, if the oil is known at 40 and 100 °C.
   *
   * @return VI
   * @throws holdfast.quantity.InputException if the viscosity at 100 °C is below 2 mm²/s
   */
  public double viscosityIndex() {
    return ViscosityKernel.viscosityIndex(at(new Temperature(T40)).viscosity().mm2PerS(),
        at(new Temperature(T100)).viscosity().mm2PerS());
  }

  /** The name. */
  @Override
  public String toString() {
    return name;
  }

  /**
   * The viscosity of an oil at a temperature.
   *
   * @param oil the oil
   * @param temperature the temperature
   * @param viscosity ν there
   */
  public record AtTemperature(Oil oil, Temperature temperature, KinematicViscosity viscosity) implements Traced, Serializable {
    public AtTemperature {
      Objects.requireNonNull(oil, "oil");
      Objects.requireNonNull(temperature, "temperature");
      Objects.requireNonNull(viscosity, "viscosity");
    }

    @Override
    public Derivation explain() {
      return Derivation.of("Viscosity of " + oil + " at " + temperature)
          .step("ν", "kinematic viscosity", "log log(ν + 0.7) linear in log T", viscosity.mm2PerS(), "mm²/s",
              BearingSources.VISCOSITY, oil.atFirst + " at " + oil.first, oil.atSecond + " at " + oil.second)
          .build();
    }

    @Override
    public List<Warning> warnings() {
      return viscosity.mm2PerS() < ViscosityKernel.LEAST_VISCOSITY
          ? List.of(new Warning("viscosity-below-relation", Message.of("ν = ", viscosity,
              " is below the 2 mm²/s down to which the"
                + " relation holds"), BearingSources.VISCOSITY))
          : List.of();
    }

    /** For example {@code "23.4 mm²/s at 70 °C"}. */
    @Override
    public String toString() {
      return viscosity + " at " + temperature;
    }
  }
}
