package ribband.journal;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import ribband.journal.Node.Field;
import ribband.journal.Node.Mapping;
import ribband.journal.Node.Text;
import ribband.problem.OneLine;
import ribband.problem.Problems;

/**
 * Tells where YAML cuts a number in braces at its comma: {@code {planking: 2,75}} comes out as
 * {@code planking: 2} and a key {@code 75} with nothing behind it.
 */
final class CutAtComma {
  private CutAtComma() {}

  /** The fields of a mapping of the builder's names, without those cut in two, which are told. */
  static List<Field> passed(Mapping mapping, Problems problems) {
    Deque<Field> passed = new ArrayDeque<>();
    for (Field field : mapping.fields()) {
      String rest = field.key().value();
      boolean cut =
          field.value().isBlank()
              && rest.matches("[0-9]+( .*)?")
              && !passed.isEmpty()
              && passed.getLast().value() instanceof Text;
      if (cut) {
        // What stands before the comma is half a number, and so is gone too.
        Text front = (Text) passed.removeLast().value();
        problems.error(
            field.key().place(),
            OneLine.quote(rest)
                + " stands where a name belongs; inside braces a decimal takes a point, write "
                + OneLine.cut(front.value() + "." + rest));
      } else {
        passed.addLast(field);
      }
    }
    return List.copyOf(passed);
  }
}
