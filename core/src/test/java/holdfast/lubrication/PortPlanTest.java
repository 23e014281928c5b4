// SPDX-License-Identifier: Apache-2.0
package holdfast.lubrication;

import static holdfast.quantity.Units.inch;
import static holdfast.quantity.Units.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.lubrication.PortState.Part;
import holdfast.lubrication.PortState.Use;
import holdfast.quantity.InputException;
import holdfast.rollers.MeasureSystem;
import holdfast.rollers.RollerSeries;
import holdfast.rollers.RollerSize;
import java.util.List;
import org.junit.jupiter.api.Test;

class PortPlanTest {
  private static final RollerSize D35 = RollerSeries.METRIC.size(mm(35));

  private static List<String> codes(PortPlan plan) {
    return plan.warnings().stream().map(w -> w.code()).toList();
  }

  @Test
  void headFedMetricRoller() {
    PortPlan plan = PortPlan.of(PortRequest.of(D35, Port.HEAD));
    assertTrue(plan.possible());
    assertEquals("head end: FEED by grease fitting, 6 mm, drive-in", plan.state(Port.HEAD).toString());
    assertEquals("thread end: closed by plug, 6 mm, drive-in", plan.state(Port.THREAD_END).toString());
    assertEquals(Part.SEAT_WALL, plan.state(Port.RADIAL).part());
    assertEquals(List.of("radial-port-closed-by-fit", "fitting-in-slot"), codes(plan));
    assertEquals(List.of(Port.HEAD, Port.THREAD_END), plan.alternatives());
    assertEquals(5, plan.instructions().size());
  }

  @Test
  void threadFedRollerHasItsSlotPlugBelowTheSlot() {
    PortPlan plan = PortPlan.of(PortRequest.of(D35, Port.THREAD_END));
    assertEquals("head end: closed by plug, 6 mm, drive-in, below the bottom of the slot", plan.state(Port.HEAD).toString());
    assertTrue(plan.state(Port.HEAD).rules().contains(PortRule.BELOW_SLOT_BOTTOM));
  }

  @Test
  void radialFeedNeedsTheMemberAndNoCollar() {
    PortRequest request = PortRequest.of(D35, Port.RADIAL);
    PortPlan without = PortPlan.of(request);
    assertFalse(without.possible());
    assertEquals(PortRule.RADIAL_NEEDS_MEMBER, without.obstacles().get(0).rule());
    assertEquals("port-impossible", codes(without).get(0));
    assertTrue(without.instructions().get(1).contains("possible instead: head end, thread end"));
    assertThrows(InputException.class, () -> without.state(Port.HEAD));
    PortPlan with = PortPlan.of(request.withSeatFeedHole());
    assertEquals(Part.MEMBER_FEED_HOLE, with.state(Port.RADIAL).part());
    assertEquals(Part.PLUG, with.state(Port.HEAD).part());
    assertEquals(Part.PLUG, with.state(Port.THREAD_END).part());
    PortPlan collar = PortPlan.of(request.withSeatFeedHole().withEccentricCollar());
    assertEquals(List.of(PortRule.COLLAR_COVERS_RADIAL), collar.obstacles().stream().map(Obstacle::rule).toList());
  }

  @Test
  void aFeedHoleThatIsNotUsedIsClosedInTheMember() {
    PortPlan plan = PortPlan.of(PortRequest.of(D35, Port.HEAD).withSeatFeedHole());
    assertEquals(Part.MEMBER_PLUG, plan.state(Port.RADIAL).part());
  }

  @Test
  void aSocketTakesTheHeadPortUnlessAFittingIsBuiltIn() {
    PortPlan bare = PortPlan.of(PortRequest.of(D35, Port.HEAD).withHead(HeadForm.HEXAGON_SOCKET));
    assertEquals(PortRule.SOCKET_TAKES_HEAD_PORT, bare.obstacles().get(0).rule());
    PortPlan built = PortPlan.of(PortRequest.of(D35, Port.HEAD).withFittingInSocket());
    assertEquals(Part.BUILT_IN_FITTING, built.state(Port.HEAD).part());
    PortPlan end = PortPlan.of(PortRequest.of(D35, Port.THREAD_END).withHead(HeadForm.HEXAGON_SOCKET));
    assertEquals(Use.ABSENT, end.state(Port.HEAD).use());
    assertTrue(codes(end).contains("look-into-socket"));
  }

  @Test
  void smallStudsHaveTheHeadPortOrNone() {
    RollerSize d22 = RollerSeries.METRIC.size(mm(22));
    assertEquals(PortRule.HEAD_ONLY_UP_TO_10_MM, PortPlan.of(PortRequest.of(d22, Port.THREAD_END)).obstacles().get(0).rule());
    assertTrue(PortPlan.of(PortRequest.of(d22, Port.HEAD)).possible());
    RollerSize d12 = RollerSeries.METRIC.size(mm(12));
    PortPlan none = PortPlan.of(PortRequest.of(d12, Port.HEAD));
    assertEquals(PortRule.NO_HOLE_IN_SMALL_STUDS, none.obstacles().get(0).rule());
    assertTrue(none.alternatives().isEmpty());
    assertTrue(none.instructions().get(1).startsWith("no port"));
    PortPlan five = PortPlan.of(PortRequest.of(RollerSeries.METRIC.size(mm(13)), Port.HEAD));
    assertEquals(PortRule.HEAD_ONLY_UP_TO_10_MM, five.obstacles().get(0).rule());
    PortPlan small = PortPlan.of(PortRequest.of(MeasureSystem.INCH, inch("11/16"), inch("1/4"), Port.RADIAL));
    assertEquals(PortRule.HEAD_ONLY_SMALL_INCH, small.obstacles().get(0).rule());
  }

  @Test
  void threadedFittingsBeginAtFiveInches() {
    PortState four = PortPlan.of(PortRequest.of(RollerSeries.INCH_STANDARD_STUD.size(inch(4)), Port.HEAD)).state(Port.HEAD);
    assertEquals("1/4 in, drive-in", four.size().get(0).toString());
    PortState five = PortPlan.of(PortRequest.of(RollerSeries.INCH_STANDARD_STUD.size(inch(5)), Port.HEAD)).state(Port.HEAD);
    assertEquals("1/4 NPT, threaded", five.size().get(0).toString());
  }

  @Test
  void cataloguesThatDifferAreBothNamed() {
    PortPlan plan = PortPlan.of(PortRequest.of(RollerSeries.METRIC.size(mm(30)), Port.THREAD_END));
    assertEquals("thread end: FEED by grease fitting, 4 mm, drive-in or 6 mm, drive-in", plan.state(Port.THREAD_END).toString());
    assertTrue(codes(plan).contains("fitting-size-differs"));
    PortPlan unknown = PortPlan.of(PortRequest.of(MeasureSystem.METRIC, mm(120), mm(40), Port.HEAD));
    assertTrue(codes(unknown).contains("fitting-size-unknown"));
  }

  @Test
  void contradictionsAreRefused() {
    InputException axial = assertThrows(InputException.class, () -> new Openings(false, true, false, false));
    assertEquals("axial bore", axial.parameter());
    InputException socket =
        assertThrows(
            InputException.class,
            () -> new PortRequest(MeasureSystem.METRIC, mm(35), mm(16), Openings.usual(D35), HeadForm.SLOT, true, false, false,
                Port.HEAD));
    assertEquals("fitting in the socket", socket.parameter());
    PortRequest d12 = PortRequest.of(RollerSeries.METRIC.size(mm(12)), Port.HEAD);
    assertThrows(InputException.class, d12::withFittingInSocket);
    assertThrows(InputException.class, () -> PortRequest.of(MeasureSystem.METRIC, mm(16), mm(16), Port.HEAD));
  }
}
