// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.fits.Fit;
import holdfast.fits.FitKind;
import holdfast.fits.PreferredFits;
import holdfast.fits.PreferredList;
import holdfast.fits.ToleranceClass;
import holdfast.quantity.Length;
import holdfast.tables.Provenance;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Kind of each preferred fit against the kinds it has over all size ranges up to 500 mm. */
final class PreferredFitKindSuite {
  private PreferredFitKindSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "fits/preferred-fit-kinds",
        "Kind of the preferred fits, over 1 up to 500 mm",
        PreferredFitKindSuite::row,
        "holdfast.fits.Fit#kind",
        "holdfast.fits.PreferredFits#find");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    SourceRef source = Cases.source(cases, row);
    Evidence evidence = Evidence.RECOMBINED;
    if (source.provenance() == Provenance.MEMORY) {
      evidence = Evidence.RECALLED;
    } else if (source.document().startsWith("ANSI")) {
      evidence = Evidence.PRINT;
    }
    result.add(
        Comparison.of(cases.text(row, "fit") + ", " + cases.text(row, "basis") + " basis", source, evidence)
            .disclosed(cases.text(row, "disclosed"))
            .words(cases.text(row, "kind") + " fit", kinds(cases.text(row, "fit")) + listed(cases, row)));
  }

  /** Nothing, or words that never agree, if the look-up does not find the fit in its list. */
  private static String listed(Table cases, int row) {
    PreferredList list = PreferredList.ISO_HOLE_BASIS;
    if (cases.text(row, "source").startsWith("ANSI")) {
      list = PreferredList.ANSI_PREFERRED;
    } else if (cases.text(row, "basis").equals("shaft")) {
      list = PreferredList.ISO_SHAFT_BASIS;
    }
    PreferredList expected = list;
    String[] classes = cases.text(row, "fit").split("/", -1);
    boolean found =
        PreferredFits.find(ToleranceClass.of(classes[0]), ToleranceClass.of(classes[1])).stream()
            .anyMatch(fit -> fit.list() == expected && fit.basis().name().equalsIgnoreCase(cases.text(row, "basis")));
    return found ? "" : ", but not in the list";
  }

  /** One kind, or several joined by "or" if it changes with the size. */
  private static String kinds(String fit) {
    Set<FitKind> kinds = EnumSet.noneOf(FitKind.class);
    Table ranges = TableSet.bundled().table("fits/iso-286-1/2010/shaft-deviations-k-to-zc");
    String[] classes = fit.split("/", -1);
    for (int row = 0; row < ranges.size(); row++) {
      Length size = new Length(ranges.number(row, "up_to_mm"));
      // Letter s has a row for each of the finest size ranges.
      if (ranges.text(row, "letter").equals("s") && size.mm() <= 500 && defined(classes, size)) {
        kinds.add(Fit.of(size, fit).kind());
      }
    }
    return kinds.stream().map(FitKind::toString).collect(Collectors.joining(" or "));
  }

  private static boolean defined(String[] classes, Length size) {
    return ToleranceClass.of(classes[0]).isDefinedFor(size)
        && ToleranceClass.of(classes[1]).isDefinedFor(size);
  }
}
