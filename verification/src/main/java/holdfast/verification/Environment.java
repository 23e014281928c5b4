// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import java.util.Locale;

/** Where an audit ran. It stands in a file of its own, because it is all that may differ between two runs. */
final class Environment {
  private Environment() {}

  static String text() {
    String version = Environment.class.getPackage().getImplementationVersion();
    return line("Holdfast", version == null ? "not run from a jar" : version)
        + line("Java", property("java.version") + ", " + property("java.vm.name") + " " + property("java.vm.version"))
        + line("Maker of Java", property("java.vendor"))
        + line("System", property("os.name") + ", " + property("os.arch"))
        + line("Locale", Locale.getDefault().toLanguageTag());
  }

  private static String property(String name) {
    return System.getProperty(name, "unknown");
  }

  private static String line(String name, String value) {
    return name + ": " + value + "\n";
  }
}
