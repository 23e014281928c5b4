// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import java.util.Locale;
import java.util.Objects;

/**
 * Letter code of a fundamental deviation (ISO 286-1:2010, 4.2): the place of the tolerance interval relative to the
 * nominal size. From A to H a hole lies above or on the nominal size and a shaft below or on it; from J to ZC it
 * is the other way round, with JS symmetrical.
 */
public enum DeviationLetter {
  /** Letter code A of a hole, a of a shaft. */
  A(0),
  /** Letter code B of a hole, b of a shaft. */
  B(1),
  /** Letter code C of a hole, c of a shaft. */
  C(2),
  /** Letter code CD of a hole, cd of a shaft. */
  CD(3),
  /** Letter code D of a hole, d of a shaft. */
  D(4),
  /** Letter code E of a hole, e of a shaft. */
  E(5),
  /** Letter code EF of a hole, ef of a shaft. */
  EF(6),
  /** Letter code F of a hole, f of a shaft. */
  F(7),
  /** Letter code FG of a hole, fg of a shaft. */
  FG(8),
  /** Letter code G of a hole, g of a shaft. */
  G(9),
  /** Letter code H of a hole, h of a shaft. */
  H(10),
  /** Letter code JS of a hole, js of a shaft. */
  JS(11),
  /** Letter code J of a hole, j of a shaft. */
  J(12),
  /** Letter code K of a hole, k of a shaft. */
  K(13),
  /** Letter code M of a hole, m of a shaft. */
  M(14),
  /** Letter code N of a hole, n of a shaft. */
  N(15),
  /** Letter code P of a hole, p of a shaft. */
  P(16),
  /** Letter code R of a hole, r of a shaft. */
  R(17),
  /** Letter code S of a hole, s of a shaft. */
  S(18),
  /** Letter code T of a hole, t of a shaft. */
  T(19),
  /** Letter code U of a hole, u of a shaft. */
  U(20),
  /** Letter code V of a hole, v of a shaft. */
  V(21),
  /** Letter code X of a hole, x of a shaft. */
  X(22),
  /** Letter code Y of a hole, y of a shaft. */
  Y(23),
  /** Letter code Z of a hole, z of a shaft. */
  Z(24),
  /** Letter code ZA of a hole, za of a shaft. */
  ZA(25),
  /** Letter code ZB of a hole, zb of a shaft. */
  ZB(26),
  /** Letter code ZC of a hole, zc of a shaft. */
  ZC(27);

  private final String small = name().toLowerCase(Locale.ROOT);
  /** Place in the arrays of the kernel. */
  final int index;

  DeviationLetter(int index) {
    this.index = index;
  }

  /**
   * The code as written.
   *
   * @param feature hole or shaft
   * @return capitals for a hole, small letters for a shaft
   */
  public String text(Feature feature) {
    Objects.requireNonNull(feature, "feature");
    return feature == Feature.HOLE ? name() : small;
  }

  /**
   * Whether the tolerance interval keeps clear of the mating part with zero fundamental deviation: A to H.
   *
   * @return true for A to H
   */
  public boolean givesClearance() {
    return index <= H.index;
  }
}
