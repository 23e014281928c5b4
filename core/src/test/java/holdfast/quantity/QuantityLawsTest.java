// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** Laws that hold for every kind of quantity and every unit. */
class QuantityLawsTest {
  @Provide
  Arbitrary<EveryUnit.Kind<?>> kinds() {
    return Arbitraries.of(EveryUnit.kinds());
  }

  @Property
  void exactTextReadsBackInEveryUnit(
      @ForAll("kinds") EveryUnit.Kind<?> kind, @ForAll @DoubleRange(min = -1e12, max = 1e12) double value) {
    roundTrip(kind, kind.type() == Temperature.class ? Math.abs(value) : value);
  }

  private static <Q extends Quantity<Q>> void roundTrip(EveryUnit.Kind<Q> kind, double value) {
    for (Unit<Q> unit : kind.units()) {
      Q quantity = unit.of(value);
      String text = quantity.exactly(unit);
      assertFalse(text.contains("E"), text);
      // 15 significant digits in the unit; degrees Fahrenheit lose some of them around 0 °F, 32 degrees from 0 °C.
      double slack = 2e-14 * Math.max(Math.abs(quantity.base()), kind.type() == Temperature.class ? 32 : 0);
      assertEquals(quantity.base(), kind.parser().apply(text).base(), slack, text);
      assertEquals(value, quantity.in(unit), 1e-14 * Math.max(Math.abs(value), unit.toBase(0) == 0 ? 0 : 64), text);
    }
  }

  /** Units of the stable: a hand is 4 in; and the Fahrenheit scale by its definition, (t - 32) · 5/9. */
  @Example
  void aUnitConvertsAndSaysItsNames() {
    Unit<Length> hand = Unit.of("hand", 101.6, Length::new, "hands");
    assertEquals(new Length(1524), hand.of(15));
    assertEquals(15, new Length(1524).in(hand), 1e-14);
    assertEquals(101.6, hand.factor());
    assertEquals(List.of("hands", "hand"), hand.names());
    assertEquals("hand", hand.toString());
    Unit<Temperature> fahrenheit = Unit.withOffset("°F", 5.0 / 9, -32, Temperature::new);
    assertEquals(100, fahrenheit.of(212).celsius(), 1e-13);
    assertEquals(-40, new Temperature(-40).in(fahrenheit), 1e-13);
  }

  @Example
  void everyNameOfAUnitIsReadAndMeansOneUnit() {
    for (EveryUnit.Kind<?> kind : EveryUnit.kinds()) {
      names(kind);
    }
  }

  private static <Q extends Quantity<Q>> void names(EveryUnit.Kind<Q> kind) {
    Set<String> seen = new HashSet<>();
    for (Unit<Q> unit : kind.units()) {
      for (String name : unit.names()) {
        assertTrue(seen.add(name), kind.type().getSimpleName() + ": two units are called " + name);
        // A unit that starts with a digit, such as 1/min, needs the space.
        String glued = Character.isDigit(name.charAt(0)) ? "12.5 " : "12.5";
        for (String text : new String[] {"12.5 " + name, " " + glued + name + " ", "12.5\u00A0" + name, "+1.25e1 " + name}) {
          assertEquals(unit.of(12.5), kind.parser().apply(text), text);
        }
        if (kind.type() != Temperature.class) {
          assertEquals(unit.of(-3), kind.parser().apply("\u22123 " + name));
        }
      }
    }
  }

  @Property
  void everyKindRefusesWhatIsNotFinite(@ForAll("kinds") EveryUnit.Kind<?> kind) {
    for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
      for (Unit<?> unit : kind.units()) {
        InputException e = assertThrows(InputException.class, () -> unit.of(bad));
        assertEquals("a finite number", e.permitted());
        assertTrue(e.value().startsWith(Double.toString(bad)), e.value());
      }
    }
  }

  @Example
  void everyFactoryRefusesWhatIsNotFinite() throws ReflectiveOperationException {
    int factories = 0;
    for (Method factory : Units.class.getMethods()) {
      if (Modifier.isStatic(factory.getModifiers()) && Arrays.equals(factory.getParameterTypes(), new Class<?>[] {double.class})) {
        factories++;
        for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
          Throwable cause =
              assertThrows(InvocationTargetException.class, () -> factory.invoke(null, bad), factory.getName()).getCause();
          assertTrue(cause instanceof InputException, factory.getName() + ": " + cause);
        }
        assertTrue(Double.isFinite(((Quantity<?>) factory.invoke(null, 1.0)).base()), factory.getName());
      }
    }
    assertTrue(factories > 25, "factories found: " + factories);
  }

  @Example
  void everyKindTravels() throws IOException, ClassNotFoundException {
    for (EveryUnit.Kind<?> kind : EveryUnit.kinds()) {
      Quantity<?> quantity = kind.units().get(0).of(12.34);
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
        out.writeObject(quantity);
      }
      try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
        assertEquals(quantity, in.readObject());
      }
    }
  }

  @Example
  void everyKindOfQuantityIsTested() {
    Set<Class<?>> kinds = new HashSet<>(Arrays.asList(Linear.class.getPermittedSubclasses()));
    kinds.add(Temperature.class);
    Set<Class<?>> tested = new HashSet<>();
    EveryUnit.kinds().forEach(kind -> tested.add(kind.type()));
    assertEquals(kinds, tested);
  }

  @Property
  void sumsAndMultiples(
      @ForAll("kinds") EveryUnit.Kind<?> kind,
      @ForAll @DoubleRange(min = -1e6, max = 1e6) double a,
      @ForAll @DoubleRange(min = -1e6, max = 1e6) double b,
      @ForAll @DoubleRange(min = 0.01, max = 1000) double factor) {
    if (kind.units().get(0).of(0) instanceof Linear<?> zero) {
      arithmetic(zero, a, b, factor);
    }
  }

  private static <Q extends Linear<Q>> void arithmetic(Linear<Q> zero, double x, double y, double factor) {
    Q a = zero.withBase(x);
    Q b = zero.withBase(y);
    assertEquals(a.plus(b), b.plus(a));
    assertEquals(a.minus(b), b.minus(a).negated());
    assertEquals(zero.withBase(0), a.minus(a));
    assertEquals(a, a.negated().negated());
    assertEquals(a, a.times(1).dividedBy(1));
    assertEquals(x, a.times(factor).dividedBy(factor).base(), 1e-15 * Math.abs(x) * 4);
    assertEquals(a.plus(a), a.times(2));
    if (x != 0) {
      assertEquals(y / x, b.ratio(a), 0);
    }
    assertEquals(Integer.signum(Double.compare(x + 0.0, y + 0.0)), Integer.signum(a.compareTo(b)));
    assertEquals(x == y, a.equals(b));
  }

  @Example
  void zeroHasNoSign() {
    for (EveryUnit.Kind<?> kind : EveryUnit.kinds()) {
      if (kind.units().get(0).of(0) instanceof Linear<?> zero) {
        assertEquals(zero, zero.withBase(-0.0));
        assertEquals(zero, zero.negated());
        assertEquals(zero, zero.times(-1));
        assertTrue(zero.withBase(-0.0).toString().startsWith("0 "), zero.withBase(-0.0).toString());
      }
    }
    assertEquals(new Temperature(0), new Temperature(-0.0));
  }

  @Example
  void divisionByNothingIsNamed() {
    Length a = new Length(5);
    for (double bad : new double[] {0, -0.0, Double.NaN, Double.POSITIVE_INFINITY}) {
      InputException e = assertThrows(InputException.class, () -> a.dividedBy(bad));
      assertEquals("divisor", e.parameter());
      assertEquals("a finite number other than 0", e.permitted());
    }
    assertEquals("factor", assertThrows(InputException.class, () -> a.times(Double.NaN)).parameter());
    assertThrows(InputException.class, () -> a.ratio(new Length(0)));
    assertThrows(InputException.class, () -> new Length(0).ratio(new Length(0)));
    assertThrows(InputException.class, () -> new Length(1e308).times(1e10));
    assertThrows(InputException.class, () -> new Length(1e308).plus(new Length(1e308)));
    assertEquals("side", assertThrows(InputException.class, () -> new Area(1).dividedBy(new Length(0))).parameter());
    assertEquals("area", assertThrows(InputException.class, () -> new Force(1).over(new Area(0))).parameter());
    assertEquals("lever arm", assertThrows(InputException.class, () -> new Torque(1).over(new Length(0))).parameter());
  }

  @Property
  void productsOfKindsUndoEachOther(
      @ForAll @DoubleRange(min = 0.01, max = 1e5) double force, @ForAll @DoubleRange(min = 0.01, max = 1e3) double size) {
    Force f = new Force(force);
    Length l = new Length(size);
    assertEquals(force, f.times(l).over(l).newton(), 1e-12 * force);
    assertEquals(size, l.times(l).dividedBy(l).mm(), 1e-12 * size);
    Area area = l.times(l);
    assertEquals(force, f.over(area).times(area).newton(), 1e-12 * force);
  }

  @Property
  void temperaturesDifferByDifferences(
      @ForAll @DoubleRange(min = -200, max = 500) double a, @ForAll @DoubleRange(min = -50, max = 500) double b) {
    Temperature from = new Temperature(a);
    Temperature to = new Temperature(b);
    assertEquals(b, from.plus(to.minus(from)).celsius(), 1e-12 * (Math.abs(a) + Math.abs(b)));
    assertEquals(to.minus(from), from.minus(to).negated());
    assertEquals(Double.compare(a + 0.0, b + 0.0), from.compareTo(to));
  }
}
