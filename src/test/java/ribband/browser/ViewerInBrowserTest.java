package ribband.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory;
import ribband.whole.FullJournal;

/**
 * The picture viewer in Chromium, from disk and over HTTP: by mouse, by keyboard alone and by
 * finger; the browser's back, forward and reload; which print is fetched for which screen; axe.
 */
class ViewerInBrowserTest {
  private static final List<String> PAGES =
      List.of(
          "entries/2026-03-14-run.html",
          "entries/2026-03-15-one.html",
          "entries/2026-03-13-none.html",
          "months/2026-03.html");

  @TempDir private Path folder;
  @TempDir private Path scratch;
  private Path site;

  @BeforeEach
  void publish() throws IOException {
    Installed.node();
    Installed.chromium();
    InMemory command =
        new InMemory(folder)
            .with("project.yaml", "name: Teal\nphases: [{id: planking, title: Planking}]\n")
            .with("2026/2026-03-13-none.md", "---\nphase: planking\nhours: 1\n---\nNo picture.\n")
            .with(
                "2026/2026-03-14-run.md",
                """
                ---
                title: A run of pictures
                phase: planking
                hours: 2
                photos:
                  - {file: wide.jpg, caption: The first plank, alt: A plank on moulds, cover: true}
                  - {file: tall.jpg, alt: A stem}
                  - {file: panorama.jpg, caption: The whole shop}
                ---
                First the twist.

                ![The twist, close](inline.jpg)

                And once more.

                ![The twist, close](inline.jpg)
                """)
            .with("2026/2026-03-15-one.md", "---\nphase: planking\nhours: 1\n---\nOne picture.\n");
    picture("2026-03-14-run/wide.jpg", 1920, 1200);
    picture("2026-03-14-run/tall.jpg", 1000, 1500);
    picture("2026-03-14-run/panorama.jpg", 2000, 400);
    picture("2026-03-14-run/inline.jpg", 1000, 640);
    picture("2026-03-15-one/one.jpg", 1000, 640);
    InMemory.Run run = command.run("publish");
    assertEquals(0, run.code(), run.err());
    site = folder.resolve("site").toRealPath();
  }

  private void picture(String name, int width, int height) throws IOException {
    FullJournal.picture(folder.resolve("2026").resolve(name), width, height);
  }

  @Test
  void theViewerHoldsForEveryHand() throws IOException, InterruptedException {
    assertEquals(
        "",
        Look.atViewer(site, PAGES, scratch).stream()
            .map(f -> f.check() + " (" + f.view() + "): " + f.what())
            .collect(Collectors.joining("\n")));
  }

  /** Without the viewer all fails but what must hold without it. */
  @Test
  void faultsAreFound() throws IOException, InterruptedException {
    Files.writeString(site.resolve("assets/viewer.js"), "// Does nothing.\n");

    Set<String> wrong =
        Look.atViewer(site, PAGES, scratch).stream()
            .filter(finding -> finding.view().equals("disk"))
            .map(Look.Finding::check)
            .collect(Collectors.toCollection(TreeSet::new));

    assertEquals(
        """
        a click beside closes, one on the picture or the block does not
        a click opens, the keys go through, no end wraps
        a finger turns over, both ways, and draws down
        a lost picture is told in words, and the next is shown
        a page with one picture has no way on, one without any no viewer
        a picture is whole, in its shape, as fine as the screen, and moves nothing
        a reload shows the picture again, and back still closes
        axe finds nothing, and the focus is seen, in light and dark, narrow and wide
        back closes, forward opens, no dead entry stays
        paper has the page, not the viewer
        quick presses do what they say
        the first page's picture opens, and leads to its entry
        the keyboard alone opens, goes on and closes, and finds its place again
        the month shows each with the entry it belongs to
        the pictures before and after are fetched meanwhile
        two fingers zoom, and then one moves about
        """,
        String.join("\n", wrong) + "\n");
  }
}
