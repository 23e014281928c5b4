// SPDX-License-Identifier: Apache-2.0
package holdfast.lubrication;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * What becomes of one port.
 *
 * @param port the port
 * @param use what it does
 * @param part what goes into it or closes it
 * @param size sizes of the part by the catalogues, more than one where they differ; empty if no part is fitted
 * @param belowSlotBottom whether the part has to lie below the bottom of the slot
 * @param rules the rules from which this follows; at least one
 */
public record PortState(Port port, Use use, Part part, List<FittingSize> size, boolean belowSlotBottom, List<PortRule> rules)
    implements Serializable {

  /** What a port does. */
  public enum Use {
    /** The roller does not have it. */
    ABSENT,
    /** It feeds the roller. */
    FEED,
    /** It is closed. */
    CLOSED
  }

  /** What goes into a port or closes it. */
  public enum Part {
    /** Nothing: there is no opening. */
    NONE("nothing"),
    /** A grease fitting. */
    FITTING("grease fitting"),
    /** The fitting that the maker built into the hexagon socket. */
    BUILT_IN_FITTING("fitting built into the socket"),
    /** The feed hole of the machine member. */
    MEMBER_FEED_HOLE("feed hole of the machine member"),
    /** A plug. */
    PLUG("plug"),
    /** The wall of the bore in the machine member. */
    SEAT_WALL("wall of the seat"),
    /** The eccentric collar. */
    COLLAR("eccentric collar"),
    /** A plug at the outer end of the feed hole of the machine member. */
    MEMBER_PLUG("plug in the outer end of the feed hole of the machine member");

    private final String label;

    Part(String label) {
      this.label = label;
    }

    /** For example {@code "grease fitting"}. */
    @Override
    public String toString() {
      return label;
    }
  }

  // Keeps unmodifiable copies.
  public PortState {
    Objects.requireNonNull(port, "port");
    Objects.requireNonNull(use, "use");
    Objects.requireNonNull(part, "part");
    Objects.requireNonNull(size, "size");
    Objects.requireNonNull(rules, "rules");
    size = List.copyOf(size);
    rules = List.copyOf(rules);
  }

  /** What to do at this port, in one line. */
  @Override
  public String toString() {
    String what =
        switch (use) {
          case ABSENT -> "not there";
          case FEED -> "FEED by " + part;
          case CLOSED -> "closed by " + part;
        };
    StringBuilder text = new StringBuilder(port.toString()).append(": ").append(what);
    if (!size.isEmpty()) {
      text.append(", ").append(String.join(" or ", size.stream().map(FittingSize::toString).distinct().toList()));
    }
    return text.append(belowSlotBottom ? ", below the bottom of the slot" : "").toString();
  }
}
