// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import java.util.Locale;

/** Groups of materials with common rules for friction, expansion and temperature ceilings. */
public enum MaterialGroup {
  /** Plain carbon, structural and cast steels, neither hardened nor tempered. */
  STEEL("steel"),
  /** Quenched and tempered steels: heat above the tempering temperature takes their strength. */
  TEMPERED_STEEL("tempered steel"),
  /** Case-hardened, through-hardened and low-tempered steels: heat takes their hardness. */
  HARDENED_STEEL("hardened steel"),
  /** Austenitic stainless steels. */
  STAINLESS_STEEL("stainless steel"),
  /** Grey (flake graphite) cast irons. */
  GREY_IRON("grey iron"),
  /** Malleable cast irons. */
  MALLEABLE_IRON("malleable iron"),
  /** Spheroidal graphite (ductile) cast irons. */
  DUCTILE_IRON("ductile iron"),
  /** Wrought and cast aluminium alloys. */
  ALUMINIUM_ALLOY("aluminium alloy"),
  /** Magnesium alloys. */
  MAGNESIUM_ALLOY("magnesium alloy"),
  /** Copper-zinc alloys. */
  BRASS("brass"),
  /** Copper-tin and other bronzes. */
  BRONZE("bronze"),
  /** Titanium and its alloys. */
  TITANIUM_ALLOY("titanium alloy"),
  /** Anything else. */
  OTHER("other");

  private final String label;

  MaterialGroup(String label) {
    this.label = label;
  }

  static MaterialGroup of(String label) {
    return valueOf(label.toUpperCase(Locale.ROOT).replace(' ', '_'));
  }

  @Override
  public String toString() {
    return label;
  }
}
