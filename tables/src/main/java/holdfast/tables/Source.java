// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Names the document that a calculation follows. Every public calculation carries at least one. */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.TYPE, ElementType.METHOD})
@Repeatable(Source.List.class)
public @interface Source {
  /**
   * Id of the document in the register.
   *
   * @return the id, for example {@code "ISO 281:2007"}
   */
  String document();

  /**
   * Clause, table or equation.
   *
   * @return the place in the document
   */
  String locator();

  /**
   * How it reached us.
   *
   * @return the provenance
   */
  Provenance provenance() default Provenance.PUBLISHED;

  /** Holds several sources of one calculation. */
  @Documented
  @Retention(RetentionPolicy.RUNTIME)
  @Target({ElementType.TYPE, ElementType.METHOD})
  @interface List {
    /**
     * The sources.
     *
     * @return all of them, in order
     */
    Source[] value();
  }
}
