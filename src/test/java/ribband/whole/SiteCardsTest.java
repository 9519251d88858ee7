package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory;

/** The cards of a site's months: one each, drawn anew when what they show has changed. */
class SiteCardsTest {
  private static final String PROJECT = "name: Teal\ncurrency: EUR\nphases: [planking]\n";
  private static final String ADDRESS = "site: {address: 'https://example.org/teal/'}\n";

  @TempDir private Path folder;
  @TempDir private Path posts;

  @BeforeEach
  void write() throws IOException {
    new InMemory(folder)
        .with("project.yaml", PROJECT + ADDRESS)
        .with("2026-01-14-scarf.md", "---\nphase: planking\nhours: 3\n---\nA scarf.\n")
        .with("2026-02-03.md", "---\nphase: planking\nhours: 2\ncost: 10\n---\nA plank.\n");
    FullJournal.picture(folder.resolve("2026-01-14-scarf/scarf.png"), 1100, 700);
  }

  /** The name of each month's card, and the time it was written. */
  private Map<String, String> cards() throws IOException {
    new Builder(folder).publish();
    Map<String, String> cards = new TreeMap<>();
    Path hung = folder.resolve("site/cards");
    if (Files.isDirectory(hung)) {
      Published.times(hung, List.of())
          .forEach((name, time) -> cards.put(name.substring(0, 7), name + " " + time));
    }
    return cards;
  }

  private Map<String, String> bytes() throws IOException {
    return Published.hashes(folder.resolve("site/cards"), List.of());
  }

  private void change(String file, String text) throws IOException {
    Files.writeString(folder.resolve(file), text, StandardCharsets.UTF_8);
  }

  @Test
  void everyMonthHasOneOfTheSizeThatIsShared() throws IOException {
    assertEquals(List.of("2026-01", "2026-02"), List.copyOf(cards().keySet()));
    for (String name : bytes().keySet()) {
      BufferedImage card = ImageIO.read(folder.resolve("site/cards").resolve(name).toFile());
      assertEquals("1200 x 630", card.getWidth() + " x " + card.getHeight(), name);
    }
  }

  @Test
  void theOneOfAMonthThatChangedIsDrawnAnewAndTheOldOneGoes() throws IOException {
    Map<String, String> before = cards();
    assertEquals(before, cards());
    change("2026-02-03.md", "---\nphase: planking\nhours: 2:15\ncost: 10\n---\nA plank.\n");
    Map<String, String> after = cards();
    assertEquals(before.get("2026-01"), after.get("2026-01"));
    assertNotEquals(before.get("2026-02"), after.get("2026-02"));
    assertEquals(2, bytes().size());
  }

  @Test
  void wordsThatNoCardShowsDrawNone() throws IOException {
    Map<String, String> before = cards();
    change("2026-02-03.md", "---\nphase: planking\nhours: 2\ncost: 10\n---\nTwo planks.\n");
    assertEquals(before, cards());
  }

  /** Whichever run made the print, the card is the same to the byte. */
  @Test
  void aCardIsDrawnFromAPrintThatAnEarlierRunMade() throws IOException {
    cards();
    Map<String, String> fresh = bytes();
    change("project.yaml", PROJECT + "site: {address: none}\n");
    assertEquals(Map.of(), cards());
    change("project.yaml", PROJECT + ADDRESS);
    cards();
    assertEquals(fresh, bytes());
  }

  @Test
  void hiddenMoneyIsOnNone() throws IOException {
    change("project.yaml", PROJECT + ADDRESS.replace("}", ", show money: false}"));
    cards();
    Map<String, String> hidden = bytes();
    change("2026-02-03.md", "---\nphase: planking\nhours: 2\n---\nA plank.\n");
    cards();
    assertEquals(hidden, bytes());
    change("project.yaml", PROJECT + ADDRESS);
    cards();
    // Without an amount there is nothing to be hidden.
    assertEquals(hidden, bytes());
  }

  @Test
  void theOneThatIsMadeByHandIsTheSame() throws IOException {
    cards();
    Map<String, String> hung = bytes();
    InMemory.Run run =
        new Builder(folder).run("recap", "2026-01", "-q", "--card", "--into", posts.toString());
    assertEquals(0, run.code(), run.err());
    String made = Published.hashes(posts, List.of("teal-2026-01-frame")).values().toString();
    String name = hung.keySet().iterator().next();
    assertEquals("[" + hung.get(name) + "]", made, name);
  }
}
