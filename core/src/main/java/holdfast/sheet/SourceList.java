// SPDX-License-Identifier: Apache-2.0
package holdfast.sheet;

import holdfast.tables.Provenance;
import holdfast.tables.SourceRef;
import holdfast.tables.SourceRegister;
import holdfast.tables.TableSet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import java.util.stream.Stream;

/** The sources of a sheet: documents numbered in order of first use, and the places within each. */
final class SourceList {
  /** What the letters behind the places stand for. */
  static final String LEGEND =
      "p published, l data listing, d derived, r reference computation, c common practice,"
          + " m memory (recalled, not found in print)";

  /** Number of a document and of a place in it. */
  private record Place(int document, int place) {}

  private final Map<SourceRef, Place> places = new LinkedHashMap<>();
  private final Map<String, List<SourceRef>> documents = new LinkedHashMap<>();

  SourceList(Sheet sheet) {
    for (Section section : sheet.sections()) {
      section.blocks().forEach(block -> block.sources().forEach(this::add));
    }
  }

  private void add(SourceRef source) {
    if (!places.containsKey(source)) {
      List<SourceRef> known = documents.computeIfAbsent(source.document(), document -> new ArrayList<>());
      known.add(source);
      places.put(source, new Place(List.copyOf(documents.keySet()).indexOf(source.document()) + 1, known.size()));
    }
  }

  /** The same numbers, each with the document that it leads to. */
  List<Map<String, String>> links(Block block) {
    String marks = marks(block);
    return marks.isEmpty() ? List.of() : Stream.of(marks.split(", ", -1))
        .map(mark -> Map.of("mark", mark, "document", mark.substring(0, mark.indexOf('.')))).toList();
  }

  /** The numbers of a block's sources, runs drawn together: {@code "3.2, 9.1–4"}; empty if it has none. */
  String marks(Block block) {
    List<Place> sorted =
        block.sources().stream()
            .map(places::get)
            .distinct()
            .sorted(Comparator.comparingInt(Place::document).thenComparingInt(Place::place))
            .toList();
    StringJoiner marks = new StringJoiner(", ");
    for (int first = 0; first < sorted.size(); ) {
      int last = first;
      while (last + 1 < sorted.size()
          && sorted.get(last + 1).document() == sorted.get(last).document()
          && sorted.get(last + 1).place() == sorted.get(last).place() + 1) {
        last++;
      }
      Place from = sorted.get(first);
      // Two neighbours are no run worth a dash.
      String run = last == first ? "" : (last == first + 1 ? ", " + from.document() + "." : "–") + sorted.get(last).place();
      marks.add(from.document() + "." + from.place() + run);
      first = last + 1;
    }
    return marks.toString();
  }

  /** One line a document: its number and name, then its places, for example {@code ".1 Table 1 p; .2 Table 3 p"}. */
  List<Map.Entry<String, String>> lines() {
    List<Map.Entry<String, String>> lines = new ArrayList<>();
    for (Map.Entry<String, List<SourceRef>> document : documents.entrySet()) {
      StringJoiner text = new StringJoiner("; ");
      int place = 0;
      for (SourceRef source : document.getValue()) {
        place++;
        text.add("." + place + " " + source.locator() + " " + letter(source.provenance()));
      }
      lines.add(Map.entry(lines.size() + 1 + "  " + TableSet.bundled().sources().citation(document.getKey()), text.toString()));
    }
    return lines;
  }

  /** Marks of the documents in the order of the lines, as the audit names its pages. */
  List<String> documentMarks() {
    return documents.keySet().stream().map(SourceRegister::mark).toList();
  }

  private static String letter(Provenance provenance) {
    return provenance.label().substring(0, 1);
  }
}
