// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.Numbers;
import holdfast.trace.Derivation;
import holdfast.trace.Warning;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Basic rating life, or this life at another reliability: {@code Ln = a1 (C/P)^p}.
 *
 * @param ratings load ratings of the bearing
 * @param load dynamic equivalent load P, over 0
 * @param reliability reliability, 90 % for L10
 * @param l10 basic rating life L10 in million revolutions
 * @param a1 life modification factor for reliability
 */
public record BasicLife(LoadRatings ratings, Force load, Reliability reliability, double l10, double a1)
    implements RatedLife {
  public BasicLife {
    Objects.requireNonNull(ratings, "ratings");
    Objects.requireNonNull(load, "load");
    Objects.requireNonNull(reliability, "reliability");
    Check.finite(l10, "L10", "million revolutions");
    Check.finite(a1, "a1", "");
  }

  static BasicLife of(LoadRatings ratings, Force load, Reliability reliability) {
    double l10 = BasicLifeKernel.l10(ratings.family(), ratings.dynamic().newton(), load.newton());
    return new BasicLife(ratings, load, reliability, l10, reliability.a1());
  }

  /**
   * The same duty at another reliability.
   *
   * @param wanted the reliability
   * @return Ln = a1 L10
   */
  public BasicLife at(Reliability wanted) {
    Objects.requireNonNull(wanted, "wanted");
    return of(ratings, load, wanted);
  }

  @Override
  public double millionRevolutions() {
    return a1 * l10;
  }

  @Override
  public Derivation explain() {
    String exponent = ratings.family().ball() ? "3" : "(10/3)";
    return Derivation.of("Rating life of a " + ratings.family())
        .step("L10", "basic rating life", "(C/P)^" + exponent, l10, "million revolutions", BearingSources.LIFE,
            "C = " + ratings.dynamic(), "P = " + load)
        .step("a1", "life modification factor for reliability", "0.95 [ln(100/S)/ln(100/90)]^(2/3) + 0.05", a1, "",
            BearingSources.RELIABILITY, "S = " + reliability)
        .step(reliability.lifeSymbol(), "life with this reliability", "a1 L10", millionRevolutions(),
            "million revolutions", BearingSources.LIFE, "a1 = " + Numbers.significant(a1, 5),
            "L10 = " + Numbers.significant(l10, 6))
        .build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    LifeWarnings.load(warnings, ratings, load);
    LifeWarnings.reliability(warnings, reliability);
    return List.copyOf(warnings);
  }

  /** For example {@code "L10 = 584.7 million revolutions (P = 2.1 kN)"}. */
  @Override
  public String toString() {
    return reliability.lifeSymbol() + " = " + Numbers.significant(millionRevolutions(), 4) + " million revolutions (P = "
        + load + ")";
  }
}
