package ribband.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * What a phone on a slow line has to wait for, packed as a host packs it. The bounds are common
 * practice, no source.
 */
class WeightTest {
  private static final Path ASSETS = Path.of("site-template/assets");
  private static final int STYLES = 15 * 1024;
  private static final int VIEWER = 4 * 1024;
  private static final int SCRIPTS = 12 * 1024;
  private static final int SCRIPTS_AND_SEARCH = 32 * 1024;
  private static final int FONTS = 70 * 1024;
  private static final int PAGE = 30 * 1024;

  @TempDir private Path folder;

  @Test
  void stylesAndFontsAreLight() throws IOException {
    int fonts = packed(ASSETS.resolve("fonts.css"));
    int styles = 0;
    try (var sheets = Files.newDirectoryStream(ASSETS, "*.css")) {
      for (Path sheet : sheets) {
        styles += packed(sheet);
      }
    }
    assertTrue(styles - fonts <= STYLES, styles - fonts + " bytes of styles");
    assertTrue(fonts <= FONTS, fonts + " bytes of fonts");
    int viewer = packed(ASSETS.resolve("viewer.js"));
    assertTrue(viewer <= VIEWER, viewer + " bytes of viewer");
  }

  /** What each page runs, and what a reader waits for beside the words when he first searches. */
  @Test
  void scriptsAreLight() throws IOException {
    Set<String> ofSearch = Set.of("searcher.js", "minisearch.js");
    int scripts = 0;
    int search = 0;
    try (var files = Files.newDirectoryStream(ASSETS, "*.js")) {
      for (Path script : files) {
        if (ofSearch.contains(script.getFileName().toString())) {
          search += packed(script);
        } else {
          scripts += packed(script);
        }
      }
    }
    assertTrue(scripts <= SCRIPTS, scripts + " bytes of scripts");
    assertTrue(search > 0 && scripts + search <= SCRIPTS_AND_SEARCH, search + " bytes of search");
  }

  @ParameterizedTest
  @EnumSource
  void entriesAreLight(Site kind) throws IOException {
    Path site = kind.publish(folder);
    List<String> heavy = new ArrayList<>();
    for (String page : Site.pages(site)) {
      int bytes = packed(site.resolve(page));
      if (page.startsWith("entries/") && bytes > PAGE) {
        heavy.add(page + " " + bytes);
      }
    }
    assertEquals(List.of(), heavy);
  }

  private static int packed(Path file) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (GZIPOutputStream packing = new GZIPOutputStream(bytes)) {
      packing.write(Files.readAllBytes(file));
    }
    return bytes.size();
  }
}
