// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * One entry of the register of documents. What is not known says {@link #UNKNOWN}, what does not apply says {@link #NONE};
 * only the note may be blank, every other blank text is refused, and what cannot be printed.
 *
 * @param id the key by which tables, formulas and checks cite it; it speaks, for example {@code "ISO 286-1:2010"}
 * @param authors its authors as {@code "Family, G.; Family, G."}
 * @param publisher who published it: publishing house, institution, journal, maker of a catalogue, site of a web page
 * @param title its title
 * @param edition its edition
 * @param year the year of the edition
 * @param number number of the standard, report, catalogue or release, or volume
 * @param kind what it is
 * @param seen how its content reached us
 * @param address where the copy that was read can be found
 * @param read date of reading
 * @param supersededBy what has replaced this edition
 * @param consequence what the replacement means for values and formulas taken from this edition
 * @param note what was taken from it, and what is uncertain
 */
public record Document(
    String id,
    String authors,
    String publisher,
    String title,
    String edition,
    String year,
    String number,
    DocumentKind kind,
    Seen seen,
    String address,
    String read,
    String supersededBy,
    String consequence,
    String note)
    implements Serializable {
  /** The word for what is not known. */
  public static final String UNKNOWN = "unknown";

  /** The word for what does not apply. */
  public static final String NONE = "none";

  /** The columns of a register, in order. */
  static final List<String> COLUMNS =
      List.of(
          "id", "authors", "publisher", "title", "edition", "year", "number", "kind", "seen", "address", "read",
          "superseded_by", "consequence", "note");

  /** The columns without which a register cannot be read. */
  static final List<String> REQUIRED = List.of("id", "title", "kind");

  /** How the content of a document reached this project. */
  public enum Seen {
    /** The document itself, or a scan of it. */
    ORIGINAL,
    /** A reprint. */
    REPRINT,
    /** A part of a stored page. */
    EXCERPT,
    /** A data file. */
    DATA_FILE,
    /** Not at hand: recalled, or known through other documents only. */
    NOT_SEEN,
    /** There is nothing to see: no document. */
    NONE;

    /**
     * The words used in registers and reports.
     *
     * @return the label, for example {@code "data file"}
     */
    public String label() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /**
     * Reads a label.
     *
     * @param label one of the labels
     * @return the value
     * @throws IllegalArgumentException if it is none of them
     */
    public static Seen of(String label) {
      return Arrays.stream(values())
          .filter(seen -> seen.label().equals(label))
          .findFirst()
          .orElseThrow(
              () -> new IllegalArgumentException("seen '" + label + "' is none of: "
                  + Arrays.stream(values()).map(Seen::label).collect(Collectors.joining(", "))));
    }
  }

  // Refuses what a reader could not tell from a slip: blank fields.
  public Document {
    List<String> texts =
        List.of(id, authors, publisher, title, edition, year, number, address, read, supersededBy, consequence);
    if (texts.stream().anyMatch(String::isBlank)) {
      throw new IllegalArgumentException(
          "document '" + id + "': no field but the note may be blank; write " + UNKNOWN + " or " + NONE);
    }
    String fault = Printable.fault(String.join("", texts) + note);
    if (fault != null) {
      throw new IllegalArgumentException("document '" + id + "': " + fault);
    }
  }

  /**
   * A document of which no more is known, or needed.
   *
   * @param id the key by which it is cited
   * @param title its title
   * @param kind what it is
   * @param note what was taken from it
   */
  public Document(String id, String title, DocumentKind kind, String note) {
    this(
        id, UNKNOWN, UNKNOWN, title, UNKNOWN, UNKNOWN, UNKNOWN, kind, Seen.NOT_SEEN, UNKNOWN, UNKNOWN, UNKNOWN, UNKNOWN, note);
  }

  /**
   * Reads the cells of a register's line. A column that the register does not have is unknown, the note blank.
   *
   * @param columns the columns of the register, each one of {@link #COLUMNS}
   * @param cells the cells in the same order
   * @return the document
   * @throws IllegalArgumentException if a cell is blank that may not be, or names no kind
   */
  static Document of(List<String> columns, List<String> cells) {
    Function<String, String> cell = name -> columns.contains(name) ? cells.get(columns.indexOf(name)) : UNKNOWN;
    return new Document(
        cell.apply("id"), cell.apply("authors"), cell.apply("publisher"), cell.apply("title"), cell.apply("edition"),
        cell.apply("year"), cell.apply("number"), DocumentKind.of(cell.apply("kind")),
        columns.contains("seen") ? Seen.of(cell.apply("seen")) : Seen.NOT_SEEN, cell.apply("address"), cell.apply("read"),
        cell.apply("superseded_by"), cell.apply("consequence"), columns.contains("note") ? cell.apply("note") : "");
  }

  /**
   * Every field by the name of its column, in the order of a register.
   *
   * @return an unmodifiable map
   */
  public Map<String, String> fields() {
    List<String> values =
        List.of(
            id, authors, publisher, title, edition, year, number, kind.label(), seen.label(), address, read, supersededBy,
            consequence, note);
    Map<String, String> fields = new LinkedHashMap<>();
    for (int i = 0; i < values.size(); i++) {
      fields.put(COLUMNS.get(i), values.get(i));
    }
    return Collections.unmodifiableMap(fields);
  }

  /**
   * Whether a field says something.
   *
   * @param field content of a field
   * @return false if it is {@link #UNKNOWN} or {@link #NONE}
   */
  public static boolean known(String field) {
    return !field.equals(UNKNOWN) && !field.equals(NONE);
  }

  /**
   * What a stranger would need to identify this document or the copy that was read, and is not known: an author or
   * publisher; unless authors sign it, a year, an edition, a number or an address; the address of the copy, if a copy was
   * read that neither year, edition nor number fixes.
   *
   * @return what is missing; empty if a stranger can identify it, or if it is no publication
   */
  public List<String> missing() {
    List<String> missing = new ArrayList<>();
    if (!kind.publication()) {
      return List.copyOf(missing);
    }
    boolean fixed = known(year) || known(edition) || known(number);
    if (!known(authors) && !known(publisher)) {
      missing.add("author or publisher");
    }
    if (!fixed && !known(authors) && !known(address)) {
      missing.add("year, edition, number or address");
    }
    boolean copy = seen == Seen.REPRINT || seen == Seen.EXCERPT || seen == Seen.DATA_FILE;
    if (copy && !fixed && !known(address)) {
      missing.add("the copy that was read");
    }
    return List.copyOf(missing);
  }

  /**
   * Author, short title and year, as a sheet or a derivation cites it. The id of a standard is its citation.
   *
   * @return for example {@code "NTN, Needle roller bearings catalogue 2300/E, year unknown"}
   */
  public String citation() {
    if (!kind.publication() || kind == DocumentKind.STANDARD || kind == DocumentKind.SOFTWARE) {
      return id;
    }
    String by = by();
    String when = known(year) ? year : "year unknown";
    String start = by.isEmpty() ? "author unknown, " : id.contains(by) ? "" : by + ", ";
    return start + id + (known(year) && id.contains(year.substring(0, 4)) ? "" : ", " + when);
  }

  /** The family names of the authors, or else the publisher; empty if neither is known. */
  private String by() {
    if (!known(authors)) {
      return known(publisher) ? publisher : "";
    }
    List<String> families = families();
    return families.size() > 2 ? families.get(0) + " et al." : String.join(" and ", families);
  }

  /**
   * Family names of the authors.
   *
   * @return the names in order; empty if none is known
   */
  public List<String> families() {
    return known(authors)
        ? Arrays.stream(authors.split(";", -1)).map(name -> name.split(",", -1)[0].strip()).toList()
        : List.of();
  }
}
