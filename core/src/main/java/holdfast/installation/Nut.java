// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.Stress;
import holdfast.quantity.Torque;
import holdfast.threads.BearingFace;
import holdfast.threads.Friction;
import holdfast.threads.Hexagon;
import holdfast.threads.ScrewThread;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;

/**
 * The nut and how it is tightened.
 *
 * @param faceOuter outer diameter of the face on which the nut turns, greater than the inner
 * @param faceInner inner diameter of that face: bore, chamfer or washer bore, the largest; over 0
 * @param leastFriction least coefficient of friction in thread and face, over 0
 * @param greatestFriction greatest coefficient of friction, not below the least
 * @param torque torque to which the wrench is set, over 0
 * @param wrenchError greatest error of the wrench as a share of its setting, 0 to 0.5; for example 0.04
 * @param reserve factor on the preload that keeps the joint closed, for vibration and shock, 1 or more
 * @param engaged engaged length of thread without countersinks, over 0; null if stripping is not looked at
 * @param shearStrength shear strength of the nut, over 0; null with the engaged length
 * @param locking what keeps the nut from working loose
 * @param condition what lies on thread and face; friction holds for it alone
 * @param stack height of the nut and its washer; null if they are not stated, then the grip is not looked at
 * @param prevailing prevailing torque of a self-locking nut as measured while it is run down, over 0; 0 for all others
 */
public record Nut(
    Length faceOuter,
    Length faceInner,
    double leastFriction,
    double greatestFriction,
    Torque torque,
    double wrenchError,
    double reserve,
    Length engaged,
    Stress shearStrength,
    NutLocking locking,
    ThreadCondition condition,
    NutStack stack,
    Torque prevailing)
    implements Serializable {

  // Refuses at once a torque or an error that no wrench has, a face that is no ring and friction that is no band.
  public Nut {
    Objects.requireNonNull(prevailing, "prevailing");
    Objects.requireNonNull(condition, "condition");
    Objects.requireNonNull(faceOuter, "faceOuter");
    Objects.requireNonNull(faceInner, "faceInner");
    Objects.requireNonNull(torque, "torque");
    BearingFace.of(faceOuter, faceInner);
    Friction.of(leastFriction, greatestFriction);
    Check.positive(torque.newtonMillimetre(), "tightening torque", "N·mm", "a nut that is not tightened holds nothing");
    Check.within(wrenchError, 0, 0.5, "wrench error", "", "a share of the setting; ISO 6789 tools have 0.04 or 0.06");
    Check.within(reserve, 1, 10, "reserve", "", "1 keeps the joint just closed");
    if (engaged != null) {
      Check.positive(engaged.mm(), "engaged length", "mm", "threads engage");
      Check.positive(shearStrength.megapascal(), "shear strength of the nut", "MPa", "a strength");
    }
    Objects.requireNonNull(locking, "locking");
    if (locking.prevailing()) {
      Check.positive(prevailing.newtonMillimetre(), "prevailing torque", "N·mm", "a self-locking nut turns hard: measure it");
    } else if (prevailing.newtonMillimetre() != 0) {
      throw new InputException("prevailing torque", prevailing.toString(), "0 with " + locking,
          "only a self-locking nut turns hard before it touches");
    }
    if (torque.times(1 - wrenchError).compareTo(prevailing) <= 0) {
      throw new InputException("tightening torque", torque.toString(), "with the wrench at its least, over the prevailing torque "
          + prevailing, "the prevailing torque pulls nothing");
    }
  }

  /**
   * Starts a description.
   *
   * @param outer outer diameter of the face on which the nut turns
   * @param inner inner diameter of that face: bore, chamfer or washer bore, the largest
   * @return a builder
   */
  public static Builder onFace(Length outer, Length inner) {
    Objects.requireNonNull(outer, "outer");
    Objects.requireNonNull(inner, "inner");
    return new Builder(outer, inner);
  }

  /**
   * Starts a description of a nut on the standard face of its thread: a metric hexagon over a medium hole, an inch hex nut
   * over a narrow plain washer.
   *
   * @param thread thread of the stud
   * @return a builder
   * @throws InputException if the tables have no nut for this diameter: state the face
   */
  public static Builder onStandardFace(ScrewThread thread) {
    Objects.requireNonNull(thread, "thread");
    BearingFace face =
        Hexagon.standardFace(thread)
            .orElseThrow(
                () ->
                    new InputException(
                        "thread of the nut", thread.toString(), "of a diameter in the tables of nuts",
                        "state the face with onFace(outer, inner)"));
    return onFace(face.outer(), face.inner());
  }

  /**
   * Least torque that the wrench gives at its setting.
   *
   * @return torque · (1 - error)
   */
  public Torque leastTorque() {
    return torque.times(1 - wrenchError);
  }

  /**
   * Greatest torque that the wrench gives at its setting.
   *
   * @return torque · (1 + error)
   */
  public Torque greatestTorque() {
    return torque.times(1 + wrenchError);
  }

  /**
   * Engaged length of thread, if stripping is looked at.
   *
   * @return the length without countersinks
   */
  public Optional<Length> statedEngagement() {
    return Optional.ofNullable(engaged);
  }

  /** Collects the description. Not thread-safe. */
  public static final class Builder extends Description<Nut> {
    private final Length outer;
    private final Length inner;
    private Double leastFriction;
    private Double greatestFriction;
    private Torque torque;
    private Double wrenchError;
    private Double reserve;
    private Length engaged;
    private Stress shearStrength;
    private final Choice securing = new Choice("locking of the nut");
    private NutLocking locking = NutLocking.NONE;
    private ThreadCondition condition;
    private NutStack stack;
    private Torque prevailing = new Torque(0);

    private Builder(Length outer, Length inner) {
      this.outer = outer;
      this.inner = inner;
    }

    /**
     * States what lies on thread and face while the nut is tightened, and the friction that goes with it.
     *
     * @param threadAndFace the condition, which the sheet prints beside the torque
     * @param least least coefficient in thread and face
     * @param greatest greatest coefficient
     * @return this builder
     */
    public Builder friction(ThreadCondition threadAndFace, double least, double greatest) {
      this.condition = Objects.requireNonNull(threadAndFace, "threadAndFace");
      this.leastFriction = least;
      this.greatestFriction = greatest;
      return this;
    }

    /**
     * States the wrench.
     *
     * @param setting torque to which it is set
     * @param error its greatest error as a share of the setting, for example 0.04
     * @return this builder
     */
    public Builder wrench(Torque setting, double error) {
      this.torque = Objects.requireNonNull(setting, "setting");
      this.wrenchError = error;
      return this;
    }

    /**
     * States the reserve against opening of the joint.
     *
     * @param factor factor on the preload that keeps the joint closed, 1 or more
     * @return this builder
     */
    public Builder reserve(double factor) {
      this.reserve = factor;
      return this;
    }

    /**
     * States the engaged thread, so that stripping is looked at. Optional.
     *
     * @param length engaged length without countersinks
     * @param shear shear strength of the nut
     * @return this builder
     */
    public Builder engaged(Length length, Stress shear) {
      this.engaged = Objects.requireNonNull(length, "length");
      this.shearStrength = Objects.requireNonNull(shear, "shear");
      return this;
    }

    /**
     * States what the nut takes of the stud's length, so that the grip is looked at. Optional.
     *
     * @param height height of the nut, both nuts if there are two
     * @param washer thickness of the washers under it; 0 mm without washer
     * @return this builder
     */
    public Builder stack(Length height, Length washer) {
      this.stack = new NutStack(height, washer);
      return this;
    }

    /**
     * States what keeps the nut from working loose. Optional: nothing but its preload if it is not stated.
     *
     * @param means the means, other than a self-locking nut
     * @return this builder
     * @throws holdfast.quantity.InputException if a self-locking nut is stated too
     */
    public Builder locking(NutLocking means) {
      this.locking = Objects.requireNonNull(means, "means");
      securing.make("locking");
      return this;
    }

    /**
     * States a self-locking nut. Its prevailing torque comes on top of what pulls the stud.
     *
     * @param measured prevailing torque as measured while the nut is run down on this stud
     * @return this builder
     * @throws holdfast.quantity.InputException if another means of locking is stated too
     */
    public Builder selfLocking(Torque measured) {
      this.prevailing = Objects.requireNonNull(measured, "measured");
      this.locking = NutLocking.SELF_LOCKING;
      securing.make("selfLocking");
      return this;
    }

    @Override
    void missing(Missing missing) {
      missing
          .need(outer, "face")
          .need(inner, "face")
          .need(leastFriction, "friction")
          .need(torque, "wrench")
          .need(reserve, "reserve");
    }

    @Override
    Nut make() {
      return new Nut(
          outer, inner, leastFriction, greatestFriction, torque, wrenchError, reserve, engaged, shearStrength,
          locking, condition, stack, prevailing);
    }

    /**
     * Ends the description.
     *
     * @return the nut
     * @throws holdfast.quantity.InputException if something is missing (one error names all of it) or cannot be
     */
    public Nut build() {
      return make("nut");
    }
  }
}
