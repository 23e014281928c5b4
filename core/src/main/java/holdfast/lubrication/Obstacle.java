// SPDX-License-Identifier: Apache-2.0
package holdfast.lubrication;

import java.io.Serializable;
import java.util.Objects;

/**
 * Why a wanted port cannot feed the roller, and what to change.
 *
 * @param rule the rule that stands against it
 * @param remedy what to change
 */
public record Obstacle(PortRule rule, String remedy) implements Serializable {
  public Obstacle {
    Objects.requireNonNull(rule, "rule");
    Objects.requireNonNull(remedy, "remedy");
  }

  /** Rule, source and remedy in one line. */
  @Override
  public String toString() {
    return rule + ": " + remedy;
  }
}
