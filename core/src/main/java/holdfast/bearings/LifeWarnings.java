// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Force;
import holdfast.trace.Message;
import holdfast.trace.Warning;
import java.util.List;

/** What the reader of a life must know about the load and the ratings. */
final class LifeWarnings {
  private LifeWarnings() {}

  static void load(List<Warning> warnings, LoadRatings ratings, Force load) {
    double p = load.newton();
    double c = ratings.dynamic().newton();
    double c0 = ratings.staticRating().newton();
    if (p > c) {
      warnings.add(new Warning("load-above-C",
          Message.of("P = ", load, " is above C = ", ratings.dynamic(), ": the life equation does not hold here"),
          BearingSources.LOAD_LIMITS));
    } else if (p > 0.5 * c) {
      warnings.add(new Warning("load-above-half-C", Message.of("P = ", load, " is above 0.5 C = ",
          ratings.dynamic().times(0.5), ": ask the maker whether the life equation holds"), BearingSources.LOAD_LIMITS));
    }
    if (p > c0) {
      warnings.add(new Warning("load-above-C0", Message.of("P = ", load, " is above C0 = ", ratings.staticRating(),
          ": ask the maker whether the life equation holds"), BearingSources.LOAD_LIMITS));
    }
    if (ratings.outerRing() == OuterRing.RIGID) {
      warnings.add(new Warning("rigid-ring-rating", "C is stated for a rigidly held outer ring; on a track the ring deflects, and"
          + " published ratings with deflection are 0.67 to 0.92 of it", BearingSources.RING_DEFLECTION));
    }
  }

  static void reliability(List<Warning> warnings, Reliability reliability) {
    if (reliability.percent() < 90) {
      warnings.add(new Warning("reliability-below-table", "reliability " + reliability
          + " is below the 90 % at which the table of a1 begins: the same distribution is used beyond it",
          BearingSources.RELIABILITY));
    }
  }
}
