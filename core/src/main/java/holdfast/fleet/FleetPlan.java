// SPDX-License-Identifier: Apache-2.0
package holdfast.fleet;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import holdfast.tables.SourceRef;
import java.io.InvalidObjectException;
import java.io.ObjectStreamException;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;

/**
 * Places that run rollers of one kind under one duty, with the survival of a roller over its running hours. Places fail
 * independently of each other. Immutable; thread-safe if the survival function is, and it can be written to a stream if the
 * survival function can.
 *
 * <p>For rating life the survival of a roller with life L10h is
 * {@code h -> ReliabilityKernel.survival(h / L10h)} of the package of bearings.
 */
@Source(document = "derivation", locator = "renewal equation, product of survivals, distribution of Poisson",
    provenance = Provenance.DERIVED)
public final class FleetPlan implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final int MOST = 1_000_000;
  private static final double MOST_YEARS = 1e6;

  private final Survival survival;
  // An unmodifiable copy, which is Serializable.
  @SuppressWarnings("serial")
  private final List<FleetPosition> positions;

  private FleetPlan(Survival survival, List<FleetPosition> positions) {
    this.survival = survival;
    this.positions = positions;
  }

  private Object readResolve() throws ObjectStreamException {
    if (survival == null || positions == null || positions.isEmpty()) {
      throw new InvalidObjectException("fleet: survival and places are wanted");
    }
    return new FleetPlan(survival, List.copyOf(positions));
  }

  /**
   * Describes a fleet.
   *
   * @param survival share of rollers that survive some running hours: 1 at 0, never growing, from 0 to 1
   * @param positions the places; at least one
   * @return the fleet
   * @throws InputException if there is no place or the survival at 0 is not 1
   */
  public static FleetPlan of(DoubleUnaryOperator survival, List<FleetPosition> positions) {
    Objects.requireNonNull(survival, "survival");
    Objects.requireNonNull(positions, "positions");
    if (positions.isEmpty()) {
      throw new InputException("positions", "none", "at least one", "a fleet without places needs nothing");
    }
    return new FleetPlan(new Survival(survival), List.copyOf(positions));
  }

  /**
   * Describes a fleet of like places with new rollers.
   *
   * @param survival share of rollers that survive some running hours
   * @param count number of places, from 1 to 1000000
   * @param hoursPerYear running hours of each in a year, over 0 up to 8784
   * @return the fleet
   * @throws InputException if an argument is outside its range
   */
  public static FleetPlan ofLike(DoubleUnaryOperator survival, int count, double hoursPerYear) {
    Objects.requireNonNull(survival, "survival");
    Check.within(count, 1, MOST, "number of places", "", "a fleet without places needs nothing; no works has more");
    List<FleetPosition> positions = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      positions.add(FleetPosition.ofNew("place " + i, hoursPerYear));
    }
    return of(survival, positions);
  }

  /**
   * The places.
   *
   * @return the places in the order given
   */
  public List<FleetPosition> positions() {
    return positions;
  }

  /**
   * Replacements on failure that are expected within some years from now, each failed roller replaced at once.
   *
   * @param years length of the period in years, 0 or more
   * @return the expectation, place by place
   * @throws InputException if the years are outside the range, or the survival function misbehaves
   */
  public ExpectedReplacements expectedReplacements(double years) {
    Check.notNegative(years, "period", "years", "it begins now");
    List<Double> each = new ArrayList<>();
    for (int i = 0; i < positions.size(); i++) {
      FleetPosition p = positions.get(i);
      int same = same(i);
      each.add(same < i ? each.get(same) : (Double) Renewal.expected(survival, p.hoursPerYear() * years, p.age().hours()));
    }
    return new ExpectedReplacements(years, positions, each);
  }

  /**
   * Places whose roller of today still runs after some years, replacements not counted.
   *
   * @param years length of the period in years, 0 or more
   * @return expected number, from 0 to the number of places; the others are the expected first failures
   * @throws InputException if the years are negative, or the survival function misbehaves
   */
  public double expectedSurvivors(double years) {
    Check.notNegative(years, "period", "years", "it begins now");
    double sum = 0;
    for (FleetPosition p : positions) {
      sum += survival.at(p.hoursPerYear() * years, p.age().hours());
    }
    return sum;
  }

  /** The first place with the same hours and age: its result is the same. */
  private int same(int i) {
    FleetPosition p = positions.get(i);
    for (int k = 0; k < i; k++) {
      FleetPosition q = positions.get(k);
      if (q.hoursPerYear() == p.hoursPerYear() && q.age().equals(p.age())) {
        return k;
      }
    }
    return i;
  }

  /**
   * Probability that no roller of the group fails within some years after all were replaced together.
   *
   * @param years length of the period in years, 0 or more
   * @return product of the survivals
   * @throws InputException if the years are negative
   */
  public double groupReliability(double years) {
    Check.notNegative(years, "period", "years", "it begins with the replacement");
    double product = 1;
    for (FleetPosition p : positions) {
      product *= survival.at(p.hoursPerYear() * years);
    }
    return product;
  }

  /**
   * Longest interval of replacing all rollers together such that none fails in between with a wanted probability.
   *
   * @param reliability wanted probability, over 0 and below 1
   * @return the interval
   * @throws InputException if the probability is outside its range, or the survival never falls that far
   */
  public GroupReplacement groupReplacement(double reliability) {
    return interval(reliability, positions.size(), this::groupReliability);
  }

  /**
   * Longest interval of replacing all rollers together such that each single one survives it with a wanted probability.
   *
   * @param reliability wanted probability of each, over 0 and below 1
   * @return the interval; the place with the most hours governs
   * @throws InputException if the probability is outside its range, or the survival never falls that far
   */
  public GroupReplacement replacementOfEach(double reliability) {
    double most = positions.stream().mapToDouble(FleetPosition::hoursPerYear).max().orElseThrow();
    return interval(reliability, 1, years -> survival.at(most * years));
  }

  /**
   * Places whose roller of today is as old already as the interval makes one, at the hours that the place runs: they are due
   * now.
   *
   * @param interval interval of replacement
   * @return the places, the most overdue first
   */
  public List<FleetPosition> due(GroupReplacement interval) {
    Objects.requireNonNull(interval, "interval");
    return positions.stream()
        .filter(p -> p.age().hours() > 0 && p.age().hours() >= interval.years() * p.hoursPerYear())
        .sorted(Comparator.comparingDouble((FleetPosition p) -> -p.age().hours() / p.hoursPerYear()))
        .toList();
  }

  /**
   * The fleet after some of its places got a new roller.
   *
   * @param replaced the places, each of which is one of the fleet
   * @return the fleet with these rollers new
   * @throws InputException if a place is none of the fleet
   */
  public FleetPlan renewed(List<FleetPosition> replaced) {
    Objects.requireNonNull(replaced, "replaced");
    List<FleetPosition> after = new ArrayList<>(positions);
    for (FleetPosition place : replaced) {
      int i = after.indexOf(place);
      if (i < 0) {
        throw new InputException("replaced place", place.name(), "one of the fleet, and once", "only what runs is replaced");
      }
      after.set(i, FleetPosition.ofNew(place.name(), place.hoursPerYear()));
    }
    return new FleetPlan(survival, List.copyOf(after));
  }

  /** Bracketed search: the survival is at least as wanted at the low end and below it at the high end. */
  private GroupReplacement interval(double reliability, int places, DoubleUnaryOperator survivalOfYears) {
    if (!(reliability > 0 && reliability < 1)) {
      throw new InputException("wanted reliability", Numbers.shortest(reliability), "over 0 and below 1",
          "certainty has no interval");
    }
    double low = 0;
    double high = 1;
    while (survivalOfYears.applyAsDouble(high) >= reliability) {
      low = high;
      high *= 2;
      if (high > MOST_YEARS) {
        throw new InputException("wanted reliability", Numbers.shortest(reliability), "above the least survival of the function",
            "the survival does not fall that far within " + Numbers.shortest(MOST_YEARS) + " years");
      }
    }
    double middle = 0.5 * (low + high);
    while (middle > low && middle < high) {
      if (survivalOfYears.applyAsDouble(middle) >= reliability) {
        low = middle;
      } else {
        high = middle;
      }
      middle = 0.5 * (low + high);
    }
    double most = positions.stream().mapToDouble(FleetPosition::hoursPerYear).max().orElseThrow();
    return new GroupReplacement(low, low * most, reliability, survivalOfYears.applyAsDouble(low), places);
  }

  /**
   * Spares that cover the failures of a lead time.
   *
   * @param fromYear begin of the lead time in years from now, 0 or more
   * @param leadYears length of the lead time in years, 0 or more
   * @param serviceLevel wanted probability that the stock suffices, 0 or more and below 1
   * @return the spares
   * @throws InputException if an argument is outside its range
   */
  public Spares spares(double fromYear, double leadYears, double serviceLevel) {
    Check.notNegative(leadYears, "lead time", "years", "it is a time");
    double mean = expectedReplacements(fromYear + leadYears).total() - expectedReplacements(fromYear).total();
    return Spares.of(Math.max(0, mean), serviceLevel);
  }

  static SourceRef renewalSource() {
    return SourceRef.derived("renewal equation M(t) = F(t) + ∫ M(t − x) dF(x); a failed part is replaced at once by a new one");
  }
}
