// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

import java.util.List;
import java.util.function.Function;

/** All kinds of quantities with their units and parsers, for laws that hold for each of them. */
final class EveryUnit {
  private EveryUnit() {}

  /** A kind of quantity. */
  record Kind<Q extends Quantity<Q>>(Class<Q> type, List<Unit<Q>> units, Function<String, Q> parser) {}

  static List<Kind<?>> kinds() {
    return List.of(
        new Kind<>(Length.class, KnownUnits.LENGTHS, Length::parse),
        new Kind<>(Area.class, KnownUnits.AREAS, Area::parse),
        new Kind<>(Force.class, KnownUnits.FORCES, Force::parse),
        new Kind<>(Torque.class, KnownUnits.TORQUES, Torque::parse),
        new Kind<>(Stress.class, KnownUnits.STRESSES, Stress::parse),
        new Kind<>(Angle.class, KnownUnits.ANGLES, Angle::parse),
        new Kind<>(TemperatureDifference.class, KnownUnits.TEMPERATURE_DIFFERENCES, TemperatureDifference::parse),
        new Kind<>(RotationalSpeed.class, KnownUnits.ROTATIONAL_SPEEDS, RotationalSpeed::parse),
        new Kind<>(Speed.class, KnownUnits.SPEEDS, Speed::parse),
        new Kind<>(KinematicViscosity.class, KnownUnits.KINEMATIC_VISCOSITIES, KinematicViscosity::parse),
        new Kind<>(Mass.class, KnownUnits.MASSES, Mass::parse),
        new Kind<>(Work.class, KnownUnits.WORKS, Work::parse),
        new Kind<>(Stiffness.class, KnownUnits.STIFFNESSES, Stiffness::parse),
        new Kind<>(ThermalExpansion.class, KnownUnits.THERMAL_EXPANSIONS, ThermalExpansion::parse),
        new Kind<>(OperatingTime.class, KnownUnits.OPERATING_TIMES, OperatingTime::parse),
        new Kind<>(Temperature.class, KnownUnits.TEMPERATURES, Temperature::parse));
  }
}
