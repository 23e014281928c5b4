// SPDX-License-Identifier: Apache-2.0
package holdfast.failures;

import holdfast.quantity.InputException;
import holdfast.tables.Provenance;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A class of damage to rolling bearings by ISO 15243.
 *
 * @param number number of the clause, for example {@code "5.3.3.2"}; recalled
 * @param name name of the class, for example {@code "fretting corrosion"}
 */
public record DamageClass(String number, String name) implements Serializable {
  /** Where the classes come from. */
  public static final SourceRef SOURCE = new SourceRef("ISO 15243:2017", "clause 5", Provenance.MEMORY);

  public DamageClass {
    Objects.requireNonNull(number, "number");
    Objects.requireNonNull(name, "name");
  }

  /**
   * All classes.
   *
   * @return the classes in the order of their numbers
   */
  public static List<DamageClass> all() {
    Table table = TableSet.bundled().table("installation/iso-15243/2017/damage-classes");
    List<DamageClass> all = new ArrayList<>();
    for (int row = 0; row < table.size(); row++) {
      all.add(new DamageClass(table.text(row, "number"), table.text(row, "name")));
    }
    return List.copyOf(all);
  }

  /**
   * A class by its number.
   *
   * @param number for example {@code "5.1.2"}
   * @return the class
   * @throws InputException if there is no such class
   */
  public static DamageClass of(String number) {
    Objects.requireNonNull(number, "number");
    for (DamageClass candidate : all()) {
      if (candidate.number().equals(number.strip())) {
        return candidate;
      }
    }
    throw new InputException("class of damage", "'" + number + "'",
        "one of " + String.join(", ", all().stream().map(DamageClass::number).toList()), "ISO 15243:2017, clause 5");
  }

  /**
   * Whether another class is this one or part of it.
   *
   * @param other the other class
   * @return true for the same number or one below it
   */
  public boolean contains(DamageClass other) {
    Objects.requireNonNull(other, "other");
    return other.number.equals(number) || other.number.startsWith(number + ".");
  }

  /** For example {@code "5.3.3.2 fretting corrosion"}. */
  @Override
  public String toString() {
    return number + " " + name;
  }
}
