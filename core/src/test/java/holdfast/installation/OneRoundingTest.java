// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.sheet.SheetUnits;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** No value stands on a sheet in two roundings: a sheet once printed 39.24 and 39.25 ksi for one stress. */
class OneRoundingTest {
  private static final Pattern VALUE =
      Pattern.compile("(?<![\\w.\\-/])(\\d+(?:[ \\u202f]\\d{3})*(?:\\.\\d+)?)[ \\u00a0](N·m|lbf·in|kN|N|lbf|MPa|ksi|µm|mm|in|h|mrad)\\b");

  /** With fewer digits, two values may well lie next to each other. */
  private static final int DIGITS = 4;

  private static List<String> twice(String text) {
    Map<String, TreeSet<BigDecimal>> values = new TreeMap<>();
    Matcher matcher = VALUE.matcher(text);
    while (matcher.find()) {
      BigDecimal value = new BigDecimal(matcher.group(1).replaceAll("[ \\u202f]", ""));
      if (value.precision() >= DIGITS && value.scale() > 0) {
        values.computeIfAbsent(matcher.group(2) + " with " + value.scale() + " decimals", unit -> new TreeSet<>()).add(value);
      }
    }
    List<String> found = new ArrayList<>();
    values.forEach((unit, of) -> {
      BigDecimal before = null;
      for (BigDecimal value : of) {
        if (before != null && value.subtract(before).compareTo(value.ulp()) <= 0) {
          found.add(before + " and " + value + " " + unit);
        }
        before = value;
      }
    });
    return found;
  }

  @Test
  void noValueStandsInTwoRoundings() {
    List<String> found = new ArrayList<>();
    ExampleJobs.all().forEach((name, job) -> {
      for (SheetUnits units : SheetUnits.values()) {
        twice(job.withUnits(units).sheet().text()).forEach(pair -> found.add(name + ", " + units + ": " + pair));
      }
    });
    assertEquals(List.of(), found);
  }

  @Test
  void theCheckFindsWhatItLooksFor() {
    assertEquals(List.of("39.24 and 39.25 ksi with 2 decimals"), twice("at most 39.24 ksi here, and 39.25 ksi there, 39.27 ksi"));
    assertTrue(twice("39.24 ksi, 39.24 ksi, 39.25 MPa").isEmpty());
  }
}
