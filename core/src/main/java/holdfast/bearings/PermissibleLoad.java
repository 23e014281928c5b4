// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.contact.TrackCapacity;
import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.quantity.OperatingTime;
import holdfast.quantity.RotationalSpeed;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Message;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * Permissible radial load of a track roller: the least of all limits that are known.
 *
 * @param roller the roller
 * @param speed speed of the outer ring
 * @param limits all limits; at least one
 */
public record PermissibleLoad(TrackRoller roller, RotationalSpeed speed, List<Limit> limits) implements Traced, Serializable {

  /**
   * One limit.
   *
   * @param name what limits, for example {@code "fatigue"}
   * @param load greatest radial load
   * @param expression where it comes from, in symbols
   * @param source its source
   */
  public record Limit(String name, Force load, String expression, SourceRef source) implements Serializable {
    public Limit {
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(load, "load");
      Objects.requireNonNull(expression, "expression");
      Objects.requireNonNull(source, "source");
    }
  }

  // Keeps an unmodifiable copy of the list.
  public PermissibleLoad {
    Objects.requireNonNull(roller, "roller");
    Objects.requireNonNull(speed, "speed");
    Objects.requireNonNull(limits, "limits");
    if (limits.isEmpty()) {
      throw new InputException("limits", "none", "at least one", "the least of them is the permissible load");
    }
    limits = List.copyOf(limits);
  }

  /**
   * Limits of a roller in a duty.
   *
   * @param roller the roller
   * @param wanted wanted life, over 0
   * @param reliability reliability of the life
   * @param speed speed of the outer ring, over 0
   * @param staticSafety wanted safety S0 against C0, at least 1
   * @param trackHardness hardness of the track in HRC, from 20 to 58
   * @return the limits
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static PermissibleLoad of(TrackRoller roller, OperatingTime wanted, Reliability reliability, RotationalSpeed speed,
      double staticSafety, double trackHardness) {
    Objects.requireNonNull(roller, "roller");
    Objects.requireNonNull(wanted, "wanted");
    Objects.requireNonNull(reliability, "reliability");
    Objects.requireNonNull(speed, "speed");
    Check.within(staticSafety, 1, 10, "static safety S0", "", "1 to 2 normal, 2 to 3 impact");
    Check.within(trackHardness, TrackCapacity.SOFTEST, TrackCapacity.HARDEST, "track hardness", "HRC", "range of the tables");
    LoadRatings ratings = roller.ratings();
    List<Limit> limits = new ArrayList<>();
    limits.add(new Limit("fatigue", RatingLife.allowableLoad(ratings, wanted, speed, reliability),
        "C / L^(1/p) for " + wanted + " at " + speed, BearingSources.LIFE));
    limits.add(new Limit("half of C", ratings.dynamic().times(0.5), "0.5 C", BearingSources.LOAD_ADVICE));
    limits.add(new Limit("static", ratings.staticRating().dividedBy(staticSafety),
        "C0 / S0, S0 = " + Numbers.significant(staticSafety, 3), BearingSources.TRACK_LOADS));
    add(limits, "outer ring, turning", roller.dynamicLimit(), "as stated by the maker", BearingSources.OF_MAKER);
    add(limits, "outer ring, standing", roller.staticLimit(), "as stated by the maker", BearingSources.OF_MAKER);
    add(limits, "stud", roller.studLimit(), "as stated by the maker", BearingSources.OF_MAKER);
    roller.trackCapacityAt(trackHardness).ifPresent(track -> limits.add(new Limit("track", track.capacity(),
        "capacity at 40 HRC times hardness factor at " + Numbers.significant(trackHardness, 3) + " HRC", track.source())));
    return new PermissibleLoad(roller, speed, limits);
  }

  private static void add(List<Limit> limits, String name, Force load, String expression, SourceRef source) {
    if (load != null) {
      limits.add(new Limit(name, load, expression, source));
    }
  }

  /**
   * The limit that governs.
   *
   * @return the least limit
   */
  public Limit governing() {
    return limits.stream().min(Comparator.comparing(Limit::load)).orElseThrow();
  }

  /**
   * The permissible load.
   *
   * @return load of the governing limit
   */
  public Force load() {
    return governing().load();
  }

  @Override
  public Derivation explain() {
    Derivation.Builder steps = Derivation.of("Permissible radial load of a track roller");
    List<String> inputs = new ArrayList<>();
    for (Limit limit : limits) {
      steps.step("F", "limit: " + limit.name(), limit.expression(), limit.load().newton(), "N", limit.source());
      inputs.add(limit.name() + " " + limit.load());
    }
    return steps
        .step("Fperm", "permissible radial load, governed by: " + governing().name(), "least of the limits", load().newton(),
            "N", governing().source(), inputs.toArray(new String[0]))
        .build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    LifeWarnings.load(warnings, roller.ratings(), load());
    missing(warnings, roller.dynamicLimit() == null || roller.staticLimit() == null, "ring-limit-unknown",
        "the limits of the outer ring are not stated");
    missing(warnings, roller.studLimit() == null, "stud-limit-unknown", "the limit of the stud or pin is not stated");
    missing(warnings, roller.trackCapacity() == null, "track-capacity-unknown", "the capacity of the track is not stated");
    if (load().compareTo(roller.minimumLoad()) < 0) {
      warnings.add(new Warning("permissible-below-minimum", Message.of("the permissible load is below the least load ",
          roller.minimumLoad(), " for rolling without sliding"), BearingSources.TRACK_LOADS));
    }
    if (roller.speedLimit() != null && speed.compareTo(roller.speedLimit()) > 0) {
      warnings.add(new Warning("speed-above-limit", Message.of("n = ", speed, " is above the greatest speed ",
          roller.speedLimit()),
          BearingSources.TRACK_LOADS));
    }
    return List.copyOf(warnings);
  }

  private static void missing(List<Warning> warnings, boolean missing, String code, String message) {
    if (missing) {
      warnings.add(new Warning(code, message + ": it is not among the limits compared", BearingSources.TRACK_LOADS));
    }
  }

  /** For example {@code "4.1 kN, governed by track"}. */
  @Override
  public String toString() {
    return load() + ", governed by " + governing().name();
  }
}
