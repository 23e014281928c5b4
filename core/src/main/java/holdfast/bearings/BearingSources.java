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
      SourceRef.published("Track roller ratings catalogue", "ratings of one series with and without ring deflection");

  private BearingSources() {}
}
