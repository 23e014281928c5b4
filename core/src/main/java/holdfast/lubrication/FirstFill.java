// SPDX-License-Identifier: Apache-2.0
package holdfast.lubrication;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.Mass;
import holdfast.quantity.Numbers;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * Grease with which a roller is filled before it runs first.
 *
 * @param least least mass
 * @param greatest greatest mass
 * @param from what it was found from
 * @param inputs the numbers put in
 */
public record FirstFill(Mass least, Mass greatest, Basis from, List<String> inputs) implements Traced, Serializable {
  private static final SourceRef SHARE_OF_FILL =
      SourceRef.published("Rolling bearings catalogue HR 1", "relubrication, share of the initial quantity");
  private static final SourceRef SHARE_OF_SPACE =
      SourceRef.published("General catalogue cam follower section", "initial grease fill");

  /** What a first fill is found from. */
  public enum Basis {
    /** A third to a half of the space between the raceways that the rollers leave. */
    FREE_SPACE("a third to a half of the space between the raceways"),
    /** A regreasing is 50 % to 80 % of it. */
    REGREASING("one regreasing is 50 % to 80 % of it");

    private final String words;

    Basis(String words) {
      this.words = words;
    }

    /** For example {@code "one regreasing is 50 % to 80 % of it"}. */
    @Override
    public String toString() {
      return words;
    }
  }

  // Keeps an unmodifiable copy; refuses a band that is none.
  public FirstFill {
    Objects.requireNonNull(least, "least");
    Objects.requireNonNull(greatest, "greatest");
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(inputs, "inputs");
    Check.positive(least.gram(), "least first fill", "g", "a roller does not start dry");
    Check.finite(greatest.gram(), "greatest first fill", "g");
    if (greatest.compareTo(least) < 0) {
      throw new InputException("greatest first fill", greatest.toString(), "at least " + least, "it is a band");
    }
    inputs = List.copyOf(inputs);
  }

  /**
   * From the inside of the roller: a third to a half of the ring between the raceways less the rolling elements.
   *
   * @param pitchDiameter pitch diameter Dpw, over Dwe
   * @param diameter diameter Dwe of a roller, over 0
   * @param length length Lwe of a roller, over 0
   * @param count number of rollers in all rows, 1 or more
   * @param width width of the space, at least the length of a roller
   * @return the fill
   * @throws InputException if the rollers do not leave space
   */
  public static FirstFill ofSpace(Length pitchDiameter, Length diameter, Length length, int count, Length width) {
    Objects.requireNonNull(pitchDiameter, "pitchDiameter");
    Objects.requireNonNull(diameter, "diameter");
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(width, "width");
    Check.positive(diameter.mm(), "diameter of a roller Dwe", "mm", "it is a size");
    Check.positive(length.mm(), "length of a roller Lwe", "mm", "it is a size");
    Check.positive(width.mm(), "width of the space", "mm", "it is a size");
    Check.within(count, 1, 10_000, "number of rollers", "", "a bearing has some");
    if (pitchDiameter.compareTo(diameter) <= 0) {
      throw new InputException("pitch diameter Dpw", pitchDiameter.toString(), "over Dwe = " + diameter,
          "the rollers stand round");
    }
    double ring = Math.PI * pitchDiameter.mm() * diameter.mm() * width.mm();
    double free = ring - count * 0.25 * Math.PI * diameter.mm() * diameter.mm() * length.mm();
    Check.positive(free, "space between the raceways", "mm³", "the rollers leave some");
    double full = GreaseQuantityKernel.massOfVolume(free * 1e-3);
    LubricationGuide guide = LubricationGuide.firstFill();
    return new FirstFill(new Mass(guide.low() * full), new Mass(guide.high() * full), Basis.FREE_SPACE,
        List.of("Dpw = " + pitchDiameter, "Dwe = " + diameter, "Lwe = " + length, "Z = " + count, "B = " + width));
  }

  /**
   * From the grease of one regreasing, where the inside of the roller is not known.
   *
   * @param quantity grease for one regreasing
   * @return the fill
   */
  public static FirstFill ofRegreasing(GreaseQuantity quantity) {
    Objects.requireNonNull(quantity, "quantity");
    double gram = quantity.mass().gram();
    return new FirstFill(new Mass(gram / 0.8), new Mass(gram / 0.5), Basis.REGREASING, List.of("Gp = " + quantity.mass()));
  }

  @Override
  public Derivation explain() {
    boolean space = from == Basis.FREE_SPACE;
    SourceRef source = space ? SHARE_OF_SPACE : SHARE_OF_FILL;
    String[] in = inputs.toArray(new String[0]);
    String free = "0.9·(π·Dpw·Dwe·B − Z·π/4·Dwe²·Lwe)·10⁻³";
    return Derivation.of("Grease of the first fill")
        .step("Gmin", "least", space ? "0.333·" + free : "Gp/0.8", least.gram(), "g", source, in)
        .step("Gmax", "greatest", space ? "0.5·" + free : "Gp/0.5", greatest.gram(), "g", source, in)
        .build();
  }

  @Override
  public List<Warning> warnings() {
    return from == Basis.FREE_SPACE
        ? List.of(new Warning("cage-not-counted", "cage, washers and seals take room that the fill does not know",
            SHARE_OF_SPACE))
        : List.of(new Warning("inside-not-known", "the inside of the roller is not known: the fill follows from the grease of one"
            + " regreasing", SHARE_OF_FILL));
  }

  /** For example {@code "0.96 g to 1.4 g"}. */
  @Override
  public String toString() {
    return Numbers.significant(least.gram(), 2) + " g to " + Numbers.significant(greatest.gram(), 2) + " g";
  }
}
