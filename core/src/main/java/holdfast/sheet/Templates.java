package holdfast.sheet;

import com.samskivert.mustache.Mustache;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** Markup lives in template files beside this package; values are escaped unless the template says otherwise. */
public final class Templates {
  private Templates() {}

  /**
   * Fills a template.
   *
   * @param name file name of the template in this package's resources
   * @param values what the template asks for; a missing value is an error
   * @return the filled text
   */
  public static String render(String name, Map<String, ?> values) {
    try (InputStream in = Templates.class.getResourceAsStream("/holdfast/sheet/" + name)) {
      if (in == null) {
        throw new IllegalArgumentException("no template named " + name);
      }
      Reader template = new InputStreamReader(in, StandardCharsets.UTF_8);
      return Mustache.compiler().emptyStringIsFalse(true).compile(template).execute(values);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
