// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.fits.ToleranceClass;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.tables.FromTables;
import holdfast.tables.Source;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a catalogue asks of the seat of a rolling bearing in one load case: tolerance class, run-out and roughness. For bearings
 * with rings; the seat of a stud has a class of its own.
 *
 * @param seat shaft or housing
 * @param bearing kind of bearing
 * @param loadCase which ring turns against the load
 * @param load size of the load, or what else decides
 * @param over open lower end of the diameters
 * @param upTo closed upper end of the diameters; the greatest size where the table names none
 * @param toleranceClass class as printed, for example {@code "k6"}; {@code "r6+IT6"} is shifted by a tolerance
 * @param radialRunout total radial run-out as printed, for example {@code "IT5/2"}; empty if none is printed
 * @param axialRunout total axial run-out of the shoulder as printed, for example {@code "IT5"}
 * @param ra roughness Ra, at most
 * @param note remark of the table; empty without
 * @param source table and page
 */
@Source(document = "Rolling bearings catalogue 17000 EN", locator = "tables 5 to 9, pages 148 to 152")
public record SeatRecommendation(
    String seat,
    String bearing,
    String loadCase,
    String load,
    Length over,
    Length upTo,
    String toleranceClass,
    String radialRunout,
    String axialRunout,
    Length ra,
    String note,
    SourceRef source)
    implements Serializable {
  private static final Length END = new Length(holdfast.quantity.Check.GREATEST);
  private static final FromTables<List<SeatRecommendation>> ALL =
      FromTables.of(tables -> read(tables.table("seats/rolling-bearings-catalogue/2018/seat-classes")));

  // Refuses what is missing.
  public SeatRecommendation {
    Objects.requireNonNull(seat, "seat");
    Objects.requireNonNull(bearing, "bearing");
    Objects.requireNonNull(loadCase, "loadCase");
    Objects.requireNonNull(load, "load");
    Objects.requireNonNull(over, "over");
    Objects.requireNonNull(upTo, "upTo");
    Objects.requireNonNull(toleranceClass, "toleranceClass");
    Objects.requireNonNull(radialRunout, "radialRunout");
    Objects.requireNonNull(axialRunout, "axialRunout");
    Objects.requireNonNull(ra, "ra");
    Objects.requireNonNull(note, "note");
    Objects.requireNonNull(source, "source");
  }

  /**
   * All rows.
   *
   * @return shafts, then housings, in the order of the catalogue
   */
  public static List<SeatRecommendation> all() {
    return ALL.get();
  }

  /**
   * The rows for a diameter of a seat.
   *
   * @param seat {@code "shaft"} or {@code "housing"}
   * @param diameter diameter of the seat
   * @return the rows of all load cases; empty if there are none
   */
  public static List<SeatRecommendation> of(String seat, Length diameter) {
    Objects.requireNonNull(seat, "seat");
    Objects.requireNonNull(diameter, "diameter");
    return all().stream()
        .filter(row -> row.seat.equals(seat) && diameter.compareTo(row.over) > 0 && diameter.compareTo(row.upTo) <= 0)
        .toList();
  }

  /**
   * The class as a type.
   *
   * @return the class; empty if it is shifted by a tolerance
   */
  public Optional<ToleranceClass> standardClass() {
    return toleranceClass.indexOf('+') >= 0 ? Optional.empty() : Optional.of(ToleranceClass.of(toleranceClass));
  }

  private static List<SeatRecommendation> read(Table table) {
    List<SeatRecommendation> rows = new ArrayList<>();
    for (int row = 0; row < table.size(); row++) {
      rows.add(
          new SeatRecommendation(
              table.text(row, "seat"),
              table.text(row, "bearing"),
              table.text(row, "load_case"),
              table.text(row, "load"),
              new Length(table.number(row, "over_mm")),
              table.has(row, "up_to_mm") ? new Length(table.number(row, "up_to_mm")) : END,
              table.text(row, "class"),
              table.text(row, "radial_runout"),
              table.text(row, "axial_runout"),
              KnownUnits.UM.of(table.number(row, "ra")),
              table.text(row, "note"),
              new SourceRef(table.descriptor().source().document(), table.text(row, "locator"), table.provenance(row))));
    }
    return List.copyOf(rows);
  }
}
