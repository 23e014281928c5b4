// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

/** A table file that cannot be used, with the place of the first fault. */
public final class TableFormatException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final String file;
  private final long line;

  /**
   * Creates the error.
   *
   * @param file name of the file
   * @param line line in the file, counted from 1; 0 when the fault is not in one line
   * @param fault what is wrong and what would be accepted
   */
  public TableFormatException(String file, long line, String fault) {
    super(line > 0 ? file + ":" + line + ": " + fault : file + ": " + fault);
    this.file = file;
    this.line = line;
  }

  /** The same error with the place of the set. */
  TableFormatException in(String place) {
    String fault = getMessage().substring((line > 0 ? file + ":" + line + ": " : file + ": ").length());
    return new TableFormatException(file, line, fault + " (in " + place + ")");
  }

  /**
   * Name of the file at fault.
   *
   * @return the file
   */
  public String file() {
    return file;
  }

  /**
   * Line at fault.
   *
   * @return the line, counted from 1; 0 when the fault is not in one line
   */
  public long line() {
    return line;
  }
}
