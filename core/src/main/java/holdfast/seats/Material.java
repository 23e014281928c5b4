// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.quantity.PlainText;
import holdfast.quantity.Stress;
import holdfast.quantity.ThermalExpansion;
import holdfast.tables.SourceRef;
import holdfast.trace.Message;
import java.io.InvalidObjectException;
import java.io.ObjectStreamException;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A material of a stud or a housing at room temperature. Immutable. Strengths may be unknown; what needs them says so.
 */
public final class Material implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final String condition;
  private final MaterialGroup group;
  private final Ductility ductility;
  private final Stress elasticModulus;
  private final double poissonRatio;
  private final ThermalExpansion thermalExpansion;
  private final double density;
  private final double yieldStrength;
  private final double tensileStrength;
  private final SourceRef source;
  private final String note;

  private Material(Builder b) {
    name = b.name;
    condition = b.condition;
    group = b.group;
    ductility = b.ductility;
    elasticModulus = b.elasticModulus;
    poissonRatio = b.poissonRatio;
    thermalExpansion = b.thermalExpansion;
    density = b.density;
    yieldStrength = b.yieldStrength;
    tensileStrength = b.tensileStrength;
    source = b.source;
    note = b.note;
  }

  /**
   * A material of the bundled table.
   *
   * @param name name or another designation, for example {@code "EN-GJS-500-7"}; case does not matter
   * @return the material
   * @throws InputException if the table does not hold it, or holds it in more than one condition
   */
  public static Material of(String name) {
    Objects.requireNonNull(name, "name");
    return MaterialTable.find(name, "");
  }

  /**
   * A material of the bundled table in one of its conditions.
   *
   * @param name name or another designation, for example {@code "42CrMo4+QT"}; case does not matter
   * @param condition the condition or the beginning of it, for example {@code "annealed"}
   * @return the material
   * @throws InputException if the table does not hold it, or more than one condition begins so
   */
  public static Material of(String name, String condition) {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(condition, "condition");
    return MaterialTable.find(name, condition);
  }

  /**
   * All materials of the bundled table.
   *
   * @return the materials in the order of the table
   */
  public static List<Material> all() {
    return MaterialTable.all();
  }

  /**
   * Starts a material of your own. Modulus, Poisson's ratio and expansion must be given; the rest may stay unknown.
   *
   * @param name its name
   * @param source where its values come from
   * @return a builder
   */
  public static Builder named(String name, SourceRef source) {
    Objects.requireNonNull(name, "name");
    return new Builder(name, source);
  }

  /**
   * Name.
   *
   * @return for example {@code "EN-GJS-500-7"}
   */
  public String name() {
    return name;
  }

  /**
   * Condition of supply or heat treatment.
   *
   * @return the condition, empty if not stated
   */
  public String condition() {
    return condition;
  }

  /**
   * Group of materials.
   *
   * @return the group
   */
  public MaterialGroup group() {
    return group;
  }

  /**
   * How it fails.
   *
   * @return the class of ductility
   */
  public Ductility ductility() {
    return ductility;
  }

  /**
   * Whether it breaks without yielding.
   *
   * @return true for a brittle material
   */
  public boolean brittle() {
    return ductility == Ductility.BRITTLE;
  }

  /**
   * Modulus of elasticity E.
   *
   * @return the modulus, over 0
   */
  public Stress elasticModulus() {
    return elasticModulus;
  }

  /**
   * Poisson's ratio ν.
   *
   * @return the ratio, 0 to 0.5
   */
  public double poissonRatio() {
    return poissonRatio;
  }

  /**
   * Coefficient of linear thermal expansion α between about 20 °C and 100 °C.
   *
   * @return the coefficient
   */
  public ThermalExpansion thermalExpansion() {
    return thermalExpansion;
  }

  /**
   * Density.
   *
   * @return kg/m³; empty if unknown
   */
  public OptionalDouble density() {
    return Double.isNaN(density) ? OptionalDouble.empty() : OptionalDouble.of(density);
  }

  /**
   * Yield strength R_e or R_p0.2.
   *
   * @return the strength; empty if unknown or if the material has none
   */
  public Optional<Stress> yieldStrength() {
    return Double.isNaN(yieldStrength) ? Optional.empty() : Optional.of(new Stress(yieldStrength));
  }

  /**
   * Tensile strength R_m.
   *
   * @return the strength; empty if unknown
   */
  public Optional<Stress> tensileStrength() {
    return Double.isNaN(tensileStrength) ? Optional.empty() : Optional.of(new Stress(tensileStrength));
  }

  /**
   * Where the values come from.
   *
   * @return document, locator and provenance
   */
  public SourceRef source() {
    return source;
  }

  /**
   * Remarks on the values.
   *
   * @return the remarks; empty if there are none
   */
  public String note() {
    return note;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Material m
        && name.equals(m.name)
        && condition.equals(m.condition)
        && group == m.group
        && ductility == m.ductility
        && elasticModulus.equals(m.elasticModulus)
        && poissonRatio == m.poissonRatio
        && thermalExpansion.equals(m.thermalExpansion)
        && Double.compare(density, m.density) == 0
        && Double.compare(yieldStrength, m.yieldStrength) == 0
        && Double.compare(tensileStrength, m.tensileStrength) == 0
        && source.equals(m.source)
        && note.equals(m.note);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, condition, elasticModulus, poissonRatio, thermalExpansion, yieldStrength, tensileStrength);
  }

  /** A stream may hold anything; what comes out of it passes the same door as what is built. */
  private Object readResolve() throws ObjectStreamException {
    try {
      Builder b = new Builder(Objects.requireNonNull(name, "name"), source)
          .condition(condition)
          .kind(group, ductility)
          .elastic(Objects.requireNonNull(elasticModulus, "elasticModulus"), poissonRatio)
          .expansion(thermalExpansion)
          .note(note);
      if (!Double.isNaN(density)) {
        b.density(density);
      }
      if (!Double.isNaN(yieldStrength)) {
        b.yieldStrength(new Stress(yieldStrength));
      }
      if (!Double.isNaN(tensileStrength)) {
        b.tensileStrength(new Stress(tensileStrength));
      }
      return b.build();
    } catch (InputException | NullPointerException e) {
      InvalidObjectException refused = new InvalidObjectException("material: " + e.getMessage());
      refused.initCause(e);
      throw refused;
    }
  }

  /**
   * The material in words, its modulus as a quantity.
   *
   * @return name, condition, modulus of elasticity, Poisson's ratio, expansion
   */
  public Message words() {
    return Message.of(name, condition.isEmpty() ? "" : " (" + condition + ")", ": E ", elasticModulus, ", ν ",
        Numbers.significant(poissonRatio, 3), ", α ", thermalExpansion);
  }

  /** Name, condition and elastic constants: {@code "EN-GJS-500-7 (ferritic-pearlitic): E 169 GPa, ν 0.275"}. */
  @Override
  public String toString() {
    return words().toString();
  }

  /** Collects the properties of a material. Not thread-safe. */
  public static final class Builder {
    private final String name;
    private final SourceRef source;
    private String condition = "";
    private MaterialGroup group = MaterialGroup.OTHER;
    private Ductility ductility = Ductility.LIMITED;
    private Stress elasticModulus;
    private double poissonRatio = Double.NaN;
    private ThermalExpansion thermalExpansion;
    private double density = Double.NaN;
    private double yieldStrength = Double.NaN;
    private double tensileStrength = Double.NaN;
    private String note = "";

    private Builder(String name, SourceRef source) {
      this.name = PlainText.name(name, "name of the material");
      this.source = Objects.requireNonNull(source, "source");
    }

    /**
     * States condition of supply or heat treatment.
     *
     * @param value the condition
     * @return this builder
     */
    public Builder condition(String value) {
      Objects.requireNonNull(value, "value");
      condition = value.isBlank() ? "" : PlainText.name(value.strip(), "condition of the material");
      return this;
    }

    /**
     * States group and class of ductility; without them the material is of another group and of limited ductility.
     *
     * @param materialGroup the group
     * @param materialDuctility how it fails
     * @return this builder
     */
    public Builder kind(MaterialGroup materialGroup, Ductility materialDuctility) {
      Objects.requireNonNull(materialGroup, "materialGroup");
      Objects.requireNonNull(materialDuctility, "materialDuctility");
      group = Objects.requireNonNull(materialGroup, "group");
      ductility = Objects.requireNonNull(materialDuctility, "ductility");
      return this;
    }

    /**
     * States the elastic constants.
     *
     * @param modulus modulus of elasticity E, 1 MPa to 10 TPa
     * @param ratio Poisson's ratio ν, 0 to 0.5
     * @return this builder
     * @throws InputException outside these ranges
     */
    public Builder elastic(Stress modulus, double ratio) {
      Objects.requireNonNull(modulus, "modulus");
      ThickRingKernel.checkElastic(modulus.base(), ratio, name);
      elasticModulus = modulus;
      poissonRatio = ratio;
      return this;
    }

    /**
     * States the coefficient of thermal expansion.
     *
     * @param coefficient α, 0 to 1e-3 1/K
     * @return this builder
     * @throws InputException outside this range
     */
    public Builder expansion(ThermalExpansion coefficient) {
      Objects.requireNonNull(coefficient, "coefficient");
      SeatChecks.expansion(coefficient.base(), "coefficient of thermal expansion of " + name);
      thermalExpansion = coefficient;
      return this;
    }

    /**
     * States the density, which rotation needs.
     *
     * @param kgPerM3 density in kg/m³, over 0
     * @return this builder
     * @throws InputException outside this range
     */
    public Builder density(double kgPerM3) {
      density = Check.positive(kgPerM3, "density", "kg/m³", "a part has mass");
      return this;
    }

    /**
     * States the yield strength.
     *
     * @param strength R_e or R_p0.2, over 0
     * @return this builder
     * @throws InputException outside this range
     */
    public Builder yieldStrength(Stress strength) {
      Objects.requireNonNull(strength, "strength");
      yieldStrength = Check.positive(strength.base(), "yield strength", "MPa", "leave it out if it is unknown");
      return this;
    }

    /**
     * States the tensile strength.
     *
     * @param strength R_m, over 0
     * @return this builder
     * @throws InputException outside this range
     */
    public Builder tensileStrength(Stress strength) {
      Objects.requireNonNull(strength, "strength");
      tensileStrength = Check.positive(strength.base(), "tensile strength", "MPa", "leave it out if it is unknown");
      return this;
    }

    /**
     * Adds remarks.
     *
     * @param value the remarks
     * @return this builder
     */
    public Builder note(String value) {
      Objects.requireNonNull(value, "value");
      note = value.strip();
      return this;
    }

    /**
     * Ends the material.
     *
     * @return the material
     * @throws InputException if modulus, Poisson's ratio or expansion are missing
     */
    public Material build() {
      if (elasticModulus == null || thermalExpansion == null) {
        throw new InputException(
            "properties of " + name, "incomplete", "elastic constants and thermal expansion", "every fit needs them");
      }
      return new Material(this);
    }
  }
}
