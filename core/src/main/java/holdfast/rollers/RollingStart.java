// SPDX-License-Identifier: Apache-2.0
package holdfast.rollers;

import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.Mass;
import holdfast.quantity.Speed;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * The start of a roller by its track: from rest to a speed over a distance, with constant acceleration. A load that is too
 * light lets the ring slide.
 *
 * @param outsideDiameter outside diameter D of the outer ring
 * @param ringBore bore of the outer ring
 * @param ringMass mass of the outer ring
 * @param speed speed along the track that is reached
 * @param distance distance along the track over which it is reached
 * @param rimForce force that friction must bring
 */
public record RollingStart(
    Length outsideDiameter, Length ringBore, Mass ringMass, Speed speed, Length distance, Force rimForce)
    implements Traced, Serializable {
  private static final SourceRef RING = SourceRef.derived("moment of inertia of a hollow cylinder, constant acceleration");

  public RollingStart {
    Objects.requireNonNull(outsideDiameter, "outsideDiameter");
    Objects.requireNonNull(ringBore, "ringBore");
    Objects.requireNonNull(ringMass, "ringMass");
    Objects.requireNonNull(speed, "speed");
    Objects.requireNonNull(distance, "distance");
    Objects.requireNonNull(rimForce, "rimForce");
  }

  /**
   * A start.
   *
   * @param outsideDiameter outside diameter D of the outer ring, over 0
   * @param ringBore bore of the outer ring, from 0 to below D
   * @param ringMass mass of the outer ring, over 0
   * @param speed speed along the track that is reached, 0 or more
   * @param distance distance along the track over which it is reached, over 0
   * @return the start
   * @throws InputException if an argument is outside its range
   */
  public static RollingStart of(Length outsideDiameter, Length ringBore, Mass ringMass, Speed speed, Length distance) {
    Objects.requireNonNull(outsideDiameter, "outsideDiameter");
    Objects.requireNonNull(ringBore, "ringBore");
    Objects.requireNonNull(ringMass, "ringMass");
    Objects.requireNonNull(speed, "speed");
    Objects.requireNonNull(distance, "distance");
    double force =
        RingAccelerationKernel.rimForce(
            ringMass.base(), outsideDiameter.mm(), ringBore.mm(), speed.mmPerS(), distance.mm());
    return new RollingStart(outsideDiameter, ringBore, ringMass, speed, distance, new Force(force));
  }

  /**
   * Least load on the track under which the ring rolls from the first moment.
   *
   * @param friction coefficient of friction between track and ring, over 0
   * @return load
   * @throws InputException if the friction is not above zero
   */
  public Force leastLoad(double friction) {
    return new Force(RingAccelerationKernel.leastLoad(rimForce.newton(), friction));
  }

  @Override
  public Derivation explain() {
    return Derivation.of("Force that starts a ring")
        .step("T", "force at the rim", "m/2·(1 + (d/D)²)·v²/(2·s)", rimForce.newton(), "N", RING, "m = " + ringMass,
            "d = " + ringBore, "D = " + outsideDiameter, "v = " + speed, "s = " + distance)
        .build();
  }

  @Override
  public List<Warning> warnings() {
    return List.of(
        new Warning("drag-left-out", "drag of grease, seals and rolling elements is left out: more load is needed", RING));
  }

  /** For example {@code "1.5 N at the rim"}. */
  @Override
  public String toString() {
    return rimForce + " at the rim";
  }
}
