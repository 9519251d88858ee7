package ribband.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
import java.util.concurrent.TimeUnit;

/** Opens pages in Chromium, all by one process of a script in {@code .ci/browser}. */
final class Look {
  /**
   * @param check what was looked at
   * @param view from disk or over HTTP, theme, width in CSS pixels, with script or without
   */
  record Finding(String check, String page, String view, String what) {}

  private static final int MINUTES = 10;

  private Look() {}

  /**
   * @param close those of the pages that are looked at on every screen; the others on two
   * @param scratch an empty folder beside the site
   */
  static List<Finding> at(Path site, List<String> pages, List<String> close, Path scratch)
      throws IOException, InterruptedException {
    return by("look.mjs", site, pages, close, scratch);
  }

  /**
   * What the hands of a reader find on pages with the viewer.
   *
   * @param scratch an empty folder beside the site
   */
  static List<Finding> atViewer(Path site, List<String> pages, Path scratch)
      throws IOException, InterruptedException {
    return by("viewer.mjs", site, pages, List.of(), scratch);
  }

  private static List<Finding> by(
      String script, Path site, List<String> pages, List<String> close, Path scratch)
      throws IOException, InterruptedException {
    String node = Installed.node();
    Path asked = Files.writeString(scratch.resolve("asked.json"), question(site, pages, close));
    Path answer = scratch.resolve("answer.json");
    Process look =
        new ProcessBuilder(node, Installed.CHECKS.resolve("browser").resolve(script).toString())
            .redirectInput(asked.toFile())
            .redirectOutput(answer.toFile())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    try {
      assertTrue(look.waitFor(MINUTES, TimeUnit.MINUTES), "the browser hangs");
      assertEquals(0, look.exitValue(), "the look itself failed");
    } finally {
      look.descendants().forEach(ProcessHandle::destroy);
      look.destroy();
    }
    return findings(Files.readString(answer, StandardCharsets.UTF_8));
  }

  private static String question(Path site, List<String> pages, List<String> close)
      throws IOException {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.writeStartObject();
      json.writeStringField("chromium", Installed.chromium());
      json.writeStringField("site", site.toRealPath().toString());
      paths(json, "pages", pages);
      paths(json, "close", close);
      json.writeEndObject();
    }
    return text.toString();
  }

  private static void paths(JsonGenerator json, String name, List<String> paths)
      throws IOException {
    json.writeArrayFieldStart(name);
    for (String path : paths) {
      json.writeString(path);
    }
    json.writeEndArray();
  }

  private static List<Finding> findings(String answer) throws IOException {
    List<Finding> findings = new ArrayList<>();
    try (JsonParser json = new JsonFactory().createParser(answer)) {
      assertEquals(JsonToken.START_ARRAY, json.nextToken());
      while (json.nextToken() == JsonToken.START_OBJECT) {
        findings.add(
            new Finding(
                text(json, "check"), text(json, "page"), text(json, "view"), text(json, "what")));
        assertEquals(JsonToken.END_OBJECT, json.nextToken());
      }
    }
    return findings;
  }

  private static String text(JsonParser json, String name) throws IOException {
    assertEquals(name, json.nextFieldName());
    return json.nextTextValue();
  }
}
