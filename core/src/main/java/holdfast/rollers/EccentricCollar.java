// SPDX-License-Identifier: Apache-2.0
package holdfast.rollers;

import holdfast.quantity.Angle;
import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Torque;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * The eccentric collar of a stud-type track roller: how far it adjusts and with which torque. Angles count from the
 * middle of the stroke, where the eccentricity lies along the track.
 *
 * @param rating basic dynamic load rating C of the roller, over 0
 * @param eccentricity distance of the axis of the roller from the axis of the collar, over 0
 */
public record EccentricCollar(Force rating, Length eccentricity) implements Traced, Serializable {
  private static final SourceRef TORQUE =
      SourceRef.published("Cam followers catalogue 2008", "technical section, pages 40 to 45, eccentric rollers");

  // Refuses a roller without rating and a collar that adjusts nothing.
  public EccentricCollar {
    Objects.requireNonNull(rating, "rating");
    Objects.requireNonNull(eccentricity, "eccentricity");
    Check.positive(rating.newton(), "basic dynamic load rating C", "N", "a rating is a force above zero");
    Check.positive(eccentricity.mm(), "eccentricity e", "mm", "a collar without eccentricity adjusts nothing");
  }

  /**
   * Greatest torque on the stud while it is adjusted against the track. At the end of the range it loads the roller with
   * a tenth of C, before it with less.
   *
   * @return 0.1 C e cos 45°
   */
  public Torque adjustingTorque() {
    return new Torque(EccentricKernel.adjustingTorque(rating.newton(), eccentricity.mm()));
  }

  /**
   * Load of the roller on its track that a torque makes, friction left out.
   *
   * @param torque torque on the stud, 0 or more
   * @param angle angle from the middle of the stroke, from -45° to 45°
   * @return load
   * @throws InputException if an argument is outside its range
   */
  public Force load(Torque torque, Angle angle) {
    Objects.requireNonNull(torque, "torque");
    Objects.requireNonNull(angle, "angle");
    return new Force(EccentricKernel.load(torque.base(), eccentricity.mm(), angle.radian()));
  }

  /**
   * Change of height by turning the stud.
   *
   * @param angle angle from the middle of the stroke, from -45° to 45°
   * @return e sin α, negative to the other side
   * @throws InputException if the angle is outside its range
   */
  public Length height(Angle angle) {
    Objects.requireNonNull(angle, "angle");
    return new Length(EccentricKernel.height(eccentricity.mm(), angle.radian()));
  }

  /**
   * Height between the ends of the range of adjustment.
   *
   * @return 2 e sin 45°
   */
  public Length range() {
    return height(new Angle(EccentricKernel.GREATEST_ANGLE)).times(2);
  }

  @Override
  public Derivation explain() {
    return Derivation.of("Adjusting torque of an eccentric collar")
        .step("T", "torque that loads the roller with a tenth of C at 45°", "0.1·C·e·cos 45°", adjustingTorque().base(), "N·mm",
            TORQUE, "C = " + rating, "e = " + eccentricity)
        .build();
  }

  @Override
  public List<Warning> warnings() {
    return List.of(
        new Warning("friction-left-out", "friction takes a part of the torque: the load on the track is lower", TORQUE));
  }

  /** For example {@code "e 0.5 mm: 0.71 mm of height within 45° to either side, adjust with up to 353.6 N·mm"}. */
  @Override
  public String toString() {
    return "e " + eccentricity + ": "
        + range().text(KnownUnits.MM, 2) + " of height within 45° to either side, adjust with up to " + adjustingTorque();
  }
}
