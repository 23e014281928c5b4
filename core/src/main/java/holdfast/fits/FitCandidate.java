// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * A fit that satisfies a wanted range of clearance or interference.
 *
 * @param fit the fit
 * @param standing how far standards recommend it
 * @param basis hole basis, shaft basis or neither
 * @param listings the lists in which it stands
 * @param reasons why it stands where it stands among the candidates
 */
public record FitCandidate(Fit fit, Standing standing, Basis basis, List<PreferredFit> listings, List<String> reasons)
    implements Serializable {

  /** How far standards recommend a fit, the firmest first. */
  public enum Standing {
    /** In the list of preferred fits of ANSI B4.2-1978. */
    PREFERRED("preferred"),
    /** In a list of commonly used fits of ISO 286-1:2010. */
    COMMON("commonly used"),
    /** Both classes are for general use (ISO 1829:1975, recalled). */
    GENERAL_USE("classes for general use"),
    /** None of these. */
    OTHER("not listed");

    private final String label;

    Standing(String label) {
      this.label = label;
    }

    @Override
    public String toString() {
      return label;
    }
  }

  // Keeps unmodifiable copies of the lists.
  public FitCandidate {
    Objects.requireNonNull(fit, "fit");
    Objects.requireNonNull(standing, "standing");
    Objects.requireNonNull(basis, "basis");
    Objects.requireNonNull(listings, "listings");
    Objects.requireNonNull(reasons, "reasons");
    listings = List.copyOf(listings);
    reasons = List.copyOf(reasons);
  }

  /** The fit, its standing and the reasons. */
  @Override
  public String toString() {
    return fit + "; " + standing + ": " + String.join("; ", reasons);
  }
}
