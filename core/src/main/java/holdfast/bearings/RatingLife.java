package holdfast.bearings;

import holdfast.quantity.Force;

/** Rating lives of one bearing under a constant load. */
public final class RatingLife {
  private RatingLife() {}

  /**
   * Basic rating life L10 (90 %).
   *
   * @param ratings load ratings
   * @param load dynamic equivalent load P, over 0
   * @return the life
   * @throws holdfast.quantity.InputException if the load is not above zero
   */
  public static BasicLife basic(LoadRatings ratings, Force load) {
    return BasicLife.of(ratings, load, Reliability.L10);
  }

  /**
   * Basic rating life at a reliability.
   *
   * @param ratings load ratings
   * @param load dynamic equivalent load P, over 0
   * @param reliability reliability
   * @return Ln = a1 L10
   * @throws holdfast.quantity.InputException if the load is not above zero
   */
  public static BasicLife basic(LoadRatings ratings, Force load, Reliability reliability) {
    return BasicLife.of(ratings, load, reliability);
  }
}
