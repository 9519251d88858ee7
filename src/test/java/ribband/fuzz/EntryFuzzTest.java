package ribband.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import ribband.journal.Entry;
import ribband.journal.JournalFolder;
import ribband.journal.JournalReader;
import ribband.measure.Hours;
import ribband.problem.Problem;

/**
 * An entry of any bytes becomes an entry or an error, each problem one line with a place in a file
 * of the journal; line ends of either kind make no difference.
 */
class EntryFuzzTest {
  private static final String ENTRY = "2026-03-14-garboard.md";
  private static final LocalDate TODAY = LocalDate.of(2026, 12, 31);
  private static final Hours DAY = Hours.ofMinutes(24 * 60);
  private static final String PROJECT =
      """
      name: Dunlin
      currency: USD
      phases:
        - {id: planking, title: Planking, hours: 120, cost: 1400}
        - {id: fairing, title: Fairing}
      materials:
        epoxy: {unit: fl oz, on hand: 20 fl oz}
      adhesives:
        epoxy: {material: epoxy, mix: 2 to 1 by volume, pot life: 20 min}
      pieces:
        strakes: {total: 16, phase: planking, sides: [port, starboard]}
      """;

  @TempDir static Path root;
  private static JournalFolder folder;

  @BeforeAll
  static void aJournalOfOneEntry() throws IOException {
    Files.writeString(root.resolve(JournalFolder.PROJECT), PROJECT, StandardCharsets.UTF_8);
    Files.writeString(root.resolve(ENTRY), "", StandardCharsets.UTF_8);
    folder = JournalFolder.list(root, root.resolve("site"));
  }

  @FuzzTest(maxDuration = "12s")
  void entry(byte[] bytes) throws IOException {
    JournalReader.Read read = read(bytes);
    List<Entry> entries = read.journal().entries();
    assertEquals(1, read.entries());
    assertTrue(entries.size() == 1 || read.problems().stream().anyMatch(Problem::isError));
    read.problems().forEach(problem -> Lines.stand(problem, List.of(ENTRY), bytes));
    if (read.problems().stream().noneMatch(Problem::isError)) {
      Entry entry = entries.get(0);
      assertEquals(LocalDate.of(2026, 3, 14), entry.date());
      assertTrue(Hours.sum(entry.hours().values()).compareTo(DAY) <= 0);
      String text = new String(bytes, StandardCharsets.UTF_8);
      JournalReader.Read other = read(otherLineEnds(text).getBytes(StandardCharsets.UTF_8));
      assertEquals(
          Map.of(entry, read.problems()),
          Map.of(other.journal().entries().get(0), other.problems()));
    }
  }

  private static String otherLineEnds(String text) {
    return text.contains("\r\n") ? text.replace("\r\n", "\n") : text.replace("\n", "\r\n");
  }

  private static JournalReader.Read read(byte[] bytes) throws IOException {
    Files.write(root.resolve(ENTRY), bytes);
    return JournalReader.read(folder, TODAY);
  }
}
