// SPDX-License-Identifier: Apache-2.0
package holdfast.sheet;

import com.samskivert.mustache.Escapers;
import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.MustacheException;
import holdfast.quantity.InputException;
import holdfast.quantity.PlainText;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;

/**
 * Markup lives in template files beside this package. Values are escaped, and what cannot be seen is replaced, unless the
 * template says otherwise, as it does for drawings, which are filled templates themselves.
 */
final class Templates {
  private static final Mustache.Compiler COMPILER =
      Mustache.compiler().emptyStringIsFalse(true).withEscaper(text -> Escapers.HTML.escape(PlainText.printable(text)));

  private Templates() {}

  /** Fills the template of that name; a missing value is an error. */
  static String render(String name, Map<String, ?> values) {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(values, "values");
    try (InputStream in = Templates.class.getResourceAsStream("/holdfast/sheet/" + name)) {
      if (in == null) {
        throw new InputException("template", name, "the name of one in this package", "the others are not known here");
      }
      Reader template = new InputStreamReader(in, StandardCharsets.UTF_8);
      return COMPILER.compile(template).execute(values);
    } catch (MustacheException e) {
      throw new InputException("values of template " + name, values.keySet().toString(), "all that it asks for", e.getMessage());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
