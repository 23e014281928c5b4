// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.seats;

import holdfast.seats.ThickRingKernel;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/** Parts of equal length carry the same pressure all along the joint: finite elements node by node. */
final class JointProfileSuite implements Suite {
  private static final String REASON = "nodal stresses, extrapolated within elements: up to 0.14 % at alternate nodes";

  @Override
  public String id() {
    return "seats/joint-profiles";
  }

  @Override
  public String title() {
    return "Interference fits of equal length: no end effect along the joint, against finite elements";
  }

  @Override
  public List<String> calculations() {
    return List.of("holdfast.seats.ThickRingKernel#pressureOfParts", "holdfast.seats.ThickRingKernel#hoopStress");
  }

  @Override
  public List<Comparison> run() {
    Table cases = Cases.table("seats/joint-profiles");
    Table models = Cases.table("seats/interference-models");
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < cases.size(); row++) {
      Row model = new Row(models, models.find("case", cases.text(row, "case")));
      double pressure = InterferenceModelSuite.pressure(model);
      double bore = (model.get("joint") - model.get("radial_interference")) / 2;
      double hoop = ThickRingKernel.hoopStress(bore, bore, model.get("outside") / 2, pressure, 0);
      SourceRef source = Cases.source(cases, row);
      double published = cases.number(row, "pressure");
      double publishedHoop = cases.number(row, "housing_hoop");
      result.add(
          Comparison.of(cases.address(row) + ", radial stress of the bore", source, Evidence.REFERENCE)
              .disclosed(cases.text(row, "disclosed_pressure"))
              .numbers(published, pressure, published * 1.5e-3, "MPa", REASON));
      result.add(
          Comparison.of(cases.address(row) + ", hoop stress of the bore", source, Evidence.REFERENCE)
              .disclosed(cases.text(row, "disclosed"))
              .numbers(publishedHoop, hoop, publishedHoop * 1.5e-3, "MPa", REASON));
    }
    return result;
  }
}
