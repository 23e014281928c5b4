// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.installation.ExampleJobs;
import holdfast.sheet.Block;
import holdfast.sheet.Section;
import holdfast.tables.Document;
import holdfast.tables.SourceRef;
import holdfast.tables.SourceRegister;
import holdfast.tables.TableSet;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** A stranger finds where the lines of a sheet come from, and what the audit compared with it. */
class SheetLinesTest {
  private static final int DRAWN = 20;
  private static final int TRACEABLE = 18;

  private static List<Block.Entry> lines() {
    return ExampleJobs.all().values().stream()
        .flatMap(job -> job.sheet().sections().stream())
        .map(Section::blocks)
        .flatMap(List::stream)
        .filter(Block.Entry.class::isInstance)
        .map(Block.Entry.class::cast)
        .filter(entry -> entry.value().chars().anyMatch(Character::isDigit))
        .toList();
  }

  private static boolean traceable(Block.Entry line, Set<String> lost) {
    SourceRegister register = TableSet.bundled().sources();
    for (SourceRef source : line.sources()) {
      if (!register.contains(source.document()) || lost.contains(source.document()) || source.locator().isBlank()) {
        return false;
      }
    }
    return !line.sources().isEmpty();
  }

  @Test
  void twentyLinesDrawnAtRandomLeadToAPlaceInANamedDocument() {
    Set<String> lost =
        AuditDocuments.lost(TableSet.bundled().sources()).stream().map(Document::id).collect(Collectors.toUnmodifiableSet());
    List<Block.Entry> lines = new ArrayList<>(lines());
    List<String> dark = lines.stream().filter(line -> !traceable(line, lost)).map(Block.Entry::label).distinct().toList();
    for (int seed = 0; seed < 50; seed++) {
      Collections.shuffle(lines, new Random(seed));
      long found = lines.subList(0, DRAWN).stream().filter(line -> traceable(line, lost)).count();
      assertTrue(found >= TRACEABLE, found + " of " + DRAWN + " with seed " + seed + "; not traceable: " + dark);
    }
  }

  @Test
  void everySourceOfASheetLeadsToAPageOfTheAudit() {
    Set<String> pages = AuditPage.pages(Audit.of(List.of())).keySet();
    List<String> dead = new ArrayList<>();
    ExampleJobs.all().forEach((name, job) -> {
      Matcher links = Pattern.compile("href=\"audit/([^\"]+)\"").matcher(job.sheet().html());
      int found = 0;
      while (links.find()) {
        found++;
        if (!pages.contains(links.group(1))) {
          dead.add(name + ": " + links.group(1));
        }
      }
      assertTrue(found > 5, name + " has " + found + " links");
    });
    assertEquals(List.of(), dead);
  }
}
