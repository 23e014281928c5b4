// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.DecisionRule;
import holdfast.fits.LimitsOfSize;
import holdfast.quantity.Check;
import holdfast.quantity.Length;
import holdfast.sheet.Block;
import holdfast.sheet.Card;
import holdfast.sheet.PaperSize;
import holdfast.tables.TableSet;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The card for the bench: one side of paper with a picture and the steps in the order of the work. Its numbers are those of
 * the plan, rounded to the safe side by {@link BenchNumber}. A job that is not released prints why, and what opens it.
 *
 * @param plan the job
 * @param gauge expanded uncertainty of the gauges, 0 or more, by which the limits are drawn in; null if it is not known, then
 *     the card asks for it
 */
public record BenchCard(MountingPlan plan, Length gauge) implements Serializable {
  // Refuses an uncertainty below 0.
  public BenchCard {
    Objects.requireNonNull(plan, "plan");
    if (gauge != null) {
      Check.notNegative(gauge.mm(), "uncertainty of the gauges", "mm", "it is an amount");
    }
  }

  /**
   * The card of a job, its limits those of the drawing.
   *
   * @param plan the job
   * @return the card
   */
  public static BenchCard of(MountingPlan plan) {
    return new BenchCard(plan, null);
  }

  /**
   * The same card with limits that are drawn in by the whole uncertainty of the gauges.
   *
   * @param uncertainty expanded uncertainty, coverage factor 2, 0 or more
   * @return the card
   */
  public BenchCard gauged(Length uncertainty) {
    Objects.requireNonNull(uncertainty, "uncertainty");
    return new BenchCard(plan, uncertainty);
  }

  /**
   * Whether the job is released.
   *
   * @return false if the card says nothing but why not
   */
  public boolean released() {
    return plan.stops().isEmpty();
  }

  /**
   * The steps that this job has.
   *
   * @return in the order of the work; empty if the job is not released
   */
  public List<BenchStep> steps() {
    return released() ? lines().steps() : List.of();
  }

  /**
   * The numbers that stand on the card, limits of size apart.
   *
   * @return in the order of the card; empty if the job is not released
   */
  public List<BenchNumber> numbers() {
    List<BenchNumber> numbers = new ArrayList<>();
    if (released()) {
      for (BenchLines.Filled filled : lines().all()) {
        for (Object gap : filled.gaps()) {
          if (gap instanceof BenchNumber number) {
            numbers.add(number);
          } else if (gap instanceof BenchLines.Large large) {
            numbers.add(large.number());
          }
        }
      }
    }
    return List.copyOf(numbers);
  }

  BenchLines lines() {
    return plan instanceof InstallationPlan stud ? StudBench.lines(stud, this) : YokeBench.lines((YokePlan) plan, this);
  }

  /** Limits that a reading must keep; empty if the gauge is too coarse to prove anything. */
  Optional<BenchLines.Limits> accepted(LimitsOfSize drawn) {
    Length guard = gauge == null ? new Length(0) : DecisionRule.WHOLE_UNCERTAINTY.guardBand(gauge);
    Length lower = drawn.lower().plus(guard);
    Length upper = drawn.upper().minus(guard);
    return lower.compareTo(upper) <= 0 ? Optional.of(new BenchLines.Limits(lower, upper)) : Optional.empty();
  }

  /**
   * The card as a document.
   *
   * @return picture and steps, or the reasons why not
   */
  public Card page() {
    List<Stop> stops = plan instanceof InstallationPlan stud ? Verdict.stops(stud) : YokeVerdict.stops((YokePlan) plan);
    List<String> marks = new ArrayList<>();
    if (stops.isEmpty()) {
      marks.add("Fitted by ____________________ Date ______________ The maker's instructions, the rules of the site and a"
          + " licensed engineer go before this card.");
    } else {
      marks.add("The record of this job says more. After a change print a new card.");
    }
    marks.add("Table set " + TableSet.bundled().version());
    List<Card.Stop> reasons =
        stops.stream().map(stop -> new Card.Stop(stop.cause().why(), stop.cause().opens())).distinct().toList();
    return stops.isEmpty()
        ? new Card("Bench card", subtitle(), picture(), lines().items(plan.units()), List.of(), marks)
        : new Card("Bench card", plan.job(), null, List.of(), reasons, marks);
  }

  private String subtitle() {
    return plan.job() + " · " + plan.roller().name();
  }

  private Block.Picture picture() {
    return plan instanceof InstallationPlan stud ? StudBenchPicture.of(stud) : YokeBenchPicture.of((YokePlan) plan);
  }

  /**
   * The card for print.
   *
   * @param paper the paper
   * @return one HTML page without scripts and without anything loaded from elsewhere
   */
  public String html(PaperSize paper) {
    return page().html(paper);
  }

  /**
   * The card for a terminal.
   *
   * @return the text, at most 100 columns wide
   */
  public String text() {
    return page().text();
  }
}
