// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.tables.SourceRef;
import holdfast.trace.Caution;
import holdfast.trace.Cautions;
import holdfast.trace.SignalWord;
import java.util.ArrayList;
import java.util.List;

/** Cautions for joining studs and housings, from the table of cautions, with what governs above all of them first. */
final class SeatCautions {
  private static final Caution GOVERNS =
      new Caution(
          SignalWord.NOTICE,
          "The instructions of the makers of machine, press and heater, local safety rules and licensed practice govern; "
              + "computed forces and temperatures do not replace them.",
          SourceRef.commonPractice("order of rules on the bench"));
  private static final Caution BRITTLE =
      new Caution(
          SignalWord.WARNING,
          "Cold steel and iron are brittle: do not strike a chilled part.",
          SourceRef.commonPractice("parts chilled in dry ice or liquid nitrogen"));

  private SeatCautions() {}

  static List<Caution> pressing() {
    return about("stored energy", "protective equipment", "press", "drive");
  }

  static List<Caution> heatingAndCooling() {
    List<Caution> cautions = new ArrayList<>(about("protective equipment", "heat", "cool"));
    cautions.add(BRITTLE);
    return List.copyOf(cautions);
  }

  /** The few that belong on a sheet; {@link #heatingAndCooling()} has all of them. */
  static List<Caution> bench(boolean heats, boolean cools) {
    List<Caution> cautions = new ArrayList<>();
    if (heats) {
      cautions.addAll(Cautions.of("no-flame", "seal-limit", "hot-parts"));
    }
    if (cools) {
      cautions.addAll(Cautions.of("chilled-fastener", "cold-burns", "frost"));
      cautions.add(BRITTLE);
    }
    return List.copyOf(cautions);
  }

  private static List<Caution> about(String... topics) {
    List<Caution> cautions = new ArrayList<>();
    cautions.add(GOVERNS);
    for (String topic : topics) {
      cautions.addAll(Cautions.about(topic));
    }
    return List.copyOf(cautions);
  }
}
