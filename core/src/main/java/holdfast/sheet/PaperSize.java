// SPDX-License-Identifier: Apache-2.0
package holdfast.sheet;

/** The paper of a page. */
public enum PaperSize {
  /** 210 mm by 297 mm. */
  A4("A4"),
  /** 8.5 in by 11 in. */
  LETTER("letter");

  private final String css;

  PaperSize(String css) {
    this.css = css;
  }

  /** The name under which style sheets know it. */
  @Override
  public String toString() {
    return css;
  }
}
