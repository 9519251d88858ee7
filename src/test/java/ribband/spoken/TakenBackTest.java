package ribband.spoken;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.journal.Journal;
import ribband.journal.JournalFolder;
import ribband.journal.JournalReader;

/** What is taken back must have been done. */
class TakenBackTest {
  private static final LocalDate NIGHT = LocalDate.of(2026, 3, 14);

  @TempDir Path folder;

  @BeforeEach
  void project() throws IOException {
    write(
        "project.yaml",
        "name: Dunlin\npieces: {strakes: {total: 16, sides: [port, starboard]}, ribs: {total: 9}}");
  }

  private void write(String file, String text) throws IOException {
    Files.writeString(folder.resolve(file), text, StandardCharsets.UTF_8);
  }

  private void entry(String day, String pieces) throws IOException {
    write(day + ".md", "---\npieces: {" + pieces + "}\n---\n");
  }

  private List<String> told(String line) throws IOException {
    Journal journal =
        JournalReader.read(JournalFolder.list(folder, folder.resolve("site")), NIGHT).journal();
    return SpokenWords.told(SpokenLine.read(line, journal, NIGHT), journal.project());
  }

  @Test
  void ofNothingDoneNothingCanBeTaken() throws IOException {
    assertEquals(
        List.of(
            "into the text: \"removed strake 3 port\": takes back number 3, which was not done by"
                + " then"),
        told("removed strake 3 port"));
    for (String said : List.of("-1 strake", "minus one strake", "minus one strake port")) {
      assertEquals(
          List.of("into the text: \"" + said + "\": takes back more than the 0 done by then"),
          told(said));
    }
  }

  @Test
  void aNumberIsOfItsSide() throws IOException {
    entry("2026-03-14", "strakes: {port: [3], starboard: [4]}");
    assertEquals(List.of("strake 3 port, taken back"), told("removed strake 3 port"));
    assertEquals(
        List.of(
            "into the text: \"removed strake 3 starboard\": takes back number 3, which was not"
                + " done by then"),
        told("removed strake 3 starboard"));
    entry("2026-03-14-b", "strakes: {port: [-3]}");
    assertEquals(
        List.of(
            "into the text: \"removed strake 3 port\": takes back number 3, which was not done by"
                + " then"),
        told("removed strake 3 port"));
  }

  @Test
  void aCountIsOfItsSideAndOfTheWhole() throws IOException {
    entry("2026-03-13", "strakes: {port: 2}, ribs: [1]");
    assertEquals(List.of("2 strakes port, taken back"), told("minus two strakes port"));
    assertEquals(List.of("1 rib, taken back"), told("minus one rib"));
    assertEquals(
        List.of(
            "into the text: \"minus one strake starboard\": takes back more than the 0 done by"
                + " then"),
        told("minus one strake starboard"));
    assertEquals(
        List.of("into the text: \"minus three strakes\": takes back more than the 2 done by then"),
        told("minus three strakes"));
  }

  @Test
  void whatIsRefusedDoesNotCount() throws IOException {
    assertEquals(
        List.of(
            "5 ribs",
            "into the text: \"minus three ribs\": takes back more than the 0 done by then",
            "into the text: \"five ribs\": comes to 10 with what was said before; there are 9 ribs",
            "into the text: \"minus six ribs\": takes back more than the 5 done by then"),
        told("minus three ribs, five ribs, five ribs, minus six ribs"));
  }

  @Test
  void whatWasSaidBeforeCounts() throws IOException {
    entry("2026-03-15", "ribs: 5");
    assertEquals(
        List.of(
            "2 ribs",
            "2 ribs, taken back",
            "into the text: \"minus one rib\": takes back more than the 0 done by then"),
        told("two ribs, minus two ribs, minus one rib"));
  }
}
