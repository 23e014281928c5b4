// SPDX-License-Identifier: Apache-2.0
package holdfast.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.installation.InstallationPlan;
import holdfast.job.JobFile;
import holdfast.quantity.KnownUnits;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Someone who has never seen the program goes from a template to a printed sheet by changing values, nothing else. */
class NewcomerTest {
  @TempDir private Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String... args) throws Exception {
    out.reset();
    err.reset();
    return Main.run(args, new PrintStream(out, true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8));
  }

  /** Changes the value behind a key that stands in the file, in its section. */
  private static void set(List<String> lines, String section, String key, String value) {
    int at = lines.indexOf(section + ":");
    assertTrue(at >= 0, section);
    do {
      at++;
      assertTrue(at < lines.size() && !lines.get(at).matches("[a-z].*"), () -> "no " + key + " to be changed in " + section);
    } while (!lines.get(at).startsWith("  " + key + ": "));
    lines.set(at, "  " + key + ": " + value);
  }

  @Test
  void anInchRollerInASteelLeverNeedsChangedValuesOnly() throws Exception {
    Path job = folder.resolve("lever.yaml");
    assertEquals(0, run("new", "stud-inch", job.toString(), "--size", "inch 1-1/2 in"));
    List<String> lines = new ArrayList<>(Files.readAllLines(job));
    int before = lines.size();
    set(lines, "member", "material", "C45+N");
    set(lines, "member", "thickness", "1 in");
    set(lines, "nut", "torque", "325 lbf·in");
    set(lines, "nut", "height", "1/4 in");
    set(lines, "nut", "washer", "none");
    set(lines, "duty", "load", "600 lbf");
    set(lines, "duty", "speed", "120 rpm");
    set(lines, "duty", "life", "2000 h");
    set(lines, "duty", "cleanliness", "slight contamination");
    set(lines, "duty", "dirt", "severe, non-abrasive dust");
    assertEquals(before, lines.size());
    Files.write(job, lines);

    InstallationPlan plan = (InstallationPlan) JobFile.read(job);
    assertEquals(325, plan.nut().torque().in(KnownUnits.LBF_IN), 1e-9);
    assertEquals(600, plan.duty().load().in(KnownUnits.LBF), 1e-9);
    assertEquals(120, plan.duty().speed().rpm(), 1e-12);
    assertEquals(1, plan.member().thickness().in(KnownUnits.INCH), 1e-12);
    assertEquals("5/8-18", plan.roller().thread());
    assertEquals(1.5, plan.roller().outsideDiameter().in(KnownUnits.INCH), 1e-12);

    assertEquals(0, run("check", job.toString()), () -> out.toString(StandardCharsets.UTF_8));
    Path page = folder.resolve("lever.html");
    assertEquals(0, run("sheet", job.toString(), "--html", page.toString()));
    assertTrue(Files.readString(page).contains("@page { size: letter;"));
    assertTrue(out.toString(StandardCharsets.UTF_8).contains("325"));
    assertEquals(0, run("recompute", page.toString()));
    assertEquals("", err.toString(StandardCharsets.UTF_8));
  }

  @Test
  void everyTemplateCanBeInstalledAsItStands() throws Exception {
    for (String kind : List.of("stud-metric", "stud-inch", "yoke")) {
      Path job = folder.resolve(kind + ".yaml");
      assertEquals(0, run("new", kind, job.toString()));
      assertEquals(0, run("check", job.toString()), () -> kind + ": " + out.toString(StandardCharsets.UTF_8));
    }
    assertEquals(2, run("new", "yoke", "--size", "metric 40 mm"));
    assertEquals(2, run("new", "stud", folder.resolve("none").toString()));
    assertTrue(err.toString(StandardCharsets.UTF_8).contains("stud-metric, stud-inch, yoke"));
  }
}
