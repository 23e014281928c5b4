package holdfast.bearings;

import holdfast.quantity.Check;
import holdfast.quantity.OperatingTime;
import holdfast.tables.Source;
import java.io.Serializable;

/**
 * Many like bearings in like duty. Lives follow the distribution behind a1 (minimum life 0.05 L10, exponent 1.5). Only
 * first failures are counted: a replacement of a failed bearing is taken to outlast the period.
 *
 * @param l10 life of one bearing at 90 %, basic or modified, over 0
 * @param count number of bearings, 1 or more
 */
public record Fleet(OperatingTime l10, int count) implements Serializable {
  // Refuses an empty fleet.
  public Fleet {
    Check.positive(l10.hours(), "life L10h", "h", "a bearing with a load has a life");
    if (count < 1) {
      throw Refusal.of("number of bearings", count, "", "1 or more", "a fleet has at least one bearing");
    }
  }

  /**
   * Share of bearings expected to be running after a time.
   *
   * @param period time from new, 0 or more
   * @return share from 0 to 1
   * @throws holdfast.quantity.InputException if the time is negative
   */
  @Source(document = "ISO 281:2007", locator = "9.2, Table 12, solved for S")
  public double survivors(OperatingTime period) {
    return ReliabilityKernel.survival(period.hours() / l10.hours());
  }

  /**
   * Number of bearings expected to have failed after a time.
   *
   * @param period time from new, 0 or more
   * @return expected number
   * @throws holdfast.quantity.InputException if the time is negative
   */
  @Source(document = "ISO 281:2007", locator = "9.2, Table 12, solved for S")
  public double expectedFailures(OperatingTime period) {
    return count * (1 - survivors(period));
  }

  /**
   * Number of bearings, running at the start of a period, expected to fail within it.
   *
   * @param from age at the start, 0 or more
   * @param to age at the end, not before the start
   * @return expected number out of the whole fleet
   * @throws holdfast.quantity.InputException if a time is negative or the end comes before the start
   */
  @Source(document = "ISO 281:2007", locator = "9.2, Table 12, solved for S")
  public double expectedFailures(OperatingTime from, OperatingTime to) {
    if (to.compareTo(from) < 0) {
      throw Refusal.of("end of the period", to, "not before its start, " + from, "a period runs forward");
    }
    return expectedFailures(to) - expectedFailures(from);
  }

  /**
   * Chance that no bearing of the fleet has failed after a time.
   *
   * @param period time from new, 0 or more
   * @return probability from 0 to 1
   * @throws holdfast.quantity.InputException if the time is negative
   */
  @Source(document = "derivation", locator = "independent bearings", provenance = holdfast.tables.Provenance.DERIVED)
  public double chanceOfNoFailure(OperatingTime period) {
    return Math.pow(survivors(period), count);
  }

  /**
   * Time after which a bearing is to be replaced so that it has not failed with a wanted reliability.
   *
   * @param wanted reliability of one bearing
   * @return a1 L10h
   */
  @Source(document = "ISO 281:2007", locator = "9.2, Table 12")
  public OperatingTime replacementInterval(Reliability wanted) {
    return l10.times(wanted.a1());
  }
}
