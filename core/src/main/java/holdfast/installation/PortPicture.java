// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.lubrication.Port;
import holdfast.lubrication.PortPlan;
import holdfast.lubrication.PortState;
import holdfast.sheet.Block;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Draws a stud with its ports, not to scale: which one feeds, and what closes the others. */
final class PortPicture {
  private PortPicture() {}

  static Block.Picture of(PortPlan plan) {
    String title = "Ports of the stud, not to scale";
    String description = plan.ports().stream().map(PortState::toString).collect(Collectors.joining("; "));
    Map<String, Object> values = new HashMap<>();
    values.put("bore", plan.request().openings().axialBore());
    for (Port port : Port.values()) {
      PortState state = plan.state(port);
      String key = port.name().toLowerCase(Locale.ROOT);
      values.put(key + "Open", state.use() == PortState.Use.FEED);
      values.put(key + "Closed", state.use() == PortState.Use.CLOSED);
      values.put(key + "Text", text(state));
    }
    return new Block.Picture(title, description, "port-plan.svg", values);
  }

  private static String text(PortState state) {
    return switch (state.use()) {
      case ABSENT -> "no hole";
      case FEED -> "FEED: " + state.part();
      case CLOSED -> "closed: " + state.part();
    };
  }
}
