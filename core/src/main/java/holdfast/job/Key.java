// SPDX-License-Identifier: Apache-2.0
package holdfast.job;

/**
 * A key of a job file.
 *
 * @param path where it stands, parts joined by points, for example {@code "nut.torque"}
 * @param kind how its values are written
 * @param need whether it must be there
 * @param meaning what it means
 * @param otherwise what holds without it, with the reason; empty if it must be there
 * @param example a value as a file may hold it
 */
record Key<T>(String path, Kind<T> kind, Need need, String meaning, String otherwise, String example) implements Element {
  /** Whether a key must be there. */
  enum Need { REQUIRED, OPTIONAL }

  static <T> Key<T> required(String path, Kind<T> kind, String meaning, String example) {
    return new Key<>(path, kind, Need.REQUIRED, meaning, "", example);
  }

  static <T> Key<T> optional(String path, Kind<T> kind, String meaning, String otherwise, String example) {
    return new Key<>(path, kind, Need.OPTIONAL, meaning, otherwise, example);
  }

  boolean mustBeThere() {
    return need == Need.REQUIRED;
  }

  /** A key is known by its path. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Key<?> key && path.equals(key.path);
  }

  @Override
  public int hashCode() {
    return path.hashCode();
  }
}
