// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.bearings.reference.TiltedLife;
import holdfast.quantity.Numbers;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Warning;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Derivation and warnings of a {@link SeatPrice}. */
final class SeatPriceNotes {
  private static final SourceRef RATIO = SourceRef.derived("weakest link over laminae and rings");
  static final Warning NO_PRINT =
      new Warning("no-printed-life-factor", "no print at hand states a life factor for a tilted track roller: the ratio is a"
          + " computation without an outside value", RATIO);
  private static final SourceRef LEAN = SourceRef.derived("the greater of both leans: nut tight, or play used up");

  private SeatPriceNotes() {}

  static Derivation explain(SeatPrice price) {
    Derivation.Builder d = Derivation.of("Price of a seat in life: " + price.interior());
    if (price.play() != null) {
      d.steps(price.play().derivation());
    }
    // The loosest pair is the result and comes last, in full.
    for (int i = price.pairs().size() - 1; i > 0; i--) {
      PricedPair pair = price.pairs().get(i);
      lean(d, pair);
      d.step("L/L(0)", "life ratio, " + pair.name(), "L / L(0)", pair.lifeRatio(), "", RATIO,
          "ψ = " + pair.tilt().raceways());
    }
    lean(d, price.loosest());
    return d.steps(price.loosest().life().explain()).build();
  }

  private static void lean(Derivation.Builder d, PricedPair pair) {
    d.steps(pair.seat().explain())
        .step("φ_g", "greatest lean of the stud, " + pair.name(), "max(φ_f, φ_s) + φ_b", pair.tilt().studTilt().base() * 1000,
            "mrad", LEAN, "nut tight: " + pair.seat().total(),
            "play used up: " + pair.seat().totalIfLoose())
        .steps(pair.tilt().explain());
  }

  static List<Warning> warnings(SeatPrice price) {
    PricedPair loosest = price.loosest();
    Set<Warning> warnings = new LinkedHashSet<>(loosest.life().warnings());
    warnings.addAll(price.interior().warnings());
    if (price.play() != null) {
      warnings.addAll(price.play().warnings());
    }
    // A face of unknown squareness is no seat without a face: it has a warning of its own.
    price.pairs().stream()
        .flatMap(pair -> pair.seat().warnings().stream())
        .filter(warning -> !warning.code().equals("not-clamped"))
        .forEach(warnings::add);
    warnings.addAll(loosest.tilt().warnings());
    playUsedUp(warnings, loosest);
    price.comparison().stream()
        .filter(check -> !check.passes() && check.pair().equals(loosest.name()))
        .forEach(check -> warnings.add(new Warning("above-published-limit", check.toString(), check.limit().source())));
    double share = price.load().ratio(price.bearing().ratings().dynamic());
    if (share > 0.35) {
      warnings.add(new Warning("no-limit-at-this-load", "no limit of misalignment is published for profiled rollers above 0.35 C;"
          + " the load is " + Numbers.significant(share, 3) + " C: ask the maker",
          SourceRef.published("Bearing engineering manual", "table 12")));
    }
    warnings.add(NO_PRINT);
    return List.copyOf(warnings);
  }

  private static void playUsedUp(Set<Warning> warnings, PricedPair pair) {
    TiltedLife tight = pair.nutTight();
    boolean play = pair.seat().totalIfLoose().compareTo(pair.seat().total()) > 0;
    if (tight == null && pair.seat().clearance().mm() > 0) {
      warnings.add(new Warning("face-not-known", "the squareness of the clamped face was not given: while the nut holds a square"
          + " face the stud leans less than the " + pair.tilt().studTilt() + " taken here", LEAN));
    } else if (play) {
      warnings.add(new Warning("play-used-up", "the ratio is that of a stud which has used up its play; while the nut is tight"
          + " the face sets the lean, " + pair.seat().total() + ", and the ratio is " + Numbers.significant(tight.lifeRatio(), 3),
          LEAN));
    }
  }
}
