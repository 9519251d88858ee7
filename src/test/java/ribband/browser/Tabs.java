package ribband.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/** Tabs of one Chromium, driven a step at a time by {@code .ci/browser/watch.mjs}. */
final class Tabs implements AutoCloseable {
  /**
   * Where a reader is on a page.
   *
   * @param y pixels scrolled down
   * @param open folds that stand open
   * @param loads how often the page was loaded
   */
  record Place(int y, int open, int loads) {}

  private final Process driver;
  private final Writer steps;
  private final BufferedReader answers;

  Tabs() throws IOException {
    driver =
        new ProcessBuilder(
                Installed.node(),
                Installed.CHECKS.resolve("browser/watch.mjs").toString(),
                Installed.chromium())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    steps = driver.outputWriter(StandardCharsets.UTF_8);
    answers = driver.inputReader(StandardCharsets.UTF_8);
  }

  void open(String tab, Object url, int width, String theme) throws IOException {
    step(
        "open",
        "tab",
        tab,
        "url",
        url.toString(),
        "width",
        Integer.toString(width),
        "theme",
        theme);
  }

  void open(String tab, Object url) throws IOException {
    open(tab, url, 1280, "light");
  }

  void see(String tab, String words) throws IOException {
    step("see", "tab", tab, "words", words);
  }

  void miss(String tab, String words) throws IOException {
    step("miss", "tab", tab, "words", words);
  }

  void scroll(String tab, int percent) throws IOException {
    step("scroll", "tab", tab, "to", Integer.toString(percent));
  }

  void openWithoutScript(String tab, Object url) throws IOException {
    step("open", "tab", tab, "url", url.toString(), "script", "off");
  }

  void type(String tab, String words) throws IOException {
    step("type", "tab", tab, "words", words);
  }

  /**
   * @param expression of JavaScript
   * @return what it says of the page, as text
   */
  String tell(String tab, String expression) throws IOException {
    return step("tell", "tab", tab, "of", expression).get("told");
  }

  void press(String tab, String key) throws IOException {
    step("press", "tab", tab, "key", key);
  }

  void front(String tab) throws IOException {
    step("front", "tab", tab);
  }

  /** Fails where the page breaks a rule of access, does not fit or hides its focus. */
  void check(String tab) throws IOException {
    step("check", "tab", tab);
  }

  /** Fails where anything was asked of another place than the preview, or a script failed. */
  void staysHome() throws IOException {
    step("foreign");
  }

  /** Forgets what {@link #staysHome} would fail at, where a failure was meant. */
  void forget() throws IOException {
    step("forget");
  }

  Place place(String tab) throws IOException {
    Map<String, String> told = step("place", "tab", tab);
    return new Place(
        Integer.parseInt(told.get("y")),
        Integer.parseInt(told.get("open")),
        Integer.parseInt(told.get("loads")));
  }

  private Map<String, String> step(String what, String... arguments) throws IOException {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.writeStartObject();
      json.writeStringField("do", what);
      for (int i = 0; i < arguments.length; i += 2) {
        if (arguments[i].equals("width") || arguments[i].equals("to")) {
          json.writeNumberField(arguments[i], Integer.parseInt(arguments[i + 1]));
        } else {
          json.writeStringField(arguments[i], arguments[i + 1]);
        }
      }
      json.writeEndObject();
    }
    steps.write(text + "\n");
    steps.flush();
    String answer = answers.readLine();
    assertNotNull(answer, "the browser is gone at " + text);
    return told(answer, text.toString());
  }

  /** What an answer tells, by name; fails where it says what is wrong. */
  private static Map<String, String> told(String answer, String asked) throws IOException {
    Map<String, String> told = new TreeMap<>();
    try (JsonParser json = new JsonFactory().createParser(answer)) {
      json.nextToken();
      for (String name = json.nextFieldName(); name != null; name = json.nextFieldName()) {
        if (name.equals("wrong")) {
          assertEquals("", json.nextTextValue(), asked);
        } else {
          json.nextToken();
          told.put(name, json.getText());
        }
      }
    }
    return told;
  }

  @Override
  public void close() throws IOException {
    steps.close();
    driver.onExit().join();
  }
}
