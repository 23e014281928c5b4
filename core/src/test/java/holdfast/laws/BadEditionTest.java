// SPDX-License-Identifier: Apache-2.0
package holdfast.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holdfast.bearings.BearingType;
import holdfast.bearings.EquivalentLoadKernel;
import holdfast.bearings.StaticLoadKernel;
import holdfast.failures.FailureReading;
import holdfast.failures.MisalignmentLimit;
import holdfast.fits.Fit;
import holdfast.fits.InchLimitsKernel;
import holdfast.fits.LimitDeviationsKernel;
import holdfast.fits.PreferredFits;
import holdfast.installation.ExampleJobs;
import holdfast.quantity.Units;
import holdfast.rollers.RollerSeries;
import holdfast.seats.HousingShapeKernel;
import holdfast.seats.Material;
import holdfast.seats.SeatHold;
import holdfast.seats.SeatSlopeKernel;
import holdfast.seats.SurfaceRoughness;
import holdfast.threads.FrictionClass;
import holdfast.threads.MetricToleranceKernel;
import holdfast.threads.PropertyClass;
import holdfast.threads.ScrewThread;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A program started with an edition that cannot be used gets the documented exception from every door, at every call. */
class BadEditionTest {
  private static final int CALLS = 3;

  @TempDir Path folder;

  @Test
  void noClassFailsToLoadAndEveryDoorNamesTheEdition() throws Exception {
    Path out = folder.resolve("out.txt");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Dholdfast.tables=" + folder.resolve("none"),
                "-cp",
                System.getProperty("java.class.path"),
                BadEditionTest.class.getName(),
                out.toString())
            .inheritIO()
            .start();
    assertEquals(0, process.waitFor());
    assertEquals("", Files.readString(out));
  }

  /** Runs in the program with the bad edition; writes what was wrong, a line each. */
  public static void main(String[] args) throws Exception {
    try (PrintStream out = new PrintStream(args[0], StandardCharsets.UTF_8)) {
      doors().forEach((name, door) -> tryOut(name, door, out));
      for (String name : PublicApi.names()) {
        try {
          Class.forName(name);
        } catch (Throwable e) {
          out.println(name + " cannot be loaded: " + e);
        }
      }
    }
  }

  private static void tryOut(String name, Runnable door, PrintStream out) {
    for (int call = 0; call < CALLS; call++) {
      try {
        door.run();
        out.println(name + " answered without tables");
      } catch (java.io.UncheckedIOException documented) {
        if (!documented.getMessage().contains("none")) {
          out.println(name + " does not name the place: " + documented.getMessage());
        }
      } catch (Throwable other) {
        out.println(name + " call " + call + ": " + other);
      }
    }
  }

  private static Map<String, Runnable> doors() {
    Map<String, Runnable> doors = new LinkedHashMap<>();
    doors.put("limit deviations", () -> LimitDeviationsKernel.upper(25, 100));
    doors.put("inch limits", () -> InchLimitsKernel.minimumClearance(25, 3));
    doors.put("fit", () -> Fit.of(Units.mm(25), "H7/p6"));
    doors.put("preferred fits", PreferredFits::all);
    doors.put("material", () -> Material.of("C45"));
    doors.put("roughness", () -> SurfaceRoughness.ofGrade("N7"));
    doors.put("housing shape", () -> HousingShapeKernel.squareEquivalent(2));
    doors.put("seat slope", () -> SeatSlopeKernel.momentCompliance(SeatHold.BONDED_FREE, 1, 3, 1, 0));
    doors.put("thread", () -> ScrewThread.of("M8"));
    doors.put("thread tolerance", () -> MetricToleranceKernel.externalCrest(6, 1.25));
    doors.put("property class", () -> PropertyClass.of("8.8"));
    doors.put("friction class", () -> FrictionClass.B.friction());
    doors.put("roller series", () -> RollerSeries.METRIC.sizes());
    doors.put("static load", () -> StaticLoadKernel.x0(BearingType.DEEP_GROOVE_BALL, 1, 0.2));
    doors.put("dynamic load", () -> EquivalentLoadKernel.radialBallY(1, 0.1, 0.1));
    doors.put("failures", FailureReading::all);
    doors.put("misalignment limits", MisalignmentLimit::all);
    doors.put("whole job", () -> ExampleJobs.metricLever().sheet());
    return doors;
  }
}
