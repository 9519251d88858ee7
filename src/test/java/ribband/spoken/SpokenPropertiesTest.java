package ribband.spoken;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.measure.Hours;

/** What holds of every line, tried on lines put together from words that mean something. */
class SpokenPropertiesTest {
  private static final List<String> WORDS =
      List.of(
          "planking",
          "fairing",
          "lofting and moulds",
          "fairng",
          "strakes",
          "strake",
          "knees",
          "port",
          "starboard",
          "a",
          "two",
          "3",
          "17",
          "half",
          "quarter",
          "an hour",
          "2:45",
          "1:60",
          "2.75",
          "23.70",
          "$12",
          "-12.00",
          "€5",
          "2¾",
          "45 min",
          "sanding discs",
          "for",
          "on",
          "off",
          "back",
          "each side",
          "number",
          "and",
          "and",
          "then",
          ",",
          ",",
          ",",
          ".",
          ";",
          "dry-fitted",
          "rain",
          "“so”",
          "sold",
          "paid",
          "took",
          "scrapped",
          "the",
          "of",
          "3-5");
  private static final int LINES = 1_000;
  private static final int LONG = 10_000;

  @TempDir Path folder;
  private Boat boat;

  @BeforeEach
  void readProject() throws IOException {
    boat = Boat.ofDocument(folder);
  }

  private static List<String> lines() {
    Random random = new Random(6);
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < LINES; i++) {
      StringBuilder line = new StringBuilder();
      int words = 1 + random.nextInt(9);
      for (int w = 0; w < words; w++) {
        line.append(w == 0 ? "" : " ").append(WORDS.get(random.nextInt(WORDS.size())));
      }
      lines.add(line.toString());
    }
    return lines;
  }

  @Test
  void withoutWhatWasNotUnderstoodALineSaysTheSame() {
    int understood = 0;
    for (String line : lines()) {
      Spoken all = boat.hear(line);
      assertTrue(isSameWithout(all, line, 0, 0, ""), () -> all + " of " + line);
      understood += all.loose().isEmpty() ? 1 : 0;
    }
    assertTrue(understood > LINES / 20, "only " + understood + " lines were understood whole");
  }

  /** Whether the loose words, from one of them on, can be cut out of the line so that it holds. */
  private boolean isSameWithout(Spoken all, String line, int loose, int from, String rest) {
    if (loose == all.loose().size()) {
      Spoken again = boat.hear(rest + line.substring(from));
      return again.loose().isEmpty()
          && all.spent().equals(again.spent())
          && all.pieces().equals(again.pieces())
          && hours(all).equals(hours(again));
    }
    String words = all.loose().get(loose).words();
    for (int at = line.indexOf(words, from); at >= 0; at = line.indexOf(words, at + 1)) {
      String left = rest + line.substring(from, at) + "; ";
      if (isSameWithout(all, line, loose + 1, at + words.length(), left)) {
        return true;
      }
    }
    return false;
  }

  private static Hours hours(Spoken spoken) {
    return Hours.sum(spoken.worked().stream().map(Worked::hours).toList());
  }

  @Test
  void blanksAndCapitalsMakeNoDifference() {
    for (String line : lines()) {
      List<String> told = boat.told(line);
      assertEquals(told, boat.told("  " + line.replace(" ", "  \t") + "\n"), line);
      assertEquals(small(told), small(boat.told(line.toUpperCase(Locale.ROOT))), line);
    }
  }

  private static List<String> small(List<String> told) {
    return told.stream().map(t -> t.toLowerCase(Locale.ROOT)).toList();
  }

  @Test
  void hoursAreNeverMoreThanADayAndPiecesNeverMoreThanThereAre() {
    for (String line : lines()) {
      Spoken spoken = boat.hear(line);
      assertTrue(hours(spoken).compareTo(Hours.ofMinutes(24 * 60)) <= 0, line);
      for (Piece piece : spoken.pieces()) {
        assertTrue(Math.abs(piece.count()) <= piece.kind().total(), line);
        assertTrue(
            piece.numbers().isEmpty() || piece.numbers().size() == Math.abs(piece.count()), line);
      }
    }
  }

  @Test
  void veryLongLinesAreRead() {
    for (String word :
        List.of(
            "a ",
            ", ",
            "and ",
            "2 ",
            "2, ",
            "strakes ",
            "$1 ",
            "off ",
            "\"",
            "1",
            ".",
            "x",
            "paid 1 ")) {
      Spoken spoken = boat.hear(word.repeat(LONG / word.length()));
      assertTrue(spoken.worked().size() + spoken.spent().size() < LONG, word);
    }
  }
}
