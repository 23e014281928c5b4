// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

/** How the outer ring is held under the load for which a rating is stated. */
public enum OuterRing {
  /** Seated in a housing, as ISO 281 and ISO 76 assume. */
  HOUSED("outer ring in a housing"),
  /** Track roller whose maker states the rating as if the ring were rigidly supported. */
  RIGID("track roller, rating for a rigid outer ring"),
  /** Track roller whose maker already allows for the ring deflecting on a flat track. */
  DEFLECTING("track roller, rating for a deflecting outer ring");

  private final String words;

  OuterRing(String words) {
    this.words = words;
  }

  /**
   * Whether this is a track roller.
   *
   * @return true unless the ring is seated in a housing
   */
  public boolean trackRoller() {
    return this != HOUSED;
  }

  /** The support in words. */
  @Override
  public String toString() {
    return words;
  }
}
