// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Mass;
import holdfast.quantity.OperatingTime;
import holdfast.quantity.Quantity;
import holdfast.quantity.Temperature;
import holdfast.quantity.Torque;
import holdfast.sheet.Card;
import holdfast.sheet.PaperSize;
import holdfast.sheet.SafeRounding;
import holdfast.sheet.SheetUnits;
import holdfast.trace.Cautions;
import holdfast.trace.SignalWord;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A fitter works down the card: nothing refers to what is done later, and every number is safe and one of the record. */
class BenchCardTest {
  private static final int RELEASED = 1000;

  private static List<MountingPlan> plans;

  /** All bundled jobs and a thousand random ones that are released, as well as those that are not and were drawn between. */
  private static synchronized List<MountingPlan> plans() {
    if (plans == null) {
      plans = new ArrayList<>(ExampleJobs.all().values());
      RandomPlans random = new RandomPlans(41);
      int released = 0;
      for (int draw = 0; released < RELEASED; draw++) {
        assertTrue(draw < 400_000, "hardly any random job is released: " + released);
        try {
          Supplier<? extends MountingPlan> kind = draw % 4 == 0 ? random::yoke : random::stud;
          MountingPlan plan = kind.get();
          boolean free = plan.stops().isEmpty();
          released += free ? 1 : 0;
          if (free || draw % 50 == 0) {
            plans.add(plan);
          }
        } catch (InputException refused) {
          // That is right: parts that do not go together make no job.
        }
      }
    }
    return plans;
  }

  /** What is done at the bench before what, whatever the enum says: first … second. */
  private static final BenchStep[][] BEFORE = {
      {BenchStep.CLEAN, BenchStep.CHECK}, {BenchStep.CHECK, BenchStep.OIL}, {BenchStep.CHECK, BenchStep.PORTS},
      {BenchStep.PORTS, BenchStep.PRESS}, {BenchStep.PORTS, BenchStep.SLIP}, {BenchStep.CHECK, BenchStep.PRESS},
      {BenchStep.CHECK, BenchStep.SLIP}, {BenchStep.OIL, BenchStep.TIGHTEN}, {BenchStep.PRESS, BenchStep.SEATED},
      {BenchStep.SLIP, BenchStep.SEATED}, {BenchStep.SEATED, BenchStep.TIGHTEN}, {BenchStep.SEATED, BenchStep.SECURE},
      {BenchStep.TIGHTEN, BenchStep.LOCK}, {BenchStep.LOCK, BenchStep.RESTORE}, {BenchStep.SECURE, BenchStep.RESTORE},
      {BenchStep.GREASE, BenchStep.RESTORE}, {BenchStep.RESTORE, BenchStep.RUN_IN},
      {BenchStep.RUN_IN, BenchStep.TIGHTEN_AGAIN}, {BenchStep.RUN_IN, BenchStep.LOOK_AGAIN}};

  @Test
  void noStepRefersToSomethingDoneLater() {
    Set<Object> kinds = new TreeSet<>();
    for (MountingPlan plan : plans()) {
      BenchCard card = BenchCard.of(plan);
      if (!card.released()) {
        continue;
      }
      List<BenchStep> steps = card.steps();
      assertEquals(BenchStep.ISOLATE, steps.get(0));
      for (BenchStep[] pair : BEFORE) {
        int first = steps.indexOf(pair[0]);
        int second = steps.indexOf(pair[1]);
        assertTrue(first < 0 || second < 0 || first < second, () -> pair[0] + " after " + pair[1] + " in " + steps);
      }
      for (BenchStep step : steps) {
        step.needs().forEach(need -> assertTrue(steps.indexOf(need) < steps.indexOf(step), () -> step + " needs " + need));
      }
      for (BenchLines.Filled filled : card.lines().all()) {
        for (Object gap : filled.gaps()) {
          if (gap instanceof BenchStep told) {
            assertTrue(steps.contains(told) && steps.indexOf(told) < steps.indexOf(filled.line().step()),
                () -> filled.line() + " refers to " + told);
          }
        }
      }
      assertTrue(steps.containsAll(List.of(BenchStep.CHECK, BenchStep.SEATED, BenchStep.GREASE, BenchStep.RESTORE)));
      assertTrue(steps.contains(BenchStep.PRESS) ^ steps.contains(BenchStep.SLIP), steps::toString);
      kinds.add(steps.toString());
    }
    // Pressed and slipped, stud and pin, with plugs and without, tightened again or looked at again.
    assertTrue(kinds.size() >= 8, kinds::toString);
  }

  @Test
  void everyLineIsPrintedByACardAndFillsItsGaps() {
    Set<BenchLine> seen = EnumSet.noneOf(BenchLine.class);
    // Ways to lock that random jobs do not have.
    List<MountingPlan> rare = List.of(locked(NutLocking.DOUBLE_NUTS), locked(NutLocking.SPRING_WASHER));
    Stream.concat(plans().stream(), rare.stream()).forEach(plan -> {
      for (BenchCard card : List.of(BenchCard.of(plan), BenchCard.of(plan).gauged(mm(0.002)), BenchCard.of(plan).gauged(mm(1)))) {
        if (card.released()) {
          for (BenchLines.Filled filled : card.lines().all()) {
            seen.add(filled.line());
            assertEquals(filled.gaps().size(), filled.line().text().split("\\{}", -1).length - 1, filled.line()::name);
          }
        }
      }
    });
    Set<BenchLine> never = EnumSet.complementOf(EnumSet.copyOf(seen));
    // Where the formula of the interval ends the speed limit has stopped the job before, in every job drawn so far.
    assertEquals(Set.of(BenchLine.GREASE_MONTHS), never);
  }

  private static InstallationPlan locked(NutLocking means) {
    InstallationPlan job = InstallationPlan.example();
    Nut nut = Nut.onFace(mm(24.8), mm(19)).friction(ThreadCondition.OILED, 0.10, 0.16).wrench(Nm(75), 0.04).reserve(1.5)
        .stack(mm(9), mm(3)).locking(means).build();
    return new InstallationPlan(job.job(), job.roller(), job.member(), nut, job.duty());
  }

  /** A number, a blank and a unit for a metric card. */
  private static double in(Quantity<?> quantity, boolean inch) {
    if (quantity instanceof Force force) {
      return inch ? force.in(KnownUnits.LBF) : force.in(KnownUnits.KN);
    }
    if (quantity instanceof Torque torque) {
      return inch ? torque.in(KnownUnits.LBF_IN) : torque.in(KnownUnits.N_M);
    }
    if (quantity instanceof Mass mass) {
      return inch ? mass.in(KnownUnits.OZ) : mass.gram();
    }
    if (quantity instanceof Length length) {
      return inch ? length.in(KnownUnits.INCH) : length.mm();
    }
    if (quantity instanceof Temperature temperature) {
      return inch ? temperature.in(KnownUnits.DEG_F) : temperature.celsius();
    }
    return ((OperatingTime) quantity).hours();
  }

  /** What the record holds: its values, and what the job itself states. */
  private static List<Double> record(MountingPlan plan) {
    List<Double> known = new ArrayList<>(List.of(20.0));
    for (PlanSummary.Value value : plan.summary().values()) {
      double factor = switch (value.unit()) {
        case "N·m" -> 1000;
        case "µm" -> 1e-3;
        default -> 1;
      };
      known.add(factor * value.value());
    }
    if (plan instanceof InstallationPlan stud) {
      stud.member().statedRunOut().ifPresent(runOut -> known.add(runOut.mm()));
      known.add(2 * stud.tightening().thread().pitch().mm());
      known.add(stud.nut().prevailing().newtonMillimetre());
    } else if (plan instanceof YokePlan yoke) {
      known.add(yoke.roller().seatWidth().mm());
      yoke.pressForce().ifPresent(force -> known.addAll(List.of(force.least().newton(), force.greatest().newton())));
    }
    return known;
  }

  @Test
  void everyNumberIsANumberOfTheRecordRoundedToTheSafeSide() {
    int numbers = 0;
    for (MountingPlan plan : plans()) {
      List<Double> known = BenchCard.of(plan).released() ? record(plan) : List.of();
      for (BenchNumber number : BenchCard.of(plan).numbers()) {
        // Temperatures of heating are told by the record in words only.
        boolean temperature = number.exact() instanceof Temperature;
        assertTrue(temperature || known.stream().anyMatch(value ->
            Math.abs(value - number.exact().base()) <= 1e-9 * Math.abs(value)), () -> number + " is not in " + known);
        for (SheetUnits units : List.of(SheetUnits.METRIC, SheetUnits.INCH)) {
          double printed = Double.parseDouble(number.text(units).split(" ", -1)[0]);
          double exact = in(number.exact(), units == SheetUnits.INCH);
          double step = temperature ? 1 : exact == 0 ? 0 : Math.pow(10, Math.floor(Math.log10(exact)) - number.digits() + 1);
          double over = number.side() == SafeRounding.UP ? printed - exact : exact - printed;
          assertTrue(over >= -1e-9 * Math.abs(exact) && over <= step * (1 + 1e-9), () -> number.text(units) + " for " + exact);
          numbers++;
        }
      }
    }
    assertTrue(numbers > 10_000, "only " + numbers);
  }

  /** Whatever is printed in bold is one of those numbers or a limit that lies inside the drawn ones. */
  @Test
  void nothingElseIsPrintedAsANumber() {
    Pattern limits = Pattern.compile("([-0-9.]+) mm … ([-0-9.]+) mm");
    for (MountingPlan plan : plans()) {
      BenchCard card = BenchCard.of(plan.withUnits(SheetUnits.METRIC));
      List<String> texts = card.numbers().stream().map(number -> number.text(SheetUnits.METRIC)).toList();
      for (Card.Item item : card.page().items()) {
        for (Card.Line line : item.lines()) {
          for (Card.Part part : line.parts()) {
            if (part.style() == Card.Style.NUMBER || part.style() == Card.Style.LARGE) {
              Matcher two = limits.matcher(part.text());
              assertTrue(texts.contains(part.text()) || (two.matches() && inside(plan, two)), part::text);
            }
          }
        }
      }
    }
  }

  private static boolean inside(MountingPlan plan, Matcher limits) {
    double lower = Double.parseDouble(limits.group(1));
    double upper = Double.parseDouble(limits.group(2));
    return Stream.of("bore", "stud", "ear", "pin", "roller-bore").anyMatch(part -> {
      List<PlanSummary.Value> values = plan.summary().values();
      double low = value(values, part + ".lower-limit");
      double high = value(values, part + ".upper-limit");
      return lower >= low - 1e-9 && lower < low + 0.0001 && upper <= high + 1e-9 && upper > high - 0.0001;
    });
  }

  private static double value(List<PlanSummary.Value> values, String id) {
    return values.stream().filter(value -> value.id().equals(id)).mapToDouble(PlanSummary.Value::value).findFirst().orElse(1e9);
  }

  @Test
  void theSettingLiesInTheWindowAndTheGreatestTorqueIsNotRaised() {
    for (MountingPlan plan : plans()) {
      if (plan instanceof InstallationPlan stud && stud.stops().isEmpty()) {
        double printed = Double.parseDouble(StudBench.setting(stud).text(SheetUnits.METRIC).split(" ", -1)[0]);
        assertTrue(printed >= stud.torqueWindow().lowest().in(KnownUnits.N_M) - 1e-9);
        assertTrue(printed <= stud.torqueWindow().highest().in(KnownUnits.N_M) + 1e-9);
      }
    }
    assertEquals("75 N·m", StudBench.setting(InstallationPlan.example()).text(SheetUnits.METRIC));
  }

  @Test
  void aJobThatIsNotReleasedPrintsOnlyWhyAndWhatOpensIt() {
    int stopped = 0;
    for (MountingPlan plan : plans()) {
      Card page = BenchCard.of(plan).page();
      if (!plan.stops().isEmpty()) {
        stopped++;
        assertTrue(page.items().isEmpty() && page.drawing().isEmpty() && !page.stops().isEmpty());
        assertTrue(BenchCard.of(plan).numbers().isEmpty() && BenchCard.of(plan).steps().isEmpty());
        assertFalse(page.html(PaperSize.A4).contains("<li"));
      } else {
        assertTrue(page.stops().isEmpty() && page.drawing().isPresent());
      }
    }
    assertTrue(stopped > 10, "only " + stopped);
  }

  /** Twenty words a sentence at most, a gap counted as one. */
  static void plain(String text) {
    for (String sentence : text.split("[.!?](?: |$)", -1)) {
      long words = Stream.of(sentence.split(" ", -1)).filter(word -> !word.isBlank()).count();
      assertTrue(words <= 20, () -> words + " words: " + sentence);
    }
  }

  @Test
  void sentencesAreShort() {
    for (BenchLine line : BenchLine.values()) {
      plain(line.text());
    }
    Cautions.topics().stream().flatMap(topic -> Cautions.about(topic).stream()).forEach(caution -> plain(caution.text()));
    for (StopCause cause : StopCause.values()) {
      plain(cause.why());
      plain(cause.opens());
      assertEquals(1, cause.why().chars().filter(c -> c == '.').count(), cause.why());
    }
  }

  @Test
  void theSignalWordFollowsFromWhatCanHappen() {
    assertEquals(SignalWord.DANGER, BenchLine.STOP_MACHINE.signal());
    assertEquals(SignalWord.WARNING, BenchLine.INJECTION.signal());
    assertEquals(SignalWord.WARNING, BenchLine.RAM.signal());
    assertEquals(SignalWord.CAUTION, BenchLine.HOT.signal());
    assertEquals(SignalWord.NOTICE, BenchLine.BACK_PRESSURE.signal());
    assertFalse(SignalWord.NOTICE.injury());
  }

  @Test
  void gaugesDrawTheLimitsIn() {
    BenchCard card = BenchCard.of(InstallationPlan.example().withBore("S6")).gauged(mm(0.002));
    assertTrue(card.text().contains("Bore 17.966 mm … 17.973 mm"), card.text());
    assertTrue(card.text().contains("Stud 17.984 mm … 17.998 mm"), card.text());
    assertTrue(card.gauged(mm(0.006)).text().contains("Bore: this gauge is too coarse"), "11 µm tolerance, 12 µm of guard bands");
    InputException refused = assertThrows(InputException.class, () -> card.gauged(mm(-0.001)));
    assertEquals("uncertainty of the gauges", refused.parameter());
  }

  private static List<Double> sizes(String text, String pattern) {
    return Pattern.compile(pattern).matcher(text).results().map(found -> Double.parseDouble(found.group(1))).toList();
  }

  @Test
  void textIsLegible() {
    for (MountingPlan plan : List.of(InstallationPlan.example(), ExampleJobs.inchSlipFit(), ExampleJobs.yokeInFork())) {
      String page = plan.card().html(PaperSize.LETTER);
      List<Double> style = sizes(page, "font(?:-size)?: ([0-9.]+)pt");
      assertTrue(style.size() > 3 && style.stream().allMatch(size -> size >= 11), style::toString);
      assertFalse(page.contains("em;") && page.contains("font-size: ."), "no relative size below 1");
      List<Double> pictures = sizes(page, "font-size=\"([0-9.]+)\"");
      assertTrue(!pictures.isEmpty() && pictures.stream().allMatch(size -> size >= 8), pictures::toString);
      assertFalse(page.contains("<script") || page.contains("http-equiv") || page.contains("src="));
    }
  }
}
