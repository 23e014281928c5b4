// SPDX-License-Identifier: Apache-2.0
package holdfast.contact;

import holdfast.tables.FromTables;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;

/** A printed table of track factors, read once into arrays. */
final class TrackFactors {
  /** Closely spaced, both ring shapes, 20 to 55 HRC. */
  static final FromTables<TrackFactors> NEEDLE_CATALOGUE =
      read("contact/needle-catalogue/2300E/track-hardness-factors");
  /** Cylindrical ring only, 26 to 58 HRC. */
  static final FromTables<TrackFactors> CAM_FOLLOWER_CATALOGUE =
      read("contact/cam-followers-catalogue/2008/track-hardness-factors");
  /** Both ring shapes, 20 to 58 HRC. */
  static final FromTables<TrackFactors> TRACK_ROLLER_CATALOGUE =
      read("contact/track-roller-catalogue/undated/track-hardness-factors");

  private final double[] hardness;
  private final double[] strength;
  private final double[] line;
  private final double[] ellipse;
  private final SourceRef source;

  private TrackFactors(Table table) {
    hardness = table.numbers("hardness");
    strength = table.numbers("strength");
    line = table.numbers("factor_line");
    ellipse = table.numbers("factor_ellipse");
    source = table.descriptor().source();
  }

  private static FromTables<TrackFactors> read(String id) {
    return FromTables.of(tables -> new TrackFactors(tables.table(id)));
  }

  double factor(double hrc, boolean crowned) {
    return TrackCapacityKernel.interpolate(hrc, hardness, crowned ? ellipse : line);
  }

  double strength(double hrc) {
    return TrackCapacityKernel.interpolate(hrc, hardness, strength);
  }

  SourceRef source() {
    return source;
  }
}
