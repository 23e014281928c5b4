package holdfast.seats;

import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import holdfast.trace.Caution;
import java.util.ArrayList;
import java.util.List;

/** Cautions for joining studs and housings, from the table of cautions, with what governs above all of them first. */
final class SeatCautions {
  private static final Caution GOVERNS =
      new Caution(
          "The instructions of the makers of machine, press and heater, local safety rules and licensed practice govern; "
              + "computed forces and temperatures do not replace them.",
          SourceRef.commonPractice("order of rules on the bench"));
  private static final Caution BRITTLE =
      new Caution(
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

  private static List<Caution> about(String... topics) {
    Table table = TableSet.bundled().table("installation/cautions/cautions");
    List<Caution> cautions = new ArrayList<>();
    cautions.add(GOVERNS);
    for (String topic : topics) {
      for (int row = 0; row < table.size(); row++) {
        if (table.text(row, "topic").equals(topic)) {
          String document = table.text(row, "confirmed_by");
          SourceRef source =
              new SourceRef(
                  document.isEmpty() ? "common practice" : document, table.text(row, "place"), table.provenance(row));
          cautions.add(new Caution(table.text(row, "text"), source));
        }
      }
    }
    return List.copyOf(cautions);
  }
}
