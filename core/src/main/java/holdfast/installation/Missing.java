package holdfast.installation;

import holdfast.quantity.InputException;
import java.util.ArrayList;
import java.util.List;

/** Collects what a description still lacks, so that one error names all of it. */
final class Missing {
  private final String description;
  private final List<String> names = new ArrayList<>();

  Missing(String description) {
    this.description = description;
  }

  Missing need(Object value, String name) {
    if (value == null) {
      names.add(name);
    }
    return this;
  }

  void refuse() {
    if (!names.isEmpty()) {
      throw new InputException(
          description, "without " + String.join(", ", names), "complete", "nothing is assumed in place of what is not given");
    }
  }
}
