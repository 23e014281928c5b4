// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Force;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Stress;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * Proof load or least ultimate load of a fastener.
 *
 * @param propertyClass the strength class
 * @param thread the thread
 * @param kind proof or ultimate
 * @param force the load
 * @param printed whether it is a value printed in the standard's load table, not a product
 * @param source where it stands
 */
public record RatedLoad(
    PropertyClass propertyClass, ScrewThread thread, String kind, Force force, boolean printed, SourceRef source)
    implements Traced, Serializable {
  public RatedLoad {
    Objects.requireNonNull(propertyClass, "propertyClass");
    Objects.requireNonNull(thread, "thread");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(force, "force");
    Objects.requireNonNull(source, "source");
  }

  static RatedLoad of(PropertyClass propertyClass, ScrewThread thread, String kind, Stress stress) {
    Table table = null;
    double unit = 1;
    int row = -1;
    if (propertyClass.document().startsWith("ISO 898-1")) {
      table = StrengthTables.isoLoads();
      row = table.find("thread", thread.designation(), "class", propertyClass.name(), "kind", kind);
    } else if (propertyClass.document().equals("ASTM A574")) {
      table = StrengthTables.a574Loads();
      unit = KnownUnits.LBF.factor();
      row = table.find("thread", thread.designation(), "kind", kind);
    }
    if (table != null && row >= 0) {
      SourceRef place =
          new SourceRef(propertyClass.document(), table.descriptor().source().locator(), table.provenance(row));
      return new RatedLoad(propertyClass, thread, kind, new Force(unit * table.number(row, "load")), true, place);
    }
    double area = thread.system() == ThreadSystem.METRIC ? thread.nominalStressArea().mm2() : thread.stressArea().mm2();
    Force product = new Force(StrengthKernel.load(area, stress.megapascal()));
    return new RatedLoad(propertyClass, thread, kind, product, false, propertyClass.source(thread));
  }

  /** The load and where it comes from. */
  @Override
  public Derivation explain() {
    return Derivation.of("Least " + kind + " load of " + thread.designation() + ", class " + propertyClass)
        .step("F", kind + " load", printed ? "read from the load table" : "stress area times stress", force.newton(), "N", source)
        .build();
  }

  @Override
  public List<Warning> warnings() {
    return thread.warnings();
  }

  /** The load with its kind. */
  @Override
  public String toString() {
    return kind + " load " + force;
  }
}
