// SPDX-License-Identifier: Apache-2.0
package holdfast.lubrication;

import holdfast.quantity.InputException;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * Which port feeds the roller, and what closes the others. If the wanted port cannot feed, the plan has no feed, names
 * the obstacles with what to change, and the ports that could feed instead; nothing is to be mounted by such a plan.
 *
 * @param request what was asked for
 * @param ports the three ports in their order; empty if the request is impossible
 * @param obstacles why the wanted port cannot feed; empty if it can
 * @param alternatives the ports that could feed the roller as it is, the wanted one included
 */
public record PortPlan(PortRequest request, List<PortState> ports, List<Obstacle> obstacles, List<Port> alternatives)
    implements Traced, Serializable {
  // Keeps unmodifiable copies.
  public PortPlan {
    Objects.requireNonNull(request, "request");
    Objects.requireNonNull(ports, "ports");
    Objects.requireNonNull(obstacles, "obstacles");
    Objects.requireNonNull(alternatives, "alternatives");
    ports = List.copyOf(ports);
    obstacles = List.copyOf(obstacles);
    alternatives = List.copyOf(alternatives);
  }

  /**
   * Plans the ports.
   *
   * @param request what is asked for
   * @return the plan, possible or not
   */
  public static PortPlan of(PortRequest request) {
    Objects.requireNonNull(request, "request");
    return PortLogic.plan(request);
  }

  /**
   * Whether the wanted port can feed the roller.
   *
   * @return true if nothing stands against it
   */
  public boolean possible() {
    return obstacles.isEmpty();
  }

  /**
   * What becomes of one port.
   *
   * @param port the port
   * @return its state
   * @throws InputException if the request is impossible
   */
  public PortState state(Port port) {
    Objects.requireNonNull(port, "port");
    if (!possible()) {
      throw new InputException("request for a plan", request.toString(), "a possible one", obstacles.get(0).toString());
    }
    return ports.stream().filter(state -> state.port() == port).findFirst().orElseThrow();
  }

  /**
   * Number of ports that feed: the proof of the plan.
   *
   * @return 1 if the plan is possible, else 0
   */
  public int feedPaths() {
    return (int) ports.stream().filter(state -> state.use() == PortState.Use.FEED).count();
  }

  /**
   * What has to be done at the bench, in order.
   *
   * @return instructions, each with its rule in words; for an impossible request what to change
   */
  public List<String> instructions() {
    List<String> lines = new ArrayList<>();
    if (!possible()) {
      obstacles.forEach(obstacle -> lines.add("cannot feed through the " + request.feed() + ": " + obstacle));
      lines.add(alternatives.isEmpty()
          ? "no port of this roller can feed it as it is"
          : "possible instead: " + alternatives.stream().map(Port::toString).collect(Collectors.joining(", ")));
      return List.copyOf(lines);
    }
    ports.forEach(state -> lines.add(state.toString()));
    if (ports.stream().anyMatch(state -> state.part() == PortState.Part.FITTING || state.part() == PortState.Part.PLUG)) {
      lines.add(PortRule.DRIVE_WITH_MANDREL.statement());
    }
    lines.add(PortRule.MARK_OUTSIDE_LOAD_ZONE.statement());
    return List.copyOf(lines);
  }

  /** Each port with its rule counts 1 if it feeds and 0 if not; the last step is the number of feed paths. */
  @Override
  public Derivation explain() {
    Derivation.Builder steps = Derivation.of("Port plan, feed wanted through the " + request.feed());
    for (PortState state : ports) {
      for (PortRule rule : state.rules()) {
        steps.step(state.port().toString(), state.toString(), rule.statement(), state.use() == PortState.Use.FEED ? 1 : 0, "",
            rule.source());
      }
    }
    for (Obstacle obstacle : obstacles) {
      steps.step(request.feed().toString(), "cannot feed: " + obstacle.remedy(), obstacle.rule().statement(), 0, "",
          obstacle.rule().source());
    }
    return steps.step("N", "feed paths", "number of ports that feed", feedPaths(), "",
        SourceRef.derived("count over the three ports")).build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    if (!possible()) {
      for (Obstacle obstacle : obstacles) {
        warnings.add(new Warning("port-impossible", obstacle.toString(), obstacle.rule().source()));
      }
      return List.copyOf(warnings);
    }
    PortLogic.warnings(this, warnings);
    return List.copyOf(warnings);
  }

  /** The instructions, one a line. */
  @Override
  public String toString() {
    return String.join("\n", instructions());
  }
}
