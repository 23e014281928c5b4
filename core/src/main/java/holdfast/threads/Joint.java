// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.quantity.Stress;
import holdfast.quantity.TemperatureDifference;
import holdfast.quantity.ThermalExpansion;
import holdfast.tables.Provenance;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Message;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * How stud and clamped parts give way under force. Immutable: each method that states something returns a new joint.
 *
 * @param tightening stud, nut and face
 * @param pieces parts of the stud under the preload, with their sections
 * @param headAllowance length that stands for the give of head or shoulder, with the section of the nominal diameter
 * @param clampLength clamp length lK
 * @param partDiameter outer diameter DA of the clamped parts
 * @param hole hole dh in the parts
 * @param studModulus ES of stud and nut
 * @param partModulus EP of the parts
 * @param tapped whether the stud sits in a tapped hole and not in a nut
 */
public record Joint(
    Tightening tightening,
    List<Piece> pieces,
    Length headAllowance,
    Length clampLength,
    Length partDiameter,
    Length hole,
    Stress studModulus,
    Stress partModulus,
    boolean tapped)
    implements Traced, Serializable {
  private static final SourceRef RULE = new SourceRef("VDI 2230-1:2015", "resilience", Provenance.MEMORY);

  /**
   * A piece of the stud.
   *
   * @param section its section
   * @param length its length under the preload, 0 or more
   */
  public record Piece(StudSection section, Length length) implements Serializable {
    // Refuses a negative length.
    public Piece {
      Objects.requireNonNull(section, "section");
      Objects.requireNonNull(length, "length");
      Check.notNegative(length.mm(), "length of a piece", "mm", "a length");
    }
  }

  // Refuses at once what the kernels refuse.
  public Joint {
    Objects.requireNonNull(tightening, "tightening");
    Objects.requireNonNull(pieces, "pieces");
    Objects.requireNonNull(headAllowance, "headAllowance");
    Objects.requireNonNull(clampLength, "clampLength");
    Objects.requireNonNull(partDiameter, "partDiameter");
    Objects.requireNonNull(hole, "hole");
    Objects.requireNonNull(studModulus, "studModulus");
    Objects.requireNonNull(partModulus, "partModulus");
    pieces = List.copyOf(pieces);
    Check.notNegative(headAllowance.mm(), "head allowance", "mm", "a length");
    JointKernel.partResilience(
        clampLength.mm(),
        tightening.statedFace().outer().mm(),
        hole.mm(),
        partDiameter.mm(),
        partModulus.megapascal(),
        tapped);
    Check.positive(studModulus.megapascal(), "modulus ES", "MPa", "a modulus of elasticity");
  }

  /**
   * A through joint of steel (205 GPa) whose stud is threaded over the whole clamp length, with a hexagon head.
   *
   * @param tightening stud, nut and face
   * @param clampLength clamp length lK, over 0
   * @param partDiameter outer diameter DA of the clamped parts, over the hole
   * @param hole hole dh in the parts, over 0
   * @return the joint
   * @throws InputException if a size is outside its range
   */
  public static Joint of(Tightening tightening, Length clampLength, Length partDiameter, Length hole) {
    Objects.requireNonNull(tightening, "tightening");
    Objects.requireNonNull(clampLength, "clampLength");
    Length root = tightening.thread().rootDiameter();
    StudSection core = new StudSection("core of the thread", root, tightening.bore(), new Length(0));
    return new Joint(
        tightening,
        List.of(new Piece(core, clampLength)),
        tightening.thread().majorDiameter().times(0.5),
        clampLength,
        partDiameter,
        hole,
        new Stress(205_000),
        new Stress(205_000),
        false);
  }

  /**
   * States the pieces of the stud within the clamp length instead of a full thread.
   *
   * @param studPieces shank, grooves and free thread (with the root diameter)
   * @return a joint with these pieces
   */
  public Joint pieces(Piece... studPieces) {
    Objects.requireNonNull(studPieces, "studPieces");
    return new Joint(
        tightening, List.of(studPieces), headAllowance, clampLength, partDiameter, hole, studModulus, partModulus, tapped);
  }

  /**
   * States the length that stands for the give of the head; 0 for a stud that is held otherwise.
   *
   * @param length 0.5·d for a hexagon, 0.4·d for a socket head
   * @return a joint with this allowance
   */
  public Joint head(Length length) {
    Objects.requireNonNull(length, "length");
    return new Joint(tightening, pieces, length, clampLength, partDiameter, hole, studModulus, partModulus, tapped);
  }

  /**
   * States the moduli of elasticity.
   *
   * @param stud ES of stud and nut
   * @param parts EP of the clamped parts
   * @return a joint of these materials
   */
  public Joint moduli(Stress stud, Stress parts) {
    Objects.requireNonNull(stud, "stud");
    Objects.requireNonNull(parts, "parts");
    return new Joint(tightening, pieces, headAllowance, clampLength, partDiameter, hole, stud, parts, tapped);
  }

  /**
   * A joint whose stud sits in a tapped hole.
   *
   * @return a tapped joint
   */
  public Joint tappedHole() {
    return new Joint(tightening, pieces, headAllowance, clampLength, partDiameter, hole, studModulus, partModulus, true);
  }

  /**
   * Resilience of the stud with head and engaged thread.
   *
   * @return δS in mm/N
   */
  public double studResilience() {
    ScrewThread t = tightening.thread();
    double e = studModulus.megapascal();
    double bore = tightening.bore().mm();
    double d = t.majorDiameter().mm();
    double sum = JointKernel.resilience(headAllowance.mm(), e, ThreadGeometryKernel.ringArea(d, bore));
    for (Piece piece : pieces) {
      sum += JointKernel.resilience(piece.length().mm(), e, piece.section().area().mm2());
    }
    double other = tapped ? partModulus.megapascal() : e;
    return sum + JointKernel.engagedResilience(d, t.rootDiameter().mm(), bore, e, other, tapped);
  }

  /**
   * Resilience of the clamped parts.
   *
   * @return δP in mm/N
   */
  public double partResilience() {
    return JointKernel.partResilience(
        clampLength.mm(),
        tightening.statedFace().outer().mm(),
        hole.mm(),
        partDiameter.mm(),
        partModulus.megapascal(),
        tapped);
  }

  /**
   * Load factor: the part of a working load that the stud takes.
   *
   * @param introduction n (dimensionless), over 0 up to 1: 1 under the faces, less where the load enters inside the parts
   * @return Φn
   */
  public double loadFactor(double introduction) {
    return JointKernel.loadFactor(studResilience(), partResilience(), introduction);
  }

  /**
   * Preload lost by embedding.
   *
   * @param embedding fZ
   * @return FZ
   */
  public Force embeddingLoss(Length embedding) {
    Objects.requireNonNull(embedding, "embedding");
    return new Force(JointKernel.embeddingLoss(embedding.mm(), studResilience(), partResilience()));
  }

  /**
   * Change of the preload with temperature.
   *
   * @param studExpansion expansion of the stud
   * @param studRise temperature rise of the stud
   * @param partExpansion expansion of the parts
   * @param partRise temperature rise of the parts
   * @return positive when the preload grows
   */
  public Force thermalChange(
      ThermalExpansion studExpansion,
      TemperatureDifference studRise,
      ThermalExpansion partExpansion,
      TemperatureDifference partRise) {
    Objects.requireNonNull(studExpansion, "studExpansion");
    Objects.requireNonNull(studRise, "studRise");
    Objects.requireNonNull(partExpansion, "partExpansion");
    Objects.requireNonNull(partRise, "partRise");
    return new Force(
        JointKernel.thermalChange(
            clampLength.mm(),
            studExpansion.perKelvin(),
            studRise.kelvin(),
            partExpansion.perKelvin(),
            partRise.kelvin(),
            studResilience(),
            partResilience()));
  }

  /** How the load factor follows; the last step is the load factor with the load under the faces. */
  @Override
  public Derivation explain() {
    return Derivation.of("Stiffness of the joint of " + tightening.thread())
        .step("δS", "resilience of the stud", "head + Σ l/(E·A) + engaged thread", studResilience(), "mm/N", RULE)
        .step("δP", "resilience of the parts", "cone, cone and sleeve, or sleeve", partResilience(), "mm/N", RULE,
            "lK = " + clampLength, "dW = " + tightening.statedFace().outer(), "dh = " + hole, "DA = " + partDiameter)
        .step("Φ", "load factor", "δP/(δS + δP)", loadFactor(1), "", RULE)
        .build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>(tightening.warnings());
    double length = pieces.stream().mapToDouble(piece -> piece.length().mm()).sum();
    if (Math.abs(length - clampLength.mm()) > 1e-6 * clampLength.mm()) {
      warnings.add(
          new Warning(
              "stud-pieces-and-clamp-length",
              Message.of("the pieces of the stud add to ", new Length(length), ", the clamp length is ", clampLength),
              SourceRef.derived("the stud is stretched over the clamp length")));
    }
    warnings.add(
        new Warning("resilience-recalled", "the resilience formulas are recalled and were not found in print", RULE));
    return List.copyOf(warnings);
  }

  /** Both resiliences. */
  @Override
  public String toString() {
    return "joint of " + tightening.thread() + ": δS " + Numbers.significant(1e6 * studResilience(), 4)
        + " nm/N, δP " + Numbers.significant(1e6 * partResilience(), 4) + " nm/N";
  }
}
