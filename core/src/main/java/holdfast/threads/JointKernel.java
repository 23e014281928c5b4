// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.quantity.ThermalExpansion;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/**
 * Resilience of stud and clamped parts, and what follows from it. Units: mm, N, MPa, mm/N. Allocation-free. Recalled
 * from the guideline unless a function says otherwise.
 */
public final class JointKernel {
  private JointKernel() {}

  /**
   * Resilience of a prismatic piece, δ = l/(E·A).
   *
   * @param length l in mm, 0 or more
   * @param modulus E in MPa, over 0
   * @param area A in mm², over 0
   * @return δ in mm/N
   * @throws InputException if a value is outside its range
   */
  @Source(document = "derivation", locator = "Hooke's law", provenance = Provenance.DERIVED)
  public static double resilience(double length, double modulus, double area) {
    return Check.notNegative(length, "length l", "mm", "a length")
        / (Check.positive(modulus, "modulus E", "MPa", "a modulus of elasticity")
            * Check.positive(area, "area A", "mm²", "a section carries the force"));
  }

  /**
   * Resilience of the engaged thread: core of the stud over 0.5·d and nut or tapped hole, δG + δM.
   *
   * @param diameter d in mm
   * @param rootDiameter d3 in mm
   * @param bore di in mm, 0 or more, less than d3
   * @param studModulus ES in MPa
   * @param nutModulus EM in MPa
   * @param tapped whether the thread is in a tapped hole (0.33·d) and not in a nut (0.4·d)
   * @return δGM in mm/N
   */
  @Source(document = "VDI 2230-1:2015", locator = "resilience of the engaged thread", provenance = Provenance.MEMORY)
  public static double engagedResilience(
      double diameter, double rootDiameter, double bore, double studModulus, double nutModulus, boolean tapped) {
    return resilience(0.5 * diameter, studModulus, ThreadGeometryKernel.ringArea(rootDiameter, bore))
        + resilience((tapped ? 0.33 : 0.4) * diameter, nutModulus, ThreadGeometryKernel.ringArea(diameter, bore));
  }

  /**
   * Tangent of the angle of the deformation cone.
   *
   * @param clampLength lK in mm
   * @param faceDiameter dW in mm
   * @param partDiameter DA in mm, outer diameter of the clamped parts
   * @param tapped whether the joint is tapped (w = 2) and not through (w = 1)
   * @return through 0.362 + 0.032·ln(βL/2) + 0.153·ln y; tapped 0.348 + 0.013·ln βL + 0.193·ln y
   * @throws InputException if a value is outside its range
   */
  @Source(document = "VDI 2230-1:2015", locator = "angle of the substitutional cone", provenance = Provenance.MEMORY)
  public static double coneTangent(double clampLength, double faceDiameter, double partDiameter, boolean tapped) {
    double beta =
        Check.positive(clampLength, "clamp length lK", "mm", "something is clamped")
            / Check.positive(faceDiameter, "face diameter dW", "mm", "the nut bears on a ring");
    double y = Check.positive(partDiameter, "part diameter DA", "mm", "the parts have a size") / faceDiameter;
    double tangent =
        tapped
            ? 0.348 + 0.013 * Math.log(beta) + 0.193 * Math.log(y)
            : 0.362 + 0.032 * Math.log(beta / 2) + 0.153 * Math.log(y);
    if (!(tangent > 0)) {
      throw new InputException(
          "clamp length lK",
          Numbers.shortest(clampLength) + " mm",
          "long enough for a cone under dW = " + Numbers.shortest(faceDiameter) + " mm",
          "the fitted cone angle is not positive here");
    }
    return tangent;
  }

  /**
   * Resilience of the clamped parts: cone, cone and sleeve, or sleeve, by the outer diameter.
   *
   * @param clampLength lK in mm, over 0
   * @param faceDiameter dW in mm, over dh
   * @param hole dh in mm, over 0
   * @param partDiameter DA in mm, over dh
   * @param modulus EP in MPa, over 0
   * @param tapped whether the joint is tapped (w = 2) and not through (w = 1)
   * @return δP in mm/N
   * @throws InputException if a value is outside its range
   */
  @Source(document = "VDI 2230-1:2015", locator = "resilience of the clamped parts", provenance = Provenance.MEMORY)
  public static double partResilience(
      double clampLength, double faceDiameter, double hole, double partDiameter, double modulus, boolean tapped) {
    Check.positive(clampLength, "clamp length lK", "mm", "something is clamped");
    Check.positive(hole, "hole dh", "mm", "the stud passes through");
    TighteningKernel.checkRing(faceDiameter, hole);
    TighteningKernel.checkRing(partDiameter, hole);
    Check.positive(modulus, "modulus EP", "MPa", "a modulus of elasticity");
    if (partDiameter <= faceDiameter) {
      return resilience(clampLength, modulus, ThreadGeometryKernel.ringArea(partDiameter, hole));
    }
    double w = tapped ? 2 : 1;
    double tan = coneTangent(clampLength, faceDiameter, partDiameter, tapped);
    double limit = faceDiameter + w * clampLength * tan;
    double end = Math.min(partDiameter, limit);
    double cone =
        2
            * Math.log((faceDiameter + hole) * (end - hole) / ((faceDiameter - hole) * (end + hole)))
            / (w * modulus * Math.PI * hole * tan);
    if (partDiameter >= limit) {
      return cone;
    }
    return cone
        + resilience(
            clampLength - (partDiameter - faceDiameter) / (w * tan), modulus, ThreadGeometryKernel.ringArea(partDiameter, hole));
  }

  /**
   * Stiffness of equal clamped parts by the 30° frustum of the textbooks, with a washer face of 1.5·d.
   *
   * @param diameter d in mm, over 0
   * @param grip l in mm, over 0
   * @param modulus E in MPa, over 0
   * @return km in N/mm
   * @throws InputException if a value is outside its range
   */
  @Source(document = "Shigley 9", locator = "eq. (8-22)", provenance = Provenance.MEMORY)
  public static double frustumStiffness(double diameter, double grip, double modulus) {
    Check.positive(diameter, "diameter d", "mm", "a stud has a diameter");
    Check.positive(grip, "grip l", "mm", "something is clamped");
    Check.positive(modulus, "modulus E", "MPa", "a modulus of elasticity");
    double t = 0.5774;
    // The logarithm of 5 (t l + 0.5 d) / (t l + 2.5 d), which for a short grip is near to that of 1.
    return t * Math.PI * modulus * diameter
        / (2 * Math.log1p(4 * t * grip / (t * grip + 2.5 * diameter)));
  }

  /**
   * Load factor: the part of a working load that the stud takes, Φn = n·δP/(δS + δP).
   *
   * @param studResilience δS in mm/N, over 0
   * @param partResilience δP in mm/N, over 0
   * @param introduction n (dimensionless), place where the load enters, over 0 up to 1
   * @return Φn
   * @throws InputException if a value is outside its range
   */
  @Source(document = "VDI 2230-1:2015", locator = "load factor", provenance = Provenance.MEMORY)
  @Source(document = "Shigley 9", locator = "section 8-5, C = kb/(kb + km)")
  public static double loadFactor(double studResilience, double partResilience, double introduction) {
    return Check.overUpTo(introduction, 0, 1, "load introduction n", "", "1 under the face, less inside the parts")
        * Check.positive(partResilience, "part resilience δP", "mm/N", "parts give way")
        / (Check.positive(studResilience, "stud resilience δS", "mm/N", "studs stretch") + partResilience);
  }

  /**
   * Preload lost when surfaces settle, FZ = fZ/(δS + δP).
   *
   * @param embedding fZ in mm, 0 or more
   * @param studResilience δS in mm/N, over 0
   * @param partResilience δP in mm/N, over 0
   * @return FZ in N
   * @throws InputException if a value is outside its range
   */
  @Source(document = "VDI 2230-1:2015", locator = "embedding", provenance = Provenance.MEMORY)
  public static double embeddingLoss(double embedding, double studResilience, double partResilience) {
    return Check.notNegative(embedding, "embedding fZ", "mm", "surfaces settle one way")
        / (Check.positive(studResilience, "stud resilience δS", "mm/N", "studs stretch")
            + Check.positive(partResilience, "part resilience δP", "mm/N", "parts give way"));
  }

  /**
   * Embedding by the older formula, fZ = 3.29·(lK/d)^0.34·10⁻³ mm.
   *
   * @param clampLength lK in mm, over 0
   * @param diameter d in mm, over 0
   * @return fZ in mm
   * @throws InputException if a value is outside its range
   */
  @Source(document = "VDI 2230:1986", locator = "embedding", provenance = Provenance.MEMORY)
  public static double embeddingByLength(double clampLength, double diameter) {
    return 3.29e-3
        * Math.pow(
            Check.positive(clampLength, "clamp length lK", "mm", "something is clamped")
                / Check.positive(diameter, "diameter d", "mm", "a stud has a diameter"),
            0.34);
  }

  /**
   * Change of the preload with temperature, (αP·ΔTP − αS·ΔTS)·lK/(δS + δP).
   *
   * @param clampLength lK in mm, over 0
   * @param studExpansion αS in 1/K
   * @param studRise ΔTS in K
   * @param partExpansion αP in 1/K
   * @param partRise ΔTP in K
   * @param studResilience δS in mm/N, over 0
   * @param partResilience δP in mm/N, over 0
   * @return change in N; positive when the preload grows
   * @throws InputException if a value is outside its range
   */
  @Source(document = "NASA TM-106943", locator = "eq. (10), with one temperature for both")
  public static double thermalChange(
      double clampLength,
      double studExpansion,
      double studRise,
      double partExpansion,
      double partRise,
      double studResilience,
      double partResilience) {
    Check.positive(clampLength, "clamp length lK", "mm", "something is clamped");
    ThermalExpansion.ofSolid(studExpansion, "coefficient of expansion of the stud");
    ThermalExpansion.ofSolid(partExpansion, "coefficient of expansion of the parts");
    Check.finite(studExpansion * studRise, "free expansion of the stud", "");
    Check.finite(partExpansion * partRise, "free expansion of the parts", "");
    return (partExpansion * partRise - studExpansion * studRise)
        * clampLength
        / (Check.positive(studResilience, "stud resilience δS", "mm/N", "studs stretch")
            + Check.positive(partResilience, "part resilience δP", "mm/N", "parts give way"));
  }

  /**
   * Preload at which a ring-shaped contact begins to open on one side under a moment, F = M·A·(D/2)/I.
   *
   * @param moment M in N·mm, 0 or more
   * @param outer outer diameter D of the contact ring in mm
   * @param inner inner diameter of the ring in mm, less than D
   * @return F = 8·M·D/(D² + di²) in N
   * @throws InputException if a value is outside its range
   */
  @Source(document = "derivation", locator = "edge stress of a ring under force and moment", provenance = Provenance.DERIVED)
  public static double preloadAgainstMoment(double moment, double outer, double inner) {
    TighteningKernel.checkRing(outer, inner);
    return 8 * Check.notNegative(moment, "moment M", "N·mm", "its size counts") * outer / (outer * outer + inner * inner);
  }
}
