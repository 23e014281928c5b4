package holdfast.seats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Any numbers at all: every kernel gives a number or a named error, never NaN. */
class AnyInputTest {
  private static final List<Class<?>> KERNELS =
      List.of(
          ThickRingKernel.class,
          EquivalentStressKernel.class,
          ElasticLimitKernel.class,
          PlasticRingKernel.class,
          RoughnessLossKernel.class,
          PressForceKernel.class,
          ThermalSeatKernel.class,
          RotationKernel.class,
          InternalClearanceKernel.class,
          HousingShapeKernel.class,
          SeatGeometryKernel.class);

  private static final List<YieldRule> RULES = List.of(YieldRule.values());

  private static final double[] ODD = {
    Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 0, -0.0, Double.MIN_VALUE, -Double.MIN_VALUE,
    Double.MAX_VALUE, -Double.MAX_VALUE, 1, -1, 0.5, 1 + 1e-16, 1e-300, 1e300
  };

  @Test
  void aNumberOrANamedError() throws IllegalAccessException {
    Random random = new Random(20261125);
    Map<String, String> failures = new TreeMap<>();
    int answers = 0;
    for (Class<?> kernel : KERNELS) {
      for (Method method : kernel.getMethods()) {
        if (!Modifier.isStatic(method.getModifiers()) || method.getReturnType() != double.class) {
          continue;
        }
        for (int i = 0; i < 8000; i++) {
          Object[] arguments = new Object[method.getParameterCount()];
          for (int j = 0; j < arguments.length; j++) {
            arguments[j] = argument(method.getParameterTypes()[j], method.getParameters()[j].getName(), random);
          }
          try {
            double result = (double) method.invoke(null, arguments);
            if (Double.isNaN(result)) {
              failures.put(method.getName(), Arrays.toString(arguments) + " gives NaN");
            }
            answers++;
          } catch (InvocationTargetException e) {
            if (!(e.getCause() instanceof InputException)) {
              failures.put(method.getName(), Arrays.toString(arguments) + " throws " + e.getCause());
            }
          }
        }
      }
    }
    assertEquals(Map.of(), failures);
    assertTrue(answers > 50_000, "only " + answers + " answers: the inputs are too wild to try much");
  }

  private static Object argument(Class<?> type, String name, Random random) {
    if (type == YieldRule.class) {
      return RULES.get(random.nextInt(RULES.size()));
    }
    if (random.nextInt(12) == 0) {
      return ODD[random.nextInt(ODD.length)];
    }
    double x = random.nextDouble();
    return switch (name) {
      case "modulus", "innerModulus", "outerModulus" -> 1e5 * (0.5 + 2 * x);
      case "poisson", "innerPoisson", "outerPoisson", "ratio", "holeRatio", "friction" -> x / 2;
      case "outside", "outer", "housingOutside", "outerRaceway", "studDiameter" -> 50 + 50 * x;
      case "joint", "r", "radius", "raceway", "boreDiameter", "stud", "innerRaceway" -> 20 + 30 * x;
      case "hole", "inner", "shaftHole", "bore" -> 20 * x;
      case "plasticRatio", "hoopFactor" -> 1 + x;
      case "innerExpansion", "outerExpansion", "expansion" -> 2e-5 * x;
      case "hoopLimit", "yield", "tensile", "yieldDifference" -> 200 + 200 * x;
      case "innerCompliance" -> 4e-6 + 1e-5 * x;
      default -> x;
    };
  }
}
