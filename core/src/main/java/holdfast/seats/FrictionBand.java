// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.tables.SourceRef;
import java.io.Serializable;
import java.util.Objects;

/**
 * A band of coefficients of friction or adhesion of a joint. The low end is taken for what must hold, the high end for
 * what must be overcome.
 *
 * @param least least coefficient, 0 or more
 * @param greatest greatest coefficient, not below the least
 * @param source where the band comes from
 */
public record FrictionBand(double least, double greatest, SourceRef source) implements Serializable {
  // Refuses negative coefficients and ends in the wrong order.
  public FrictionBand {
    Objects.requireNonNull(source, "source");
    Check.notNegative(least, "least coefficient of friction", "", "friction resists");
    if (!(greatest >= least && greatest <= Check.GREATEST)) {
      throw new InputException(
          "greatest coefficient of friction",
          Numbers.shortest(greatest),
          "at least " + Numbers.shortest(least),
          "it is not below the least");
    }
  }

  /**
   * A band of your own.
   *
   * @param least least coefficient, 0 or more
   * @param greatest greatest coefficient, not below the least
   * @return the band, with the caller as its source
   * @throws InputException if the ends are out of range or order
   */
  public static FrictionBand of(double least, double greatest) {
    return new FrictionBand(least, greatest, SourceRef.commonPractice("stated by the caller"));
  }

  /**
   * The usual design band for pressing steel into steel or iron with oil.
   *
   * @return 0.15 to 0.20: upper design values for the press, not for holding
   */
  public static FrictionBand pressingOiled() {
    return new FrictionBand(0.15, 0.20, SourceRef.commonPractice("steel on steel, oiled: take a high value for the press"));
  }

  /**
   * The general design band of press and shrink fits of steel in steel or iron.
   *
   * @return 0.15 to 0.20
   */
  public static FrictionBand general() {
    return new FrictionBand(0.15, 0.20, SourceRef.commonPractice("usual range of the friction factor of press fits in steel"));
  }

  /**
   * Scatter of published tests of press and shrink fits of steel in steel, dry to lubricated.
   *
   * @param torsional whether the joint slips round or along
   * @return 0.05 to 0.33 round, 0.03 to 0.33 along; recalled and doubtful
   */
  public static FrictionBand testScatter(boolean torsional) {
    return new FrictionBand(torsional ? 0.05 : 0.03, 0.33, SourceRef.memory("Baugher 1931", "tests of press and shrink fits"));
  }

  @Override
  public String toString() {
    return Numbers.significant(least, 3) + " … " + Numbers.significant(greatest, 3);
  }
}
