// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.quantity.Units.kN;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.mrad;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.fits.Fit;
import holdfast.fits.FitKind;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.Torque;
import holdfast.sheet.Block;
import java.io.StringReader;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

/** The same roller in several bores, and the picture of the price. */
class SeatOptionsTest {
  private final InstallationPlan plan = InstallationPlan.example().withBore("S6");

  @Test
  void theUsualBoresGoFromSlipToPressAtEverySize() {
    for (String stud : List.of("h6", "h7")) {
      List<String> bores = SeatOptions.usual(stud);
      for (int d = 4; d <= 65; d++) {
        Length size = mm(d);
        List<FitKind> kinds = bores.stream().map(bore -> Fit.of(size, bore + "/" + stud).kind()).toList();
        assertEquals(FitKind.CLEARANCE, kinds.get(0), d + " mm " + stud);
        assertEquals(FitKind.TRANSITION, kinds.get(1), d + " mm " + stud);
        assertEquals(FitKind.INTERFERENCE, kinds.get(kinds.size() - 1), d + " mm " + stud);
        for (int i = 1; i < bores.size(); i++) {
          Length looser = Fit.of(size, bores.get(i - 1) + "/" + stud).maximumClearance();
          assertTrue(Fit.of(size, bores.get(i) + "/" + stud).maximumClearance().compareTo(looser) < 0, d + " mm " + bores.get(i));
        }
      }
    }
    for (int sixteenths = 4; sixteenths <= 40; sixteenths++) {
      Length size = mm(25.4 * sixteenths / 16);
      List<FitKind> kinds = SeatOptions.usualInch().stream().map(name -> Fit.of(size, name).kind()).toList();
      assertEquals(List.of(FitKind.CLEARANCE, FitKind.TRANSITION, FitKind.INTERFERENCE), kinds, sixteenths + "/16 in");
    }
    assertThrows(InputException.class, () -> SeatOptions.usual("g6"));
  }

  @Test
  void aTorqueThroughTheStudHasASize() {
    SeatOption slip = SeatOptions.of(plan, List.of("H7"), SeatPriceTest.INTERIOR).options().get(0);
    InputException e = assertThrows(InputException.class,
        () -> new SeatOption(slip.fit(), slip.price(), slip.press(), slip.friction(), new Torque(-0.1)));
    assertEquals("torque through the stud", e.parameter());
  }

  @Test
  void aTighterBoreBuysLifeAndHoldAndCostsForceAndSafety() {
    SeatOptions options = SeatOptions.of(plan, List.of("H7", "K7", "S7"), SeatPriceTest.INTERIOR);
    SeatOption slip = options.option("H7/h7").orElseThrow();
    SeatOption snug = options.option("K7/h7").orElseThrow();
    SeatOption press = options.option("S7/h7").orElseThrow();
    assertTrue(slip.price().lifeRatio() < snug.price().lifeRatio());
    assertTrue(snug.price().lifeRatio() < press.price().lifeRatio());
    assertTrue(slip.pressForce().isEmpty() && slip.holdingTorque().isEmpty() && slip.housing().isEmpty());
    assertEquals(plan.torqueThroughStud(), slip.torqueToBeHeld());
    assertTrue(press.torqueToBeHeld().compareTo(slip.torqueToBeHeld()) < 0);
    assertTrue(snug.pressForce().orElseThrow().greatest().compareTo(press.pressForce().orElseThrow().greatest()) < 0);
    assertTrue(press.housing().orElseThrow().safety().orElseThrow() < snug.housing().orElseThrow().safety().orElseThrow());
    assertEquals(mm(0.036), slip.greatestClearance());
    assertTrue(options.toString().lines().count() == 3 && options.toString().contains("slips in"), options::toString);
  }

  @Test
  void thePlansOwnBoreGivesThePlansOwnNumbers() {
    SeatOption own = SeatOptions.of(plan, List.of("S6"), SeatPriceTest.INTERIOR).options().get(0);
    assertEquals(plan.fit(), own.fit());
    assertEquals(plan.seat().orElseThrow(), own.press());
    assertEquals(plan.torqueToBeHeld(), own.torqueToBeHeld());
    assertEquals(plan.tilt().total(), own.price().loosest().tilt().studTilt());
  }

  @Test
  void wholeFitsAndInchFitsAreTaken() {
    SeatOptions options = SeatOptions.of(plan, List.of("H7/k6", "FN2"), SeatPriceTest.INTERIOR);
    assertEquals(FitKind.TRANSITION, options.options().get(0).kind());
    assertEquals(FitKind.INTERFERENCE, options.options().get(1).kind());
    assertThrows(InputException.class, () -> SeatOptions.of(plan, List.of(), SeatPriceTest.INTERIOR));
    assertThrows(InputException.class, () -> SeatOptions.of(plan, List.of("Hx"), SeatPriceTest.INTERIOR));
    assertThrows(
        InputException.class,
        () -> new SeatOption(
            Fit.of(mm(18), "H7/h7"), options.options().get(0).price(), plan.seat().orElseThrow(),
            plan.member().pressingFriction(), new Torque(-1)).torqueToBeHeld());
  }

  @Test
  void thePictureIsWellFormedNamedAndTheSameEveryTime() throws Exception {
    SeatPrice price = SeatPriceTest.flat().fit(Fit.of(mm(18), "H7/h7")).build();
    Block.Picture picture = TiltPicture.of(price);
    assertEquals(picture, TiltPicture.of(price));
    Element svg =
        DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(picture.svg())))
            .getDocumentElement();
    assertEquals(picture.title(), svg.getElementsByTagName("title").item(0).getTextContent());
    assertEquals(picture.description(), svg.getElementsByTagName("desc").item(0).getTextContent());
    assertTrue(picture.description().contains("loosest pair at 2.253 mrad"), picture.description());
    for (String dash : List.of("\"none\"", "\"7 4\"", "\"1.5 3\"")) {
      assertEquals(2, picture.svg().split("stroke-dasharray=" + dash, -1).length - 1, "curve and legend " + dash);
    }
    assertFalse(picture.svg().contains("NaN"));
  }

  @Test
  void aMarkBeyondFourMilliradianWidensThePicture() {
    var far = List.of(new TiltPicture.Mark("far", mrad(9.2)));
    var loads = List.of(kN(1), kN(2), kN(4));
    String svg = TiltPicture.of(SeatPriceTest.INTERIOR.bearing(SeatPriceTest.RATINGS), loads, far).svg();
    assertTrue(svg.contains("far: 9.2 mrad"), svg);
    assertTrue(svg.contains(">10</text>"), svg);
    assertThrows(
        InputException.class,
        () -> TiltPicture.of(SeatPriceTest.INTERIOR.bearing(SeatPriceTest.RATINGS), List.of(kN(1)), far));
  }
}
