// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import static holdfast.quantity.Units.inch;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.um;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FitTest {
  /** 18 µm from a table and 0.018 mm from a drawing are not the same binary fraction, but they are the same deviation. */
  @ParameterizedTest
  @CsvSource({"18, h7, 0.018", "18, h9, 0.043", "10, h6, 0.009", "30, h6, 0.013", "10, h9, 0.036", "30, h9, 0.052"})
  void aClearanceOfZeroIsZeroHoweverTheDeviationsCame(double size, String shaft, String tolerance) {
    TolerancedSize hole = TolerancedSize.of(mm(size), "-" + tolerance + "/-0.100 mm");
    Fit fit = Fit.of(hole, TolerancedSize.of(mm(size), shaft));
    assertEquals(mm(0), fit.maximumClearance());
    assertEquals(FitKind.INTERFERENCE, fit.kind());
  }

  @ParameterizedTest
  @CsvSource(delimiter = ';', value = {
    "25 H7/p6; 25 H7/p6: interference fit, 1 µm … 35 µm interference",
    "25 H7/k6; 25 H7/k6: transition fit, 15 µm interference … 19 µm clearance",
    "25 H7/g6; 25 H7/g6: clearance fit, 7 µm … 41 µm clearance",
    "25 H7/h6; 25 H7/h6: clearance fit, 0 µm … 34 µm clearance",
    "7 P7/h6; 7 P7/h6: interference fit, 0 µm … 24 µm interference",
    "2 H7/p6; 2 H7/p6: transition fit, 12 µm interference … 4 µm clearance",
    "12.5 H1/js2; 12.5 H1/js2: transition fit, 1 µm interference … 2.2 µm clearance"
  })
  void printsAsAPractitionerWouldWriteIt(String text, String expected) {
    assertEquals(expected, Fit.of(text).toString());
  }

  @Test
  void clearancesFollowFromTheDeviations() {
    Fit fit = Fit.of(mm(25), "H7/p6");
    assertEquals(-1, fit.maximumClearance().in(KnownUnits.UM), 1e-9);
    assertEquals(-35, fit.minimumClearance().in(KnownUnits.UM), 1e-9);
    assertEquals(1, fit.minimumInterference().in(KnownUnits.UM), 1e-9);
    assertEquals(35, fit.maximumInterference().in(KnownUnits.UM), 1e-9);
    assertEquals(-18, fit.meanClearance().in(KnownUnits.UM), 1e-9);
    assertEquals(34, fit.tolerance().in(KnownUnits.UM), 1e-9);
    assertEquals(FitKind.INTERFERENCE, fit.kind());
    assertEquals("25.000 mm … 25.021 mm", fit.hole().limits().toString());
    assertEquals("25.022 mm … 25.035 mm", fit.shaft().limits().toString());
    assertEquals(mm(25), fit.nominalSize());
  }

  @Test
  void limitsAreWrittenInAnyUnit() {
    assertEquals("0.6256 in … 0.6263 in", Fit.of(KnownUnits.INCH.of(0.625), "F7/h7").hole().limits().text(KnownUnits.INCH, 4));
  }

  @Test
  void explanationEndsWithTheLeastClearance() {
    Fit fit = Fit.of("25 K7/h6");
    Derivation derivation = fit.explain();
    assertEquals(fit.minimumClearance().in(KnownUnits.UM), derivation.result().value(), 0);
    assertTrue(derivation.toString().contains("ISO 286-1:2010, Table 1, over 18 up to 30 mm, IT6"));
    assertTrue(derivation.toString().contains("ISO 286-1:2010, Table 4, over 18 up to 30 mm, h"));
    assertTrue(fit.sources().stream().anyMatch(s -> s.locator().equals("Table 1")));
  }

  @Test
  void warningsOfBothPartsComeOnce() {
    assertEquals(1, Fit.of("25 CD7/h6").warnings().size());
    assertEquals(2, Fit.of("25 CD7/cd7").warnings().size());
    assertTrue(Fit.of("25 H7/h6").warnings().isEmpty());
  }

  @Test
  void anyDeviationsMakeAFit() {
    SourceRef catalogue = SourceRef.published("Rolling bearings catalogue 17000 EN", "bearing bores");
    TolerancedSize bore = TolerancedSize.given(mm(40), new LimitDeviations(um(-12), um(0)), "bearing bore", catalogue);
    Fit fit = Fit.of(bore, TolerancedSize.of(mm(40), "k5"));
    assertEquals("40 bearing bore/k5: interference fit, 2 µm … 25 µm interference", fit.toString());
    assertEquals(-25, fit.explain().result().value(), 1e-9);
    assertTrue(fit.sources().contains(catalogue));
    Fit named = new Fit(mm(10), "slide", new LimitDeviations(um(0), um(5)), new LimitDeviations(um(-8), um(-2)));
    assertEquals("10 slide: clearance fit, 2 µm … 13 µm clearance", named.toString());
    assertEquals("slide", named.designation());
  }

  @Test
  void partsMustShareTheNominalSizeAndStandInOrder() {
    TolerancedSize hole = TolerancedSize.of(mm(25), "H7");
    TolerancedSize shaft = TolerancedSize.of(mm(26), "h6");
    InputException e = assertThrows(InputException.class, () -> Fit.of(hole, shaft));
    assertEquals("nominal size of the shaft", e.parameter());
    assertTrue(e.permitted().contains("25 mm"));
    ToleranceClass h7 = ToleranceClass.of("H7");
    ToleranceClass h6 = ToleranceClass.of("h6");
    assertEquals("in capital letters", assertThrows(InputException.class, () -> Fit.of(mm(25), h6, h6)).permitted());
    assertEquals("in small letters", assertThrows(InputException.class, () -> Fit.of(mm(25), h7, h7)).permitted());
  }

  @Test
  void deviationsAndLimitsInTheWrongOrderAreRefused() {
    assertEquals(
        "at least +5 µm",
        assertThrows(InputException.class, () -> new LimitDeviations(um(5), um(4))).permitted());
    assertEquals(um(0), new LimitDeviations(um(5), um(5)).tolerance());
    assertThrows(InputException.class, () -> new LimitsOfSize(mm(5), mm(4)));
    LimitsOfSize limits = new LimitsOfSize(mm(4), mm(5));
    assertTrue(limits.contains(mm(4)) && limits.contains(mm(5)) && !limits.contains(mm(5.0001)) && !limits.contains(mm(3.9)));
    assertEquals(mm(1), limits.tolerance());
  }

  @Test
  void inchFitsPrintInInches() {
    record Inch(String designation) implements DeviationOrigin {
      @Override
      public Derivation explain(Length nominalSize) {
        return Derivation.of(designation).step("x", "", "", 0, "", SourceRef.derived("test")).build();
      }

      @Override
      public boolean inInches() {
        return true;
      }
    }

    Length size = inch("5/8");
    TolerancedSize hole = new TolerancedSize(size, new LimitDeviations(inch(0), inch(0.0007)), new Inch("hole"));
    TolerancedSize shaft = new TolerancedSize(size, new LimitDeviations(inch(0.0012), inch(0.0016)), new Inch("shaft"));
    assertEquals(Fit.of(size, "FN2").toString(), new Fit("FN2", hole, shaft).toString());
    assertEquals(
        "0.625 in hole: +0.0007 in / 0.0000 in, 0.6250 in … 0.6257 in (15.875 mm … 15.89278 mm)", hole.toString());
  }

  @Test
  void resultsSurviveSerialization() throws IOException, ClassNotFoundException {
    Fit fit = Fit.of("25 H7/p6");
    List<Object> results =
        List.of(fit, fit.onOtherBasis(), StatisticalFit.centred(fit, 1), FitSelector.holeBasis(mm(25)).between(um(10), um(20)));
    for (Object result : results) {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
        out.writeObject(result);
      }
      try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
        assertEquals(result, in.readObject());
      }
    }
  }

  @Test
  void equivalentsChangeTheBasis() {
    BasisChange p = Fit.of("25 H7/p6").onOtherBasis();
    assertEquals("25 H7/p6 → P7/h6: same clearances", p.toString());
    assertTrue(p.isSame() && p.warnings().isEmpty());
    assertEquals("H8/f7", Fit.of("25 F8/h7").onOtherBasis().to().designation());
    BasisChange js = Fit.of("25 H7/js6").onOtherBasis();
    assertEquals("25 H7/js6 → JS7/h6: least clearance -4 µm, greatest -4 µm", js.toString());
    assertEquals("equivalent-differs", js.warnings().get(0).code());
    assertEquals(-4, js.explain().result().value(), 1e-9);
    assertEquals("25 H7/p5 → P7/h5: least clearance -4 µm, greatest -4 µm", Fit.of("25 H7/p5").onOtherBasis().toString());
    assertEquals("300 H6/m5 → M6/h5: least clearance +2 µm, greatest +2 µm", Fit.of("300 H6/m5").onOtherBasis().toString());
    assertEquals(Basis.HOLE, Basis.of(ToleranceClass.of("H7"), ToleranceClass.of("h6")));
    assertEquals(Basis.SHAFT, Basis.of(ToleranceClass.of("F8"), ToleranceClass.of("h6")));
    assertEquals(Basis.NEITHER, Basis.of(ToleranceClass.of("F7"), ToleranceClass.of("k6")));
    Fit both = Fit.of("25 H7/h6");
    assertTrue(assertThrows(InputException.class, both::onOtherBasis).reason().contains("both bases"));
    Fit none = Fit.of("25 F7/k6");
    assertTrue(assertThrows(InputException.class, none::onOtherBasis).reason().contains("no basis"));
    Fit given = new Fit(mm(10), "slide", new LimitDeviations(um(0), um(5)), new LimitDeviations(um(-8), um(-2)));
    assertEquals("a tolerance class of ISO 286", assertThrows(InputException.class, given::onOtherBasis).permitted());
  }

  @Test
  void preferredFitsCarryUseAndSource() {
    assertEquals(20, PreferredFits.of(PreferredList.ANSI_PREFERRED).size());
    assertEquals(45, PreferredFits.of(PreferredList.ISO_HOLE_BASIS).size());
    assertEquals(38, PreferredFits.of(PreferredList.ISO_SHAFT_BASIS).size());
    assertEquals(103, PreferredFits.all().size());
    PreferredFit p = PreferredFits.find(ToleranceClass.of("H7"), ToleranceClass.of("p6")).get(0);
    assertEquals("H7/p6", p.designation());
    assertTrue(p.use().startsWith("light press"), p.use());
    assertTrue(p.toString().contains("[common practice]; preferred fit of ANSI B4.2-1978 [published]"), p.toString());
    assertEquals(Fit.of("25 H7/p6"), p.at(mm(25)));
    PreferredFit recalled = PreferredFits.of(PreferredList.ISO_SHAFT_BASIS).get(0);
    assertTrue(recalled.toString().contains("(recalled list) [memory]"), recalled.toString());
    assertTrue(PreferredFits.isForGeneralUse(ToleranceClass.of("H7")));
    assertTrue(!PreferredFits.isForGeneralUse(ToleranceClass.of("ZC7")));
    PreferredFit t = PreferredFits.find(ToleranceClass.of("H7"), ToleranceClass.of("t6")).get(0);
    assertTrue(t.isDefinedFor(mm(30)) && !t.isDefinedFor(mm(20)));
  }
}
