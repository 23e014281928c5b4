// SPDX-License-Identifier: Apache-2.0
package holdfast.lubrication;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.lubrication.PortState.Part;
import holdfast.lubrication.PortState.Use;
import holdfast.quantity.InputException;
import holdfast.rollers.RollerSeries;
import holdfast.rollers.RollerSize;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Every combination of inputs, none left out: each law holds for all of them. */
class PortPlanLawsTest {
  private static final boolean[] BOTH = {false, true};
  private static final List<PortRequest> ALL = all();
  private static int refused;

  private static List<PortRequest> all() {
    List<PortRequest> all = new ArrayList<>();
    for (RollerSize size : RollerSeries.all()) {
      for (int bits = 0; bits < 128; bits++) {
        for (HeadForm head : HeadForm.values()) {
          for (Port feed : Port.values()) {
            try {
              Openings openings = new Openings(bit(bits, 0), bit(bits, 1), bit(bits, 2), bit(bits, 3));
              all.add(
                  new PortRequest(size.series().system(), size.outsideDiameter(), size.stud().diameter(), openings, head,
                      bit(bits, 4), bit(bits, 5), bit(bits, 6), feed));
            } catch (InputException contradiction) {
              refused++;
            }
          }
        }
      }
    }
    return all;
  }

  private static boolean bit(int bits, int index) {
    return BOTH[bits >> index & 1];
  }

  @Test
  void allCombinationsAreThere() {
    // Per size, feed, collar and feed hole: 10 openings without contradiction times 3 heads without a fitting in the
    // socket, and of the openings 4 have a head port to build a fitting into.
    int each = 10 * 3 + 4;
    assertEquals(68 * 3 * 4 * each, ALL.size());
    assertEquals(68 * 128 * 3 * 3, ALL.size() + refused);
  }

  @Test
  void aPossiblePlanHasExactlyOneFeedAndItIsTheWantedOne() {
    for (PortRequest request : ALL) {
      PortPlan plan = PortPlan.of(request);
      assertEquals(plan.possible() ? 1 : 0, plan.feedPaths(), request.toString());
      if (plan.possible()) {
        assertEquals(Use.FEED, plan.state(request.feed()).use());
        assertEquals(List.of(), plan.obstacles());
        assertEquals(3, plan.ports().size());
      } else {
        assertTrue(plan.ports().isEmpty(), "nothing to mount by an impossible plan");
      }
    }
  }

  @Test
  void everyOtherOpeningIsClosedByAPartAndEveryAbsentOneHasNone() {
    for (PortRequest request : ALL) {
      PortPlan plan = PortPlan.of(request);
      for (PortState state : plan.ports()) {
        boolean socketTakes =
            state.port() == Port.HEAD && request.headForm() == HeadForm.HEXAGON_SOCKET && !request.fittingInSocket();
        boolean opening = request.openings().has(state.port()) && !socketTakes;
        assertEquals(opening, state.use() != Use.ABSENT, request.toString());
        assertEquals(opening, state.part() != Part.NONE, request.toString());
        assertFalse(state.rules().isEmpty());
        if (opening && state.port() != request.feed()) {
          assertEquals(Use.CLOSED, state.use());
          assertTrue(state.rules().contains(PortRule.CLOSE_THE_OTHERS));
        }
      }
    }
  }

  @Test
  void theRadialPortFeedsOnlyThroughBoreAndMemberAndNeverUnderACollar() {
    for (PortRequest request : ALL) {
      PortPlan plan = PortPlan.of(request);
      if (plan.possible() && request.feed() == Port.RADIAL) {
        assertTrue(request.openings().axialBore() && request.openings().radial() && request.seatFeedHole());
        assertFalse(request.eccentricCollar());
      }
      if (request.eccentricCollar()) {
        assertFalse(plan.alternatives().contains(Port.RADIAL));
      }
    }
  }

  @Test
  void anUnusedFeedHoleOfTheMemberNeverLeadsOutward() {
    for (PortRequest request : ALL) {
      PortPlan plan = PortPlan.of(request);
      boolean open = plan.possible() && request.seatFeedHole() && request.openings().radial() && !request.eccentricCollar();
      if (open && request.feed() != Port.RADIAL) {
        assertEquals(Part.MEMBER_PLUG, plan.state(Port.RADIAL).part());
      }
    }
  }

  @Test
  void aPlugAtTheSlotIsBelowTheSlotAndNothingElseIs() {
    for (PortRequest request : ALL) {
      for (PortState state : PortPlan.of(request).ports()) {
        boolean slotPlug = state.port() == Port.HEAD && request.headForm() == HeadForm.SLOT && state.part() == Part.PLUG;
        assertEquals(slotPlug, state.belowSlotBottom(), request.toString());
        assertEquals(slotPlug, state.rules().contains(PortRule.BELOW_SLOT_BOTTOM));
      }
    }
  }

  @Test
  void plugsAndFittingsHaveASizeWhereACatalogueCoversTheRollerAndThreadsBeginAtFiveInches() {
    for (PortRequest request : ALL) {
      PortPlan plan = PortPlan.of(request);
      for (PortState state : plan.ports()) {
        boolean fitted = state.part() == Part.FITTING || state.part() == Part.PLUG;
        assertTrue(fitted || state.size().isEmpty());
        for (FittingSize size : state.size()) {
          assertEquals(request.outsideDiameter().mm() >= 127, size.threaded());
        }
        boolean warned = plan.warnings().stream().anyMatch(w -> w.code().equals("fitting-size-unknown"));
        assertTrue(!fitted || warned || !state.size().isEmpty());
      }
    }
  }

  @Test
  void anImpossiblePlanSaysWhyAndWhatToChange() {
    for (PortRequest request : ALL) {
      PortPlan plan = PortPlan.of(request);
      assertEquals(plan.possible(), plan.alternatives().contains(request.feed()), request.toString());
      for (Obstacle obstacle : plan.obstacles()) {
        assertFalse(obstacle.remedy().isBlank());
        assertNotEquals("", obstacle.rule().source().document());
      }
      for (Port port : plan.alternatives()) {
        assertTrue(PortPlan.of(request.withFeed(port)).possible());
      }
    }
  }

  @Test
  void theDerivationCountsTheFeedPaths() {
    for (PortRequest request : ALL.subList(0, 4000)) {
      PortPlan plan = PortPlan.of(request);
      assertEquals(plan.feedPaths(), plan.explain().result().value());
      assertFalse(plan.sources().isEmpty());
    }
  }

  @Test
  void everyRuleIsUsedOrSaidSomewhere() {
    Set<PortRule> used = EnumSet.of(PortRule.MARK_OUTSIDE_LOAD_ZONE, PortRule.DRIVE_WITH_MANDREL, PortRule.THREE_PORTS);
    for (PortRequest request : ALL) {
      PortPlan plan = PortPlan.of(request);
      plan.ports().forEach(state -> used.addAll(state.rules()));
      plan.obstacles().forEach(obstacle -> used.add(obstacle.rule()));
    }
    assertEquals(EnumSet.allOf(PortRule.class), used);
  }
}
