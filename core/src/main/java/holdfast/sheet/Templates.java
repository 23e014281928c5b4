// SPDX-License-Identifier: Apache-2.0
package holdfast.sheet;

import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.MustacheException;
import holdfast.quantity.InputException;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;

/** Markup lives in template files beside this package; values are escaped unless the template says otherwise. */
public final class Templates {
  private Templates() {}

  /**
   * Fills a template.
   *
   * @param name file name of the template in this package's resources
   * @param values what the template asks for; a missing value is an error
   * @return the filled text
   * @throws InputException if there is no such template, or it asks for a value that is not there
   */
  public static String render(String name, Map<String, ?> values) {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(values, "values");
    try (InputStream in = Templates.class.getResourceAsStream("/holdfast/sheet/" + name)) {
      if (in == null) {
        throw new InputException("template", name, "the name of one in this package", "the others are not known here");
      }
      Reader template = new InputStreamReader(in, StandardCharsets.UTF_8);
      return Mustache.compiler().emptyStringIsFalse(true).compile(template).execute(values);
    } catch (MustacheException e) {
      throw new InputException("values of template " + name, values.keySet().toString(), "all that it asks for", e.getMessage());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
