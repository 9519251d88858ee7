package ribband.prose;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Which targets become links. The spellings are from memory: ways known to slip past filters. */
class LinkPolicyTest {
  /** Spellings of script and data schemes that fit between pointed brackets in a link. */
  private static final List<String> SPELLINGS =
      List.of(
          "javascript:alert(1)",
          "JAVASCRIPT:alert(1)",
          "JaVaScRiPt:alert(1)",
          "java&#115;cript:alert(1)",
          "java&#x73;cript:alert(1)",
          "java&#x0073;cript:alert(1)",
          "&#106;avascript:alert(1)",
          "javascript&colon;alert(1)",
          "javascript&#58;alert(1)",
          "javascript&#x3A;alert(1)",
          "java&Tab;script:alert(1)",
          "java&NewLine;script:alert(1)",
          "java&#9;script:alert(1)",
          "java&#10;script:alert(1)",
          "java&#13;script:alert(1)",
          "&#1;javascript:alert(1)",
          "&#32;javascript:alert(1)",
          "&#x00A0;javascript:alert(1)",
          "&#x200B;javascript:alert(1)",
          "java&shy;script:alert(1)",
          "java&#x202E;script:alert(1)",
          "javascript\\:alert(1)",
          "javascript&#9;:alert(1)",
          "javascript:%61lert(1)",
          "javascript://web.example/%0Aalert(1)",
          "vbscript:msgbox(1)",
          "VbScRiPt:msgbox(1)",
          "vb&#115;cript:msgbox(1)",
          "data:text/html,<script>alert(1)</script>".replace("<", "%3C").replace(">", "%3E"),
          "DATA:text/html;base64,PHNjcmlwdD4=",
          "da&Tab;ta:image/svg+xml,x",
          "blob:https://web.example/1",
          "file:///etc/hosts",
          "view-source:javascript:alert(1)");

  /**
   * Where a target may stand.
   *
   * @param text the text, TARGET for the target
   * @param column where the link begins on the third line
   */
  private record Spot(String name, String text, int column) {}

  private static final List<Spot> LINKS =
      List.of(
          new Spot("inline", "x\n\nä [go](<TARGET>)\n", 3),
          new Spot("titled", "x\n\n**[go](<TARGET> \"t\")**\n", 3),
          new Spot("reference", "x\n\n- [go][r]\n\n[r]: <TARGET>\n", 3),
          new Spot("short reference", "x\n\n> [r]\n\n[r]: <TARGET>\n", 3),
          new Spot("table", "| x |\n|--|\n| [go](<TARGET>) |\n", 3),
          new Spot("footnote", "x[^n]\n\n[^n]: [go](<TARGET>)\n", 7));

  private static final List<Spot> PICTURES =
      List.of(
          new Spot("picture", "x\n\nä ![go](<TARGET>)\n", 3),
          new Spot("picture by reference", "x\n\n![go][r]\n\n[r]: <TARGET>\n", 1));

  static Stream<Arguments> links() {
    return LINKS.stream().flatMap(s -> SPELLINGS.stream().map(t -> Arguments.of(s, t)));
  }

  static Stream<Arguments> pictures() {
    return PICTURES.stream().flatMap(s -> SPELLINGS.stream().map(t -> Arguments.of(s, t)));
  }

  @ParameterizedTest
  @MethodSource("links")
  void foreignSchemeIsDroppedWithAWarningAtItsPlace(Spot spot, String target) {
    Read read = Read.of(spot.text().replace("TARGET", target));
    Document page = Jsoup.parseBodyFragment(read.html());
    assertHarmless(page);
    assertEquals(0, page.select("a[href]:not([href^=#fn])").size(), read.html());
    assertTrue(page.text().contains(spot.name().startsWith("short") ? "r" : "go"), read.html());
    assertEquals(1, read.problems().size(), read.problems().toString());
    String problem = read.problems().get(0);
    assertTrue(problem.startsWith("e.md:3:" + spot.column() + ": warning: link to \""), problem);
    assertTrue(
        problem.endsWith(
            "is dropped, its words stay; write http, https, mailto or a file of the journal"),
        problem);
    assertEquals(List.of(), read.manuscript().mentions());
  }

  @ParameterizedTest
  @MethodSource("pictures")
  void pictureOfAnySchemeIsAnErrorAtItsPlace(Spot spot, String target) {
    Read read = Read.of(spot.text().replace("TARGET", target));
    Document page = Jsoup.parseBodyFragment(read.html());
    assertHarmless(page);
    assertEquals(0, page.select("img, a").size(), read.html());
    assertEquals(1, read.problems().size(), read.problems().toString());
    String problem = read.problems().get(0);
    assertTrue(
        problem.startsWith("e.md:3:" + spot.column() + ": error: a picture from the net \""),
        problem);
    assertTrue(problem.endsWith("; save it in the journal and name the file"), problem);
  }

  /** Pointed links read no entities and no escapes; a target that is none there is plain text. */
  @ParameterizedTest
  @MethodSource("spellings")
  void pointedAndBareLinksAreHarmless(String target) {
    for (String text : List.of("x\n\n<" + target + ">\n", "x\n\ngo " + target + " on\n")) {
      Document page = Jsoup.parseBodyFragment(Read.of(text).html());
      assertHarmless(page);
      page.select("a[href]")
          .forEach(a -> assertTrue(a.attr("href").matches("https?://.*"), a.outerHtml()));
    }
  }

  static List<String> spellings() {
    return SPELLINGS;
  }

  @ParameterizedTest
  @CsvSource({
    "<javascript:alert(1)>, 1",
    "see <vbscript:x>, 5",
    "see ftp://files.example/x on, 5",
    "see javascript://web.example/x on, 5"
  })
  void pointedAndBareForeignLinksAreWarnings(String text, int column) {
    Read read = Read.of(text);
    assertEquals(0, Jsoup.parseBodyFragment(read.html()).select("a").size(), read.html());
    assertEquals(1, read.problems().size(), read.problems().toString());
    assertTrue(
        read.problems().get(0).startsWith("e.md:1:" + column + ": warning: link to \""),
        read.problems().toString());
  }

  @Test
  void whatIsNoJournalPathIsTold() {
    assertAll(
        () ->
            told(
                "[a](//host.example/x)",
                "warning: link to \"//host.example/x\" is dropped, its words stay; write https: before it"),
        () ->
            told(
                "[a](\\\\\\\\host/x)",
                "warning: link to \"\\\\host/x\" is dropped, its words stay; write https: before it"),
        () ->
            told(
                "[a](/x.md)",
                "warning: link to \"/x.md\" is dropped, its words stay; write the path as seen from this entry"),
        () ->
            told(
                "[a](C:\\boat\\x.md)",
                "warning: link to \"C:\\boat\\x.md\" is dropped, its words stay; write the path as seen from this entry"),
        () ->
            told(
                "[a](http://)",
                "warning: link to \"http://\" is dropped, its words stay; write the whole address"),
        () ->
            told(
                "[a](https:x)",
                "warning: link to \"https:x\" is dropped, its words stay; write the whole address"),
        () ->
            told(
                "[a](mailto:)",
                "warning: link to \"mailto:\" is dropped, its words stay; write the whole address"),
        () -> told("[a]()", "warning: a link without a target stays text; write where it leads"),
        () -> told("![a]()", "error: a picture without a file; name the file of the picture"),
        () -> told("![a](#x)", "error: a picture without a file; name the file of the picture"),
        () ->
            told(
                "![a](/x.jpg)",
                "error: a picture outside the journal \"/x.jpg\"; save it in the journal and name the file"),
        () ->
            told(
                "![a](//host.example/x.jpg)",
                "error: a picture from the net \"//host.example/x.jpg\"; save it in the journal and name the file"),
        () ->
            told(
                "![a](https://web.example/x.jpg)",
                "error: a picture from the net \"https://web.example/x.jpg\"; save it in the journal and name the file"));
  }

  private static void told(String text, String problem) {
    Read read = Read.of(text);
    assertEquals(List.of("e.md:1:1: " + problem), read.problems(), text);
    assertEquals("<p>a</p>\n", read.html(), text);
  }

  @Test
  void schemeHiddenByPercentSignsIsAFileName() {
    Read read = Read.of("[a](javascript%3Aalert(1))");
    assertEquals("javascript:alert(1)", read.manuscript().mentions().get(0).path());
    assertTrue(read.manuscript().mentions().get(0).isRelative());
  }

  /** No active element, no handler, no scheme but the three allowed. */
  static void assertHarmless(Document page) {
    Set<String> active =
        Set.of(
            "script",
            "style",
            "iframe",
            "object",
            "embed",
            "svg",
            "math",
            "form",
            "base",
            "link",
            "meta",
            "template",
            "video",
            "audio");
    for (Element element : page.body().getAllElements()) {
      assertTrue(!active.contains(element.normalName()), page.body().html());
      element
          .attributes()
          .forEach(
              attribute -> {
                String name = attribute.getKey().toLowerCase(Locale.ROOT);
                assertTrue(!name.startsWith("on") && !name.equals("style"), page.body().html());
                if (Set.of("href", "src", "srcset", "action").contains(name)) {
                  String scheme = Address.of(attribute.getValue()).scheme();
                  assertTrue(
                      Set.of("", "http", "https", "mailto").contains(scheme), page.body().html());
                }
              });
    }
  }
}
