// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.tables.Cell;
import holdfast.tables.Provenance;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.trace.Derivation;
import holdfast.trace.Warning;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Finds the cells behind the limit deviations of a class and tells how they combine. */
final class IsoDerivation {
  private static final SourceRef RULE = SourceRef.memory("ISO 286-1:2010", "4.1 and 4.2, tolerance interval");

  private IsoDerivation() {}

  static Derivation of(ToleranceClass c, Length nominalSize) {
    LimitDeviations result = c.limitDeviations(nominalSize);
    boolean hole = c.feature() == Feature.HOLE;
    String upper = hole ? "ES" : "es";
    String lower = hole ? "EI" : "ei";
    String it = c.grade().name();
    Derivation tolerance = tolerance(c, nominalSize);
    String itInput = it + " = " + Numbers.shortest(tolerance.result().value()) + " µm";
    Derivation.Builder steps = Derivation.of(FitText.nominal(nominalSize, false) + " " + c).steps(tolerance);
    String upperRule;
    String lowerRule;
    List<String> upperInputs = List.of(itInput);
    List<String> lowerInputs = List.of(itInput);
    if (c.letter() == DeviationLetter.JS) {
      upperRule = "+" + it + " / 2";
      lowerRule = "-" + it + " / 2";
    } else {
      Table table = table(c, nominalSize);
      int row = row(table, c, nominalSize);
      Cell base = table.cell(row, "value");
      String symbol = table.text(row, "limit");
      boolean corrected = table.descriptor().columns().containsKey("delta") && table.text(row, "delta").equals("yes");
      String given = corrected ? symbol + "_0" : symbol;
      steps.step(given, meaning(symbol, corrected), base.address(), base.value(), "µm", base.source());
      if (corrected) {
        Cell delta = cell(IsoTables.get().delta, c.grade(), nominalSize);
        steps.step("Delta", "correction of the hole", delta.address(), delta.value(), "µm", delta.source());
      }
      boolean fromLower = symbol.equalsIgnoreCase("EI");
      upperRule = fromLower ? lower + " + " + it : corrected ? given + " + Delta" : "as tabulated";
      lowerRule = fromLower ? "as tabulated" : upper + " - " + it;
      upperInputs = fromLower ? List.of(itInput) : List.of();
      lowerInputs = fromLower ? List.of() : List.of(itInput);
    }
    return steps
        .step(upper, "upper limit deviation", upperRule, um(result.upper()), "µm", RULE, upperInputs.toArray(String[]::new))
        .step(lower, "lower limit deviation", lowerRule, um(result.lower()), "µm", RULE, lowerInputs.toArray(String[]::new))
        .build();
  }

  /** The cell of the standard tolerance. */
  static Derivation tolerance(ToleranceClass c, Length nominalSize) {
    Cell cell = toleranceCell(c, nominalSize);
    return Derivation.of(cell.address())
        .step(c.grade().name(), "standard tolerance", cell.address(), cell.value(), "µm", cell.source())
        .build();
  }

  /** One warning for each cell used that is recalled, in no print, or marked doubtful. */
  static List<Warning> warnings(ToleranceClass c, Length nominalSize) {
    // Refuses a size for which the class is not defined, with the reason.
    LimitDeviationsKernel.upper(nominalSize.mm(), c.code());
    List<Warning> warnings = new ArrayList<>();
    for (Cell cell : cells(c, nominalSize)) {
      if (cell.note().startsWith("doubtful") || cell.note().startsWith("reprints differ")) {
        warnings.add(new Warning("doubtful-cell", cell.address() + ": " + cell.note(), cell.source()));
      } else if (cell.note().startsWith("recalled")) {
        warnings.add(new Warning("recalled-cell", cell.address() + ": " + cell.note(), cell.source()));
      } else if (cell.source().provenance() == Provenance.LISTING) {
        warnings.add(
            new Warning("listed-cell", cell.address() + ": held by a data listing, not found in print", cell.source()));
      }
    }
    return List.copyOf(warnings);
  }

  private static List<Cell> cells(ToleranceClass c, Length nominalSize) {
    List<Cell> cells = new ArrayList<>();
    cells.add(toleranceCell(c, nominalSize));
    if (c.letter() != DeviationLetter.JS) {
      Table table = table(c, nominalSize);
      int row = row(table, c, nominalSize);
      cells.add(table.cell(row, "value"));
      if (table.descriptor().columns().containsKey("delta") && table.text(row, "delta").equals("yes")) {
        cells.add(cell(IsoTables.get().delta, c.grade(), nominalSize));
      }
    }
    return cells;
  }

  private static double um(Length length) {
    return length.in(KnownUnits.UM);
  }

  private static String meaning(String symbol, boolean corrected) {
    String side = symbol.equalsIgnoreCase("EI") ? "lower" : "upper";
    return "fundamental deviation (" + side + " limit deviation)" + (corrected ? " before the correction" : "");
  }

  private static Cell toleranceCell(ToleranceClass c, Length nominalSize) {
    return cell(IsoTables.get().tolerances, c.grade(), nominalSize);
  }

  private static Cell cell(Table table, ToleranceGrade grade, Length nominalSize) {
    for (int row = 0; row < table.size(); row++) {
      if (table.text(row, "grade").equals(grade.name()) && holds(table, row, nominalSize)) {
        return table.cell(row, "value");
      }
    }
    throw new IllegalStateException(table.descriptor().id() + " has no " + grade + " for " + nominalSize);
  }

  private static Table table(ToleranceClass c, Length nominalSize) {
    for (Table table : c.feature() == Feature.HOLE ? IsoTables.get().holes : IsoTables.get().shafts) {
      if (row(table, c, nominalSize) >= 0) {
        return table;
      }
    }
    throw new IllegalStateException("no fundamental deviation of " + c + " for " + nominalSize);
  }

  /** The row with the fewest grades that holds the class, or -1. */
  private static int row(Table table, ToleranceClass c, Length nominalSize) {
    int best = -1;
    int bestSpan = Integer.MAX_VALUE;
    for (int row = 0; row < table.size(); row++) {
      if (table.text(row, "letter").toUpperCase(Locale.ROOT).equals(c.letter().name()) && holds(table, row, nominalSize)) {
        int from = IsoTables.from(table, row);
        int to = IsoTables.to(table, row);
        int grade = c.grade().index;
        if (from <= grade && grade <= to && to - from < bestSpan) {
          best = row;
          bestSpan = to - from;
        }
      }
    }
    return best;
  }

  private static boolean holds(Table table, int row, Length nominalSize) {
    return nominalSize.mm() > table.number(row, "over_mm") && nominalSize.mm() <= table.number(row, "up_to_mm");
  }
}
