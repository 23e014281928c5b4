// SPDX-License-Identifier: Apache-2.0
package holdfast.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holdfast.tables.SourceRef;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Documents are numbered in order of first use, places within each document; runs are drawn together. */
class SourceListTest {
  private final SourceRef[] pages = new SourceRef[9];
  private final SourceRef other = SourceRef.memory("Other", "eq. 1");
  private final SourceRef further = SourceRef.derived("sum");

  SourceListTest() {
    for (int i = 0; i < pages.length; i++) {
      pages[i] = SourceRef.published("Doc", "p. " + (i + 1));
    }
  }

  private SourceRef page(int number) {
    return pages[number - 1];
  }

  @Test
  void runsAreDrawnTogether() {
    Section section =
        Section.of("s")
            .entry("all", "x", pages)
            .entry("three, one of them twice", "x", page(4), page(3), page(2), page(2))
            .entry("two", "x", page(5), page(4))
            .entry("run and one", "x", page(3), page(4), page(5), page(9))
            .entry("apart", "x", page(7), page(5))
            .blank("none", "")
            .build();
    SourceList sources = new SourceList(new Sheet("t", "u", List.of(section), List.of()));
    assertEquals(
        List.of("1.1–9", "1.2–4", "1.4, 1.5", "1.3–5, 1.9", "1.5, 1.7", ""),
        section.blocks().stream().map(sources::marks).toList());
  }

  @Test
  void runsEndWithTheirDocument() {
    SourceRef second = SourceRef.memory("Other", "eq. 2");
    Section first = Section.of("s").entry("a", "x", other, page(1)).entry("b", "x", second, page(1), other).build();
    Section last = Section.of("s").entry("c", "x", page(1), second).entry("d", "x", further).build();
    SourceList sources = new SourceList(new Sheet("t", "u", List.of(first, last), List.of()));
    assertEquals(List.of("1.1, 2.1", "1.1, 1.2, 2.1"), first.blocks().stream().map(sources::marks).toList());
    assertEquals(List.of("1.2, 2.1", "3.1"), last.blocks().stream().map(sources::marks).toList());
    assertEquals(
        List.of(
            Map.entry("1  Other", ".1 eq. 1 m; .2 eq. 2 m"),
            Map.entry("2  Doc", ".1 p. 1 p"),
            Map.entry("3  derivation", ".1 sum d")),
        sources.lines());
  }
}
