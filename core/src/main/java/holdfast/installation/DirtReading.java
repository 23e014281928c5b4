// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.bearings.Cleanliness;
import holdfast.bearings.Contamination;
import holdfast.bearings.ContaminationLevel;
import holdfast.tables.SourceRef;
import java.util.List;
import java.util.Optional;

/**
 * How clean the lubricant of a roller stays: stated, or read from the dust of the place and the seals. The levels are those
 * of ISO 281:2007, Table 13; which level a place allows is a reading of the words of that table.
 */
final class DirtReading {
  static final SourceRef TABLE = SourceRef.published("ISO 281:2007", "9.3, Table 13");
  static final SourceRef ANNEX = SourceRef.published("ISO 281:2007", "Annex A, equations of the contamination factor");
  private static final SourceRef READING = SourceRef.derived("level of contamination from dust of the place and seals");

  /** The levels that a place can ask for, the cleanest first. */
  private static final List<ContaminationLevel> FROM_CLEAN =
      List.of(ContaminationLevel.HIGH_CLEANLINESS, ContaminationLevel.NORMAL_CLEANLINESS, ContaminationLevel.SLIGHT_CONTAMINATION,
          ContaminationLevel.TYPICAL_CONTAMINATION, ContaminationLevel.SEVERE_CONTAMINATION);

  private final MountedRoller roller;
  private final Duty duty;

  DirtReading(MountedRoller roller, Duty duty) {
    this.roller = roller;
    this.duty = duty;
  }

  /** What is counted: what is stated, or else what place and seals allow. */
  Contamination counted() {
    return duty.statedContamination().orElseGet(() -> Contamination.of(cleanest()));
  }

  SourceRef source() {
    return duty.statedContamination().isPresent() ? SourceRef.commonPractice("as stated for this job") : READING;
  }

  /**
   * The cleanest level that place and seals allow. Table 13: sealed and greased for life is high, shielded and greased for
   * life normal cleanliness; without integral seals the lubricant is contaminated, the more so the more dust there is.
   */
  ContaminationLevel cleanest() {
    ContaminationLevel clean =
        roller.sealed()
            ? duty.statedFeed().isPresent() ? ContaminationLevel.NORMAL_CLEANLINESS : ContaminationLevel.HIGH_CLEANLINESS
            : ContaminationLevel.SLIGHT_CONTAMINATION;
    return FROM_CLEAN.get(FROM_CLEAN.indexOf(clean) + duty.surroundings().dust().steps());
  }

  /** Why the stated cleanness cannot be; oil codes and factors are taken as measured. */
  Optional<String> contradiction() {
    return duty.statedContamination()
        .flatMap(DirtReading::cleanestOf)
        .filter(stated -> stated.compareTo(cleanest()) < 0)
        .map(stated -> "the dirt contradicts itself: " + counted() + " is stated, but a roller "
            + (roller.sealed() ? "with" : "without")
            + " seals in " + duty.surroundings().dust() + (duty.statedFeed().isPresent() ? "" : ", greased for life,") + " has "
            + cleanest() + " at best: state what is true, protect the place, or take a roller with seals");
  }

  /** The counterpart of the other part of the standard; empty where it has none. */
  Optional<Contamination> other() {
    Contamination counted = counted();
    if (counted instanceof Contamination.OfLevel level) {
      return Optional.of(Contamination.of(
          switch (level.level()) {
            case EXTREME_CLEANLINESS, HIGH_CLEANLINESS -> Cleanliness.GREASE_HIGH;
            case NORMAL_CLEANLINESS -> Cleanliness.GREASE_NORMAL;
            case SLIGHT_CONTAMINATION, TYPICAL_CONTAMINATION -> Cleanliness.GREASE_SLIGHT_TO_TYPICAL;
            case SEVERE_CONTAMINATION -> Cleanliness.GREASE_SEVERE;
            case VERY_SEVERE_CONTAMINATION -> Cleanliness.GREASE_VERY_SEVERE;
          }));
    }
    if (counted instanceof Contamination.OfEquation equation) {
      return dirtiestOf(equation.cleanliness()).map(Contamination::of);
    }
    return Optional.of(Contamination.of(cleanest()));
  }

  private static Optional<ContaminationLevel> cleanestOf(Contamination stated) {
    if (stated instanceof Contamination.OfLevel level) {
      return Optional.of(level.level());
    }
    if (stated instanceof Contamination.OfEquation equation) {
      return equation.cleanliness() == Cleanliness.GREASE_SLIGHT_TO_TYPICAL
          ? Optional.of(ContaminationLevel.SLIGHT_CONTAMINATION)
          : dirtiestOf(equation.cleanliness());
    }
    return Optional.empty();
  }

  /** The level of Table 13 for a grease of Annex A; oil has codes instead. */
  private static Optional<ContaminationLevel> dirtiestOf(Cleanliness cleanliness) {
    return switch (cleanliness) {
      case GREASE_HIGH -> Optional.of(ContaminationLevel.HIGH_CLEANLINESS);
      case GREASE_NORMAL -> Optional.of(ContaminationLevel.NORMAL_CLEANLINESS);
      case GREASE_SLIGHT_TO_TYPICAL -> Optional.of(ContaminationLevel.TYPICAL_CONTAMINATION);
      case GREASE_SEVERE -> Optional.of(ContaminationLevel.SEVERE_CONTAMINATION);
      case GREASE_VERY_SEVERE -> Optional.of(ContaminationLevel.VERY_SEVERE_CONTAMINATION);
      default -> Optional.empty();
    };
  }
}
