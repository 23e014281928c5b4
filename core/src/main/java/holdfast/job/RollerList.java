// SPDX-License-Identifier: Apache-2.0
package holdfast.job;

import holdfast.installation.InstallationPlan;
import holdfast.installation.MountingPlan;
import holdfast.installation.YokePlan;
import holdfast.quantity.InputException;
import holdfast.quantity.Torque;
import holdfast.threads.ScrewThread;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InvalidObjectException;
import java.io.ObjectStreamException;
import java.io.Serializable;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Rollers as their makers describe them, in a file of one's own: each with the sections {@code roller} and, if it has one,
 * {@code stud} of a job file, and so with the origin of its values. Jobs take a roller from it by its name. Immutable.
 */
public final class RollerList implements Serializable {
  private static final long serialVersionUID = 1L;

  /** The key of the list in its file. */
  static final String KEY = "rollers";

  private final String text;
  private final transient List<Item> items;

  /** One roller, held by a stud or on a pin in a fork. */
  record Item(boolean inFork, Values values) {
    String name() {
      return values.get(Schema.ROLLER);
    }

    String thread() {
      return values.find(Schema.STUD_THREAD).orElseGet(() -> values.get(Schema.ROLLER_SIZE).stud().threads().get(0));
    }
  }

  private RollerList(String text, String file) throws IOException {
    this.text = text;
    this.items = Reader.rollers(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), file);
  }

  /**
   * Reads a list.
   *
   * @param file a file in UTF-8
   * @return the list
   * @throws JobFileException if the file is no list: all its faults, each with line and column
   * @throws IOException if the file cannot be read
   */
  public static RollerList read(Path file) throws IOException {
    Objects.requireNonNull(file, "file");
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(4 * Yaml.LONGEST);
      return new RollerList(new String(bytes, StandardCharsets.UTF_8), file.toString());
    }
  }

  /**
   * Reads a list from text.
   *
   * @param text the text of a file
   * @return the list
   * @throws JobFileException if the text is no list: all its faults, each with line and column
   */
  public static RollerList parse(String text) {
    Objects.requireNonNull(text, "text");
    try {
      return new RollerList(text, "the list");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Object readResolve() throws ObjectStreamException {
    try {
      return parse(text);
    } catch (JobFileException | NullPointerException e) {
      throw new InvalidObjectException("list of rollers: " + e.getMessage());
    }
  }

  /**
   * What the rollers are called.
   *
   * @return the names in the order of the list
   */
  public List<String> names() {
    return items.stream().map(Item::name).toList();
  }

  Optional<Item> find(String name) {
    return items.stream().filter(item -> item.name().equals(name)).findFirst();
  }

  /**
   * The job with another roller in the place of its own. All else stays, but a stud with another thread brings its nut: on the
   * standard face of the thread, of a height not known, tightened to the greatest torque that the roller's maker permits less
   * the error of the wrench; and it is seated no longer than its shank.
   *
   * @param job the job, which stays as it is
   * @param name a roller of the list
   * @return the other job
   * @throws InputException if the list does not hold the name, or that roller is held in another way
   * @throws JobFileException if the roller does not go with the other parts of the job
   */
  public MountingPlan into(MountingPlan job, String name) {
    Objects.requireNonNull(job, "job");
    Objects.requireNonNull(name, "name");
    boolean inFork = job instanceof YokePlan;
    Item item = find(name).orElseThrow(() -> new InputException("roller", "'" + Fault.shortened(name) + "'",
        "one of " + String.join("; ", names()), "the list does not hold it"));
    if (item.inFork() != inFork) {
      throw new InputException("roller", "'" + name + "'", inFork ? "a roller with a bore" : "a roller with a stud",
          "the job holds its roller so");
    }
    Values values = Extraction.of(job);
    Schema.ofRoller(inFork).forEach(element -> {
      values.remove(element);
      if (item.values().has(element)) {
        values.take(element, item.values());
      }
    });
    if (job instanceof InstallationPlan plan
        && !ScrewThread.of(item.thread()).designation().equals(ScrewThread.of(plan.roller().thread()).designation())) {
      otherThread(plan, values);
    }
    return JobFile.parse(Writer.text(values, inFork, job.roller().system()));
  }

  private static void otherThread(InstallationPlan job, Values values) {
    List.of(Schema.FACE_OUTER, Schema.FACE_INNER, Schema.NUT_HEIGHT, Schema.WASHER, Schema.ENGAGED, Schema.NUT_SHEAR)
        .forEach(values::remove);
    // Whole N·mm, so that the greatest torque of the wrench does not pass the limit by a rounding.
    values.find(Schema.TORQUE_LIMIT).ifPresent(greatest -> values.put(Schema.TORQUE_SET,
        new Torque(Math.floor(greatest.newtonMillimetre() / (1 + job.nut().wrenchError())))));
    values.find(Schema.ROLLER_SIZE).map(size -> size.stud().shankLength())
        .filter(shank -> shank.compareTo(job.member().seatLength()) < 0)
        .ifPresent(shank -> values.put(Schema.SEAT_LENGTH, shank));
  }

  /**
   * Every roller of the list in the place of the job's own: greatest governing margin first, those that do not go with the
   * job last.
   *
   * @param job the job: its duty, and its other parts as they are
   * @return all rollers of the list
   */
  public List<RankedRoller> rank(MountingPlan job) {
    Objects.requireNonNull(job, "job");
    List<RankedRoller> all = new ArrayList<>();
    for (String name : names()) {
      try {
        all.add(new RankedRoller(name, into(job, name), ""));
      } catch (InputException e) {
        all.add(new RankedRoller(name, null, e.permitted() + ": " + e.reason()));
      } catch (JobFileException e) {
        all.add(new RankedRoller(name, null, e.faults().get(0).reason()));
      }
    }
    all.sort(Comparator.comparingDouble(RankedRoller::rank).reversed());
    return List.copyOf(all);
  }
}
