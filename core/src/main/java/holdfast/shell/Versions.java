// SPDX-License-Identifier: Apache-2.0
package holdfast.shell;

import holdfast.tables.TableSet;

/** What this jar is. */
final class Versions {
  private Versions() {}

  static String text() {
    TableSet tables = TableSet.bundled();
    return "Holdfast " + code() + ", table set " + tables.version() + ", SHA-256 " + tables.digest();
  }

  /** From the manifest of the jar; a checkout without a jar has none. */
  static String code() {
    String version = Versions.class.getPackage().getImplementationVersion();
    return version == null ? "(not run from a jar)" : version;
  }
}
