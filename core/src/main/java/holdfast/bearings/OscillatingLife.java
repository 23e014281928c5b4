// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Angle;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Numbers;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The life of a bearing that swings to and fro. A cycle is four half swings: there, back, to the other end and back.
 *
 * @param life the life in full revolutions under the same load
 * @param halfSwing angle φ from the middle position to one end, over 0
 * @param leastHalfSwing half swing below which the tracks of neighbouring elements no longer meet; null if the inside of the
 *     bearing is not stated
 */
public record OscillatingLife(RatedLife life, Angle halfSwing, Angle leastHalfSwing) implements Traced, Serializable {
  /** Least half swing for which a catalogue lets the life equation stand. */
  private static final Angle PUBLISHED_LEAST = KnownUnits.DEG.of(10);

  // Refuses a bearing that does not swing.
  public OscillatingLife {
    Objects.requireNonNull(life, "life");
    DutyKernel.oscillation(life.millionRevolutions(), halfSwing.radian());
  }

  /**
   * The same, looking at the rolling elements too.
   *
   * @param elements number of rolling elements of a row, 1 or more
   * @param gamma ratio Dw cos α/Dpw, without unit, 0 or more, below 1
   * @return the life, which warns where neighbouring tracks no longer meet
   * @throws holdfast.quantity.InputException if a value is out of range
   */
  public OscillatingLife withElements(int elements, double gamma) {
    return new OscillatingLife(life, halfSwing, new Angle(DutyKernel.criticalHalfSwing(elements, gamma)));
  }

  /**
   * The life.
   *
   * @return million cycles, L · 90°/φ
   */
  public double millionCycles() {
    return DutyKernel.oscillation(life.millionRevolutions(), halfSwing.radian());
  }

  /**
   * Half swing below which the tracks of neighbouring elements no longer meet, if the elements are stated.
   *
   * @return the angle
   */
  public Optional<Angle> knownLeastHalfSwing() {
    return Optional.ofNullable(leastHalfSwing);
  }

  @Override
  public Derivation explain() {
    return Derivation.of("Life in oscillation")
        .steps(life.explain())
        .step("Losc", "life in oscillation", "L · 90°/φ", millionCycles(), "million cycles", BearingSources.OSCILLATION,
            "L = " + Numbers.significant(life.millionRevolutions(), 6), "φ = " + halfSwing)
        .build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>(life.warnings());
    if (halfSwing.compareTo(PUBLISHED_LEAST) < 0) {
      warnings.add(new Warning("small-swing", "the life equation is published for half swings from 10°; below, false brinelling"
          + " decides: move the bearing through a full turn now and then, and grease it well", BearingSources.LEAST_SWING));
    }
    if (leastHalfSwing != null && halfSwing.compareTo(leastHalfSwing) < 0) {
      warnings.add(new Warning("tracks-do-not-meet", "below a half swing of " + degrees(leastHalfSwing)
          + " each element wears its own track in the outer raceway: false brinelling, which no life equation rates",
          BearingSources.TRACKS));
    }
    return List.copyOf(warnings);
  }

  /** For example {@code "11610 million cycles of ±20°"}. */
  @Override
  public String toString() {
    return Numbers.significant(millionCycles(), 4) + " million cycles of ±" + degrees(halfSwing);
  }

  private static String degrees(Angle angle) {
    return Numbers.significant(angle.in(KnownUnits.DEG), 3) + "°";
  }
}
