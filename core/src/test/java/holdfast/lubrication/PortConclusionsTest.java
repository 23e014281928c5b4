// SPDX-License-Identifier: Apache-2.0
package holdfast.lubrication;

import static holdfast.quantity.Units.inch;
import static holdfast.quantity.Units.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.lubrication.PortState.Part;
import holdfast.quantity.InputException;
import holdfast.rollers.MeasureSystem;
import holdfast.rollers.RollerSeries;
import holdfast.rollers.RollerSize;
import holdfast.trace.Step;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which rule each conclusion of a port plan rests on, and what the bench is told. */
class PortConclusionsTest {
  private static final RollerSize D35 = RollerSeries.METRIC.size(mm(35));
  private static final Openings HEAD_CLOSED = new Openings(true, false, true, true);

  private static List<String> radialWarnings(PortPlan plan) {
    return plan.warnings().stream().filter(w -> w.code().equals("radial-port-closed-by-fit")).map(w -> w.message()).toList();
  }

  @Test
  void anAbsentPortNamesTheSocketOnlyWhereTheSocketTookIt() {
    PortRequest socket = PortRequest.of(D35, Port.THREAD_END).withHead(HeadForm.HEXAGON_SOCKET);
    assertEquals(List.of(PortRule.SOCKET_TAKES_HEAD_PORT), PortPlan.of(socket).state(Port.HEAD).rules());
    // Nothing is drilled there that the socket could take.
    assertEquals(List.of(PortRule.PORT_MUST_EXIST),
        PortPlan.of(socket.withOpenings(HEAD_CLOSED)).state(Port.HEAD).rules());
    // A slot takes no port.
    assertEquals(List.of(PortRule.PORT_MUST_EXIST),
        PortPlan.of(PortRequest.of(D35, Port.THREAD_END).withOpenings(HEAD_CLOSED)).state(Port.HEAD).rules());
    // The socket is at the head: it is no reason for a missing hole in the shank.
    PortRequest noRadial = socket.withOpenings(new Openings(true, true, true, false));
    assertEquals(List.of(PortRule.PORT_MUST_EXIST), PortPlan.of(noRadial).state(Port.RADIAL).rules());
  }

  @Test
  void onePortFeedsAndTheOtherEndIsClosedByRule() {
    PortPlan plan = PortPlan.of(PortRequest.of(D35, Port.HEAD));
    assertEquals(List.of(PortRule.ONE_FEED, PortRule.FITTING_BY_SIZE), plan.state(Port.HEAD).rules());
    assertEquals(List.of(PortRule.CLOSE_THE_OTHERS, PortRule.FITTING_BY_SIZE), plan.state(Port.THREAD_END).rules());
    assertEquals(List.of(PortRule.CLOSE_THE_OTHERS, PortRule.SEAT_CLOSES_RADIAL), plan.state(Port.RADIAL).rules());
  }

  @Test
  void whatClosesTheRadialPortIsNamed() {
    PortRequest request = PortRequest.of(D35, Port.HEAD);
    PortPlan seat = PortPlan.of(request);
    assertTrue(radialWarnings(seat).get(0).endsWith("creep along the seat"), radialWarnings(seat).toString());
    PortPlan collar = PortPlan.of(request.withEccentricCollar());
    assertEquals(Part.COLLAR, collar.state(Port.RADIAL).part());
    assertTrue(radialWarnings(collar).get(0).endsWith("creep along the collar"), radialWarnings(collar).toString());
    // A plugged channel lets no grease creep out along the fit of the shank unseen.
    assertEquals(List.of(), radialWarnings(PortPlan.of(request.withSeatFeedHole())));
  }

  @Test
  void theMandrelIsNamedOnlyWhereSomethingIsDriven() {
    PortRequest bothEnds = PortRequest.of(D35, Port.THREAD_END);
    assertTrue(mandrel(bothEnds));
    // The fitting alone and the plug alone are driven as well.
    assertTrue(mandrel(bothEnds.withOpenings(new Openings(true, false, true, false))));
    assertTrue(mandrel(PortRequest.of(D35, Port.RADIAL).withSeatFeedHole()));
    // Fed through the member, bore closed at both ends by its maker: nothing to drive.
    assertFalse(mandrel(PortRequest.of(D35, Port.RADIAL).withSeatFeedHole().withOpenings(new Openings(true, false, false, true))));
  }

  private static boolean mandrel(PortRequest request) {
    List<String> lines = PortPlan.of(request).instructions();
    // Last of all the mark on the head, whatever is driven.
    assertTrue(lines.get(lines.size() - 1).contains("outside the load zone"), lines.toString());
    return lines.stream().anyMatch(line -> line.contains("pressed in with a mandrel"));
  }

  @Test
  void theDerivationCountsOneForEachRuleOfTheFeedAndNoneForTheOthers() {
    PortPlan plan = PortPlan.of(PortRequest.of(D35, Port.THREAD_END));
    for (Step step : plan.explain().steps()) {
      boolean feed = step.symbol().equals("thread end") || step.symbol().equals("N");
      assertEquals(feed ? 1 : 0, step.value(), step.toString());
    }
    assertTrue(plan.explain().steps().stream().anyMatch(s -> s.symbol().equals("head end")));
  }

  @Test
  void planRulesAndObstaclesReadAsWords() {
    PortPlan plan = PortPlan.of(PortRequest.of(D35, Port.HEAD));
    assertEquals(plan.instructions(), List.of(plan.toString().split("\n", -1)));
    assertTrue(plan.toString().startsWith("head end: FEED by grease fitting"), plan.toString());
    PortPlan none = PortPlan.of(PortRequest.of(D35, Port.RADIAL));
    String obstacle = none.obstacles().get(0).toString();
    assertTrue(obstacle.contains("its seat needs a feed hole there [Rolling bearings catalogue 17000 EN"), obstacle);
    assertTrue(obstacle.endsWith(": drill a feed hole in the machine member that meets the radial hole"), obstacle);
    assertEquals(obstacle, none.warnings().get(0).message());
    InputException slot = assertThrows(InputException.class,
        () -> new PortRequest(MeasureSystem.METRIC, mm(35), mm(16), Openings.usual(D35), HeadForm.SLOT, true, false, false,
            Port.HEAD));
    assertEquals("absent with a head that has a slot", slot.permitted());
  }

  @Test
  void anOpeningWithoutABoreIsNamed() {
    InputException head = assertThrows(InputException.class, () -> new Openings(false, true, false, false));
    assertEquals("present when the head end is open", head.permitted());
    InputException thread = assertThrows(InputException.class, () -> new Openings(false, false, true, false));
    assertEquals("present when the thread end is open", thread.permitted());
    // A hole across the shank alone leads nowhere, but it can be drilled.
    assertTrue(new Openings(false, false, false, true).has(Port.RADIAL));
  }

  @Test
  void usualOpeningsChangeAtTheSizesOfTheCatalogues() {
    Openings headOnly = new Openings(true, true, false, false);
    Openings all = new Openings(true, true, true, true);
    // Linear motion and cam follower catalogue: no hole up to 4 mm. Catalogue 2300/E: head end or none up to 10 mm. The fittings begin at 6 mm.
    assertEquals(Openings.none(), Openings.usual(MeasureSystem.METRIC, mm(4), mm(12)));
    assertEquals(Openings.none(), Openings.usual(MeasureSystem.METRIC, mm(5), mm(13)));
    assertEquals(headOnly, Openings.usual(MeasureSystem.METRIC, mm(6), mm(16)));
    assertEquals(headOnly, Openings.usual(MeasureSystem.METRIC, mm(10), mm(22)));
    assertEquals(all, Openings.usual(MeasureSystem.METRIC, mm(12), mm(30)));
    assertEquals(all, Openings.usual(D35));
    // Cam followers catalogue 2008: 1/2 in to 11/16 in at the flange end only.
    assertEquals(headOnly, Openings.usual(MeasureSystem.INCH, inch("1/4"), inch("11/16")));
    assertEquals(all, Openings.usual(MeasureSystem.INCH, inch("3/8"), inch("3/4")));
  }
}
