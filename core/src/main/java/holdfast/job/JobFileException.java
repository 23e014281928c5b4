// SPDX-License-Identifier: Apache-2.0
package holdfast.job;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/** A job file that cannot be taken: all its faults at once. */
public final class JobFileException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final String file;
  // An unmodifiable copy, which is Serializable.
  @SuppressWarnings("serial")
  private final List<Fault> faults;

  /**
   * States the faults.
   *
   * @param file what the file is called
   * @param faults its faults, at least one
   */
  public JobFileException(String file, List<Fault> faults) {
    super(text(Objects.requireNonNull(file, "file"), Objects.requireNonNull(faults, "faults")));
    this.file = file;
    this.faults = List.copyOf(faults);
  }

  private static String text(String file, List<Fault> faults) {
    return Fault.shortened(file) + " has " + (faults.size() == 1 ? "1 fault" : faults.size() + " faults") + ":\n"
        + faults.stream().map(fault -> "  " + fault).collect(Collectors.joining("\n"));
  }

  /**
   * What the file is called.
   *
   * @return a path, or what was said in its place
   */
  public String file() {
    return file;
  }

  /**
   * The faults in the order of the file.
   *
   * @return at least one
   */
  public List<Fault> faults() {
    return faults;
  }
}
