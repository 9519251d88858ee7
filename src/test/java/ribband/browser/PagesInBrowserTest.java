package ribband.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Every kind of page in Chromium: axe (WCAG 2.2 A and AA, and its good practice) in light and dark
 * at 320 and 1280 px with all folds open, crosswise where a page is one of many; reflow, text
 * spacing, visible focus (WCAG 2.2, 1.4.10, 1.4.12, 2.4.7); the lettering of drawings; pictures
 * that load, fit and move nothing; no request beyond the site and no word in the console, from disk
 * and over HTTP; the same words without script; print.
 */
class PagesInBrowserTest {
  /** The others show the same kinds of pages with less on them. */
  private static final Set<Site> CLOSE = EnumSet.of(Site.FULL, Site.SAMPLE, Site.SAMPLE_PAPERS);

  @TempDir private Path folder;
  @TempDir private Path scratch;

  @ParameterizedTest
  @EnumSource
  void everyKindOfPageHolds(Site kind) throws IOException, InterruptedException {
    Installed.node();
    Installed.chromium();
    Path site = kind.publish(folder);
    List<String> kinds = Site.kinds(site);
    List<String> pages = kind == Site.FULL ? Site.pages(site) : kinds;
    List<String> close = CLOSE.contains(kind) ? kinds : List.of();

    assertEquals("", lines(Look.at(site, pages, close, scratch)));
  }

  @Test
  void faultsAreFound() throws IOException, InterruptedException {
    Installed.node();
    Installed.chromium();
    Files.writeString(
        folder.resolve("index.html"),
        """
        <!DOCTYPE html><html><head><title></title></head><body><main>
        <p style="width: 900px; color: #bbb; background: #fff">Pale and far too wide for any phone.</p>
        <p style="height: 1.2em; line-height: 1.2; overflow: hidden">Cut off as soon as it is spaced.</p>
        <p><a href="#x" style="outline: none">No focus</a></p>
        <img src="nothing.jpg" width="10" height="10"><script src="http://127.0.0.1:9/x.js"></script>
        <svg><text x="5" y="20">One on</text><text x="5" y="20">the other</text></svg>
        <script>
        document.querySelector('main').append('Only with script');
        requestAnimationFrame(() => setTimeout(() => { document.body.style.paddingTop = '200px'; }, 50));
        </script>
        </main></body></html>
        """);

    Set<String> checks =
        Look.at(folder, List.of("index.html"), List.of(), scratch).stream()
            .map(Look.Finding::check)
            .collect(Collectors.toCollection(TreeSet::new));

    assertEquals(
        Set.of(
            "access",
            "console",
            "focus",
            "lettering",
            "pictures",
            "print",
            "reflow",
            "requests",
            "script",
            "shift",
            "spacing"),
        checks);
  }

  private static String lines(List<Look.Finding> findings) {
    return findings.stream()
        .map(f -> f.page() + " (" + f.view() + "): " + f.check() + ": " + f.what())
        .collect(Collectors.joining("\n"));
  }
}
