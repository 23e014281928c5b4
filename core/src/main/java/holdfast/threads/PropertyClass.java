// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.PlainText;
import holdfast.quantity.Stress;
import holdfast.tables.SourceRef;
import java.io.Serializable;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/**
 * A strength class of bolts, screws and studs, or a stud material of your own.
 *
 * @param name for example {@code "8.8"}, {@code "A4-70"}, {@code "SAE J429 grade 5"}
 * @param document document that defines it
 * @param bands strengths by diameter, in rising order
 */
public record PropertyClass(String name, String document, List<Band> bands) implements Serializable {

  /**
   * Strengths of one range of diameters.
   *
   * @param over diameters over this
   * @param upTo up to and including this
   * @param proof proof stress in MPa, 0 if the standard states none
   * @param yield least yield stress in MPa (ReL, Rpf or Rp0.2), 0 if the standard states none
   * @param tensile least tensile strength in MPa
   * @param source where it stands
   */
  public record Band(Length over, Length upTo, double proof, double yield, double tensile, SourceRef source)
      implements Serializable {
    // Refuses what is no strength.
    public Band {
      Objects.requireNonNull(over, "over");
      Objects.requireNonNull(upTo, "upTo");
      Objects.requireNonNull(source, "source");
      Check.notNegative(proof, "proof stress", "MPa", "0 means that none is stated");
      Check.notNegative(yield, "yield stress", "MPa", "0 means that none is stated");
      Check.notNegative(tensile, "tensile strength", "MPa", "0 means that none is stated");
    }
  }

  // Keeps an unmodifiable copy of the list, which is not empty.
  public PropertyClass {
    PlainText.name(name, "name of the property class");
    Objects.requireNonNull(document, "document");
    Objects.requireNonNull(bands, "bands");
    bands = List.copyOf(bands);
    if (bands.isEmpty()) {
      throw new InputException("bands of class " + name, "none", "one or more", "a class has a strength");
    }
  }

  /**
   * Finds a class by its name.
   *
   * @param name {@code "8.8"}, {@code "A2-70"}, {@code "grade 5"} or {@code "SAE J429 grade 5"}, {@code "A574"}, {@code
   *     "A193 B7"}; the words ASTM and SAE J429 may be left out
   * @return the class
   * @throws InputException if there is no such class; the message lists them
   */
  public static PropertyClass of(String name) {
    Objects.requireNonNull(name, "name");
    PropertyClass found = StrengthTables.CLASSES.get().get(key(name));
    if (found == null) {
      throw new InputException(
          "property class", "'" + name + "'", "one of " + String.join(", ", names()), "the classes of the table set");
    }
    return found;
  }

  /**
   * The names of all classes.
   *
   * @return the full names
   */
  public static List<String> names() {
    return StrengthTables.CLASSES.get().values().stream().map(PropertyClass::name).distinct().toList();
  }

  /**
   * A stud material of your own, for example a hardened stud by its drawing.
   *
   * @param name what it is
   * @param yield least yield stress, over 0
   * @param tensile least tensile strength, at least the yield stress
   * @return a class without limits of diameter
   * @throws InputException if the strengths are not in order
   */
  public static PropertyClass ofMaterial(String name, Stress yield, Stress tensile) {
    Objects.requireNonNull(yield, "yield");
    Objects.requireNonNull(tensile, "tensile");
    Check.positive(yield.megapascal(), "yield stress", "MPa", "a strength");
    if (tensile.compareTo(yield) < 0) {
      throw new InputException("tensile strength", tensile.toString(), "at least the yield stress, " + yield, "Rm ≥ Rp0.2");
    }
    Band band =
        new Band(
            new Length(0),
            new Length(1e6),
            0,
            yield.megapascal(),
            tensile.megapascal(),
            SourceRef.commonPractice("strength stated by the user for " + name));
    return new PropertyClass(name, "common practice", List.of(band));
  }

  /**
   * Least yield stress at the diameter of a thread.
   *
   * @param thread the thread
   * @return ReL, Rpf or Rp0.2; of inch grades the yield strength
   * @throws InputException if the class does not cover the diameter or states no yield stress
   */
  public Stress yieldStress(ScrewThread thread) {
    Objects.requireNonNull(thread, "thread");
    return stated(band(thread).yield(), "yield stress");
  }

  /**
   * Least tensile strength at the diameter of a thread.
   *
   * @param thread the thread
   * @return Rm
   * @throws InputException if the class does not cover the diameter
   */
  public Stress tensileStrength(ScrewThread thread) {
    Objects.requireNonNull(thread, "thread");
    return stated(band(thread).tensile(), "tensile strength");
  }

  /**
   * Proof stress at the diameter of a thread.
   *
   * @param thread the thread
   * @return Sp
   * @throws InputException if the class does not cover the diameter or states no proof stress
   */
  public Stress proofStress(ScrewThread thread) {
    Objects.requireNonNull(thread, "thread");
    return stated(band(thread).proof(), "proof stress");
  }

  /**
   * Proof load: as the standard prints it where that was found, else nominal stress area times proof stress.
   *
   * @param thread the thread
   * @return the proof load
   * @throws InputException if the class does not cover the diameter or states no proof stress
   */
  public RatedLoad proofLoad(ScrewThread thread) {
    Objects.requireNonNull(thread, "thread");
    return RatedLoad.of(this, thread, "proof", proofStress(thread));
  }

  /**
   * Least ultimate tensile load: as the standard prints it where that was found, else nominal stress area times tensile
   * strength.
   *
   * @param thread the thread
   * @return the ultimate load
   * @throws InputException if the class does not cover the diameter
   */
  public RatedLoad ultimateLoad(ScrewThread thread) {
    Objects.requireNonNull(thread, "thread");
    return RatedLoad.of(this, thread, "ultimate", tensileStrength(thread));
  }

  /**
   * Where the strengths of a diameter stand.
   *
   * @param thread the thread
   * @return the source
   * @throws InputException if the class does not cover the diameter
   */
  public SourceRef source(ScrewThread thread) {
    Objects.requireNonNull(thread, "thread");
    return band(thread).source();
  }

  private Band band(ScrewThread thread) {
    double d = thread.majorDiameter().mm();
    for (Band band : bands) {
      if (d > band.over().mm() && d <= band.upTo().mm() + 1e-9) {
        return band;
      }
    }
    throw new InputException(
        "thread for class " + name,
        thread.designation(),
        "over " + bands.get(0).over() + " up to " + bands.get(bands.size() - 1).upTo(),
        document + " does not have this class for this size");
  }

  private Stress stated(double value, String what) {
    if (value == 0) {
      throw new InputException(what + " of class " + name, "not stated", "a class with a " + what, document + " states none");
    }
    return new Stress(value);
  }

  static String key(String name) {
    return name.strip()
        .toUpperCase(Locale.ROOT)
        .replaceAll("\\s+", " ")
        .replaceAll("^(SAE J429|SAE|ASTM) ", "");
  }

  static Map<String, PropertyClass> register(List<PropertyClass> classes) {
    Map<String, PropertyClass> map = new LinkedHashMap<>();
    for (PropertyClass c : classes) {
      map.put(key(c.name()), c);
    }
    return map;
  }

  /** The name. */
  @Override
  public String toString() {
    return name;
  }
}
