// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.tables.SourceRef;

/** The places that results of this package cite. */
final class BearingSources {
  static final String ISO_281 = "ISO 281:2007";
  static final String ISO_76 = "ISO 76:2006";
  static final SourceRef LIFE = SourceRef.published(ISO_281, "5.3, 6.3, 7.3, 8.3, basic rating life");
  static final SourceRef RELIABILITY = SourceRef.published(ISO_281, "9.2, Table 12");
  static final SourceRef LOAD_LIMITS =
      SourceRef.published(ISO_281, "5.3.2, 6.3.2, 7.3.2, 8.3.2, load range for the life equation");
  static final SourceRef RING_DEFLECTION =
      SourceRef.published(
          "Needle roller bearing catalogue pages 74-79", "ratings of one series with and without ring deflection");
  static final SourceRef FC = SourceRef.published(ISO_281, "Tables 2, 4, 7 and 10");
  static final SourceRef DYNAMIC = SourceRef.published(ISO_281, "5.1, 6.1, 7.1, 8.1");
  static final SourceRef STATIC = SourceRef.published(ISO_76, "clauses 5 and 6, Table 1");
  static final SourceRef FATIGUE_LIMIT = SourceRef.published(ISO_281, "B.3.3, simplified method");
  static final SourceRef XY = SourceRef.published(ISO_281, "5.2, 6.2, 7.2, 8.2, Tables 3, 5, 8 and 11");
  static final SourceRef STATIC_LOAD = SourceRef.published(ISO_76, "static equivalent loads, Tables 2 and 3");
  static final SourceRef STATIC_SAFETY = SourceRef.published(ISO_76, "Tables 4 and 5, guiding values");
  static final SourceRef MINIMUM_LOAD = SourceRef.commonPractice("least load 0.01 C for ball, 0.02 C for roller bearings");
  static final SourceRef VISCOSITY_RATIO = SourceRef.published(ISO_281, "9.3.3, Figure 2");
  static final SourceRef CONTAMINATION = SourceRef.published(ISO_281, "9.3.3.3, Table 13, Annex A");
  static final SourceRef MODIFICATION = SourceRef.published(ISO_281, "9.3.3.4");
  static final SourceRef MODIFIED_LIFE = SourceRef.published(ISO_281, "9.1, equation (29)");
  static final SourceRef ADDITIVES = SourceRef.published(ISO_281, "9.3.3.3.4, lubricants with proven additives");
  static final SourceRef VISCOSITY = SourceRef.memory("ASTM D341", "viscosity-temperature relation");
  static final SourceRef MEAN_LOAD =
      SourceRef.published("Rolling bearings catalogue pages A25-A37", "mean load under fluctuating load and speed");
  static final SourceRef DAMAGE =
      SourceRef.published("Rolling bearings catalogue 17000 EN", "rating life under variable operating conditions");
  static final SourceRef SYSTEM =
      SourceRef.published("Ball and roller bearings catalogue 2202/E", "4.6, life of a machine with several bearings");
  static final SourceRef TRACK_LOADS =
      SourceRef.published("Rolling bearings catalogue 17000 EN", "cam followers, permissible loads and minimum load");
  static final SourceRef LEAST_LOAD =
      SourceRef.published("Rolling bearings catalogue 17000 EN", "pages 966 to 985, cam followers, minimum load");
  static final SourceRef OF_MAKER = SourceRef.commonPractice("as stated by the maker of the roller");
  static final SourceRef LOAD_ADVICE = SourceRef.published("Cam followers catalogue 2008", "technical section, load up to 0.5 C");
  static final SourceRef ROLLING = SourceRef.derived("rolling without sliding");
  static final SourceRef LEAST_SWING =
      SourceRef.published("Rolling bearings catalogue 17000 EN", "rating life, oscillating movement");
  static final SourceRef TRACKS = SourceRef.derived("rolling of the elements between the raceways");
  static final SourceRef OSCILLATION = SourceRef.derived("same damage for the same rolling distance");

  private BearingSources() {}
}
