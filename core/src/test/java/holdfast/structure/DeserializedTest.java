// SPDX-License-Identifier: Apache-2.0
package holdfast.structure;

import static holdfast.quantity.Units.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import holdfast.fits.Fit;
import holdfast.fits.FitSample;
import holdfast.fits.StatisticalFit;
import holdfast.seats.Material;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.Serializable;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * What comes out of a stream has passed the door of its type. Records are built by their constructor; classes are not, so
 * each has a method readResolve that builds it anew.
 */
class DeserializedTest {
  @Test
  void everySerializableClassIsBuiltAnewByItsDoor() {
    List<String> unguarded = new ArrayList<>();
    for (JavaClass type : new ClassFileImporter().withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("holdfast")) {
      boolean streamed = type.isAssignableTo(Serializable.class) && !type.isRecord() && !type.isEnum() && !type.isInterface()
          && !type.isAssignableTo(Throwable.class) && !type.isAssignableTo(Enum.class) && !type.isAnonymousClass()
          && !type.getModifiers().contains(JavaModifier.ABSTRACT) && !type.getName().contains("Test");
      if (streamed && type.tryGetMethod("readResolve").isEmpty()) {
        unguarded.add(type.getName());
      }
    }
    assertEquals(List.of(), unguarded);
  }

  @Test
  void aMaterialChangedOnItsWayIsRefused() throws Exception {
    Material steel = Material.of("16MnCr5");
    assertEquals(steel, read(written(steel)));
    double ratio = steel.poissonRatio();
    InvalidObjectException e =
        assertThrows(InvalidObjectException.class, () -> read(replaced(written(steel), ratio, Double.NaN)));
    assertTrue(e.getMessage().contains("Poisson"), e.getMessage());
    assertThrows(InvalidObjectException.class, () -> read(replaced(written(steel), ratio, -3)));
    double yield = steel.yieldStrength().orElseThrow().base();
    assertThrows(InvalidObjectException.class, () -> read(replaced(written(steel), yield, -yield)));
  }

  @Test
  void aSampleChangedOnItsWayIsCountedAnewOrRefused() throws Exception {
    FitSample sample = StatisticalFit.centred(Fit.of(mm(25), "H7/h6"), 1).sample(9, 1);
    FitSample same = (FitSample) read(written(sample));
    assertEquals(sample.meanClearance(), same.meanClearance());
    assertEquals(sample.shareOfInterference(), same.shareOfInterference());
    double mean = sample.meanClearance().mm() * 1000;
    assertEquals(sample.meanClearance(), ((FitSample) read(replaced(written(sample), mean, 77))).meanClearance());
  }

  private static byte[] written(Object object) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(object);
    }
    return bytes.toByteArray();
  }

  private static Object read(byte[] bytes) throws IOException, ClassNotFoundException {
    try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes))) {
      return in.readObject();
    }
  }

  /** The stream with every double of a value replaced by another. */
  private static byte[] replaced(byte[] stream, double old, double now) {
    byte[] wanted = ByteBuffer.allocate(8).putDouble(old).array();
    byte[] result = stream.clone();
    for (int i = 0; i + 8 <= stream.length; i++) {
      if (Arrays.equals(Arrays.copyOfRange(stream, i, i + 8), wanted)) {
        ByteBuffer.wrap(result).putDouble(i, now);
      }
    }
    return result;
  }
}
