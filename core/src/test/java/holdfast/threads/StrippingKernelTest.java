// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** Shear areas and corrections with numbers that can be worked out by hand. */
class StrippingKernelTest {
  private static final double ROOT3 = Math.sqrt(3);

  /** P = 2, overlap √3: the tooth is 1 + √3·tan 30° = 2 thick; over m = 6 there are three. */
  @Test
  void shearAreasOfBothThreads() {
    assertEquals(60 * Math.PI, StrippingKernel.externalShearArea(10, 10 + ROOT3, 2, 6), 1e-12);
    assertEquals(60 * Math.PI, StrippingKernel.internalShearArea(10, 10 - ROOT3, 2, 6), 1e-12);
    // Le = 2·At/(area per mm), 10π per mm.
    assertEquals(6, StrippingKernel.engagementForFullStrength(30 * Math.PI, 10, 10 + ROOT3, 2), 1e-12);
    assertEquals(60 * Math.PI, StrippingKernel.cylinderShearArea(8, 10, 0.75), 1e-12);
    assertEquals(80 * Math.PI, StrippingKernel.cylinderShearArea(8, 10, 1), 1e-12);
    refused(() -> StrippingKernel.cylinderShearArea(8, 10, 0), "part of the cylinder (0) must be over 0 up to 1");
  }

  @Test
  void threadsThatDoNotTouchAreRefused() {
    assertTrue(StrippingKernel.externalShearArea(10, 10 - 1.73, 2, 6) > 0);
    refused(() -> StrippingKernel.externalShearArea(10, 10 - 1.74, 2, 6), "overlap of the threads (-1.74) must be over -1.73205");
  }

  @Test
  void loadsAndTheirRatio() {
    assertEquals(9000, StrippingKernel.load(300, 60, 0.5), 1e-9);
    assertEquals(0.9, StrippingKernel.strengthRatio(300, 60, 400, 50), 1e-15);
  }

  @Test
  void wideningOfTheNut() {
    assertEquals(0.75, StrippingKernel.dilation(1.4), 1e-12);
    assertEquals(0.84, StrippingKernel.dilation(1.5), 1e-12);
    assertEquals(1, StrippingKernel.dilation(1.9));
    assertEquals(1, StrippingKernel.dilation(3));
    for (double bad : new double[] {Math.nextDown(1.4), Double.NaN, Double.POSITIVE_INFINITY}) {
      refused(() -> StrippingKernel.dilation(bad), "must be 1.4 or more");
    }
  }

  @Test
  void bendingOfTheStudsThread() {
    assertEquals(0.897, StrippingKernel.externalBending(0.5));
    assertEquals(0.897, StrippingKernel.externalBending(1));
    // 5.594 − 27.364 + 56.428 − 48.456 + 14.9648
    assertEquals(1.1668, StrippingKernel.externalBending(2), 1e-12);
    assertTrue(StrippingKernel.externalBending(2.2) > 1.1);
    refused(() -> StrippingKernel.externalBending(Math.nextUp(2.2)), "must be over 0 up to 2.2");
  }

  @Test
  void bendingOfTheNutsThread() {
    // 0.728 + 0.7076 − 0.46336 + 0.082944
    assertEquals(1.055184, StrippingKernel.internalBending(0.4), 1e-12);
    assertEquals(0.897, StrippingKernel.internalBending(1), 1e-12);
    assertEquals(0.897, StrippingKernel.internalBending(2));
    refused(() -> StrippingKernel.internalBending(Math.nextDown(0.4)), "strength ratio RS (0.4) must be 0.4 or more");
  }

  private static void refused(Executable call, String part) {
    InputException e = assertThrows(InputException.class, call);
    assertTrue(e.getMessage().contains(part), e.getMessage());
  }
}
