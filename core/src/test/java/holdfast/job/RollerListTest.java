// SPDX-License-Identifier: Apache-2.0
package holdfast.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.installation.ExampleJobs;
import holdfast.installation.InstallationPlan;
import holdfast.installation.MountingPlan;
import holdfast.quantity.InputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RollerListTest {
  @TempDir private Path folder;

  private static String roller(String name, String size, String dynamic, String standing) {
    return "  - roller: {name: " + name + ", size: " + size + ", rolling-elements: caged needle rollers, seals: contact,\n"
        + "      ratings: {dynamic: " + dynamic + ", static: " + standing + ", outer-ring: deflecting, origin: measured},\n"
        + "      limits: {temperatures: -20 … 110 °C, torque: 85 N·m}}\n"
        + "    stud: {material: 16MnCr5, grease-bore: 3 mm, head: slot}\n";
  }

  private static final String LIST = "rollers:\n" + roller("small", "metric 35 mm", "6 kN", "8 kN")
      + roller("middle", "metric 40 mm", "14.2 kN", "17.5 kN") + roller("large", "metric 52 mm", "24 kN", "36 kN")
      + "  - roller: {name: yoke, outside-diameter: 52 mm, ring-width: 24 mm, rolling-elements: caged needle rollers, seals: none,\n"
      + "      ratings: {dynamic: 21 kN, static: 34 kN, outer-ring: rigid}, limits: {temperatures: -20 … 110 °C},\n"
      + "      bore: {diameter: 20 mm, tolerance: 0/-0.010 mm, width: 25 mm}}\n";

  /** The bundled lever without what its own roller states. */
  private static String byName(String name) {
    StringBuilder text = new StringBuilder();
    boolean skip = false;
    for (String line : JobFile.text(ExampleJobs.metricLever()).lines().toList()) {
      if (!line.startsWith(" ")) {
        skip = line.equals("roller:") || line.equals("stud:");
        if (line.equals("roller:")) {
          text.append("roller-list: rollers.yaml\nroller:\n  name: ").append(name).append('\n');
        }
      }
      text.append(skip ? "" : line + "\n");
    }
    return text.toString();
  }

  @Test
  void aJobTakesItsRollerByName() throws IOException {
    Files.writeString(folder.resolve("rollers.yaml"), LIST);
    Path file = Files.writeString(folder.resolve("job.yaml"), byName("middle"));
    InstallationPlan job = (InstallationPlan) JobFile.read(file);
    assertEquals(14200, job.roller().ratings().dynamic().newton(), 1e-9);
    assertEquals(40, job.roller().outsideDiameter().mm(), 1e-9);
    assertEquals(85000, job.roller().statedTorque().orElseThrow().newtonMillimetre(), 1e-9);
    assertEquals("measured", job.roller().ratingsFrom().name().toLowerCase(java.util.Locale.ROOT));
    assertEquals(job, RollerList.parse(LIST).into(ExampleJobs.metricLever(), "middle"));
    // What is written no longer needs the list.
    assertEquals(job, JobFile.parse(JobFile.text(job)));
  }

  private List<Fault> faults(String text) throws IOException {
    Path file = Files.writeString(folder.resolve("job.yaml"), text);
    return assertThrows(JobFileException.class, () -> JobFile.read(file)).faults();
  }

  @Test
  void whatAListCannotGiveIsAFaultOfTheJob() throws IOException {
    assertEquals("roller-list", faults(byName("middle")).get(0).key());
    Files.writeString(folder.resolve("rollers.yaml"), LIST);
    Fault unknown = faults(byName("midle")).get(0);
    assertEquals("roller.name", unknown.key());
    assertTrue(unknown.accepted().contains("middle"), unknown.accepted());
    assertTrue(faults(byName("yoke")).get(0).reason().contains("mounting"));
    Fault twin = faults(byName("middle").replace("  name: middle", "  name: middle\n  seals: none")).get(0);
    assertEquals("roller.seals", twin.key());
    for (String away : List.of("../rollers.yaml", "/etc/passwd", "sub/rollers.yaml", ".")) {
      assertEquals("roller-list", faults(byName("middle").replace("roller-list: rollers.yaml", "roller-list: " + away)).get(0).key());
    }
    assertThrows(JobFileException.class, () -> JobFile.parse(byName("middle")));
    Files.writeString(folder.resolve("rollers.yaml"), LIST.replace("8 kN", "8"));
    assertTrue(faults(byName("middle")).get(0).reason().contains("static"));
  }

  @Test
  void faultsOfAListHaveTheirPlaces() {
    for (String text : List.of("", "a: 1\n", "rollers: 5\n", "rollers: []\n", "rollers:\n  - 5\n", "rollers:\n  - roller: {nam: x}\n",
        LIST.replace("size: metric 40 mm", "size: metric 41 mm"), LIST.replace("name: large", "name: middle"),
        LIST.replace("stud: {material: 16MnCr5, grease-bore: 3 mm,", "stud: {grease-bore: 3 mm,"))) {
      List<Fault> faults = assertThrows(JobFileException.class, () -> RollerList.parse(text), text).faults();
      assertTrue(faults.stream().allMatch(fault -> fault.line() >= 1), faults::toString);
    }
  }

  @Test
  void rollersAreRankedByTheirGoverningMargin() {
    RollerList list = RollerList.parse(LIST);
    assertEquals(List.of("small", "middle", "large", "yoke"), list.names());
    MountingPlan job = ExampleJobs.metricLever();
    List<RankedRoller> ranked = list.rank(job);
    assertEquals(4, ranked.size());
    for (int i = 1; i < ranked.size(); i++) {
      assertTrue(ranked.get(i - 1).rank() >= ranked.get(i).rank());
    }
    RankedRoller yoke = ranked.get(3);
    assertEquals("yoke", yoke.name());
    assertFalse(yoke.install());
    assertTrue(yoke.governing().isEmpty());
    RankedRoller smallest = RankedRoller.smallest(ranked).orElseThrow();
    assertEquals("middle", smallest.name());
    RankedRoller below = RankedRoller.nextSmaller(ranked).orElseThrow();
    assertEquals("small", below.name());
    assertNotEquals(List.of(), below.reasons());
    assertEquals(1, ranked.stream().filter(one -> one.name().equals("large")).count());
    assertThrows(InputException.class, () -> list.into(job, "none"));
    assertThrows(InputException.class, () -> list.into(job, "yoke"));
  }
}
