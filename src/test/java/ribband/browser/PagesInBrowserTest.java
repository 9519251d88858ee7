package ribband.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory;
import ribband.whole.FullJournal;

/**
 * Every kind of page in Chromium: axe (WCAG 2.2 A and AA, and its good practice) in light and dark
 * at 320 and 1280 px, no request beyond the site, no sideways scroll, pictures that load, words
 * without script, print.
 */
class PagesInBrowserTest {
  private static final List<String> KINDS =
      List.of(
          "index.html",
          "entries/2026-03-14-garboards.html",
          "entries/2026-01-16.html",
          "entries/2026-05-01-fair.html",
          "months/2026-03.html",
          "months/2026-04.html",
          "phases/planking.html",
          "phases/fairing.html",
          "money.html",
          "records.html",
          "pictures.html");

  @TempDir private Path folder;

  @Test
  void everyKindOfPageHoldsInTheBrowser() throws IOException, InterruptedException {
    Installed.node();
    Installed.chromium();
    FullJournal.write(folder);
    assertEquals(0, new InMemory(folder).run("publish").code());

    assertEquals(List.of(), look(folder.resolve("site"), KINDS));
  }

  @Test
  void pagesOfTheSampleHoldInTheBrowser() throws IOException, InterruptedException {
    Installed.node();
    Installed.chromium();
    Path site = folder.resolve("sample");
    Path sample = Path.of("sample-journal").toAbsolutePath();
    InMemory.Run run =
        new InMemory(folder)
            .run("publish", sample.toString(), "-o", site.toString(), "--today", "2026-11-25");
    assertEquals(0, run.code(), run.err());

    assertEquals(List.of(), look(site, oneOfEachKind(site)));
  }

  @Test
  void aPageWithFaultsIsFound() throws IOException, InterruptedException {
    Installed.node();
    Installed.chromium();
    Files.writeString(
        folder.resolve("index.html"),
        """
        <!DOCTYPE html><html><head><title></title></head><body><main>
        <p style="width: 900px; color: #bbb; background: #fff">Pale and far too wide for any phone.</p>
        <img src="nothing.jpg" width="10" height="10"><script src="http://127.0.0.1:9/x.js"></script>
        </main></body></html>
        """);

    List<String> checks =
        look(folder, List.of("index.html")).stream()
            .map(finding -> finding.substring(0, finding.indexOf(' ')))
            .distinct()
            .sorted()
            .toList();

    assertEquals(List.of("access", "console", "pictures", "reflow", "requests"), checks);
  }

  private static List<String> oneOfEachKind(Path site) throws IOException {
    try (var files = Files.walk(site)) {
      Map<String, String> kinds = new TreeMap<>();
      files
          .filter(file -> file.toString().endsWith(".html"))
          .map(file -> site.relativize(file).toString())
          .sorted()
          .forEach(
              page ->
                  kinds.put(
                      page.contains("/") ? Path.of(page).getParent().toString() : page, page));
      return List.copyOf(kinds.values());
    }
  }

  private List<String> look(Path site, List<String> pages)
      throws IOException, InterruptedException {
    Path script = Installed.CHECKS.resolve("browser/look.mjs");
    Path asked = Files.writeString(Files.createTempFile("look", ".json"), question(site, pages));
    Path answer = Files.createTempFile("look", ".out");
    Process node =
        new ProcessBuilder(Installed.node(), script.toString())
            .redirectInput(asked.toFile())
            .redirectOutput(answer.toFile())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    assertEquals(0, node.waitFor(), "the look itself failed");
    return findings(Files.readString(answer, StandardCharsets.UTF_8));
  }

  private static String question(Path site, List<String> pages) throws IOException {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.writeStartObject();
      json.writeStringField("chromium", Installed.chromium());
      json.writeStringField("site", site.toRealPath().toString());
      json.writeArrayFieldStart("pages");
      for (String page : pages) {
        json.writeString(page);
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    return text.toString();
  }

  /** Each finding on one line, its check first. */
  private static List<String> findings(String answer) throws IOException {
    List<String> findings = new ArrayList<>();
    try (JsonParser json = new JsonFactory().createParser(answer)) {
      assertEquals(JsonToken.START_ARRAY, json.nextToken());
      while (json.nextToken() == JsonToken.START_OBJECT) {
        List<String> parts = new ArrayList<>();
        while (json.nextToken() != JsonToken.END_OBJECT) {
          json.nextToken();
          parts.add(json.getText());
        }
        findings.add(
            parts.stream().filter(part -> !part.isEmpty()).collect(Collectors.joining(" ")));
      }
    }
    return findings;
  }

  @Test
  void theNuCheckerFindsNoError() throws IOException, InterruptedException {
    String checker = Installed.nu();
    FullJournal.write(folder);
    assertEquals(0, new InMemory(folder).run("publish").code());

    assertEquals("", nu(checker, folder.resolve("site")));
  }

  @Test
  void theNuCheckerFindsAnError() throws IOException, InterruptedException {
    String checker = Installed.nu();
    Files.writeString(folder.resolve("x.html"), "<!DOCTYPE html><title>x</title><p><div></p>");

    String found = nu(checker, folder);

    assertFalse(found.isEmpty());
    assertTrue(found.contains("x.html"), found);
  }

  /** What it finds, less two properties of SVG 2 that its style sheets do not know yet. */
  private static String nu(String checker, Path site) throws IOException, InterruptedException {
    Path found = Files.createTempFile("nu", ".out");
    Process java =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-jar",
                checker,
                "--errors-only",
                "--skip-non-html",
                "--also-check-css",
                "--also-check-svg",
                "--filterpattern",
                ".*“(vector-effect|paint-order)”.*",
                site.toString())
            .redirectErrorStream(true)
            .redirectOutput(found.toFile())
            .start();
    java.waitFor();
    return Files.readString(found, StandardCharsets.UTF_8).strip();
  }
}
