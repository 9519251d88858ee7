package ribband.prose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.vladsch.flexmark.html.HtmlRenderer;
import com.vladsch.flexmark.parser.Parser;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The Markdown core, without our policy, against the examples of the CommonMark Spec 0.31.2 (see
 * the README beside the file).
 */
class CommonMarkSpecTest {
  private static final String SYMBOLS =
      "0.31 counts Unicode symbols as punctuation; the parser keeps to the older list";
  private static final String THREES =
      "the rule of three: the parser does not let runs pair whose lengths are both multiples of 3";
  private static final String UNDERLINED_DEFINITION =
      "a definition directly above an underline is read as part of the heading";
  private static final String SHALLOW =
      "an item indented by four columns stays an item of the list as long as it has a marker";
  private static final String COMMENTS =
      "0.31 takes comments by the rules of HTML; the parser by XML's";

  /** Examples on which the parser differs, and why. */
  private static final Map<Integer, String> DIFFERENT =
      Map.ofEntries(
          Map.entry(28, "a number of eight digits is read as a character reference"),
          Map.entry(146, "a tilde in the info string keeps a tilde fence from opening"),
          Map.entry(171, "textarea is not on the parser's list of raw blocks, added in 0.30"),
          Map.entry(215, UNDERLINED_DEFINITION),
          Map.entry(216, UNDERLINED_DEFINITION),
          Map.entry(312, SHALLOW),
          Map.entry(313, SHALLOW),
          Map.entry(354, SYMBOLS),
          Map.entry(416, THREES),
          Map.entry(417, THREES),
          Map.entry(540, "labels are compared in lower case, without case folding: ẞ is not SS"),
          Map.entry(625, COMMENTS),
          Map.entry(626, COMMENTS));

  private static final Parser PARSER = Markdown.commonMark();
  private static final HtmlRenderer RENDERER = Markdown.renderer();

  record Example(int number, String section, String markdown, String html) {
    @Override
    public String toString() {
      return number + " " + section;
    }
  }

  @ParameterizedTest
  @MethodSource("examples")
  void exampleAgreesOrIsListed(Example example) {
    String html = RENDERER.render(PARSER.parse(example.markdown()));
    if (DIFFERENT.containsKey(example.number())) {
      assertNotEquals(example.html(), html, "agrees now, take it off the list: " + example);
    } else {
      assertEquals(example.html(), html, example.markdown());
    }
  }

  @Test
  void everyExampleIsThere() throws IOException {
    List<Example> examples = examples();
    Set<Integer> numbers = examples.stream().map(Example::number).collect(Collectors.toSet());
    assertEquals(652, examples.size());
    assertEquals(652, numbers.size());
  }

  static List<Example> examples() throws IOException {
    List<Example> examples = new ArrayList<>();
    try (InputStream file =
        CommonMarkSpecTest.class.getResourceAsStream("commonmark-0.31.2.json")) {
      for (JsonNode node : new ObjectMapper().readTree(file)) {
        examples.add(
            new Example(
                node.get("number").asInt(),
                node.get("section").asText(),
                node.get("markdown").asText(),
                node.get("html").asText()));
      }
    }
    return examples;
  }
}
