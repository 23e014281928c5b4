// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.tables.FromTables;
import holdfast.tables.Table;
import java.util.EnumMap;
import java.util.Map;

/** Kinds of lubrication with their cleanliness, for which ISO 281:2007, Annex A gives an equation of eC. */
public enum Cleanliness {
  /** Circulating oil filtered in line, β6(c) ≥ 200, ISO 4406 code about -/13/10. */
  CIRCULATING_13_10("A.1"),
  /** Circulating oil filtered in line, β12(c) ≥ 200, ISO 4406 code about -/15/12. */
  CIRCULATING_15_12("A.2"),
  /** Circulating oil filtered in line, β25(c) ≥ 75, ISO 4406 code about -/17/14. */
  CIRCULATING_17_14("A.3"),
  /** Circulating oil filtered in line, β40(c) ≥ 75, ISO 4406 code about -/19/16. */
  CIRCULATING_19_16("A.4"),
  /** Oil bath, or circulating oil filtered off line, ISO 4406 code about -/13/10. */
  BATH_13_10("A.5"),
  /** Oil bath, or circulating oil filtered off line, ISO 4406 code about -/15/12. */
  BATH_15_12("A.6"),
  /** Oil bath, or circulating oil filtered off line, ISO 4406 code about -/17/14. */
  BATH_17_14("A.7"),
  /** Oil bath, or circulating oil filtered off line, ISO 4406 code about -/19/16. */
  BATH_19_16("A.8"),
  /** Oil bath, or circulating oil filtered off line, ISO 4406 code about -/21/18. */
  BATH_21_18("A.9"),
  /** Grease, high cleanliness. */
  GREASE_HIGH("A.10"),
  /** Grease, normal cleanliness. */
  GREASE_NORMAL("A.11"),
  /** Grease, slight to typical contamination. */
  GREASE_SLIGHT_TO_TYPICAL("A.12"),
  /** Grease, severe contamination. */
  GREASE_SEVERE("A.13"),
  /** Grease, very severe contamination. */
  GREASE_VERY_SEVERE("A.14");

  private final String figure;
  private static final FromTables<Map<Cleanliness, Equation>> EQUATIONS =
      FromTables.of(tables -> read(tables.table("bearings/iso-281/2007/contamination-equations")));

  /** Words and constants of the equation; another c holds from a pitch diameter in mm on. */
  private record Equation(String words, double a, double c, double largeFrom, double largeC) {
    static Equation read(Table table, String figure) {
      int row = table.find("figure", figure, "dpw_from", "0");
      int large = table.find("figure", figure, "dpw_from", "500");
      double c = table.number(row, "c");
      return new Equation(
          table.text(row, "condition"),
          table.number(row, "a"),
          c,
          large < 0 ? Double.POSITIVE_INFINITY : table.number(large, "dpw_from"),
          large < 0 ? c : table.number(large, "c"));
    }
  }

  Cleanliness(String figure) {
    this.figure = figure;
  }

  /**
   * Contamination factor.
   *
   * @param kappa viscosity ratio κ, over 0
   * @param dpw pitch diameter in mm, over 0
   * @return eC, from 0 to 1
   * @throws holdfast.quantity.InputException if an argument is not above zero
   */
  public double factor(double kappa, double dpw) {
    Equation e = EQUATIONS.get().get(this);
    return ContaminationKernel.factor(e.a, dpw < e.largeFrom ? e.c : e.largeC, kappa, dpw);
  }

  /**
   * Figure of the standard that shows the equation.
   *
   * @return for example {@code "A.5"}
   */
  public String figure() {
    return figure;
  }

  private static Map<Cleanliness, Equation> read(Table table) {
    Map<Cleanliness, Equation> equations = new EnumMap<>(Cleanliness.class);
    for (Cleanliness cleanliness : values()) {
      equations.put(cleanliness, Equation.read(table, cleanliness.figure));
    }
    return equations;
  }

  /** The condition in words, for example {@code "bath -/15/12"}. */
  @Override
  public String toString() {
    return EQUATIONS.get().get(this).words;
  }
}
