// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.sheet.Block;
import holdfast.sheet.Section;
import holdfast.sheet.SheetUnits;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Quantities are converted before they become text: an inch sheet has no metric ones, and no name is touched. */
class UnitsOfSheetsTest {
  private static final Pattern METRIC = Pattern.compile("\\d (mm|µm|kN|N·mm|N·m|N|MPa|GPa|°C)(?![\\w·/²³])");

  /** Names of the jobs' parts and sizes as they are sold hold what they hold. */
  private static final List<String> AS_NAMED = List.of("roller 40 x 20", "6 mm plate", "about 30 mm section", "drive-in", "0/-0.010 mm");

  private static Stream<String> sentences(MountingPlan plan) {
    return plan.sheet().sections().stream().map(Section::blocks).flatMap(List::stream).flatMap(UnitsOfSheetsTest::texts);
  }

  private static Stream<String> texts(Block block) {
    if (block instanceof Block.Entry entry) {
      return Stream.of(entry.label(), entry.value());
    }
    if (block instanceof Block.Notice notice) {
      return Stream.of(notice.text());
    }
    if (block instanceof Block.Blank blank) {
      return Stream.of(blank.label(), blank.hint());
    }
    return Stream.of(((Block.Picture) block).description());
  }

  @Test
  void anInchSheetHasNoMetricQuantities() {
    for (Map.Entry<String, MountingPlan> job : ExampleJobs.all().entrySet()) {
      List<String> left = sentences(job.getValue().withUnits(SheetUnits.INCH))
          .filter(text -> AS_NAMED.stream().noneMatch(text::contains))
          .filter(text -> METRIC.matcher(text).find())
          .toList();
      assertEquals(List.of(), left, job.getKey());
    }
  }

  @Test
  void noNameIsTouched() {
    String name = "lever 6 mm plate, 4 kN class, 20 °C store";
    InstallationPlan press = InstallationPlan.example();
    MachineMember member = press.member();
    for (SheetUnits units : SheetUnits.values()) {
      InstallationPlan plan = new InstallationPlan(name, press.roller(), new MachineMember(name, member.body(),
          member.boreTolerance(), member.seatLength(), member.pressingFriction()), press.nut(), press.duty()).withUnits(units);
      assertEquals(name, plan.sheet().subtitle());
      assertTrue(sentences(plan).anyMatch(text -> text.startsWith(name + ", housing")), units.toString());
      YokePlan yoke = ExampleJobs.yokeInFork();
      Fork fork = new Fork(name, yoke.fork().ear(), yoke.fork().boreTolerance(), yoke.fork().thickness(), yoke.fork().gap(),
          yoke.fork().pressingFriction(), true, false);
      assertTrue(sentences(new YokePlan(name, yoke.roller(), yoke.pin(), fork, yoke.duty(), null, units))
          .anyMatch(text -> text.startsWith(name + ", housing")), units.toString());
    }
  }

  @Test
  void theSameNumbersStandOnEverySheet() {
    // One converted sheet holds as many quantities as the metric one, so that none is lost and none is converted twice.
    for (MountingPlan plan : ExampleJobs.all().values()) {
      long metric = sentences(plan.withUnits(SheetUnits.METRIC)).mapToLong(text -> count(METRIC, text)).sum();
      long both = sentences(plan.withUnits(SheetUnits.METRIC_AND_INCH)).mapToLong(text -> count(METRIC, text)).sum();
      assertEquals(metric, both, plan.job());
    }
  }

  private static long count(Pattern pattern, String text) {
    Matcher matcher = pattern.matcher(text);
    long count = 0;
    while (matcher.find()) {
      count++;
    }
    return count;
  }
}
