// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.fits.DeviationLetter;
import holdfast.fits.Feature;
import holdfast.fits.LimitDeviationsKernel;
import holdfast.fits.ToleranceClass;
import holdfast.fits.ToleranceGrade;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/**
 * What the correction Delta is for: Hn with x(n-1) and Xn with h(n-1) give the same clearances in every size range over
 * 3 up to 500 mm. One comparison for each letter and grade.
 */
final class SymmetrySuite implements Suite {
  @Override
  public String id() {
    return "fits/symmetry";
  }

  @Override
  public String title() {
    return "Hole-basis and shaft-basis fits with the correction Delta are the same";
  }

  @Override
  public List<String> calculations() {
    return List.of("holdfast.fits.Fit", "holdfast.fits.LimitDeviationsKernel");
  }

  @Override
  public List<Comparison> run() {
    SourceRef source = SourceRef.memory("ISO 286-1:1988", "Annex A, purpose of the special rule for holes");
    List<Comparison> result = new ArrayList<>();
    for (DeviationLetter letter : DeviationLetter.values()) {
      if (letter.compareTo(DeviationLetter.K) < 0) {
        continue;
      }
      boolean early = letter.compareTo(DeviationLetter.N) <= 0;
      for (int n = 3; n <= (early ? 8 : 7); n++) {
        // k has its deviation in IT4 to IT7 only, so that K3 and k2, K4 and k3 do not mirror each other.
        if (letter != DeviationLetter.K || n >= 5) {
          result.add(compare(letter, n, source));
        }
      }
    }
    return result;
  }

  private static Comparison compare(DeviationLetter letter, int n, SourceRef source) {
    ToleranceGrade grade = ToleranceGrade.of("IT" + n);
    ToleranceGrade finer = grade.finer();
    ToleranceClass hole = new ToleranceClass(Feature.HOLE, letter, grade);
    ToleranceClass shaft = new ToleranceClass(Feature.SHAFT, letter, finer);
    ToleranceClass basicHole = new ToleranceClass(Feature.HOLE, DeviationLetter.H, grade);
    ToleranceClass basicShaft = new ToleranceClass(Feature.SHAFT, DeviationLetter.H, finer);
    int ranges = 0;
    int same = 0;
    // Letter s has a row for each of the finest size ranges.
    Table table = TableSet.bundled().table("fits/iso-286-1/2010/shaft-deviations-k-to-zc");
    for (int row = 0; row < table.size(); row++) {
      double size = Sizes.upTo(table, row);
      boolean counts = table.text(row, "letter").equals("s") && size > 3 && size <= 500;
      if (counts && LimitDeviationsKernel.isDefined(size, shaft.code())) {
        ranges++;
        boolean equal =
            LimitDeviationsKernel.minimumClearance(size, basicHole.code(), shaft.code())
                    == LimitDeviationsKernel.minimumClearance(size, hole.code(), basicShaft.code())
                && LimitDeviationsKernel.maximumClearance(size, basicHole.code(), shaft.code())
                    == LimitDeviationsKernel.maximumClearance(size, hole.code(), basicShaft.code());
        same += equal ? 1 : 0;
      }
    }
    boolean exception = hole.toString().equals("M6");
    return Comparison.of(basicHole + "/" + shaft + " and " + hole + "/" + basicShaft, source, Evidence.RECONSTRUCTION)
        .disclosed(exception ? "exception of the standard: M6 over 250 up to 315 mm, two of the finest size ranges" : "")
        .words("same in " + ranges + " of " + ranges + " size ranges", "same in " + same + " of " + ranges + " size ranges");
  }
}
