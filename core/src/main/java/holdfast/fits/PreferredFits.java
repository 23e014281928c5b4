// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.tables.FromTables;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/** The preferred and commonly used fits, with their use. */
@Source(document = "ANSI B4.2-1978", locator = "description of preferred fits")
@Source(document = "ISO 286-1:2010", locator = "hole-basis fits")
@Source(document = "ISO 286-1:2010", locator = "shaft-basis fits", provenance = Provenance.MEMORY)
public final class PreferredFits {
  private static final FromTables<List<PreferredFit>> ALL = FromTables.of(PreferredFits::read);
  private static final FromTables<Map<Integer, List<PreferredFit>>> BY_PAIR =
      FromTables.of(
          tables ->
              all().stream()
                  .collect(Collectors.groupingBy(fit -> pair(fit.hole(), fit.shaft()), Collectors.toUnmodifiableList())));
  private static final FromTables<Set<ToleranceClass>> GENERAL_USE = FromTables.of(PreferredFits::readClasses);

  private PreferredFits() {}

  /**
   * All lists together; a fit may stand in more than one.
   *
   * @return the fits, list by list
   */
  public static List<PreferredFit> all() {
    return ALL.get();
  }

  /**
   * One list.
   *
   * @param list the list
   * @return its fits, in the order of the list
   */
  public static List<PreferredFit> of(PreferredList list) {
    Objects.requireNonNull(list, "list");
    return ALL.get().stream().filter(fit -> fit.list() == list).toList();
  }

  /**
   * The lists in which a pair of classes stands.
   *
   * @param hole class of the hole
   * @param shaft class of the shaft
   * @return the entries, the firmest list first; empty if the pair stands in none
   */
  public static List<PreferredFit> find(ToleranceClass hole, ToleranceClass shaft) {
    Objects.requireNonNull(hole, "hole");
    Objects.requireNonNull(shaft, "shaft");
    return BY_PAIR.get().getOrDefault(pair(hole, shaft), List.of());
  }

  /**
   * Whether a class stands in the selection for general use of ISO 1829:1975 (recalled).
   *
   * @param toleranceClass a class
   * @return true if it does
   */
  @Source(document = "ISO 1829:1975", locator = "selection of tolerance classes", provenance = Provenance.MEMORY)
  public static boolean isForGeneralUse(ToleranceClass toleranceClass) {
    Objects.requireNonNull(toleranceClass, "toleranceClass");
    return GENERAL_USE.get().contains(toleranceClass);
  }

  private static int pair(ToleranceClass hole, ToleranceClass shaft) {
    return hole.code() * IsoTables.CLASSES + shaft.code();
  }

  private static List<PreferredFit> read(TableSet tables) {
    List<PreferredFit> fits = new ArrayList<>();
    for (PreferredList list : PreferredList.values()) {
      Table table = tables.table(list.table);
      for (int row = 0; row < table.size(); row++) {
        SourceRef listed = table.descriptor().source();
        fits.add(
            new PreferredFit(
                list,
                Basis.valueOf(table.text(row, "basis").toUpperCase(Locale.ROOT)),
                ToleranceClass.of(table.text(row, "hole_class")),
                ToleranceClass.of(table.text(row, "shaft_class")),
                FitKind.valueOf(table.text(row, "kind").toUpperCase(Locale.ROOT)),
                table.text(row, "use"),
                new SourceRef(listed.document(), listed.locator(), table.provenance(row)),
                SourceRef.commonPractice("use of " + table.text(row, "fit"))));
      }
    }
    return List.copyOf(fits);
  }

  private static Set<ToleranceClass> readClasses(TableSet tables) {
    Table table = tables.table("fits/iso-1829/1975/general-use-classes");
    Set<ToleranceClass> classes = new HashSet<>();
    for (int row = 0; row < table.size(); row++) {
      classes.add(ToleranceClass.of(table.text(row, "tolerance_class")));
    }
    return classes;
  }
}
