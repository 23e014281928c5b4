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
    // 5.594 − 20.523 + 31.74075 − 20.442375 + 4.73495625
    assertEquals(1.10433125, StrippingKernel.externalBending(1.5), 1e-12);
    // 5.594 − 30.1004 + 68.27788 − 64.494936 + 21.90996368
    assertEquals(1.18650768, StrippingKernel.externalBending(2.2), 1e-12);
    assertEquals(1.18650768, StrippingKernel.externalBending(50), 1e-12);
    refused(() -> StrippingKernel.externalBending(0), "must be over 0");
  }

  /** Only a thread that bends less can follow from a stronger nut. */
  @Test
  void theStudsThreadNeverLosesByAStrongerNut() {
    double before = 0;
    for (double ratio = 0.01; ratio < 4; ratio += 0.0005) {
      double now = StrippingKernel.externalBending(ratio);
      assertTrue(now >= before, ratio + ": " + now + " after " + before);
      before = now;
    }
  }

  @Test
  void bendingOfTheNutsThread() {
    // 0.728 + 0.7076 − 0.46336 + 0.082944
    assertEquals(1.055184, StrippingKernel.internalBending(0.4), 1e-12);
    assertEquals(0.897, StrippingKernel.internalBending(1), 1e-12);
    assertEquals(0.897, StrippingKernel.internalBending(2));
    assertEquals(1.055184, StrippingKernel.internalBending(0.1), 1e-12);
    refused(() -> StrippingKernel.internalBending(0), "strength ratio RS (0) must be over 0");
  }

  private static void refused(Executable call, String part) {
    InputException e = assertThrows(InputException.class, call);
    assertTrue(e.getMessage().contains(part), e.getMessage());
  }
}
