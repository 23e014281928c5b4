// SPDX-License-Identifier: Apache-2.0
package holdfast.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.bearings.OuterRing;
import holdfast.installation.ExampleJobs;
import holdfast.installation.InstallationPlan;
import holdfast.installation.MountingPlan;
import holdfast.rollers.MeasureSystem;
import holdfast.sheet.PaperSize;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class JobFileTest {
  static Stream<MountingPlan> jobs() {
    return ExampleJobs.all().values().stream();
  }

  private static List<Fault> faults(String text) {
    return assertThrows(JobFileException.class, () -> JobFile.parse(text)).faults();
  }

  private static String metric() {
    return JobFile.text(ExampleJobs.metricLever());
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void everyBundledJobIsTheSameFromItsText(MountingPlan job) {
    MountingPlan read = JobFile.parse(JobFile.text(job));
    assertEquals(job, read);
    assertEquals(job.summary(), read.summary());
    assertEquals(JobFile.text(job), JobFile.text(read));
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void everyTemplateIsAJob(MountingPlan job) {
    assertEquals(job, JobFile.parse(JobFile.template(job)));
  }

  @Test
  void everyExampleOfTheSchemaIsAcceptedAndComesBack() {
    for (boolean inFork : new boolean[] {false, true}) {
      for (Element element : Schema.of(inFork)) {
        if (element instanceof Key<?> key) {
          comesBack(key);
        }
      }
    }
  }

  private static <T> void comesBack(Key<T> key) {
    T value = key.kind().read().apply(key.example());
    for (holdfast.rollers.MeasureSystem system : holdfast.rollers.MeasureSystem.values()) {
      assertEquals(value, key.kind().read().apply(key.kind().write().text(value, system)), key.path());
    }
  }

  @Test
  void everyKeyThatMayBeLeftOutSaysWhatHoldsWithoutIt() {
    for (boolean inFork : new boolean[] {false, true}) {
      for (Element element : Schema.of(inFork)) {
        if (element instanceof Key<?> key) {
          assertEquals(key.mustBeThere(), key.otherwise().isEmpty(), key.path());
        }
      }
    }
  }

  @Test
  void theSizeOfASeriesGivesItsDimensions() {
    String text = JobFile.starter(ExampleJobs.metricLever(), "inch 1-1/2 in");
    InstallationPlan plan = (InstallationPlan) JobFile.parse(text);
    assertEquals(38.1, plan.roller().outsideDiameter().mm(), 1e-9);
    assertEquals("5/8-18", plan.roller().thread());
    assertEquals(15.875, plan.roller().studDiameter().mm(), 1e-9);
  }

  @Test
  void allFaultsAreListedWithTheirPlaces() {
    String text = metric().replace("torque: 75 N·m", "torqe: 75 N·m").replace("load: 2.1 kN", "load: 2,1 kN")
        .replace("head: slot", "head: slott");
    List<Fault> faults = faults(text);
    assertEquals(List.of("stud.head", "nut", "nut.torqe", "duty.load"),
        faults.stream().map(fault -> fault.key().equals("nut.torque") ? "nut" : fault.key()).toList());
    for (Fault fault : faults) {
      String line = text.lines().toList().get(fault.line() - 1);
      String last = fault.key().substring(fault.key().lastIndexOf('.') + 1);
      assertTrue(line.contains(last) || line.startsWith("nut"), fault + " stands at: " + line);
    }
    assertTrue(faults.get(0).reason().contains("'slot'"), faults.get(0).reason());
    assertTrue(faults.get(2).reason().contains("'torque'"), faults.get(2).reason());
  }

  @Test
  void aPartThatContradictsItselfIsAFaultAtItsSection() {
    String text = metric().replace("face-inner: 19 mm", "face-inner: 29 mm");
    List<Fault> faults = faults(text);
    assertEquals(1, faults.size());
    assertEquals("nut", faults.get(0).key());
    assertEquals("nut:", text.lines().toList().get(faults.get(0).line() - 1));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "- a\n", "a: &x 1\nb: *x\n", "a: !!int 1\n", "{", "a: b: c\n", "\tjob: x\n", "a\n---\nb\n", "? [a]\n: b\n",
      "mounting: no\n", "mounting: [stud]\n", "roller: 5\nmounting: stud in a member\n"})
  void whatIsNoJobIsRefusedWithAPlace(String text) {
    assertTrue(faults(text).stream().allMatch(fault -> fault.line() >= 1 && fault.column() >= 1));
  }

  @Test
  void deepOrHugeFilesEndInAFault() {
    assertEquals(1, faults("[".repeat(100_000)).size());
    assertEquals(1, faults("a:\n" + "x".repeat(2_000_000)).size());
  }

  @Test
  void jsonIsTakenToo() {
    String json = """
        {"job": "a", "mounting": "stud in a member", "duty": {"load": "2 kN"}}""";
    assertTrue(faults(json).stream().anyMatch(fault -> fault.key().equals("duty.speed")));
  }

  @Test
  void utf16WithItsMarkIsRead() throws IOException {
    byte[] bytes = ("\uFEFF" + metric()).getBytes(StandardCharsets.UTF_16LE);
    assertEquals(ExampleJobs.metricLever(), JobFile.read(new ByteArrayInputStream(bytes), "utf-16"));
    byte[] windows = ("\uFEFF" + metric().replace("\n", "\r\n")).getBytes(StandardCharsets.UTF_8);
    assertEquals(ExampleJobs.metricLever(), JobFile.read(new ByteArrayInputStream(windows), "windows"));
  }

  @Test
  void bytesThatAreNoTextAreRefused() {
    byte[] bytes = metric().replace("·", "\u00b7").getBytes(StandardCharsets.ISO_8859_1);
    JobFileException e =
        assertThrows(JobFileException.class, () -> JobFile.read(new ByteArrayInputStream(bytes), "latin"));
    assertEquals(1, e.faults().size());
  }

  @Test
  void aNameCannotForgeALine() {
    Fault fault = new Fault(1, 1, "job", "a\nSAFE TO INSTALL\u202e\u0007", "", "why");
    assertEquals(1, fault.toString().lines().count());
    assertTrue(fault.toString().codePoints().noneMatch(c -> c == 0x202e || c == 7));
  }

  @Test
  void aWhatIfIsAnotherJobAndLeavesItsOriginal() {
    InstallationPlan job = ExampleJobs.metricLever();
    MountingPlan changed = JobFile.with(job, Map.of("member.bore", "K7", "nut.torque", "70 N·m"));
    assertEquals("K7", ((InstallationPlan) changed).member().boreTolerance());
    assertEquals(70, ((InstallationPlan) changed).nut().torque().newtonMillimetre() / 1000, 1e-12);
    assertEquals(ExampleJobs.metricLever(), job);
    assertThrows(JobFileException.class, () -> JobFile.with(job, Map.of("member.bor", "K7")));
  }

  @Test
  void timesRangesAndFractionsAreReadAsTheTradeWritesThem() {
    assertEquals(20000, Schema.LIFE.kind().read().apply("5 years of 4000 h").hours(), 1e-9);
    assertEquals(38.1, Kind.LENGTH.read().apply("1-1/2 in").mm(), 1e-9);
    for (String text : List.of("0.10 … 0.16", "0.10..0.16", "0.10 to 0.16")) {
      assertEquals(new Kind.Range<>(0.1, 0.16), Kind.NUMBER_RANGE.read().apply(text));
    }
    assertEquals(Schema.TEMPERATURES.kind().read().apply("-20 °C … 110 °C"), Schema.TEMPERATURES.kind().read().apply("-20..110 °C"));
    assertThrows(holdfast.quantity.InputException.class, () -> Kind.NUMBER_RANGE.read().apply("0.16..0.10"));
    assertThrows(holdfast.quantity.InputException.class, () -> Kind.PERCENT.read().apply("0.95"));
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void aPageComputedAgainIsTheSameOnEitherPaper(MountingPlan job) {
    for (PaperSize paper : PaperSize.values()) {
      String page = JobSheet.html(job, paper);
      assertTrue(page.contains("size: " + paper + ";"), "the page says its paper");
      assertEquals(List.of(), JobSheet.recompute(page));
      assertEquals(JobSheet.Origin.here(), JobSheet.origin(page));
    }
    assertThrows(JobFileException.class, () -> JobSheet.recompute("<html></html>"));
    assertThrows(JobFileException.class, () -> JobSheet.origin("<html></html>"));
  }

  /** Every digit that a reader sees or that the job in the page holds; a drawn sample of them, and all with -Dlaws.factor. */
  @Test
  void oneChangedDigitIsFoundWhereverItStands() {
    String page = JobSheet.html(ExampleJobs.metricLever());
    List<Integer> digits = IntStream.range(0, page.length()).filter(i -> page.charAt(i) >= '0' && page.charAt(i) <= '9').boxed()
        .toList();
    assertTrue(digits.size() > 1000, digits.size() + " digits");
    int step = Integer.getInteger("laws.factor", 1) > 1 ? 1 : digits.size() / 40;
    for (int at = 0; at < digits.size(); at += step) {
      int place = digits.get(at);
      char other = page.charAt(place) == '9' ? '8' : (char) (page.charAt(place) + 1);
      String forged = page.substring(0, place) + other + page.substring(place + 1);
      assertTrue(found(forged), () -> "not found: " + page.substring(Math.max(0, place - 60), place + 20));
    }
  }

  private static boolean found(String forged) {
    try {
      return !JobSheet.recompute(forged).isEmpty() || !JobSheet.origin(forged).equals(JobSheet.Origin.here());
    } catch (JobFileException refused) {
      return true;
    }
  }

  @Test
  void thePageAndTheSchemaInTheFolderAreThoseOfTheProgram() throws IOException {
    assertEquals(JobFile.reference(), Files.readString(Path.of("docs/job-file.md")));
    assertEquals(JobFile.jsonSchema(), Files.readString(Path.of("docs/job-schema.json")));
  }

  @Test
  void aNameWithMarkUpStaysText() {
    InstallationPlan job = ExampleJobs.metricLever();
    MountingPlan named = JobFile.with(job, Map.of("job", "</script><b>x & y: #1 \"z\""));
    assertEquals("</script><b>x & y: #1 \"z\"", named.job());
    String page = JobSheet.html(named);
    assertEquals(List.of(), JobSheet.recompute(page));
    assertTrue(!page.contains("</script><b>"));
  }

  /** What a job may hold in memory, its file can say: every constant of a kind that lists words has a word. */
  @Test
  void everyConstantHasItsWord() {
    int seen = 0;
    for (boolean inFork : new boolean[] {false, true}) {
      for (Element element : Schema.of(inFork)) {
        if (element instanceof Key<?> key && !key.kind().words().isEmpty()
            && key.kind().read().apply(key.kind().words().get(0)) instanceof Enum<?> constant) {
          everyConstantOf(key, constant.getDeclaringClass());
          seen++;
        }
      }
    }
    assertTrue(seen > 10, seen + " keys");
  }

  @SuppressWarnings("unchecked")
  private static <T> void everyConstantOf(Key<T> key, Class<?> type) {
    for (Object constant : type.getEnumConstants()) {
      if (constant instanceof OuterRing ring && !ring.trackRoller()) {
        // No roller of a job has such a rating.
        continue;
      }
      String word = key.kind().write().text((T) constant, MeasureSystem.METRIC);
      assertEquals(constant, key.kind().read().apply(word), key.path());
    }
  }
}
