// SPDX-License-Identifier: Apache-2.0
package holdfast.lubrication;

import holdfast.tables.SourceRef;

/** Ways by which fresh grease enters, each with its rule of quantity. */
public enum GreaseRoute {
  /** Through holes in the middle of a ring or through the stud: 0.002 D B. */
  THROUGH_RING("through the stud or a ring", "0.002·D·B", "pages 109 to 115, lubrication, through holes in a ring"),
  /** From the side: 0.005 D B. */
  FROM_SIDE("from the side", "0.005·D·B", "pages 109 to 115, lubrication, from the side");

  private final String label;
  private final String expression;
  private final SourceRef source;

  GreaseRoute(String label, String expression, String locator) {
    this.label = label;
    this.expression = expression;
    this.source = SourceRef.published("Rolling bearings catalogue 17000 EN", locator);
  }

  double gram(double outsideDiameter, double width) {
    return this == THROUGH_RING
        ? GreaseQuantityKernel.throughRing(outsideDiameter, width)
        : GreaseQuantityKernel.fromSide(outsideDiameter, width);
  }

  String expression() {
    return expression;
  }

  /**
   * Where the rule comes from.
   *
   * @return document, locator and provenance
   */
  public SourceRef source() {
    return source;
  }

  /** For example {@code "from the side"}. */
  @Override
  public String toString() {
    return label;
  }
}
