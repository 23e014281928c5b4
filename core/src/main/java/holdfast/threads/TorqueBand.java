// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Force;
import holdfast.quantity.Torque;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;

/**
 * The torque that one preload needs, over the friction band.
 *
 * @param tightening stud, nut and face
 * @param preload the preload
 * @param least the state at low friction: least torque
 * @param greatest the state at high friction: greatest torque
 */
public record TorqueBand(Tightening tightening, Force preload, TighteningState least, TighteningState greatest)
    implements Traced, Serializable {
  public TorqueBand {
    Objects.requireNonNull(tightening, "tightening");
    Objects.requireNonNull(preload, "preload");
    Objects.requireNonNull(least, "least");
    Objects.requireNonNull(greatest, "greatest");
  }

  /**
   * Least torque, at low friction: with more torque the preload may exceed the one stated.
   *
   * @return MA,min
   */
  public Torque leastTorque() {
    return least.torque();
  }

  /**
   * Greatest torque, at high friction: with less torque the preload may stay below the one stated.
   *
   * @return MA,max
   */
  public Torque greatestTorque() {
    return greatest.torque();
  }

  /** How the torque follows; the last step is the greatest torque. */
  @Override
  public Derivation explain() {
    return Derivation.of("Torque of " + tightening + " for " + preload)
        .steps(least.torqueSteps("low friction").build())
        .steps(greatest.torqueSteps("high friction").build())
        .build();
  }

  @Override
  public List<Warning> warnings() {
    LinkedHashSet<Warning> all = new LinkedHashSet<>(least.warnings());
    all.addAll(greatest.warnings());
    return List.copyOf(all);
  }

  /** Preload and band. */
  @Override
  public String toString() {
    return preload + " on " + tightening + ": torque " + leastTorque() + " … " + greatestTorque();
  }
}
