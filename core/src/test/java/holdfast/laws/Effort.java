// SPDX-License-Identifier: Apache-2.0
package holdfast.laws;

/** How much is tried: a little in every build, twenty times as much with {@code -Plaws}. */
final class Effort {
  /** The seed of all draws; another one with {@code -Dlaws.seed=…}. */
  static final long SEED = Long.getLong("laws.seed", 20261125);

  private static final int FACTOR = Integer.getInteger("laws.factor", 1);

  private Effort() {}

  static int of(int ordinary) {
    return ordinary * FACTOR;
  }
}
