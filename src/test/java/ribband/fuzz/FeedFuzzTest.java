package ribband.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import ribband.album.Album;
import ribband.album.AlbumReader;
import ribband.album.KeptPictures;
import ribband.feed.Feeds;
import ribband.feed.ReadFeeds;
import ribband.journal.Journal;
import ribband.journal.JournalFolder;
import ribband.journal.JournalReader;
import ribband.ledger.Ledger;
import ribband.memory.Memory;
import ribband.problem.Problem;
import ribband.problem.Problems;
import ribband.site.Site;

/**
 * Whatever an entry says, both feeds are valid by their published rules, say the same, and hold no
 * address that is not whole.
 */
class FeedFuzzTest {
  private static final String ENTRY = "2026-03-10-any.md";
  private static final LocalDate TODAY = LocalDate.of(2026, 4, 24);

  @TempDir static Path root;
  private static JournalFolder folder;

  @BeforeAll
  static void aJournalOfThreeEntries() throws IOException {
    write(
        JournalFolder.PROJECT,
        "name: Teal\ncurrency: USD\nsite: {address: 'https://example.org/teal/'}\n");
    write("2026-03-02.md", "---\nphase: planking\nhours: 3\n---\nTo [it](2026-03-10-any.md).\n");
    write(ENTRY, "");
    write("2026-04-02.md", "---\nphase: planking\nhours: 3\n---\nOn.\n");
    folder = JournalFolder.list(root, root.resolve("site"));
  }

  private static void write(String file, String text) throws IOException {
    Files.writeString(root.resolve(file), text, StandardCharsets.UTF_8);
  }

  @FuzzTest(maxDuration = "10s")
  void feed(byte[] bytes) throws IOException {
    Files.write(root.resolve(ENTRY), bytes);
    JournalReader.Read read = JournalReader.read(folder, TODAY);
    if (read.problems().stream().noneMatch(Problem::isError)) {
      Map<String, byte[]> files = feeds(read.journal());
      ReadFeeds feeds = ReadFeeds.of(files.get("feed.xml"), files.get("feed.json"));
      assertTrue(feeds.titles().contains("March 2026"), () -> feeds.titles().toString());
      assertEquals("2 April 2026", feeds.titles().get(0));
      for (ReadFeeds.Read item : feeds.items()) {
        Document html = Jsoup.parseBodyFragment(item.html());
        for (String address : html.select("a[href]").eachAttr("href")) {
          assertTrue(address.matches("(?i)(https?:|mailto:).*"), address);
        }
        assertEquals(List.of(), html.select("img, [id], [class], [style]").eachText());
      }
    }
  }

  private static Map<String, byte[]> feeds(Journal journal) throws IOException {
    Problems problems = new Problems();
    Memory none = Memory.load(root.resolve("none"), "1");
    Album album =
        AlbumReader.read(
            journal,
            Site.showing(journal),
            new KeptPictures(folder, none, Instant.EPOCH),
            none,
            problems);
    Map<String, byte[]> files = new HashMap<>();
    Feeds.write(album, Ledger.of(journal), Map.of(), "tool 1", files::put);
    return files;
  }
}
