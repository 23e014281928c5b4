// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

/** Lists of fits and classes that standards recommend, the firmest first. */
public enum PreferredList {
  /** The twenty preferred metric fits. */
  ANSI_PREFERRED("fits/ansi-b4.2/1978/preferred-fits", "preferred fit of ANSI B4.2-1978"),
  /** Commonly used hole-basis fits. */
  ISO_HOLE_BASIS("fits/iso-286-1/2010/hole-basis-fits", "commonly used hole-basis fit after ISO 286-1:2010"),
  /** Commonly used shaft-basis fits; the list is recalled. */
  ISO_SHAFT_BASIS("fits/iso-286-1/2010/shaft-basis-fits", "commonly used shaft-basis fit after ISO 286-1:2010 (recalled list)");

  final String table;
  private final String label;

  PreferredList(String table, String label) {
    this.table = table;
    this.label = label;
  }

  @Override
  public String toString() {
    return label;
  }
}
