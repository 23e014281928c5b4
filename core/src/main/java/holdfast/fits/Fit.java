package holdfast.fits;

import holdfast.quantity.Length;
import java.io.Serializable;

/**
 * A fit: a hole and a shaft of one nominal size with their limit deviations. Clearances are signed: a negative
 * clearance is an interference.
 *
 * @param nominalSize nominal size D of hole and shaft
 * @param designation for example {@code "H7/p6"} or {@code "FN2"}
 * @param hole limit deviations of the hole, EI and ES
 * @param shaft limit deviations of the shaft, ei and es
 */
public record Fit(Length nominalSize, String designation, LimitDeviations hole, LimitDeviations shaft) implements Serializable {
  /**
   * Greatest clearance: greatest hole, smallest shaft.
   *
   * @return ES - ei; negative if even the loosest pair interferes
   */
  public Length maximumClearance() {
    return hole.upper().minus(shaft.lower());
  }

  /**
   * Least clearance: smallest hole, greatest shaft.
   *
   * @return EI - es; negative if the tightest pair interferes
   */
  public Length minimumClearance() {
    return hole.lower().minus(shaft.upper());
  }

  /**
   * Kind of the fit.
   *
   * @return clearance, transition or interference
   */
  public FitKind kind() {
    if (minimumClearance().mm() >= 0) {
      return FitKind.CLEARANCE;
    }
    return maximumClearance().mm() <= 0 ? FitKind.INTERFERENCE : FitKind.TRANSITION;
  }
}
