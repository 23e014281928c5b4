// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Check;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.quantity.Temperature;
import holdfast.tables.SourceRef;
import holdfast.trace.Caution;
import holdfast.trace.Derivation;
import holdfast.trace.Message;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.DoubleStream;

/**
 * Joining with heat or cold: the temperature of the housing at which the tightest pair slips together.
 *
 * @param fit the fit
 * @param room temperature of the workshop, at which the parts start
 * @param studTemperature temperature of the stud when it goes in
 * @param clearance assembly clearance, diametral
 * @param housingTemperature temperature that the housing needs; the room's if it need not be heated
 * @param coolingTemperature temperature that the stud alone needs with the housing at room temperature, in °C; below
 *     absolute zero (-273.15) if cooling alone cannot do it
 * @param ceilings temperatures that heated parts must not exceed
 * @param studFloor lowest temperature that the stud, or what sits on it, may take
 */
public record ThermalAssembly(
    InterferenceFit fit,
    Temperature room,
    Temperature studTemperature,
    Length clearance,
    Temperature housingTemperature,
    double coolingTemperature,
    List<TemperatureCeiling> ceilings,
    Temperature studFloor)
    implements Traced, Serializable {
  /** Temperature of dry ice in °C. */
  private static final double DRY_ICE = -78;
  /** Temperature of boiling nitrogen in °C. */
  private static final double NITROGEN = -196;

  private static final SourceRef TEMPERATURES = SourceRef.memory("DIN 7190-1:2017", "assembly temperatures");
  private static final SourceRef COLD = SourceRef.memory("DIN 7190-1:2017", "assembly temperatures, dry ice and liquid nitrogen");

  // Keeps an unmodifiable copy of the list.
  public ThermalAssembly {
    Objects.requireNonNull(fit, "fit");
    Objects.requireNonNull(room, "room");
    Objects.requireNonNull(studTemperature, "studTemperature");
    Objects.requireNonNull(clearance, "clearance");
    Objects.requireNonNull(housingTemperature, "housingTemperature");
    Objects.requireNonNull(ceilings, "ceilings");
    Objects.requireNonNull(studFloor, "studFloor");
    Check.finite(coolingTemperature, "cooling temperature", "°C");
    ceilings = List.copyOf(ceilings);
  }

  static Builder of(InterferenceFit fit) {
    return new Builder(fit);
  }

  /**
   * The ceiling that governs.
   *
   * @return the lowest ceiling; empty if none is known
   */
  public Optional<TemperatureCeiling> governingCeiling() {
    return ceilings.stream().min((a, b) -> a.limit().compareTo(b.limit()));
  }

  /**
   * Whether the housing reaches its temperature without passing a ceiling.
   *
   * @return true if no known ceiling is passed
   */
  public boolean withinCeilings() {
    return governingCeiling().map(c -> housingTemperature.compareTo(c.limit()) <= 0).orElse(true);
  }

  /**
   * Whether the housing is heated above the workshop.
   *
   * @return true if by more than what rounding leaves
   */
  public boolean heats() {
    return housingTemperature.celsius() > room.celsius() + 1e-6;
  }

  /**
   * Whether the stud is cooled below the workshop.
   *
   * @return true if it goes in colder
   */
  public boolean cools() {
    return studTemperature.compareTo(room) < 0;
  }

  /**
   * The way that is open: this one, or else with the stud cooled alone, or with dry ice or nitrogen and a warm housing.
   *
   * @return the assembly to carry out; empty if neither heat nor cold joins the tightest pair
   */
  public Optional<ThermalAssembly> workable() {
    if (withinCeilings()) {
      return Optional.of(this);
    }
    if (coolingTemperature >= studFloor.celsius()) {
      return Optional.of(builder().studAt(new Temperature(coolingTemperature)).build());
    }
    return DoubleStream.of(DRY_ICE, NITROGEN)
        .filter(cold -> cold >= studFloor.celsius() && cold < studTemperature.celsius())
        .mapToObj(cold -> builder().studAt(new Temperature(cold)).build())
        .filter(ThermalAssembly::withinCeilings)
        .findFirst();
  }

  /**
   * What to do: heat, cool, both, or neither.
   *
   * @return advice in one or two sentences
   */
  public String advice() {
    return advice("stud", "housing").toString();
  }

  /**
   * The same in the words of the machine.
   *
   * @param inner what goes in, for example {@code "pin"}
   * @param outer what takes it, for example {@code "fork"}
   * @return advice in one or two sentences
   */
  public Message advice(String inner, String outer) {
    Objects.requireNonNull(inner, "inner");
    Objects.requireNonNull(outer, "outer");
    if (withinCeilings()) {
      return Message.of("Heat the ", outer, " to ", housingTemperature, " with the ", inner, " at ", studTemperature, ".");
    }
    return Message.of("Heating alone is no way out: it takes ", housingTemperature, ", above ",
        governingCeiling().orElseThrow().words(), ". ",
        workable()
            .map(way -> Message.of("Cool the ", inner, " to ", way.studTemperature, way.rest(outer)))
            .orElseGet(() -> Message.of("Cooling does not close the gap either. Press the ", inner, " in, or choose a looser fit:"
                + " at a joint diameter of ", fit.interference().joint(),
                " a tolerance takes more of the diameter than heat can give.")));
  }

  private Message rest(String outer) {
    if (heats()) {
      return Message.of(" and heat the ", outer, " to ", housingTemperature, ".");
    }
    return Message.of(", which ", studTemperature.celsius() >= DRY_ICE ? "dry ice reaches" : "only liquid nitrogen reaches", ".");
  }

  /**
   * What can hurt while heating and cooling.
   *
   * @return the cautions
   */
  public List<Caution> cautions() {
    return SeatCautions.heatingAndCooling();
  }

  /**
   * What can hurt on the way that is open, in few words for the bench.
   *
   * @return cautions on heat if it heats, on cold if it cools; empty if no way is open
   */
  public List<Caution> benchCautions() {
    return workable().map(way -> SeatCautions.bench(way.heats(), way.cools())).orElse(List.of());
  }

  /** Derivation of the temperature of the housing. */
  @Override
  public Derivation explain() {
    double joint = fit.interference().joint().mm();
    double outer = fit.housing().material().thermalExpansion().base();
    double inner = studExpansion(fit, room, studTemperature);
    double atRoom = interferenceAtRoom(fit, room);
    return Derivation.of("Temperature of the housing for assembly")
        .step(
            "U_R",
            "greatest interference at room temperature",
            "U + D·(α_I - α_A)·(θ_R - 20)",
            atRoom * 1000,
            "µm",
            TEMPERATURES,
            "U = " + Numbers.shortest(fit.interference().greatest().mm() * 1000) + " µm",
            "D = " + Numbers.shortest(joint) + " mm",
            "θ_R = " + room)
        .step(
            "α_I",
            "expansion of the stud between room and its temperature",
            studTemperature.celsius() < room.celsius() ? "mean contraction of its group on cooling" : "as given for the material",
            inner * 1e6,
            "µm/(m·K)",
            studTemperature.celsius() < room.celsius() ? HeatTable.source() : fit.stud().material().source())
        .step(
            "θ_A",
            "temperature of the housing",
            "max(θ_R, θ_R + (U_R + S)/(α_A·D) + (α_I/α_A)·(θ_I - θ_R))",
            housingTemperature.celsius(),
            "°C",
            TEMPERATURES,
            "S = " + Numbers.shortest(clearance.mm() * 1000) + " µm",
            "α_A = " + Numbers.significant(outer * 1e6, 6) + " µm/(m·K)",
            "θ_I = " + studTemperature)
        .build();
  }

  /** Ceilings that are passed or unknown. */
  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    for (TemperatureCeiling ceiling : ceilings) {
      if (housingTemperature.compareTo(ceiling.limit()) > 0) {
        warnings.add(
            new Warning(
                "above-ceiling",
                Message.of("the housing needs ", housingTemperature, ", above the ceiling for ", ceiling.words()),
                ceiling.source()));
      }
    }
    if (heats() && TemperatureCeiling.of(fit.housing().material()).isEmpty()) {
      warnings.add(
          new Warning(
              "ceiling-unknown",
              "no ceiling is known for " + fit.housing().material().name() + "; ask its supplier before heating",
              HeatTable.source()));
    }
    if (studTemperature.compareTo(studFloor) < 0) {
      warnings.add(
          new Warning(
              "below-floor",
              Message.of("the stud is taken at ", studTemperature, ", below ", studFloor, ", the lowest that it may take"),
              COLD));
    }
    if (cools() && studTemperature.celsius() < DRY_ICE) {
      warnings.add(
          new Warning(
              "deep-cold",
              Message.of("hardened steel below ", new Temperature(DRY_ICE),
                  " may change its structure and grow: ask who hardened it"),
              SourceRef.commonPractice("deep cooling turns retained austenite into martensite")));
    }
    return List.copyOf(warnings);
  }

  @Override
  public String toString() {
    return advice();
  }

  private Builder builder() {
    Builder builder = new Builder(fit).room(room).clearance(clearance).studFloor(studFloor);
    builder.ceilings.clear();
    builder.ceilings.addAll(ceilings);
    return builder;
  }

  private static double interferenceAtRoom(InterferenceFit fit, Temperature room) {
    return ThermalSeatKernel.interferenceAt(
        fit.interference().greatest().mm(),
        fit.interference().joint().mm(),
        fit.stud().material().thermalExpansion().base(),
        room.celsius(),
        fit.housing().material().thermalExpansion().base(),
        room.celsius());
  }

  /** Cold steel contracts less for each kelvin: the recalled mean for its group, if there is one. */
  private static double studExpansion(InterferenceFit fit, Temperature room, Temperature studTemperature) {
    double own = fit.stud().material().thermalExpansion().base();
    return studTemperature.celsius() < room.celsius() ? HeatTable.cooling(fit.stud().material().group()).orElse(own) : own;
  }

  /** Collects what assembly with heat depends on. Not thread-safe. */
  public static final class Builder {
    private final InterferenceFit fit;
    private final List<TemperatureCeiling> ceilings = new ArrayList<>();
    private Temperature room = new Temperature(ThermalSeatKernel.REFERENCE);
    private Temperature studTemperature;
    private Temperature studFloor = new Temperature(NITROGEN);
    private Length clearance;

    private Builder(InterferenceFit fit) {
      this.fit = fit;
      this.clearance = fit.interference().joint().dividedBy(1000);
      TemperatureCeiling.of(fit.housing().material()).ifPresent(ceilings::add);
    }

    /**
     * States the temperature of the workshop; 20 °C if not stated.
     *
     * @param temperature the temperature
     * @return this builder
     */
    public Builder room(Temperature temperature) {
      Objects.requireNonNull(temperature, "temperature");
      room = Objects.requireNonNull(temperature, "room");
      return this;
    }

    /**
     * States the temperature of the stud when it goes in; the room's if not stated.
     *
     * @param temperature the temperature
     * @return this builder
     */
    public Builder studAt(Temperature temperature) {
      Objects.requireNonNull(temperature, "temperature");
      studTemperature = Objects.requireNonNull(temperature, "temperature of the stud");
      return this;
    }

    /**
     * States the lowest temperature that the stud, or what sits on it (grease, seals), may take; -196 °C if not stated.
     *
     * @param temperature the temperature
     * @return this builder
     */
    public Builder studFloor(Temperature temperature) {
      Objects.requireNonNull(temperature, "temperature");
      studFloor = Objects.requireNonNull(temperature, "lowest temperature of the stud");
      return this;
    }

    /**
     * States the assembly clearance; a thousandth of the joint diameter if not stated. Half of the greatest interference
     * is a second common rule.
     *
     * @param diametral the clearance, 0 or more
     * @return this builder
     * @throws holdfast.quantity.InputException if it is negative
     */
    public Builder clearance(Length diametral) {
      Objects.requireNonNull(diametral, "diametral");
      Check.notNegative(diametral.mm(), "assembly clearance", "mm", "the parts must pass");
      clearance = diametral;
      return this;
    }

    /**
     * Adds a ceiling besides that of the housing's material.
     *
     * @param ceiling the ceiling
     * @return this builder
     */
    public Builder ceiling(TemperatureCeiling ceiling) {
      ceilings.add(Objects.requireNonNull(ceiling, "ceiling"));
      return this;
    }

    /**
     * Computes the temperatures.
     *
     * @return the result
     * @throws holdfast.quantity.InputException if a material does not expand
     */
    public ThermalAssembly build() {
      Temperature stud = studTemperature == null ? room : studTemperature;
      double joint = fit.interference().joint().mm();
      double atRoom = interferenceAtRoom(fit, room);
      // Parts that already clear each other at room temperature use up part of the assembly clearance.
      double interference = Math.max(0, atRoom);
      double gap = Math.max(0, clearance.mm() + Math.min(0, atRoom));
      double housing =
          ThermalSeatKernel.housingTemperature(
              interference,
              gap,
              joint,
              fit.housing().material().thermalExpansion().base(),
              studExpansion(fit, room, stud),
              room.celsius(),
              stud.celsius());
      double cold =
          ThermalSeatKernel.studTemperature(
              interference, gap, joint, studExpansion(fit, room, new Temperature(NITROGEN)), room.celsius());
      // A cold stud may clear a housing that is not heated at all.
      Temperature needed = new Temperature(Math.max(housing, room.celsius()));
      return new ThermalAssembly(fit, room, stud, clearance, needed, cold, ceilings, studFloor);
    }
  }
}
