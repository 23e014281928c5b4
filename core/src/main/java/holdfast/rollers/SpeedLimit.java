// SPDX-License-Identifier: Apache-2.0
package holdfast.rollers;

import holdfast.quantity.Length;
import holdfast.quantity.RotationalSpeed;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Limit of speed of a stud-type track roller from its speed factor. The maker's own limit for the roller goes first.
 *
 * @param kind rolling elements
 * @param studDiameter stud diameter d1, over 0
 * @param oil true for oil, false for grease
 * @param sealed whether the roller has contact seals
 * @param axialLoad whether an axial load acts besides the radial one
 */
public record SpeedLimit(RollerKind kind, Length studDiameter, boolean oil, boolean sealed, boolean axialLoad)
    implements Traced, Serializable {
  /** Share of the limit that seals leave. */
  public static final double SEALED_SHARE = 0.7;

  private static final SourceRef FACTOR =
      SourceRef.published("Linear motion and cam follower catalogue", "pages F-8 to F-71, limits of d1·n");
  private static final SourceRef SEAL =
      SourceRef.published("General catalogue cam follower section", "cam follower pages, limits of speed of sealed rollers");
  private static final SourceRef OIL =
      SourceRef.published("General catalogue cam follower section", "cam follower pages, factor 1.3 for oil");

  // Refuses a stud without diameter at once.
  public SpeedLimit {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(studDiameter, "studDiameter");
    RollerSpeedKernel.limit(kind.speedFactor(oil), studDiameter.mm(), axialLoad);
  }

  /**
   * The limit for grease, open roller, radial load alone.
   *
   * @param kind rolling elements
   * @param studDiameter stud diameter d1, over 0
   * @return the limit
   * @throws holdfast.quantity.InputException if the diameter is not above zero
   */
  public static SpeedLimit greased(RollerKind kind, Length studDiameter) {
    return new SpeedLimit(kind, studDiameter, false, false, false);
  }

  /**
   * The same with contact seals.
   *
   * @return 0.7 of the limit
   */
  public SpeedLimit withSeals() {
    return new SpeedLimit(kind, studDiameter, oil, true, axialLoad);
  }

  /**
   * The same with oil.
   *
   * @return the limit for oil
   */
  public SpeedLimit withOil() {
    return new SpeedLimit(kind, studDiameter, true, sealed, axialLoad);
  }

  /**
   * The same with an axial load besides.
   *
   * @return one tenth of the limit
   */
  public SpeedLimit withAxialLoad() {
    return new SpeedLimit(kind, studDiameter, oil, sealed, true);
  }

  /**
   * The limit.
   *
   * @return greatest speed of the outer ring
   */
  public RotationalSpeed limit() {
    return new RotationalSpeed(open() * (sealed ? SEALED_SHARE : 1));
  }

  private double open() {
    return RollerSpeedKernel.limit(kind.speedFactor(oil), studDiameter.mm(), axialLoad);
  }

  @Override
  public Derivation explain() {
    Derivation.Builder steps =
        Derivation.of("Limit of speed, " + kind + ", " + (oil ? "oil" : "grease"))
            .step("n", "limit of the open roller", axialLoad ? "0.1·(d1·n)/d1" : "(d1·n)/d1", open(), "rpm", FACTOR,
                "d1·n = " + Math.round(kind.speedFactor(oil)) + " mm·rpm", "d1 = " + studDiameter);
    if (sealed) {
      steps.step("ns", "limit with seals", "0.7·n", limit().rpm(), "rpm", SEAL);
    }
    return steps.build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    if (oil) {
      warnings.add(new Warning("oil-factor-differs", "sources differ on oil against grease: 1.67 here, 1.3 or 1.25 in two other"
          + " catalogues", OIL));
    }
    if (sealed && axialLoad) {
      warnings.add(new Warning("factors-combined", "the factors for seals and for axial load come from two catalogues", SEAL));
    }
    return List.copyOf(warnings);
  }

  /** For example {@code "2625 rpm"}. */
  @Override
  public String toString() {
    return limit().toString();
  }
}
