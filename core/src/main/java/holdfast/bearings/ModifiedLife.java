// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.trace.Derivation;
import holdfast.trace.Message;
import holdfast.trace.Warning;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Modified rating life {@code Lnm = a1 aISO L10}.
 *
 * @param ratings load ratings of the bearing
 * @param load dynamic equivalent load P
 * @param reliability reliability
 * @param lubrication lubrication
 * @param contamination contamination
 * @param fatigueLimit fatigue load limit Cu, as stated or estimated from C0
 * @param contaminationFactor contamination factor eC
 * @param modification life modification factor aISO
 * @param l10 basic rating life in million revolutions
 * @param a1 life modification factor for reliability
 */
public record ModifiedLife(
    LoadRatings ratings,
    Force load,
    Reliability reliability,
    Lubrication lubrication,
    Contamination contamination,
    Force fatigueLimit,
    double contaminationFactor,
    double modification,
    double l10,
    double a1)
    implements RatedLife {
  public ModifiedLife {
    Objects.requireNonNull(ratings, "ratings");
    Objects.requireNonNull(load, "load");
    Objects.requireNonNull(reliability, "reliability");
    Objects.requireNonNull(lubrication, "lubrication");
    Objects.requireNonNull(contamination, "contamination");
    Objects.requireNonNull(fatigueLimit, "fatigueLimit");
    Check.finite(contaminationFactor, "eC", "");
    Check.finite(modification, "aISO", "");
    Check.finite(l10, "L10", "million revolutions");
    Check.finite(a1, "a1", "");
  }

  static ModifiedLife of(
      LoadRatings ratings, Force load, Reliability reliability, Lubrication lubrication, Contamination contamination) {
    BearingFamily family = ratings.family();
    double l10 = BasicLifeKernel.l10(family, ratings.dynamic().newton(), load.newton());
    Force cu = fatigueLimit(ratings, lubrication.pitchDiameter());
    double eC = contamination.factor(lubrication.kappa(), lubrication.pitchDiameter());
    double share = cu.newton() / load.newton();
    double aIso = lubrication.provenAdditives()
        ? LifeModificationKernel.withAdditives(
            family, lubrication.kappa(), eC, contamination.factor(1, lubrication.pitchDiameter()), share)
        : LifeModificationKernel.factor(family, lubrication.kappa(), eC * share);
    return new ModifiedLife(
        ratings, load, reliability, lubrication, contamination, cu, eC, aIso, l10, reliability.a1());
  }

  static Force fatigueLimit(LoadRatings ratings, Length pitchDiameter) {
    return ratings.knownFatigueLimit().orElseGet(() -> new Force(
        FatigueLimitKernel.simplified(ratings.family(), ratings.staticRating().newton(), pitchDiameter.mm())));
  }

  @Override
  public double millionRevolutions() {
    return a1 * modification * l10;
  }

  @Override
  public Derivation explain() {
    Derivation.Builder steps = Derivation.of("Modified rating life of a " + ratings.family())
        .step("L10", "basic rating life", ratings.family().ball() ? "(C/P)^3" : "(C/P)^(10/3)", l10, "million revolutions",
            BearingSources.LIFE, "C = " + ratings.dynamic(), "P = " + load)
        .step("a1", "life modification factor for reliability", "0.95 [ln(100/S)/ln(100/90)]^(2/3) + 0.05", a1, "",
            BearingSources.RELIABILITY, "S = " + reliability);
    if (lubrication.viscosity() != null) {
      double nu1 = LubricationKernel.referenceViscosity(lubrication.speed().rpm(), lubrication.pitchDiameter().mm());
      steps.step("ν1", "reference viscosity",
          lubrication.speed().rpm() < 1000 ? "45000 n^-0.83 Dpw^-0.5" : "4500 n^-0.5 Dpw^-0.5",
          nu1, "mm²/s", BearingSources.VISCOSITY_RATIO, "n = " + lubrication.speed(), "Dpw = " + lubrication.pitchDiameter());
    }
    return steps
        .step("κ", "viscosity ratio", lubrication.viscosity() == null ? "as given" : "ν / ν1", lubrication.kappa(), "",
            BearingSources.VISCOSITY_RATIO)
        .step("eC", "contamination factor", contamination.toString(), contaminationFactor, "", BearingSources.CONTAMINATION)
        .step("Cu", "fatigue load limit", ratings.fatigueLimit() == null ? "simplified, from C0" : "as stated",
            fatigueLimit.newton(), "N", BearingSources.FATIGUE_LIMIT, "C0 = " + ratings.staticRating())
        .step("aISO", "life modification factor", "equation for " + ratings.family() + "s by κ and eC Cu/P"
                + (additivesCount() ? ", at most 3, or the value of the real κ if that is greater" : ""), modification, "",
            lubrication.provenAdditives() ? BearingSources.ADDITIVES : BearingSources.MODIFICATION, modificationInputs())
        .step(reliability.lifeSymbol() + "m", "modified rating life", "a1 aISO L10", millionRevolutions(),
            "million revolutions", BearingSources.MODIFIED_LIFE)
        .build();
  }

  /** Whether κ = 1 stands for the real κ. */
  private boolean additivesCount() {
    return lubrication.provenAdditives() && lubrication.kappa() < 1
        && contaminationFactor >= LifeModificationKernel.LEAST_CONTAMINATION_FOR_ADDITIVES;
  }

  private String[] modificationInputs() {
    String real = "eC Cu/P = " + Numbers.significant(contaminationFactor * fatigueLimit.ratio(load), 4);
    if (!additivesCount()) {
      return new String[] {real};
    }
    double atOne = contamination.factor(1, lubrication.pitchDiameter());
    return new String[] {
      real, "with proven additives κ = 1, eC = " + Numbers.significant(atOne, 4), "eC Cu/P = "
          + Numbers.significant(atOne * fatigueLimit.ratio(load), 4)
    };
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    LifeWarnings.load(warnings, ratings, load);
    LifeWarnings.reliability(warnings, reliability);
    double argument = contaminationFactor * fatigueLimit.ratio(load);
    if (ratings.fatigueLimit() == null) {
      warnings.add(new Warning("fatigue-limit-estimated", Message.of("Cu = ", fatigueLimit, " is estimated from C0"),
          BearingSources.FATIGUE_LIMIT));
    }
    if (lubrication.kappa() > LubricationKernel.GREATEST_KAPPA) {
      warnings.add(new Warning("kappa-above-4", "κ = " + Numbers.significant(lubrication.kappa(), 3) + ": 4 is used",
          BearingSources.MODIFICATION));
    }
    if (argument > LifeModificationKernel.GREATEST_ARGUMENT) {
      warnings.add(new Warning("argument-above-5", "eC Cu/P = " + Numbers.significant(argument, 3) + ": 5 is used",
          BearingSources.MODIFICATION));
    }
    if (modification >= LifeModificationKernel.GREATEST) {
      warnings.add(new Warning("modification-at-50", "aISO is limited to 50", BearingSources.MODIFICATION));
    }
    if (lubrication.provenAdditives() && lubrication.kappa() < 1) {
      warnings.add(new Warning("additives", additivesCount()
          ? "κ below 1 with proven additives: κ = 1 is used for eC and aISO, with aISO up to 3"
          : "κ below 1 with proven additives, but eC is below 0.2: the additives do not count", BearingSources.ADDITIVES));
    }
    if (contaminationFactor == 0) {
      warnings.add(new Warning("contamination-severe", "eC = 0: wear, not fatigue, may end the life",
          BearingSources.CONTAMINATION));
    }
    return List.copyOf(warnings);
  }

  /** For example {@code "L10m = 1250 million revolutions (aISO = 2.14)"}. */
  @Override
  public String toString() {
    return reliability.lifeSymbol() + "m = " + Numbers.significant(millionRevolutions(), 4) + " million revolutions (aISO = "
        + Numbers.significant(modification, 3) + ")";
  }
}
