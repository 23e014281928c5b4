// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.threads;

import holdfast.quantity.KnownUnits;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import holdfast.threads.NutProofLoads;
import holdfast.threads.ScrewThread;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Printed proof loads of nuts against stress times stress area; the stresses of the classes were found from the loads. */
final class NutLoadSuite implements Suite {
  private static final SourceRef RULE = SourceRef.derived("proof stress of the class times nominal stress area");
  private static final double SHARE = 0.005;
  private static final double STEP = 50;

  /** Stresses in MPa up to M4, M7, M10, M16 and M39; 0 where there is no such nut. */
  private static final Map<String, double[]> STRESS = Map.of(
      "4 1", new double[] {0, 0, 0, 0, 510},
      "5 1", new double[] {520, 580, 590, 610, 630},
      "6 1", new double[] {600, 670, 680, 700, 720},
      "8 1", new double[] {800, 855, 870, 880, 920},
      "8 2", new double[] {0, 0, 0, 0, 890},
      "10 1", new double[] {1040, 1040, 1040, 1050, 1060},
      "12 1", new double[] {1140, 1140, 1140, 1170, 0},
      "12 2", new double[] {1150, 1150, 1160, 1190, 1200});

  @Override
  public String id() {
    return "threads/nut-loads";
  }

  @Override
  public String title() {
    return "Proof loads of nuts against stress times stress area";
  }

  @Override
  public List<String> calculations() {
    return List.of("holdfast.threads.NutProofLoads", "holdfast.threads.ScrewThread#nominalStressArea");
  }

  @Override
  public List<Comparison> run() {
    Table table = TableSet.bundled().table("threads/iso-898-2/1992/nut-proof-loads");
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < table.size(); row++) {
      ScrewThread thread = CaseThreads.of(table.text(row, "thread"));
      String propertyClass = table.text(row, "class");
      String style = table.text(row, "style");
      double d = thread.majorDiameter().mm();
      double[] stresses = STRESS.get(propertyClass + " " + style);
      double product = stresses[d <= 4 ? 0 : d <= 7 ? 1 : d <= 10 ? 2 : d <= 16 ? 3 : 4] * thread.nominalStressArea().mm2();
      double ours = (style.equals("2") ? NutProofLoads.ofHighNut(thread, propertyClass) : NutProofLoads.of(thread, propertyClass))
          .in(KnownUnits.N);
      result.add(
          Comparison.of(table.address(row), RULE, Evidence.RECONSTRUCTION)
              .numbers(ours, product, Math.max(STEP, SHARE * ours), "N", "loads are printed in steps of 50 N or three digits"));
    }
    return result;
  }
}
