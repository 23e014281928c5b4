package holdfast.seats;

import holdfast.tables.SourceRef;
import holdfast.trace.Caution;
import java.util.List;

/** Cautions for joining studs and housings. They point to the rules that govern; they do not replace them. */
final class SeatCautions {
  private static final SourceRef RULES =
      SourceRef.commonPractice(
          "instructions of the makers of machine and press, local safety rules and licensed practice govern");

  static final List<Caution> PRESSING =
      List.of(
          caution(
              "Isolate, lock and support the machine member before work; a press stores energy: stand clear of the line of "
                  + "force."),
          caution("Wear eye protection; hardened parts can splinter. Do not strike hardened parts with a hardened hammer."),
          caution(
              "Press on the part that carries the fit, in line with the bore, never through a bearing; stop if the force rises "
                  + "above the band."));

  static final List<Caution> HEATING =
      List.of(
          caution("Hot parts burn: wear gloves and face protection, keep others away, and mark hot parts."),
          caution(
              "No open flame near oil, grease, solvents or sealed spaces; vapours ignite and closed spaces burst. Ventilate."),
          caution("Never heat above the ceiling given: seals, grease, temper and coatings suffer before it shows."));

  static final List<Caution> COOLING =
      List.of(
          caution(
              "Dry ice and liquid nitrogen displace the air that you breathe: ventilate, never work in pits or closed rooms."),
          caution(
              "They cause burns by cold: insulated gloves and face protection; trained staff only, with the supplier's "
                  + "instructions."),
          caution("Cold steel is brittle: do not strike it. Never close a vessel that holds a cold liquid or dry ice."));

  private SeatCautions() {}

  private static Caution caution(String text) {
    return new Caution(text, RULES);
  }
}
