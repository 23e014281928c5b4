// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.um;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.fits.FitCandidate.Standing;
import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class FitSelectorTest {
  @Test
  void preferredFitsComeFirst() {
    List<FitCandidate> candidates = FitSelector.holeBasis(mm(25)).interferenceBetween(um(0), um(45)).candidates();
    assertEquals("H7/p6", candidates.get(0).fit().designation());
    assertEquals(Standing.PREFERRED, candidates.get(0).standing());
    assertEquals("H7/r6", candidates.get(1).fit().designation());
    assertEquals(Standing.COMMON, candidates.get(1).standing());
    assertTrue(candidates.get(0).reasons().get(0).startsWith("preferred fit of ANSI B4.2-1978"));
    assertTrue(candidates.get(0).toString().contains("spans 34 µm of the 45 µm wanted"), candidates.get(0).toString());
    Standing last = Standing.PREFERRED;
    for (FitCandidate candidate : candidates) {
      assertTrue(candidate.standing().compareTo(last) >= 0);
      last = candidate.standing();
    }
    assertEquals(candidates.subList(0, 3), FitSelector.holeBasis(mm(25)).interferenceBetween(um(0), um(45)).candidates(3));
  }

  @Test
  void candidatesPrintOneALine() {
    FitRequest request = FitSelector.holeBasis(mm(25)).interferenceBetween(um(5), um(45));
    assertEquals(
        """
        25 H7/r6: interference fit, 7 µm … 41 µm interference; commonly used, hole basis
        25 H6/p5: interference fit, 9 µm … 31 µm interference; commonly used, hole basis""",
        request.candidates(2).toString());
    FitCandidates all = request.candidates();
    assertTrue(all.toString().endsWith("… and " + (all.size() - 10) + " more"), all.toString());
    assertThrows(UnsupportedOperationException.class, () -> all.remove(0));
    FitCandidates none = FitSelector.holeBasis(mm(25)).interferenceBetween(um(5), um(6)).candidates();
    assertEquals("no fit of ISO 286 satisfies the request", none.toString());
  }

  @Test
  void exactlyTenCandidatesLeaveNoMore() {
    String ten = FitSelector.holeBasis(mm(25)).interferenceBetween(um(5), um(45)).candidates(10).toString();
    assertEquals(10, ten.lines().count());
    assertTrue(!ten.contains("more"), ten);
  }

  @Test
  void reasonsSayWhereACandidateStands() {
    FitSelector selector = FitSelector.anyBasis(mm(25)).grades(ToleranceGrade.IT4, ToleranceGrade.IT7);
    Map<String, FitCandidate> found = new HashMap<>();
    for (FitCandidate candidate : selector.between(um(50), um(40)).candidates()) {
      found.put(candidate.fit().designation(), candidate);
    }
    // The wanted range has its middle at -5 µm; IT4, IT5, IT6 and IT7 are 6, 9, 13 and 21 µm.
    assertEquals(
        List.of(
            "both classes are for general use after ISO 1829:1975 (recalled)",
            "no basis",
            "grades as usual, the shaft like the hole or one finer (common practice)",
            "spans 34 µm of the 90 µm wanted, its middle 5 µm off"),
        found.get("JS7/js6").reasons());
    assertEquals(Standing.GENERAL_USE, found.get("JS7/js6").standing());
    // JS5 and js4 are not among the classes for general use.
    assertEquals(
        List.of(
            "no basis", "grades unusual: 1 step off (common practice)", "spans 22 µm of the 90 µm wanted, its middle 5 µm off"),
        found.get("JS5/js6").reasons());
    assertEquals(
        List.of(
            "no basis", "grades unusual: 2 steps off (common practice)", "spans 27 µm of the 90 µm wanted, its middle 5 µm off"),
        found.get("JS7/js4").reasons());
    assertEquals(Standing.OTHER, found.get("JS5/js6").standing());
    assertEquals(Standing.OTHER, found.get("JS7/js4").standing());
    List<String> press = found.get("H7/p6").reasons();
    assertTrue(press.get(0).startsWith("preferred fit of ANSI B4.2-1978"), press.toString());
    assertTrue(press.stream().anyMatch(r -> r.startsWith("use: light press")), press.toString());
    assertEquals("spans 34 µm of the 90 µm wanted, its middle 13 µm off", press.get(press.size() - 1));
  }

  /** Standing, basis, steps off the usual grades, wide before narrow, near the middle before far from it. */
  @Test
  void candidatesStandInOrder() {
    List<FitCandidate> candidates =
        FitSelector.anyBasis(mm(25)).grades(ToleranceGrade.IT5, ToleranceGrade.IT9).between(um(50), um(30)).candidates();
    Comparator<FitCandidate> order =
        Comparator.comparing(FitCandidate::standing)
            .thenComparing(FitCandidate::basis)
            .thenComparing(c -> stepsOff(c.fit()))
            .thenComparing(c -> -Math.round(c.fit().tolerance().in(KnownUnits.UM) * 100))
            .thenComparing(c -> Math.round(Math.abs(c.fit().meanClearance().in(KnownUnits.UM) + 10) * 100));
    List<FitCandidate> sorted = new ArrayList<>(candidates);
    sorted.sort(order);
    assertEquals(sorted, candidates);
    assertTrue(candidates.size() > 1000, "candidates: " + candidates.size());
  }

  /** How far the shaft's grade is from that of the hole or the next finer. */
  private static int stepsOff(Fit fit) {
    int finer = grade(fit.hole()) - grade(fit.shaft());
    return Math.min(Math.abs(finer), Math.abs(finer - 1));
  }

  private static int grade(TolerancedSize part) {
    return Integer.parseInt(part.designation().replaceAll("\\D", ""));
  }

  @Test
  void oneAmountMayBeWantedExactly() {
    FitRequest exact = FitSelector.holeBasis(mm(25)).clearanceBetween(um(5), um(5));
    assertEquals(um(5), exact.least());
    assertEquals(um(5), exact.greatest());
    assertEquals(um(0), FitSelector.holeBasis(mm(25)).between(um(0), um(0)).greatest());
  }

  @Test
  void aNarrowRequestLeavesNoCandidate() {
    FitRequest request = FitSelector.shaftBasis(mm(25)).clearanceBetween(um(5), um(5.1));
    assertTrue(request.candidates().isEmpty());
    assertTrue(request.best().isEmpty());
  }

  @Test
  void basisAndGradesLimitTheSearch() {
    List<FitCandidate> shaft = FitSelector.shaftBasis(mm(25)).clearanceBetween(um(0), um(60)).candidates();
    assertTrue(shaft.stream().allMatch(c -> c.fit().designation().contains("/h")));
    List<FitCandidate> seven =
        FitSelector.anyBasis(mm(25)).grades(ToleranceGrade.IT7, ToleranceGrade.IT7).clearanceBetween(um(0), um(60)).candidates();
    assertTrue(seven.size() > 3 && seven.stream().allMatch(c -> c.fit().designation().matches("[A-Z]+7/[a-z]+7")));
    List<FitCandidate> listed = FitSelector.anyBasis(mm(25)).onlyPreferred().clearanceBetween(um(0), um(60)).candidates();
    assertTrue(!listed.isEmpty() && listed.stream().noneMatch(c -> c.listings().isEmpty()));
  }

  @Test
  void limitsThatAFitMeetsExactlyAreMet() {
    FitRequest exact = FitSelector.holeBasis(mm(25)).onlyPreferred().interferenceBetween(um(1), um(35));
    assertEquals("H7/p6", exact.best().orElseThrow().fit().designation());
  }

  @Test
  void wrongRequestsAreRefused() {
    FitSelector selector = FitSelector.holeBasis(mm(25));
    assertEquals(
        "least clearance",
        assertThrows(InputException.class, () -> selector.clearanceBetween(um(-1), um(5))).parameter());
    InputException order = assertThrows(InputException.class, () -> selector.interferenceBetween(um(9), um(5)));
    assertEquals("greatest interference", order.parameter());
    assertEquals("9 µm or more", order.permitted());
    assertThrows(InputException.class, () -> selector.between(um(-1), um(5)));
    assertThrows(InputException.class, () -> selector.between(um(1), um(-5)));
    assertThrows(InputException.class, () -> selector.grades(ToleranceGrade.IT8, ToleranceGrade.IT7));
    assertThrows(InputException.class, () -> FitSelector.anyBasis(mm(4000)));
  }

  /** Brute force over the classes by their text, and over the lists. */
  @Property(tries = 25)
  void candidatesAreExactlyThePairsThatSatisfyTheRequest(
      @ForAll @DoubleRange(min = 0.5, max = 3150) double size,
      @ForAll @IntRange(min = -200, max = 100) int low,
      @ForAll @IntRange(min = 0, max = 150) int width,
      @ForAll Basis basis) {
    Length nominal = new Length(size);
    FitSelector selector = new FitSelector(nominal, basis, ToleranceGrade.IT2, ToleranceGrade.IT12, false);
    FitRequest request = new FitRequest(selector, um(low), um(low + width));
    List<FitCandidate> candidates = request.candidates();
    Set<String> found = new HashSet<>();
    for (FitCandidate candidate : candidates) {
      assertTrue(found.add(candidate.fit().designation()));
      assertTrue(candidate.fit().minimumClearance().in(KnownUnits.UM) >= low - 1e-6);
      assertTrue(candidate.fit().maximumClearance().in(KnownUnits.UM) <= low + width + 1e-6);
      assertEquals(candidate.listings().isEmpty(), candidate.standing().compareTo(Standing.COMMON) > 0);
    }
    assertEquals(bruteForce(nominal, low, low + width, basis), found);
    Set<String> wanted =
        PreferredFits.all().stream()
            .filter(p -> basis == Basis.NEITHER || (basis == Basis.HOLE ? p.hole() : p.shaft()).letter() == DeviationLetter.H)
            .filter(p -> p.isDefinedFor(nominal))
            .filter(p -> p.at(nominal).minimumClearance().in(KnownUnits.UM) >= low - 1e-6)
            .filter(p -> p.at(nominal).maximumClearance().in(KnownUnits.UM) <= low + width + 1e-6)
            .map(PreferredFit::designation)
            .collect(Collectors.toSet());
    assertTrue(found.containsAll(wanted));
    Set<String> listed =
        new FitRequest(selector.onlyPreferred(), um(low), um(low + width))
            .candidates().stream().map(c -> c.fit().designation()).collect(Collectors.toSet());
    assertEquals(wanted, listed);
  }

  private static Set<String> bruteForce(Length size, double low, double high, Basis basis) {
    Set<String> satisfying = new HashSet<>();
    for (DeviationLetter holeLetter : DeviationLetter.values()) {
      for (int holeGrade = 2; holeGrade <= 12; holeGrade++) {
        ToleranceClass hole = ToleranceClass.of(holeLetter.text(Feature.HOLE) + holeGrade);
        boolean holeSearched = basis != Basis.HOLE || holeLetter == DeviationLetter.H;
        if (!holeSearched || !hole.isDefinedFor(size)) {
          continue;
        }
        LimitDeviations holeLimits = hole.limitDeviations(size);
        for (DeviationLetter shaftLetter : DeviationLetter.values()) {
          for (int shaftGrade = 2; shaftGrade <= 12; shaftGrade++) {
            ToleranceClass shaft = ToleranceClass.of(shaftLetter.text(Feature.SHAFT) + shaftGrade);
            boolean shaftSearched = basis != Basis.SHAFT || shaftLetter == DeviationLetter.H;
            if (shaftSearched && shaft.isDefinedFor(size)) {
              LimitDeviations shaftLimits = shaft.limitDeviations(size);
              double least = holeLimits.lower().minus(shaftLimits.upper()).in(KnownUnits.UM);
              double greatest = holeLimits.upper().minus(shaftLimits.lower()).in(KnownUnits.UM);
              if (least >= low - 1e-6 && greatest <= high + 1e-6) {
                satisfying.add(hole + "/" + shaft);
              }
            }
          }
        }
      }
    }
    return satisfying;
  }
}
