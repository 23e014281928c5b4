// SPDX-License-Identifier: Apache-2.0
package holdfast.contact;

import holdfast.quantity.Check;
import holdfast.quantity.Stress;
import java.io.Serializable;
import java.util.Objects;

/**
 * Elasticity of one body of a contact.
 *
 * @param modulus modulus of elasticity E, over 0
 * @param poisson Poisson's ratio ν, from 0 to 0.5
 * @param yieldStrength yield strength under tension, or 0 MPa if it is not known: then yielding is not judged
 */
public record ContactMaterial(Stress modulus, double poisson, Stress yieldStrength) implements Serializable {
  // Refuses what no elastic body has.
  public ContactMaterial {
    Objects.requireNonNull(modulus, "modulus");
    Objects.requireNonNull(yieldStrength, "yieldStrength");
    Check.positive(modulus.megapascal(), "modulus of elasticity E", "MPa", "an elastic body has stiffness");
    Check.within(poisson, 0, 0.5, "Poisson's ratio", "", "range of engineering materials");
    Check.notNegative(yieldStrength.megapascal(), "yield strength", "MPa", "0 means not known");
  }

  /**
   * Steel: E = 206 GPa, ν = 0.3 (common practice), yield strength not known.
   *
   * @return the material
   */
  public static ContactMaterial steel() {
    return of(new Stress(206000), 0.3);
  }

  /**
   * A material of unknown yield strength.
   *
   * @param modulus modulus of elasticity E, over 0
   * @param poisson Poisson's ratio ν, from 0 to 0.5
   * @return the material
   * @throws holdfast.quantity.InputException if a value is outside its range
   */
  public static ContactMaterial of(Stress modulus, double poisson) {
    return new ContactMaterial(modulus, poisson, new Stress(0));
  }

  /**
   * The same with a yield strength, so that yielding below the surface is judged.
   *
   * @param strength yield strength under tension
   * @return the material
   * @throws holdfast.quantity.InputException if the strength is negative
   */
  public ContactMaterial yieldingAt(Stress strength) {
    Objects.requireNonNull(strength, "strength");
    return new ContactMaterial(modulus, poisson, strength);
  }
}
