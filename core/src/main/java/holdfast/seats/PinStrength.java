// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.quantity.Stress;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Message;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Strength of a pin that carries a roller between the ears of a fork. Stresses are nominal.
 *
 * @param section the pin, with the cross hole in its middle
 * @param load radial load on the roller, 0 or more
 * @param gap gap between the ears, over 0
 * @param ear thickness of an ear, over 0
 * @param width width over which the roller loads the pin, over 0 up to the gap
 */
public record PinStrength(ShankSection section, Force load, Length gap, Length ear, Length width)
    implements BentPart, Serializable {
  private static final SourceRef MOMENT =
      SourceRef.derived("beam on two supports in the middle of the ears, load spread over w");
  private static final SourceRef DOUBLE_SHEAR =
      SourceRef.published("Cam followers catalogue 2008", "technical section, yoke pin in double shear");
  private static final SourceRef MISES = SourceRef.derived("von Mises of the combined stresses");
  private static final SourceRef PRESSURE = SourceRef.derived("load over projected area");
  private static final SourceRef KIRSCH = SourceRef.memory("Kirsch 1898", "factor 3 at a small hole");

  // Refuses what the kernel refuses at once.
  public PinStrength {
    Objects.requireNonNull(section, "section");
    Objects.requireNonNull(load, "load");
    Objects.requireNonNull(gap, "gap");
    Objects.requireNonNull(ear, "ear");
    Objects.requireNonNull(width, "width");
    PinKernel.moment(load.newton(), gap.mm(), ear.mm(), width.mm());
  }

  /**
   * Greatest bending stress, in the middle, on the net section of a cross hole.
   *
   * @return σb
   */
  @Override
  public Stress bending() {
    return new Stress(
        moment() / StudSectionKernel.netModulus(section.diameter().mm(), section.bore().mm(), section.crossHole().mm()));
  }

  /** Nothing pulls the pin along. */
  @Override
  public Stress axial() {
    return new Stress(0);
  }

  /** The ears press on the ends of the pin, not on its middle. */
  @Override
  public Stress fitPressure() {
    return new Stress(0);
  }

  private double moment() {
    return PinKernel.moment(load.newton(), gap.mm(), ear.mm(), width.mm());
  }

  /**
   * Mean shear stress beside the ears.
   *
   * @return τ = F/(2A)
   */
  public Stress shear() {
    return new Stress(StudBendingKernel.doubleShear(load.newton(), section.diameter().mm(), section.bore().mm()));
  }

  /**
   * Largest shear stress beside the ears, on the neutral axis.
   *
   * @return 4/3 τ for a solid pin, up to 2 τ for a thin tube
   */
  public Stress largestShear() {
    return new Stress(
        StudBendingKernel.shearStress(load.newton() / 2, section.diameter().mm(), section.bore().mm()));
  }

  /**
   * Governing equivalent stress (von Mises): bending in the middle or shear beside the ears, where bending is small.
   *
   * @return σv
   */
  public Stress equivalent() {
    return new Stress(Math.max(bending().megapascal(), Math.sqrt(3) * largestShear().megapascal()));
  }

  /**
   * Mean pressure in an ear.
   *
   * @return half the load over its projected area
   */
  public Stress earPressure() {
    return new Stress(PinKernel.pressure(load.newton() / 2, section.diameter().mm(), ear.mm()));
  }

  /**
   * Fatigue of the middle of the pin.
   *
   * @param duty how the load changes
   * @param notchFactor fatigue notch factor Kf there, 1 or more; that of the cross hole if it lies in the fibre in tension
   * @param material endurance limit of the finished pin, tensile and yield strength
   * @param criterion how mean stress is weighed
   * @return the margins
   * @throws holdfast.quantity.InputException if the notch factor is below 1 or nothing loads the pin
   */
  public StudFatigue fatigue(StudDuty duty, double notchFactor, StudMaterial material, StudFatigueCriterion criterion) {
    return new StudFatigue(this, duty, notchFactor, material, criterion);
  }

  @Override
  public Derivation explain() {
    String geometry = "g = " + gap + ", t = " + ear + ", w = " + width;
    return Derivation.of("Stress of the pin under " + load)
        .step("M", "bending moment in the middle", "F/4 (g + t - w/2)", moment(), "N·mm", MOMENT, "F = " + load, geometry)
        .step("σb", "bending stress", "M/W", bending().megapascal(), "MPa", StudStrength.FLEXURE, section.toString())
        .step("τ", "mean shear stress beside the ears", "F/(2A)", shear().megapascal(), "MPa", DOUBLE_SHEAR)
        .step("τm", "largest shear stress, on the neutral axis", "4/3 (d² + d di + di²)/(d² + di²) τ",
            largestShear().megapascal(), "MPa",
            SourceRef.derived("first moment of the half ring over the width of both walls"))
        .step("p", "mean pressure in an ear", "F/(2 d t)", earPressure().megapascal(), "MPa", PRESSURE)
        .step("σv", "greatest equivalent stress (von Mises)", "max(σb, √3 τm)", equivalent().megapascal(), "MPa", MISES)
        .build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    double span = gap.mm() + ear.mm();
    if (span < 2 * section.diameter().mm()) {
      warnings.add(new Warning("short-pin",
          Message.of("the span of ", new Length(Numbers.rounded(span, 4)), " is shorter than two diameters of the pin:"
          + " beam theory is rough here"), MOMENT));
    }
    if (section.crossHole().mm() > 0) {
      warnings.add(new Warning("cross-hole",
          Message.of("turned into the fibre in tension, the cross hole raises the local stress up to ",
          Numbers.significant(StudNotchKernel.CROSS_HOLE, 2), " times the ", bending(),
          " of the net section: set it beside the load, which the grease asks for too"), KIRSCH));
    }
    return List.copyOf(warnings);
  }

  /** For example {@code pin 20 mm: bending 95 MPa, shear 12 MPa, in the ears 10 MPa}. */
  @Override
  public String toString() {
    return "pin " + section.diameter() + ": bending " + bending() + ", shear " + shear() + ", in the ears " + earPressure();
  }
}
