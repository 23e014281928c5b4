// SPDX-License-Identifier: Apache-2.0
package holdfast.rollers;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import java.io.InvalidObjectException;
import java.io.ObjectStreamException;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;

/**
 * Dimensions measured on a roller in hand. Immutable; each method gives a new description with one more dimension.
 * Measure what is least worn: the stud and the ring width before the outside diameter.
 */
public final class MeasuredRoller implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Dimensions in the order in which they are listed. */
  private static final Map<String, Function<RollerSize, Length>> DIMENSIONS = new LinkedHashMap<>();

  static {
    DIMENSIONS.put("outside diameter", RollerSize::outsideDiameter);
    DIMENSIONS.put("ring width", RollerSize::ringWidth);
    DIMENSIONS.put("stud diameter", size -> size.stud().diameter());
    DIMENSIONS.put("stud length", size -> size.stud().length());
    DIMENSIONS.put("thread length", size -> size.stud().threadLength());
  }

  // An unmodifiable copy, which is Serializable.
  @SuppressWarnings("serial")
  private final Map<String, Length> measured;

  private MeasuredRoller(Map<String, Length> measured) {
    this.measured = measured;
  }

  private Object readResolve() throws ObjectStreamException {
    try {
      MeasuredRoller anew = new MeasuredRoller(Map.of());
      for (Map.Entry<String, Length> dimension : measured.entrySet()) {
        if (!DIMENSIONS.containsKey(dimension.getKey())) {
          throw new InvalidObjectException("measured roller: no dimension is called " + dimension.getKey());
        }
        anew = anew.with(dimension.getKey(), dimension.getValue());
      }
      return anew;
    } catch (InputException | NullPointerException e) {
      throw new InvalidObjectException("measured roller: " + e.getMessage());
    }
  }

  /**
   * Starts with the outside diameter of the ring.
   *
   * @param diameter measured D, over 0
   * @return the description
   * @throws InputException if the diameter is not above zero
   */
  public static MeasuredRoller outsideDiameter(Length diameter) {
    Objects.requireNonNull(diameter, "diameter");
    return new MeasuredRoller(Map.of()).with("outside diameter", diameter);
  }

  /**
   * Starts with the diameter of the stud, where the ring is worn or missing.
   *
   * @param diameter measured d1, over 0
   * @return the description
   * @throws InputException if the diameter is not above zero
   */
  public static MeasuredRoller studOnly(Length diameter) {
    Objects.requireNonNull(diameter, "diameter");
    return new MeasuredRoller(Map.of()).with("stud diameter", diameter);
  }

  /**
   * Adds the width of the outer ring.
   *
   * @param width measured width, over 0
   * @return the description with it
   * @throws InputException if the width is not above zero
   */
  public MeasuredRoller ringWidth(Length width) {
    Objects.requireNonNull(width, "width");
    return with("ring width", width);
  }

  /**
   * Adds the diameter of the stud.
   *
   * @param diameter measured d1, over 0
   * @return the description with it
   * @throws InputException if the diameter is not above zero
   */
  public MeasuredRoller stud(Length diameter) {
    Objects.requireNonNull(diameter, "diameter");
    return with("stud diameter", diameter);
  }

  /**
   * Adds the length of the stud from the face.
   *
   * @param length measured length, over 0
   * @return the description with it
   * @throws InputException if the length is not above zero
   */
  public MeasuredRoller studLength(Length length) {
    Objects.requireNonNull(length, "length");
    return with("stud length", length);
  }

  /**
   * Adds the length of the thread.
   *
   * @param length measured length, over 0
   * @return the description with it
   * @throws InputException if the length is not above zero
   */
  public MeasuredRoller threadLength(Length length) {
    Objects.requireNonNull(length, "length");
    return with("thread length", length);
  }

  private MeasuredRoller with(String dimension, Length value) {
    Check.positive(value.mm(), dimension, "mm", "it is a measured dimension");
    Map<String, Length> more = new LinkedHashMap<>(measured);
    more.put(dimension, value);
    return new MeasuredRoller(more);
  }

  /**
   * Finds the tabulated sizes whose every measured dimension is within a tolerance.
   *
   * @param tolerance greatest difference of any dimension, over 0 and up to 5 mm
   * @return all such sizes, the closest first; sizes that are equally close in the order of the tables
   * @throws InputException if the tolerance is outside its range
   */
  public Identification identify(Length tolerance) {
    Objects.requireNonNull(tolerance, "tolerance");
    Check.overUpTo(tolerance.mm(), 0, 5, "tolerance of identification", "mm",
        "beyond it every roller resembles every other");
    List<Candidate> all = new ArrayList<>();
    for (RollerSize size : RollerSeries.all()) {
      all.add(new Candidate(size, differences(size)));
    }
    all.sort(Comparator.comparing(Candidate::greatestDifference));
    // A hair of slack, so that a difference of exactly the tolerance is within it.
    double limit = tolerance.mm() * (1 + 1e-9);
    List<Candidate> within = all.stream().filter(c -> c.greatestDifference().mm() <= limit).toList();
    return new Identification(tolerance, within, all.get(0));
  }

  private List<Difference> differences(RollerSize size) {
    List<Difference> differences = new ArrayList<>();
    DIMENSIONS.forEach(
        (name, tabulated) -> {
          Length value = measured.get(name);
          if (value != null) {
            differences.add(new Difference(name, value, tabulated.apply(size)));
          }
        });
    return differences;
  }

  /** The measured dimensions in one line. */
  @Override
  public String toString() {
    List<String> parts = new ArrayList<>();
    for (String name : DIMENSIONS.keySet()) {
      if (measured.containsKey(name)) {
        parts.add(name + " " + Numbers.shortest(measured.get(name).mm()) + " mm");
      }
    }
    return String.join(", ", parts);
  }
}
