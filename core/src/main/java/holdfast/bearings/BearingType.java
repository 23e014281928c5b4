// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.tables.FromTables;
import holdfast.tables.Table;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/** The types of bearing for which ISO 281 and ISO 76 give ratings from geometry. */
public enum BearingType {
  /** Radial contact groove ball bearing. */
  DEEP_GROOVE_BALL("deep groove ball", BearingFamily.RADIAL_BALL),
  /** Radial contact groove ball bearing with filling slot. */
  FILLING_SLOT_BALL("deep groove ball with filling slot", BearingFamily.RADIAL_BALL),
  /** Angular contact ball bearing up to 45°. */
  ANGULAR_CONTACT_BALL("angular contact ball", BearingFamily.RADIAL_BALL),
  /** Insert bearing. */
  INSERT_BALL("insert ball", BearingFamily.RADIAL_BALL),
  /** Self-aligning ball bearing: spherical outer raceway. */
  SELF_ALIGNING_BALL("self-aligning ball", BearingFamily.RADIAL_BALL),
  /** Single-row separable ball bearing. */
  MAGNETO_BALL("magneto ball", BearingFamily.RADIAL_BALL),
  /** Cylindrical roller bearing. */
  CYLINDRICAL_ROLLER("cylindrical roller", BearingFamily.RADIAL_ROLLER),
  /** Tapered roller bearing. */
  TAPERED_ROLLER("tapered roller", BearingFamily.RADIAL_ROLLER),
  /** Needle roller bearing with machined rings. */
  NEEDLE_ROLLER("needle roller with machined rings", BearingFamily.RADIAL_ROLLER),
  /** Drawn cup needle roller bearing. */
  DRAWN_CUP_NEEDLE_ROLLER("drawn cup needle roller", BearingFamily.RADIAL_ROLLER),
  /** Radial spherical roller bearing. */
  SPHERICAL_ROLLER("spherical roller", BearingFamily.RADIAL_ROLLER),
  /** Thrust ball bearing over 45°. */
  THRUST_BALL("thrust ball", BearingFamily.THRUST_BALL),
  /** Thrust bearing with cylindrical rollers. */
  CYLINDRICAL_THRUST_ROLLER("cylindrical thrust roller", BearingFamily.THRUST_ROLLER),
  /** Thrust bearing with needle rollers. */
  NEEDLE_THRUST_ROLLER("needle thrust roller", BearingFamily.THRUST_ROLLER),
  /** Thrust bearing with tapered rollers. */
  TAPERED_THRUST_ROLLER("tapered thrust roller", BearingFamily.THRUST_ROLLER),
  /** Thrust bearing with barrel rollers. */
  SPHERICAL_THRUST_ROLLER("spherical thrust roller", BearingFamily.THRUST_ROLLER);

  private static final FromTables<Map<BearingType, Double>> BM =
      FromTables.of(tables -> readBm(tables.table("bearings/iso-281/2007/bm")));

  private final String words;
  private final BearingFamily family;

  BearingType(String words, BearingFamily family) {
    this.words = words;
    this.family = family;
  }

  /**
   * Family of the type.
   *
   * @return one of the four families of ISO 281
   */
  public BearingFamily family() {
    return family;
  }

  /**
   * Rating factor for contemporary, commonly used material and manufacturing quality (ISO 281:2007, Tables 1, 6 and 9).
   *
   * @return bm
   */
  public double bm() {
    return BM.get().get(this);
  }

  /**
   * Finds a type by its words.
   *
   * @param text for example {@code "deep groove ball"}, in any case
   * @return the type
   * @throws holdfast.quantity.InputException if no type has these words
   */
  public static BearingType parse(String text) {
    Objects.requireNonNull(text, "text");
    String wanted = text.strip().toLowerCase(Locale.ROOT);
    StringBuilder known = new StringBuilder();
    for (BearingType type : values()) {
      if (type.words.equals(wanted)) {
        return type;
      }
      known.append(known.length() == 0 ? "" : ", ").append(type.words);
    }
    throw Refusal.of("type of bearing", text, "one of: " + known, "these types have ratings in ISO 281");
  }

  private static Map<BearingType, Double> readBm(Table table) {
    Map<BearingType, Double> factors = new EnumMap<>(BearingType.class);
    for (BearingType type : values()) {
      factors.put(type, table.number(table.find("type", type.words), "bm"));
    }
    return factors;
  }

  /** The type in words. */
  @Override
  public String toString() {
    return words;
  }
}
