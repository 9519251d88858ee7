package ribband.desk;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import ribband.journal.Journal;
import ribband.past.Asked;
import ribband.past.Past;
import ribband.past.PastReader;

/** Past sessions for tests, read from a spreadsheet as the command does. */
final class PastOf {
  private PastOf() {}

  static Past sheet(Journal journal, String... rows) {
    byte[] bytes = (String.join("\n", rows) + "\n").getBytes(StandardCharsets.UTF_8);
    Past past =
        PastReader.read("past.csv", bytes, Asked.NOTHING, journal.project(), journal.phases());
    assertTrue(past.isSound(), () -> past.problems().toString());
    return past;
  }
}
