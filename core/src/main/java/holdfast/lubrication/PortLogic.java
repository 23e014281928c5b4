// SPDX-License-Identifier: Apache-2.0
package holdfast.lubrication;

import holdfast.lubrication.PortState.Part;
import holdfast.lubrication.PortState.Use;
import holdfast.trace.Warning;
import java.util.ArrayList;
import java.util.List;

/** The conclusions of a port plan. Each follows from a named rule. */
final class PortLogic {
  private PortLogic() {}

  static PortPlan plan(PortRequest request) {
    List<Port> alternatives = new ArrayList<>();
    for (Port port : Port.values()) {
      if (obstacles(request, port).isEmpty()) {
        alternatives.add(port);
      }
    }
    List<Obstacle> obstacles = obstacles(request, request.feed());
    List<PortState> ports = new ArrayList<>();
    if (obstacles.isEmpty()) {
      for (Port port : Port.values()) {
        ports.add(state(request, port));
      }
    }
    return new PortPlan(request, ports, obstacles, alternatives);
  }

  /** Whether the roller has the port, head form considered. */
  private static boolean present(PortRequest r, Port port) {
    if (port == Port.HEAD && r.headForm() == HeadForm.HEXAGON_SOCKET) {
      return r.openings().head() && r.fittingInSocket();
    }
    return r.openings().has(port);
  }

  private static List<Obstacle> obstacles(PortRequest r, Port feed) {
    List<Obstacle> found = new ArrayList<>();
    boolean socketInTheWay = feed == Port.HEAD && r.headForm() == HeadForm.HEXAGON_SOCKET && !r.fittingInSocket();
    if (socketInTheWay && r.openings().head()) {
      found.add(new Obstacle(PortRule.SOCKET_TAKES_HEAD_PORT,
          "take a roller with a fitting built into the socket, or one with a slot, or feed through another port"));
    } else if (!present(r, feed)) {
      PortRule rule = Openings.rule(r.system(), r.studDiameter(), r.outsideDiameter());
      boolean sizeForbids = rule != PortRule.THREE_PORTS && !Openings.usual(r.system(), r.studDiameter(),
          r.outsideDiameter()).has(feed);
      found.add(new Obstacle(sizeForbids ? rule : PortRule.PORT_MUST_EXIST,
          "take a roller that has a port there, or a larger one, or feed through another port"));
    }
    if (feed == Port.RADIAL) {
      if (r.eccentricCollar()) {
        found.add(new Obstacle(PortRule.COLLAR_COVERS_RADIAL,
            "feed through the head or the thread end, or leave out the collar"));
      }
      if (!r.seatFeedHole()) {
        found.add(new Obstacle(PortRule.RADIAL_NEEDS_MEMBER,
            "drill a feed hole in the machine member that meets the radial hole"));
      }
      if (!r.openings().axialBore()) {
        found.add(new Obstacle(PortRule.RADIAL_NEEDS_AXIAL_BORE, "take a roller with an axial bore"));
      }
    }
    return found;
  }

  private static PortState state(PortRequest r, Port port) {
    if (!present(r, port)) {
      boolean socket = port == Port.HEAD && r.headForm() == HeadForm.HEXAGON_SOCKET && r.openings().head();
      return new PortState(port, Use.ABSENT, Part.NONE, List.of(), false,
          List.of(socket ? PortRule.SOCKET_TAKES_HEAD_PORT : PortRule.PORT_MUST_EXIST));
    }
    boolean feeds = port == r.feed();
    return switch (port) {
      case HEAD -> end(r, port, feeds, r.fittingInSocket());
      case THREAD_END -> end(r, port, feeds, false);
      case RADIAL -> radial(r, feeds);
    };
  }

  private static PortState end(PortRequest r, Port port, boolean feeds, boolean builtIn) {
    List<PortRule> rules = new ArrayList<>(List.of(feeds ? PortRule.ONE_FEED : PortRule.CLOSE_THE_OTHERS));
    boolean below = !feeds && port == Port.HEAD && r.headForm() == HeadForm.SLOT;
    if (below) {
      rules.add(PortRule.BELOW_SLOT_BOTTOM);
    }
    if (builtIn) {
      rules.add(PortRule.SOCKET_TAKES_HEAD_PORT);
      return new PortState(port, feeds ? Use.FEED : Use.CLOSED, Part.BUILT_IN_FITTING, List.of(), false, rules);
    }
    rules.add(PortRule.FITTING_BY_SIZE);
    List<FittingSize> sizes = FittingSize.of(r.system(), r.outsideDiameter(), r.studDiameter());
    return new PortState(port, feeds ? Use.FEED : Use.CLOSED, feeds ? Part.FITTING : Part.PLUG, sizes, below, rules);
  }

  private static PortState radial(PortRequest r, boolean feeds) {
    if (feeds) {
      return new PortState(Port.RADIAL, Use.FEED, Part.MEMBER_FEED_HOLE, List.of(), false,
          List.of(PortRule.ONE_FEED, PortRule.RADIAL_NEEDS_MEMBER, PortRule.RADIAL_NEEDS_AXIAL_BORE));
    }
    if (r.eccentricCollar()) {
      return new PortState(Port.RADIAL, Use.CLOSED, Part.COLLAR, List.of(), false,
          List.of(PortRule.CLOSE_THE_OTHERS, PortRule.COLLAR_COVERS_RADIAL));
    }
    if (r.seatFeedHole()) {
      return new PortState(Port.RADIAL, Use.CLOSED, Part.MEMBER_PLUG, List.of(), false,
          List.of(PortRule.CLOSE_THE_OTHERS, PortRule.CLOSE_MEMBER_CHANNEL));
    }
    return new PortState(Port.RADIAL, Use.CLOSED, Part.SEAT_WALL, List.of(), false,
        List.of(PortRule.CLOSE_THE_OTHERS, PortRule.SEAT_CLOSES_RADIAL));
  }

  static void warnings(PortPlan plan, List<Warning> warnings) {
    for (PortState state : plan.ports()) {
      boolean fitted = state.part() == Part.FITTING || state.part() == Part.PLUG;
      List<String> sizes = state.size().stream().map(FittingSize::size).distinct().toList();
      if (fitted && sizes.isEmpty()) {
        warnings.add(new Warning("fitting-size-unknown",
            "no catalogue at hand states the fitting for this size: measure the hole at"
            + " the " + state.port(), PortRule.FITTING_BY_SIZE.source()));
      } else if (sizes.size() > 1) {
        warnings.add(new Warning("fitting-size-differs", "catalogues differ on the fitting at the " + state.port() + " ("
            + String.join(" or ", sizes) + "): measure the hole", state.size().get(0).source()));
      }
      if (state.part() == Part.SEAT_WALL || state.part() == Part.COLLAR) {
        warnings.add(new Warning("radial-port-closed-by-fit",
            "the radial port is closed by the fit alone: with clearance some grease"
            + " can creep along the " + (state.part() == Part.COLLAR ? "collar" : "seat"), PortRule.SEAT_CLOSES_RADIAL.source()));
      }
    }
    PortRequest request = plan.request();
    if (request.headForm() == HeadForm.HEXAGON_SOCKET && request.openings().head() && !request.fittingInSocket()) {
      warnings.add(new Warning("look-into-socket",
          "look into the socket: if the bore is open at its bottom after all, close it with a"
          + " plug", PortRule.SOCKET_TAKES_HEAD_PORT.source()));
    }
    boolean slotFed = request.feed() == Port.HEAD && request.headForm() == HeadForm.SLOT;
    if (slotFed) {
      warnings.add(new Warning("fitting-in-slot", "the fitting stands in the slot: hold the head with a tool that clears it",
          PortRule.BELOW_SLOT_BOTTOM.source()));
    }
  }
}
