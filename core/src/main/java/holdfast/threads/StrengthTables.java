// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.tables.FromTables;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import holdfast.threads.PropertyClass.Band;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The strength classes and load tables, read once. */
final class StrengthTables {
  static final FromTables<Map<String, PropertyClass>> CLASSES = FromTables.of(StrengthTables::classes);

  private StrengthTables() {}

  static Table isoLoads() {
    return TableSet.bundled().table("threads/iso-898-1/2013/loads");
  }

  static Table a574Loads() {
    return TableSet.bundled().table("threads/astm-a574/2013/loads");
  }

  private static Map<String, PropertyClass> classes(TableSet tables) {
    Map<String, List<Band>> bands = new LinkedHashMap<>();
    Map<String, String> documents = new LinkedHashMap<>();
    Table iso = tables.table("threads/iso-898-1/2013/property-classes");
    for (int row = 0; row < iso.size(); row++) {
      add(bands, documents, iso, row, iso.text(row, "class"), "ISO 898-1:2013", 1, 1, "d_over");
    }
    Table stainless = tables.table("threads/iso-3506-1/2020/property-classes");
    for (int row = 0; row < stainless.size(); row++) {
      add(bands, documents, stainless, row, stainless.text(row, "class"), "ISO 3506-1:2020", 1, 1, "");
    }
    Table inch = tables.table("threads/inch-grades/reprints/grades");
    for (int row = 0; row < inch.size(); row++) {
      String document = inch.text(row, "document");
      add(bands, documents, inch, row, inch.text(row, "grade"), document, 25.4, KnownUnits.KSI.factor(), "d_over");
    }
    List<PropertyClass> all = new ArrayList<>();
    bands.forEach((name, list) -> all.add(new PropertyClass(name, documents.get(name), list)));
    return PropertyClass.register(all);
  }

  private static void add(
      Map<String, List<Band>> bands,
      Map<String, String> documents,
      Table table,
      int row,
      String name,
      String document,
      double lengthUnit,
      double stressUnit,
      String overColumn) {
    double over = overColumn.isEmpty() ? 0 : table.number(row, overColumn);
    SourceRef source = new SourceRef(document, table.descriptor().source().locator(), table.provenance(row));
    bands
        .computeIfAbsent(name, key -> new ArrayList<>())
        .add(
            new Band(
                new Length(lengthUnit * over),
                new Length(lengthUnit * table.number(row, "d_to")),
                table.descriptor().columns().containsKey("proof") ? stressUnit * optional(table, row, "proof") : 0,
                stressUnit * optional(table, row, "yield"),
                stressUnit * table.number(row, "tensile"),
                source));
    documents.put(name, document);
  }

  private static double optional(Table table, int row, String column) {
    return table.has(row, column) ? table.number(row, column) : 0;
  }
}
