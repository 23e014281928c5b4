// SPDX-License-Identifier: Apache-2.0
package holdfast.lubrication;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.rollers.MeasureSystem;
import holdfast.rollers.RollerSize;
import java.io.Serializable;
import java.util.Objects;

/**
 * Which openings a stud has, as drilled, whatever its head.
 *
 * @param axialBore whether the stud is drilled along its axis
 * @param head whether the axial bore is open at the head end
 * @param threadEnd whether the axial bore is open at the thread end
 * @param radial whether the shank has a radial hole
 */
public record Openings(boolean axialBore, boolean head, boolean threadEnd, boolean radial) implements Serializable {
  // An end that is open without an axial bore is a contradiction.
  public Openings {
    if (!axialBore && (head || threadEnd)) {
      throw new InputException("axial bore", "none", "present when the " + (head ? Port.HEAD : Port.THREAD_END) + " is open",
          "the opening at an end is the mouth of the axial bore");
    }
  }

  /**
   * A stud without holes.
   *
   * @return no opening
   */
  public static Openings none() {
    return new Openings(false, false, false, false);
  }

  /**
   * What studs of a size usually have. The part in hand goes first.
   *
   * @param system metric or inch
   * @param studDiameter stud diameter d1, over 0
   * @param outsideDiameter outside diameter D of the roller, over 0
   * @return the openings by the published rules of size
   * @throws InputException if a diameter is not above zero
   */
  public static Openings usual(MeasureSystem system, Length studDiameter, Length outsideDiameter) {
    Objects.requireNonNull(system, "system");
    Objects.requireNonNull(studDiameter, "studDiameter");
    Objects.requireNonNull(outsideDiameter, "outsideDiameter");
    Check.positive(outsideDiameter.mm(), "outside diameter D", "mm", "it is a diameter");
    Check.positive(studDiameter.mm(), "stud diameter d1", "mm", "it is a diameter");
    return switch (rule(system, studDiameter, outsideDiameter)) {
      case NO_HOLE_IN_SMALL_STUDS -> none();
      // "Head end only, or none": the dimension tables print no hole below 6 mm, and no fitting is made for it.
      case HEAD_ONLY_UP_TO_10_MM -> studDiameter.mm() < 6 ? none() : new Openings(true, true, false, false);
      case HEAD_ONLY_SMALL_INCH -> new Openings(true, true, false, false);
      default -> new Openings(true, true, true, true);
    };
  }

  /**
   * What the stud of a tabulated size usually has.
   *
   * @param size the size
   * @return the openings by the published rules of size
   */
  public static Openings usual(RollerSize size) {
    Objects.requireNonNull(size, "size");
    return usual(size.series().system(), size.stud().diameter(), size.outsideDiameter());
  }

  /** The rule of size that decides. */
  static PortRule rule(MeasureSystem system, Length studDiameter, Length outsideDiameter) {
    if (system == MeasureSystem.INCH) {
      // 11/16 in is 17.4625 mm; the next size is 3/4 in.
      return outsideDiameter.mm() <= 17.5 ? PortRule.HEAD_ONLY_SMALL_INCH : PortRule.THREE_PORTS;
    }
    if (studDiameter.mm() <= 4) {
      return PortRule.NO_HOLE_IN_SMALL_STUDS;
    }
    return studDiameter.mm() <= 10 ? PortRule.HEAD_ONLY_UP_TO_10_MM : PortRule.THREE_PORTS;
  }

  /**
   * Whether a port is drilled.
   *
   * @param port the port
   * @return true if the stud has it
   */
  public boolean has(Port port) {
    Objects.requireNonNull(port, "port");
    return switch (port) {
      case HEAD -> head;
      case THREAD_END -> threadEnd;
      case RADIAL -> radial;
    };
  }
}
