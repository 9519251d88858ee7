package ribband.album;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ribband.journal.Entry;
import ribband.journal.JournalFolder;
import ribband.journal.JournalReader;
import ribband.memory.Memory;
import ribband.problem.Problem;
import ribband.problem.Problems;
import ribband.prose.Mention;
import ribband.prose.Print;
import ribband.prose.Prose;
import ribband.prose.Surroundings;

/** A text that is remembered is what it would be if it were read again. */
class TextReaderTest {
  private static final String LINKED = "Cut the *scarf*, see [the keel](2026-03-01-keel.md).\n";

  @TempDir private Path folder;

  @BeforeEach
  void aProject() throws IOException {
    Files.writeString(folder.resolve("project.yaml"), "name: Dunlin\n");
  }

  private Entry entry(String text) throws IOException {
    Files.writeString(folder.resolve("2026-03-14-scarf.md"), "---\nhours: 1\n---\n" + text);
    JournalFolder files = JournalFolder.list(folder, folder.resolve("site"));
    return JournalReader.read(files, LocalDate.of(2026, 4, 1)).journal().entries().get(0);
  }

  private Memory memory() {
    return Memory.load(folder.resolve("texts"), "a build");
  }

  private static Surroundings leadingTo(String href) {
    return new Surroundings() {
      @Override
      public Optional<String> href(Mention link) {
        return Optional.of(href).filter(there -> !there.isEmpty());
      }

      @Override
      public Optional<Print> print(Mention picture) {
        return Optional.empty();
      }
    };
  }

  private static String show(Entry entry, Memory memory, Surroundings around) throws IOException {
    TextReader reader = new TextReader(new Prose(), memory);
    String html = reader.show(reader.read(entry, new Problems()), around).get();
    memory.save();
    return html;
  }

  @Test
  void aTextThatStaysTheSameIsNotReadAgain() throws IOException {
    Entry entry = entry(LINKED);
    TextReader first = new TextReader(new Prose(), memory());
    TextReader.Read fresh = first.read(entry, new Problems());
    assertTrue(fresh.manuscript().isPresent());
    String html = show(entry, memory(), leadingTo("keel.html"));

    TextReader second = new TextReader(new Prose(), memory());
    TextReader.Read kept = second.read(entry, new Problems());
    assertTrue(kept.manuscript().isEmpty());
    assertEquals(fresh.text().mentions(), kept.text().mentions());
    assertEquals("Cut the scarf, see the keel.", kept.text().opening());
    assertEquals(html, second.show(kept, leadingTo("keel.html")).get());
  }

  @Test
  void aTextWhoseLinksLeadElsewhereIsShownAnew() throws IOException {
    Entry entry = entry(LINKED);
    show(entry, memory(), leadingTo("keel.html"));
    for (String href : List.of("other.html", "", "keel.html")) {
      String link = href.isEmpty() ? "the keel" : "<a href=\"" + href + "\">the keel</a>";
      String html = "<p>Cut the <em>scarf</em>, see " + link + ".</p>\n";
      assertEquals(html, show(entry, memory(), leadingTo(href)));
      assertEquals(html, show(entry, memory(), leadingTo(href)));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"Cut the *scarf*!\n", "\nCut the scarf.\n", "Cut the *scarf*.\n\nMore."})
  void aTextThatChangedIsReadAnew(String changed) throws IOException {
    show(entry("Cut the *scarf*.\n"), memory(), leadingTo(""));
    Entry entry = entry(changed);
    Memory nothing = Memory.load(folder.resolve("nothing"), "a build");
    TextReader reader = new TextReader(new Prose(), memory());
    assertTrue(reader.read(entry, new Problems()).manuscript().isPresent());
    assertEquals(
        show(entry, nothing, leadingTo("")), show(entry, memory(), leadingTo("")), changed);
  }

  @Test
  void aTextWithAWarningWarnsInEveryRun() throws IOException {
    Entry entry = entry("Cut [it](javascript:alert).\n\n[^a]: unused\n");
    Problems first = new Problems();
    TextReader reader = new TextReader(new Prose(), memory());
    reader.read(entry, first);
    assertFalse(first.sorted().isEmpty());
    show(entry, memory(), leadingTo(""));

    Problems second = new Problems();
    new TextReader(new Prose(), memory()).read(entry, second);
    assertEquals(told(first), told(second));
  }

  private static List<String> told(Problems problems) {
    return problems.sorted().stream().map(Problem::toString).toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "a\0b\0c",
        "a\0w\0b\0c\0LINK",
        "a\0w\0b\0c\0LINK\0d\0e\0one\0two",
        "a\0w\0b\0c\0X\0d\0e\0001\0001"
      })
  void whatCannotBeReadBackIsNotKnown(String packed) {
    assertEquals(Optional.empty(), Text.unpacked("a.md", packed));
  }
}
