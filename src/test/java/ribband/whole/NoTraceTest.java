package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory;

/**
 * Two journals that differ only in what is hidden give the same site to the byte: so nothing of it
 * can be read, or worked out, from any file.
 */
class NoTraceTest {
  private static final String HIDDEN =
      FullJournal.PROJECT.replace("show money: true", "show money: false");

  private static final String BOUGHT =
      """
      ---
      phase: fairing
      hours: 1
      cost: 98765.43
      materials: {bought: [{item: bronze, cost: 1234.57, from: the foundry}, {item: lead, cost: 3}]}
      ---
      A dear night.
      """;

  private static final String PRIVATE =
      """
      ---
      phase: planking
      hours: 1:20
      cost: 10
      private: true
      materials: {used: {epoxy: 3 fl oz}, left: {ring nails: 7}}
      pieces: {strakes: {port: [2]}}
      done: [trim-ends]
      ---
      """;

  @TempDir private Path folder;
  @TempDir private Path other;

  @Test
  void hiddenAmountsChangeNoByte() throws IOException {
    Map<String, String> one = site(folder, HIDDEN, "2026/2026-05-20-dear.md", BOUGHT);
    Map<String, String> another =
        site(
            other,
            HIDDEN
                .replace("cost: 80}", "cost: 7654.32}")
                .replace("cost: 400}", "cost: 1}")
                .replace("{moulds: 61.20}", "{moulds: 8765.43, fairing: 5.05}")
                .replace("worth: 38.00", "worth: 6543.21"),
            "2026/2026-05-20-dear.md",
            BOUGHT.replace("98765.43", "-20.01").replace("1234.57", "-24.99"));

    assertEquals(one, another);
  }

  @Test
  void hiddenAmountsLeaveASiteAsIfThereWereNone() throws IOException {
    Map<String, String> one =
        site(
            folder,
            """
            name: Teal
            site: {address: 'https://example.org/teal/', show money: false}
            materials: {glue: {unit: ml, on hand: 100 ml}}
            """,
            "2026-05-20.md",
            spending(""));
    Map<String, String> another =
        site(
            other,
            """
            name: Teal
            currency: CHF
            site: {address: 'https://example.org/teal/', show money: false}
            carried: {cost: {planking: 12.35}}
            materials: {glue: {unit: ml, on hand: 100 ml, worth: 43.21}}
            """,
            "2026-05-20.md",
            spending("cost: 55.55\n"));

    assertEquals(one, another);
  }

  private static String spending(String cost) {
    return "---\nphase: planking\nhours: 2\n" + cost + "---\nCold.\n";
  }

  @Test
  void shownAmountsDoChangeIt() throws IOException {
    Map<String, String> one = site(folder, FullJournal.PROJECT, "2026/2026-05-20-dear.md", BOUGHT);
    Map<String, String> another =
        site(
            other,
            FullJournal.PROJECT,
            "2026/2026-05-20-dear.md",
            BOUGHT.replace("98765.43", "98765.44"));

    assertNotEquals(one, another);
  }

  @Test
  void whatAPrivateEntrySaysChangesNoByte() throws IOException {
    Map<String, String> one =
        site(folder, FullJournal.PROJECT, "2026/2026-05-20.md", PRIVATE + "Silent.\n");
    FullJournal.picture(other.resolve("2026/2026-05-20-zebra/stripes.png"), 900, 500);
    FullJournal.picture(other.resolve("2026/hoof.jpg"), 500, 900);
    Map<String, String> another =
        site(
            other,
            FullJournal.PROJECT,
            "2026/2026-05-20-zebra.md",
            """
            ---
            title: Zebra
            phase: planking
            hours: 1:20
            cost: 10
            private: true
            materials:
              used: {epoxy: 3 fl oz, zebra paint: 2 ml}
              left: {ring nails: 7}
              bought: [{item: stripes, cost: 4.04, from: the zebra, receipt: receipts/0314.txt}]
            pieces: {strakes: {port: [2]}}
            joints: [{name: Zebra joint, adhesive: epoxy, temperature: 51 F}]
            coats: [{what: Zebra coat, adhesive: epoxy}]
            todo: [{id: gallop, what: Zebra work, phase: fairing, hours: 5}]
            done: [trim-ends]
            lesson: Never paint a zebra.
            photos: [{file: stripes.png, caption: Stripes, alt: A zebra, cover: true}]
            ---
            # Zebras

            Of [the garboards](2026-03-14-garboards.md). ![hoof](hoof.jpg)
            """);

    assertEquals(one, another);
  }

  /** Within its month and its week: what a month or a forecast by weeks adds up is told. */
  @Test
  void theDayOfAPrivateNightChangesNoByte() throws IOException {
    String hidden = "---\nphase: planking\nhours: 1:20\nprivate: true\n---\nSilent.\n";

    assertEquals(
        site(folder, FullJournal.PROJECT, "2026/2026-05-19.md", hidden),
        site(other, FullJournal.PROJECT, "2026/2026-05-22.md", hidden));
  }

  /** One night later, so that the month before is told in the feeds. */
  private static Map<String, String> site(Path folder, String project, String file, String entry)
      throws IOException {
    new InMemory(folder).with("2026-06-01.md", "---\nphase: planking\nhours: 1\n---\nLater.\n");
    if (project.contains("Wigeon")) {
      FullJournal.write(folder);
    }
    new InMemory(folder).with("project.yaml", project).with(file, entry);
    Map<String, String> hashes = new Builder(folder).publish().hashes();
    assertTrue(hashes.keySet().containsAll(List.of("feed.xml", "feed.json")));
    return hashes;
  }
}
