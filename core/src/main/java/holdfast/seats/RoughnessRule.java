// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Length;
import holdfast.tables.SourceRef;
import java.util.Objects;

/** Which rule gives the interference lost to smoothing. The editions differ by a factor of two; the caller chooses. */
public enum RoughnessRule {
  /** No loss. */
  NONE("no loss to smoothing"),
  /** {@code 0.4·(Rz_A + Rz_I)}. */
  DIN_7190_1_2017("0.4·(Rz_A + Rz_I)"),
  /** {@code 0.8·(Rz_A + Rz_I)}. */
  DIN_7190_2001("0.8·(Rz_A + Rz_I)");

  private final String expression;

  RoughnessRule(String expression) {
    this.expression = expression;
  }

  /**
   * The loss.
   *
   * @param housing Rz of the bore, 0 or more
   * @param stud Rz of the stud, 0 or more
   * @return diametral loss G
   * @throws holdfast.quantity.InputException if a height is negative
   */
  public Length loss(Length housing, Length stud) {
    Objects.requireNonNull(housing, "housing");
    Objects.requireNonNull(stud, "stud");
    return new Length(
        switch (this) {
          case NONE -> 0;
          case DIN_7190_1_2017 -> RoughnessLossKernel.loss2017(housing.mm(), stud.mm());
          case DIN_7190_2001 -> RoughnessLossKernel.loss2001(housing.mm(), stud.mm());
        });
  }

  /**
   * The rule in symbols.
   *
   * @return for example {@code "0.4·(Rz_A + Rz_I)"}
   */
  public String expression() {
    return expression;
  }

  /**
   * Where the rule comes from.
   *
   * @return the source; both editions are recalled
   */
  public SourceRef source() {
    return switch (this) {
      case NONE -> SourceRef.derived("no loss assumed by the caller");
      case DIN_7190_1_2017 -> SourceRef.memory("DIN 7190-1:2017", "effective interference, Rz known");
      case DIN_7190_2001 -> SourceRef.memory("DIN 7190:2001", "effective interference");
    };
  }
}
