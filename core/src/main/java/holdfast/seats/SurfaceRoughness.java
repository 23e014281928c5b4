// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.PlainText;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;

/**
 * Roughness of a surface by grade, process or seat. No exact relation between Ra and Rz exists; the values of Rz are
 * approximate companions.
 *
 * @param name grade, process or seat
 * @param ra arithmetical mean deviation Ra
 * @param height greatest height of the profile Rz; null if not stated
 * @param source where the values come from
 */
public record SurfaceRoughness(String name, Band<Length> ra, Band<Length> height, SourceRef source)
    implements Serializable {

  public SurfaceRoughness {
    PlainText.name(name, "name");
    Objects.requireNonNull(ra, "ra");
    Objects.requireNonNull(source, "source");
  }

  /**
   * Greatest height of the profile.
   *
   * @return Rz; empty if not stated
   */
  public Optional<Band<Length>> rz() {
    return Optional.ofNullable(height);
  }

  /**
   * A roughness grade.
   *
   * @param grade {@code "N1"} to {@code "N12"}
   * @return the roughness
   * @throws InputException for another text
   */
  public static SurfaceRoughness ofGrade(String grade) {
    Objects.requireNonNull(grade, "grade");
    int row = grades().find("grade", grade.strip());
    if (row < 0) {
      throw new InputException("roughness grade", "'" + grade + "'", "N1 to N12", "ISO 1302 has no other grades");
    }
    Length ra = micrometres(grades().number(row, "ra"));
    Band<Length> rz = new Band<>(micrometres(grades().number(row, "rz_least")), micrometres(grades().number(row, "rz_greatest")));
    return new SurfaceRoughness(grade.strip(), new Band<>(ra, ra), rz, grades().descriptor().source());
  }

  /**
   * The usual range of a process.
   *
   * @param process for example {@code "reaming"} or {@code "cylindrical grinding"}
   * @return the roughness
   * @throws InputException if the table does not hold it
   */
  public static SurfaceRoughness ofProcess(String process) {
    Objects.requireNonNull(process, "process");
    return other("process", process);
  }

  /**
   * Guidance for a seat.
   *
   * @param seat for example {@code "shaft or stud seat IT6"} or {@code "housing bore IT7"}
   * @return the roughness
   * @throws InputException if the table does not hold it
   */
  public static SurfaceRoughness ofSeat(String seat) {
    Objects.requireNonNull(seat, "seat");
    return other("seat", seat);
  }

  private static SurfaceRoughness other(String kind, String item) {
    int row = others().find("kind", kind, "item", item.strip());
    if (row < 0) {
      StringBuilder known = new StringBuilder();
      for (int i = 0; i < others().size(); i++) {
        if (others().text(i, "kind").equals(kind)) {
          known.append(known.length() == 0 ? "" : ", ").append(others().text(i, "item"));
        }
      }
      throw new InputException(kind, "'" + item + "'", "one of: " + known, "the table of roughness does not hold it");
    }
    Band<Length> rz =
        others().has(row, "rz_least")
            ? new Band<>(micrometres(others().number(row, "rz_least")), micrometres(others().number(row, "rz_greatest")))
            : null;
    return new SurfaceRoughness(
        item.strip(),
        new Band<>(micrometres(others().number(row, "ra_least")), micrometres(others().number(row, "ra_greatest"))),
        rz,
        new SourceRef(others().text(row, "source"), others().text(row, "locator"), others().provenance(row)));
  }

  private static Length micrometres(double value) {
    return new Length(value / 1000);
  }

  private static Table grades() {
    return TableSet.bundled().table("seats/iso-1302/1992/roughness-grades");
  }

  private static Table others() {
    return TableSet.bundled().table("seats/collected/2026/surface-roughness");
  }
}
