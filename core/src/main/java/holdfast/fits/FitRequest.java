// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.fits.FitCandidate.Standing;
import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A wanted range of clearance for a {@link FitSelector}. Clearances are signed: a negative one is an interference.
 *
 * @param selector what is searched
 * @param least least permitted clearance
 * @param greatest greatest permitted clearance
 */
public record FitRequest(FitSelector selector, Length least, Length greatest) implements Serializable {
  /** Clearances of fits and wanted limits, µm, are taken as equal within this: noise of binary fractions of a mm. */
  private static final double NOISE = 1e-6;

  /** Order of the candidates: standing, basis, usual step of the grades, wide tolerances, middle of the range. */
  private static final Comparator<Pair> ORDER =
      Comparator.comparing(Pair::standing)
          .thenComparing(Pair::basis)
          .thenComparingInt(Pair::gradeOddity)
          .thenComparing(Comparator.comparingDouble(Pair::span).reversed())
          .thenComparingDouble(Pair::offset);

  public FitRequest {
    Objects.requireNonNull(selector, "selector");
    Objects.requireNonNull(least, "least");
    Objects.requireNonNull(greatest, "greatest");
    if (least.compareTo(greatest) > 0) {
      throw new InputException(
          "least clearance", FitText.deviation(least), "up to the greatest, " + FitText.deviation(greatest),
          "no fit lies in a range that ends before it begins; clearances are signed, an interference is negative");
    }
  }

  private record Pair(
      ToleranceClass hole, ToleranceClass shaft, List<PreferredFit> listings, Standing standing, double span, double offset) {
    Basis basis() {
      return Basis.of(hole, shaft);
    }

    /** 0 if the shaft has the grade of the hole or the next finer, else how many grades it is off. */
    int gradeOddity() {
      int step = hole.grade().code() - shaft.grade().code();
      return step < 0 ? -step : Math.max(0, step - 1);
    }
  }

  /**
   * All fits that satisfy the request.
   *
   * @return the candidates in order; empty if no fit satisfies it
   */
  public FitCandidates candidates() {
    return candidates(Integer.MAX_VALUE);
  }

  /**
   * The first so many candidates.
   *
   * @param limit how many at most, 0 or more
   * @return the candidates in order
   * @throws holdfast.quantity.InputException if the number is negative
   */
  public FitCandidates candidates(int limit) {
    Check.within(limit, 0, Integer.MAX_VALUE, "number of candidates", "", "they are counted");
    return new FitCandidates(pairs().stream().limit(limit).map(this::candidate).toList());
  }

  /**
   * The first candidate.
   *
   * @return it, or empty if no fit satisfies the request
   */
  public Optional<FitCandidate> best() {
    return candidates(1).stream().findFirst();
  }

  private List<Pair> pairs() {
    double low = least.in(KnownUnits.UM) - NOISE;
    double high = greatest.in(KnownUnits.UM) + NOISE;
    double middle = (low + high) / 2;
    double size = selector.nominalSize().mm();
    List<ToleranceClass> shafts = selector.classes(Feature.SHAFT);
    double[] upper = new double[shafts.size()];
    double[] lower = new double[shafts.size()];
    for (int i = 0; i < upper.length; i++) {
      upper[i] = LimitDeviationsKernel.upper(size, shafts.get(i).code());
      lower[i] = LimitDeviationsKernel.lower(size, shafts.get(i).code());
    }
    List<Pair> pairs = new ArrayList<>();
    for (ToleranceClass hole : selector.classes(Feature.HOLE)) {
      double holeUpper = LimitDeviationsKernel.upper(size, hole.code());
      double holeLower = LimitDeviationsKernel.lower(size, hole.code());
      for (int i = 0; i < upper.length; i++) {
        double minimum = holeLower - upper[i];
        double maximum = holeUpper - lower[i];
        if (minimum >= low && maximum <= high) {
          List<PreferredFit> listings = PreferredFits.find(hole, shafts.get(i));
          if (!selector.preferredOnly() || !listings.isEmpty()) {
            double offset = Math.abs((minimum + maximum) / 2 - middle);
            Standing standing = standing(hole, shafts.get(i), listings);
            // Hundredths of a micrometre: equal spans must compare as equal.
            double span = Math.rint((maximum - minimum) * 100) / 100;
            pairs.add(new Pair(hole, shafts.get(i), listings, standing, span, Math.rint(offset * 100) / 100));
          }
        }
      }
    }
    // A stable sort: pairs of equal rank stay in the order of their codes.
    pairs.sort(ORDER);
    return pairs;
  }

  private static Standing standing(ToleranceClass hole, ToleranceClass shaft, List<PreferredFit> listings) {
    if (!listings.isEmpty()) {
      return listings.get(0).list() == PreferredList.ANSI_PREFERRED ? Standing.PREFERRED : Standing.COMMON;
    }
    boolean general = PreferredFits.isForGeneralUse(hole) && PreferredFits.isForGeneralUse(shaft);
    return general ? Standing.GENERAL_USE : Standing.OTHER;
  }

  private FitCandidate candidate(Pair pair) {
    List<String> reasons = new ArrayList<>();
    for (PreferredFit listing : pair.listings) {
      reasons.add(listing.list().toString());
    }
    if (!pair.listings.isEmpty()) {
      reasons.add("use: " + pair.listings.get(0).use() + " (common practice)");
    } else if (pair.standing == Standing.GENERAL_USE) {
      reasons.add("both classes are for general use after ISO 1829:1975 (recalled)");
    }
    reasons.add(pair.basis().toString());
    int oddity = pair.gradeOddity();
    reasons.add(
        oddity == 0
            ? "grades as usual, the shaft like the hole or one finer (common practice)"
            : "grades unusual: " + oddity + (oddity == 1 ? " step" : " steps") + " off (common practice)");
    double wanted = greatest.minus(least).in(KnownUnits.UM);
    reasons.add(
        "spans " + Numbers.significant(pair.span, 6) + " µm of the " + Numbers.significant(wanted, 6) + " µm wanted, its middle "
            + Numbers.significant(pair.offset, 6) + " µm off");
    Fit fit = Fit.of(selector.nominalSize(), pair.hole, pair.shaft);
    return new FitCandidate(fit, pair.standing, pair.basis(), pair.listings, reasons);
  }
}
