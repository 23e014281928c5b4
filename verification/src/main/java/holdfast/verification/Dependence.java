// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Properties;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Which comparisons depend on which calculation, as it was measured: the result of one calculation was falsified by one
 * per cent, the suites ran again, and the comparisons that changed were counted. A test of this module measures it and
 * writes the files that are read here; DEVELOPERS.md has the command.
 *
 * @param links calculation by calculation, suite by suite, kind by kind
 * @param unchecked calculations on which no comparison depends, with the reason
 * @param tables digest of the tables it was measured with
 * @param cases digest of the cases it was measured with
 */
public record Dependence(List<Link> links, SortedMap<String, Unchecked> unchecked, String tables, String cases) {
  /**
   * Comparisons of one suite and one kind of evidence that depend on a calculation.
   *
   * @param calculation for example {@code holdfast.fits.InchLimitsKernel#fit}
   * @param suite id of the suite
   * @param evidence kind of evidence
   * @param moved comparisons whose computed value changed
   * @param caught those of them that agreed before and no longer agreed
   */
  public record Link(String calculation, String suite, Evidence evidence, int moved, int caught) {}

  /**
   * A public calculation on which no comparison depends.
   *
   * @param calculation for example {@code holdfast.fits.GaugeLimits}
   * @param reached whether it runs in some suite all the same
   * @param reason why no comparison depends on it
   */
  public record Unchecked(String calculation, boolean reached, String reason) {}

  // Keeps unmodifiable copies.
  public Dependence {
    links = List.copyOf(links);
    unchecked = Collections.unmodifiableSortedMap(new TreeMap<>(unchecked));
  }

  /**
   * What was measured last.
   *
   * @return the contents of the files in the resources
   */
  public static Dependence measured() {
    List<Link> links = new ArrayList<>();
    for (NamedCsvRecord r : read("dependence.csv")) {
      links.add(new Link(
          r.getField("calculation"), r.getField("suite"), Evidence.valueOf(r.getField("evidence")),
          Integer.parseInt(r.getField("moved")), Integer.parseInt(r.getField("caught"))));
    }
    SortedMap<String, Unchecked> unchecked = new TreeMap<>();
    for (NamedCsvRecord r : read("unchecked.csv")) {
      String name = r.getField("calculation");
      if (unchecked.put(name, new Unchecked(name, r.getField("reached").equals("yes"), r.getField("reason"))) != null) {
        throw new IllegalStateException("unchecked.csv lists " + name + " twice");
      }
    }
    Properties with = new Properties();
    try (InputStream stream = open("dependence.properties")) {
      with.load(stream);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new Dependence(links, unchecked, with.getProperty("tables"), with.getProperty("cases"));
  }

  /**
   * The links of each calculation.
   *
   * @return sorted by the name of the calculation
   */
  public SortedMap<String, List<Link>> byCalculation() {
    SortedMap<String, List<Link>> sorted = new TreeMap<>();
    links.forEach(link -> sorted.computeIfAbsent(link.calculation(), name -> new ArrayList<>()).add(link));
    return sorted;
  }

  private static List<NamedCsvRecord> read(String file) {
    try (InputStream stream = open(file)) {
      String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
      return CsvReader.builder().ofNamedCsvRecord(text).stream().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static InputStream open(String file) {
    InputStream stream = Dependence.class.getResourceAsStream("dependence/" + file);
    if (stream == null) {
      throw new IllegalStateException("dependence/" + file + " is missing");
    }
    return stream;
  }
}
