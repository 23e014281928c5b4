// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Area;
import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.PlainText;
import java.io.Serializable;
import java.util.Objects;

/**
 * A place along the stud where it could yield first while being tightened.
 *
 * @param name what it is, for example {@code "thread"} or {@code "groove"}
 * @param diameter outer diameter of the material there; dS in the thread
 * @param bore axial bore there, 0 for none
 * @param crossHole radial hole there, 0 for none
 */
public record StudSection(String name, Length diameter, Length bore, Length crossHole) implements Serializable {
  // Refuses an empty section.
  public StudSection {
    PlainText.name(name, "name of the section");
    Objects.requireNonNull(diameter, "diameter");
    Objects.requireNonNull(bore, "bore");
    Objects.requireNonNull(crossHole, "crossHole");
    SectionKernel.area(diameter.mm(), bore.mm(), crossHole.mm());
  }

  /**
   * The stress section of a thread.
   *
   * @param thread the thread
   * @param bore axial bore, 0 for none, less than the root diameter
   * @return the section with diameter dS
   * @throws InputException if a value is outside its range
   */
  public static StudSection thread(ScrewThread thread, Length bore) {
    Objects.requireNonNull(thread, "thread");
    Objects.requireNonNull(bore, "bore");
    double root = thread.rootDiameter().mm();
    Check.notNegative(bore.mm(), "axial bore di", "mm", "a diameter");
    ThreadGeometryKernel.checkBore(root, bore.mm());
    return new StudSection("thread " + thread.designation(), thread.stressDiameter(), bore, new Length(0));
  }

  /** The same section in a stud with an axial bore: the greater of the bore stated here and that of the stud. */
  StudSection inStudOf(Length studBore) {
    return studBore.compareTo(bore) > 0 ? new StudSection(name, diameter, studBore, crossHole) : this;
  }

  /**
   * Area that carries the preload.
   *
   * @return the area without bore and cross hole
   */
  public Area area() {
    return new Area(SectionKernel.area(diameter.mm(), bore.mm(), crossHole.mm()));
  }

  /**
   * Torsion modulus.
   *
   * @param model elastic or fully plastic
   * @return WP in mm³, nominal, without stress concentration
   */
  public double torsionModulus(TorsionModel model) {
    Objects.requireNonNull(model, "model");
    double d = diameter.mm();
    double di = bore.mm();
    double dq = crossHole.mm();
    if (dq == 0) {
      return model == TorsionModel.PLASTIC ? SectionKernel.plasticModulus(d, di) : SectionKernel.elasticModulus(d, di);
    }
    return model == TorsionModel.PLASTIC ? SectionKernel.plasticModulus(d, di, dq) : SectionKernel.elasticModulus(d, di, dq);
  }

  /** Name and sizes. */
  @Override
  public String toString() {
    return name
        + " (⌀ "
        + diameter
        + (bore.mm() > 0 ? ", bore " + bore : "")
        + (crossHole.mm() > 0 ? ", cross hole " + crossHole : "")
        + ")";
  }
}
