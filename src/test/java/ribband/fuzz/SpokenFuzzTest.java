package ribband.fuzz;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import ribband.journal.Journal;
import ribband.journal.JournalFolder;
import ribband.journal.JournalReader;
import ribband.measure.Hours;
import ribband.spoken.Loose;
import ribband.spoken.Spoken;
import ribband.spoken.SpokenLine;
import ribband.spoken.SpokenWords;
import ribband.spoken.Worked;

/**
 * Whatever is said, it is told in lines that steer nothing, a day has 24 hours, and what was not
 * understood stands in the line as it was typed, in its order.
 */
class SpokenFuzzTest {
  private static final String PROJECT =
      """
      name: Dunlin
      currency: USD
      phases:
        - {id: lofting, title: Lofting and moulds}
        - {id: planking, title: Planking}
        - {id: fairing, title: Fairing}
      pieces:
        strakes: {total: 16, phase: planking, sides: [port, starboard]}
        knees: {total: 6}
      """;

  @TempDir static Path folder;
  private static Journal journal;

  @BeforeAll
  static void readProject() throws IOException {
    Files.writeString(folder.resolve("project.yaml"), PROJECT, StandardCharsets.UTF_8);
    journal =
        JournalReader.read(
                JournalFolder.list(folder, folder.resolve("site")), LocalDate.of(2026, 3, 14))
            .journal();
  }

  @FuzzTest(maxDuration = "6s")
  void spoken(byte[] bytes) {
    String line = new String(bytes, StandardCharsets.UTF_8);
    Spoken spoken = read(line);
    Hours hours = Hours.sum(spoken.worked().stream().map(Worked::hours).toList());
    assertTrue(hours.compareTo(Hours.ofMinutes(24 * 60)) <= 0, line);
    spoken
        .pieces()
        .forEach(piece -> assertTrue(Math.abs(piece.count()) <= piece.kind().total(), line));
    for (String told : SpokenWords.told(spoken, journal.project())) {
      assertFalse(told.chars().anyMatch(Character::isISOControl), told);
    }
    stand(spoken.loose(), line);
  }

  private static Spoken read(String line) {
    return SpokenLine.read(line, journal.project(), journal.phases());
  }

  private static void stand(List<Loose> loose, String line) {
    StringBuilder seen = new StringBuilder();
    line.codePoints().map(SpokenFuzzTest::seen).forEach(seen::appendCodePoint);
    String tidy = seen.toString().replaceAll(" +", " ");
    int from = 0;
    for (Loose words : loose) {
      int at = tidy.indexOf(words.words(), from);
      assertTrue(at >= 0, () -> words + " does not stand in: " + line);
      from = at + words.words().length();
    }
  }

  private static int seen(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.SPACE_SEPARATOR,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          ' ';
      case Character.SURROGATE -> 0xFFFD;
      default -> c;
    };
  }
}
