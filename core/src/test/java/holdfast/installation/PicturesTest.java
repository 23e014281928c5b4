// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.quantity.Units.degC;
import static holdfast.quantity.Units.kN;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.mrad;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.bearings.reference.TiltedBearing;
import holdfast.quantity.Force;
import holdfast.seats.Material;
import holdfast.seats.OuterPart;
import holdfast.sheet.Block;
import holdfast.sheet.SheetUnits;
import java.io.StringReader;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

/** The geometry of the drawn pictures, measured in their SVG and held against the dimensions they stand for. */
class PicturesTest {
  /** Drawn to a hundredth of a pixel. */
  private static final double PIXEL = 0.0051;

  private static final YokePlan YOKE = ExampleJobs.yokeInFork();
  private static final TiltedBearing BEARING = SeatPriceTest.INTERIOR.bearing(SeatPriceTest.RATINGS);

  private static List<Element> elements(Block.Picture picture, String tag) throws Exception {
    var nodes = DocumentBuilderFactory.newInstance().newDocumentBuilder()
        .parse(new InputSource(new StringReader(picture.svg()))).getElementsByTagName(tag);
    return IntStream.range(0, nodes.getLength()).mapToObj(i -> (Element) nodes.item(i)).toList();
  }

  private static double number(Element element, String name) {
    return Double.parseDouble(element.getAttribute(name));
  }

  /** Rings, seat, ears and pin; the first rectangle belongs to the hatching. */
  private static List<Element> boxes(Block.Picture picture) throws Exception {
    List<Element> rectangles = elements(picture, "rect");
    return rectangles.subList(1, rectangles.size());
  }

  /** From left, from top, wide, high: about the middle of the pin, in mm. */
  private static void box(Element box, double scale, double left, double top, double wide, double high) {
    assertArrayEquals(new double[] {left * scale, top * scale, wide * scale, high * scale},
        new double[] {number(box, "x") - 210, number(box, "y") - 104, number(box, "width"), number(box, "height")}, PIXEL);
  }

  @Test
  void forkPinAndRollerAreDrawnToScale() throws Exception {
    List<Element> boxes = boxes(ForkPicture.of(YOKE));
    // The roller of 52 mm fills the 150 pixels that are left for it; the pin of 50 mm finds room at this scale.
    double scale = 150 / 52.0;
    assertEquals(5, boxes.size());
    box(boxes.get(0), scale, -12, -26, 24, 52);
    // The inner ring, 25 mm wide, reaches half-way from the bore of 20 mm to the 52 mm outside: 36 mm.
    box(boxes.get(1), scale, -12.5, -18, 25, 36);
    // Ears of 12 mm either side of a gap of 26 mm, one and a half times as high as the pin is thick.
    box(boxes.get(2), scale, -25, -15, 12, 30);
    box(boxes.get(3), scale, 13, -15, 12, 30);
    // The pin stands out 2 % of its length at each end.
    box(boxes.get(4), scale, -26, -10, 52, 20);
  }

  private static YokePlan plan(YokeRollerBuilder roller, double gap) {
    return YokePlan.of(roller).job("invented")
        .pin(Pin.of("h6", Material.of("16MnCr5")).drilled(mm(4), mm(3), false).securedBy(PinSecuring.END_PLATES))
        .fork(Fork.named("fork").ears(OuterPart.ring(Material.of("C45+N"), mm(90)), mm(12), mm(gap)).bore("N7")
            .pressingFriction(YOKE.fork().pressingFriction()))
        .duty(YOKE.duty())
        .build();
  }

  private static YokeRollerBuilder roller(double bore) {
    return YokeRoller.named("test roller").ring(mm(52), mm(24), mm(0)).bore(mm(bore), "0/-0.010 mm", mm(25)).greaseHoleInRing()
        .inside(YOKE.roller().kind(), false).ratings(YOKE.roller().ratings()).temperatures(degC(-20), degC(120));
  }

  @Test
  void aWideForkShrinksThePictureUntilThePinAndItsEndsFit() throws Exception {
    List<Element> boxes = boxes(ForkPicture.of(plan(roller(20), 96)));
    // 120 mm over the ears and a tenth for the ends in 300 pixels.
    double scale = 300 / (1.1 * 120);
    box(boxes.get(0), scale, -12, -26, 24, 52);
    box(boxes.get(2), scale, -60, -15, 12, 30);
    box(boxes.get(4), scale, -62.4, -10, 124.8, 20);
  }

  @Test
  void earsAreNeverDrawnHigherThanTheRoller() throws Exception {
    // One and a half times a pin of 36 mm is 54 mm, more than nine tenths of 52 mm.
    box(boxes(ForkPicture.of(plan(roller(36), 26))).get(3), 150 / 52.0, 13, -23.4, 12, 46.8);
  }

  @Test
  void theLoadMeetsTheMiddleOfTheRollerAndTheEarsAnswerInTheirMiddles() throws Exception {
    Block.Picture picture = ForkPicture.of(YOKE);
    double scale = 150 / 52.0;
    List<Element> arrows = elements(picture, "path");
    arrow(arrows.get(0), 210, 104 - 26 * scale);
    // The middles of the ears are 26 + 12 mm apart; their feet lie 15 mm under the axis.
    arrow(arrows.get(1), 210 - 19 * scale, 104 + 15 * scale);
    arrow(arrows.get(2), 210 + 19 * scale, 104 + 15 * scale);
    Element axis = elements(picture, "line").get(1);
    assertEquals(104, number(axis, "y1"));
    assertEquals(104, number(axis, "y2"));
    assertEquals(List.of("4.5 kN", "2.25 kN", "2.25 kN"),
        elements(picture, "text").stream().map(Element::getTextContent).toList());
  }

  private static void arrow(Element arrow, double x, double y) {
    String[] start = arrow.getAttribute("d").split(" ", -1);
    assertEquals(x, Double.parseDouble(start[1]), PIXEL);
    assertEquals(y, Double.parseDouble(start[2]), PIXEL);
  }

  private static Block.Picture tilts(TiltPicture.Mark... marks) {
    return TiltPicture.of(BEARING, List.of(kN(1), kN(2.1), kN(4)), List.of(marks));
  }

  /** Pixels of a life ratio in the frame from 244 (ratio 0) up to 44 (ratio 1.1). */
  private static double y(double ratio) {
    return 244 - 200 * ratio / 1.1;
  }

  @Test
  void theCurvesOfTheTiltPictureAreTheLivesOfTheBearing() throws Exception {
    Block.Picture picture = tilts();
    List<String> curves =
        elements(picture, "path").stream().map(path -> path.getAttribute("d")).filter(d -> d.contains(" L ")).toList();
    assertEquals(3, curves.size());
    List<Force> loads = List.of(kN(1), kN(2.1), kN(4));
    for (int i = 0; i < 3; i++) {
      assertTrue(curves.get(i).startsWith("M 46 "), "one move, then lines");
      String[] points = curves.get(i).substring(2).split(" L ", -1);
      assertEquals(81, points.length, "4 mrad in steps of 0.05");
      for (int at : new int[] {0, 13, 40, 80}) {
        String[] point = points[at].split(" ", -1);
        assertEquals(46 + 400 * at / 80.0, Double.parseDouble(point[0]), PIXEL);
        assertEquals(y(BEARING.life(loads.get(i), mrad(at * 0.05)).lifeRatio()), Double.parseDouble(point[1]), PIXEL);
      }
    }
    assertTrue(picture.description().startsWith("1 kN: "), picture.description());
    for (Force load : loads) {
      String[] words = picture.description().split(SheetUnits.METRIC.text(load) + ": ", 2)[1].split(" at |mrad, ", -1);
      assertEquals(BEARING.life(load, mrad(1)).lifeRatio(), Double.parseDouble(words[0]), 0.005);
      assertEquals(BEARING.life(load, mrad(2)).lifeRatio(), Double.parseDouble(words[2]), 0.005);
    }
  }

  @Test
  void theTiltPictureLabelsItsAxesAndLoads() throws Exception {
    Block.Picture picture = tilts();
    List<Element> texts = elements(picture, "text");
    for (int i = 0; i <= 5; i++) {
      assertEquals(List.of("0.0", "0.2", "0.4", "0.6", "0.8", "1.0").get(i), texts.get(i).getTextContent());
      assertEquals(y(0.2 * i), number(texts.get(i), "y"), PIXEL);
    }
    for (int i = 0; i <= 4; i++) {
      assertEquals(Integer.toString(i), texts.get(6 + i).getTextContent());
      assertEquals(46 + 100 * i, number(texts.get(6 + i), "x"), PIXEL);
    }
    assertEquals("tilt between the raceways, mrad", texts.get(11).getTextContent(), "no further row or column");
    // Three lines, 18 pixels apart, in the box of the legend from 48 to 106, their words 4 pixels lower to stand level.
    List<Element> legend = elements(picture, "line").stream().filter(line -> line.getAttribute("x1").equals("352")).toList();
    for (int i = 0; i < 3; i++) {
      assertEquals(60 + 18 * i, number(legend.get(i), "y1"));
      assertEquals(64 + 18 * i, number(texts.get(13 + i), "y"));
    }
    assertEquals(List.of("1 kN", "2.1 kN", "4 kN"), texts.subList(13, 16).stream().map(Element::getTextContent).toList());
  }

  @Test
  void marksStandAtTheirTiltsAndTheirLabelsStepDownAndTurnInwards() throws Exception {
    var third = new TiltPicture.Mark("third", mrad(3));
    var first = new TiltPicture.Mark("first", mrad(0.5));
    var fourth = new TiltPicture.Mark("fourth", mrad(3.5));
    var second = new TiltPicture.Mark("second", mrad(2));
    Block.Picture picture = tilts(third, first, fourth, second);
    List<Element> labels =
        elements(picture, "text").stream().filter(text -> text.getTextContent().contains(": ")).toList();
    assertEquals(List.of("first: 0.5 mrad", "second: 2 mrad", "third: 3 mrad", "fourth: 3.5 mrad"),
        labels.stream().map(Element::getTextContent).toList());
    double[] x = {96, 246, 346, 396};
    double[] height = {12, 23, 34, 12};
    List<Element> lines = elements(picture, "line").stream()
        .filter(line -> line.getAttribute("x1").equals(line.getAttribute("x2")) && line.getAttribute("y2").equals("244"))
        .toList();
    for (int i = 0; i < 4; i++) {
      boolean right = x[i] < 346;
      assertEquals(right ? "start" : "end", labels.get(i).getAttribute("text-anchor"));
      assertEquals(x[i] + (right ? 3 : -3), number(labels.get(i), "x"), PIXEL);
      assertEquals(height[i], number(labels.get(i), "y"));
      assertEquals(x[i], number(lines.get(i), "x1"), PIXEL);
      assertEquals(height[i] + 2, number(lines.get(i), "y1"));
    }
    assertTrue(picture.description().endsWith("; third at 3 mrad, first at 0.5 mrad, fourth at 3.5 mrad, second at 2 mrad"),
        picture.description());
    assertFalse(picture.svg().contains("NaN"));
  }
}
