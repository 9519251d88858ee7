package ribband.journal;

import java.util.ArrayList;
import java.util.List;
import ribband.journal.Node.Field;
import ribband.journal.Node.Mapping;
import ribband.problem.OneLine;
import ribband.problem.Problems;

/**
 * Tells where YAML cuts a number in braces at its comma: {@code {planking: 2,75}} comes out as
 * {@code planking: 2} and a key {@code 75} with nothing behind it.
 */
final class CutAtComma {
  private CutAtComma() {}

  /** The fields of a mapping of the builder's names; what a comma cut off is told and left out. */
  static List<Field> passed(Mapping mapping, Problems problems) {
    List<Field> passed = new ArrayList<>();
    String before = "";
    for (Field field : mapping.fields()) {
      String name = field.key().value();
      if (field.value().isBlank() && name.matches("[0-9]+( .*)?")) {
        problems.error(
            field.key().place(),
            OneLine.quote(name)
                + " stands where a name belongs; inside braces a decimal takes a point, write "
                + before
                + "."
                + OneLine.cut(name));
      } else {
        passed.add(field);
        before = field.value() instanceof Node.Text text ? OneLine.cut(text.value()) : "";
      }
    }
    return passed;
  }
}
