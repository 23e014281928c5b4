// SPDX-License-Identifier: Apache-2.0
package holdfast.failures;

/** Kinds of bearings for which limits of misalignment are tabulated. */
public enum MisalignmentKind {
  /** Stud and yoke track rollers with needle rollers and a flat ring. */
  TRACK_ROLLER_FLAT("track roller, flat ring"),
  /** Any track roller, for methods of grease life. */
  TRACK_ROLLER_GREASE_LIFE("track roller, any"),
  /** Radial needle roller bearings in general. */
  NEEDLE("needle roller, general"),
  /** Needle roller bearings with machined rings, and drawn cups. */
  NEEDLE_MACHINED_OR_DRAWN("needle roller, machined ring or drawn cup"),
  /** Needle roller bearings with a sphered sleeve; static only. */
  NEEDLE_ALIGNING("aligning needle roller"),
  /** Single-row cylindrical roller bearings, light series. */
  CYLINDRICAL_LIGHT("cylindrical roller, light series"),
  /** Single-row cylindrical roller bearings, wide series. */
  CYLINDRICAL_WIDE("cylindrical roller, wide series"),
  /** Single-row full-complement cylindrical roller bearings. */
  CYLINDRICAL_FULL_COMPLEMENT("cylindrical roller, full complement"),
  /** Cylindrical roller bearings with profiled rollers: the limit depends on the load. */
  CYLINDRICAL_PROFILED("cylindrical roller, profiled"),
  /** Cylindrical roller bearings, trade guidance. */
  CYLINDRICAL("cylindrical roller, any"),
  /** Cylindrical and tapered roller bearings, recalled handbook limit. */
  CYLINDRICAL_OR_TAPERED("cylindrical or tapered roller, any"),
  /** Tapered roller bearings. */
  TAPERED("tapered roller"),
  /** Spherical roller bearings. */
  SPHERICAL("spherical roller"),
  /** Deep groove ball bearings. */
  DEEP_GROOVE_BALL("deep groove ball"),
  /** The face against which a stud roller is clamped: squareness. */
  SEAT_FACE("seat face");

  private final String label;

  MisalignmentKind(String label) {
    this.label = label;
  }

  /** The name used in the table, for example {@code "track roller, flat ring"}. */
  @Override
  public String toString() {
    return label;
  }
}
