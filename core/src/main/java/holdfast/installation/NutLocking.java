// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

/** What keeps a nut from working loose. */
public enum NutLocking {
  /** Nothing but its preload. */
  NONE("nothing but the preload", false),
  /** Two thin nuts, tightened against each other. */
  DOUBLE_NUTS("double thin nuts", false),
  /** A spring washer. */
  SPRING_WASHER("a spring washer", false),
  /** A lock washer whose tab is bent. */
  LOCK_WASHER("a lock washer", false),
  /** A nut that grips the thread; it needs its prevailing torque on top. */
  SELF_LOCKING("a self-locking nut", true),
  /** Thread-locking adhesive. */
  THREAD_LOCKER("thread locker", false);

  private final String words;
  private final boolean prevailing;

  NutLocking(String words, boolean prevailing) {
    this.words = words;
    this.prevailing = prevailing;
  }

  /**
   * Whether the nut turns hard before it touches.
   *
   * @return true for a self-locking nut
   */
  public boolean prevailing() {
    return prevailing;
  }

  /** For example {@code "a self-locking nut"}. */
  @Override
  public String toString() {
    return words;
  }
}
