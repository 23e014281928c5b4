// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

/** What lies on thread and nut face while the nut is tightened. Friction, torque and preload hold for this condition alone. */
public enum ThreadCondition {
  /** Clean and without any lubricant. */
  DRY("dry: clean, no oil or grease"),
  /** As the maker delivers stud and nut, usually with a film of preserving oil. */
  AS_DELIVERED("as delivered, nothing added and nothing washed off"),
  /** Machine oil on thread and face. */
  OILED("oiled on thread and face"),
  /** Grease on thread and face. */
  GREASED("greased on thread and face"),
  /** Assembly paste with solid lubricant. */
  PASTE("assembly paste on thread and face"),
  /** Liquid thread locker on the thread, wet while the nut is tightened. */
  THREAD_LOCKER("wet thread locker on the thread");

  private final String label;

  ThreadCondition(String label) {
    this.label = label;
  }

  /** For example {@code "oiled on thread and face"}. */
  @Override
  public String toString() {
    return label;
  }
}
