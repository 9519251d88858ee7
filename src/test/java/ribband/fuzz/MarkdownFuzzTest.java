package ribband.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import ribband.problem.Problems;
import ribband.prose.Body;
import ribband.prose.Manuscript;
import ribband.prose.Mention;
import ribband.prose.Print;
import ribband.prose.Prose;
import ribband.prose.Surroundings;

/** Any text becomes HTML that runs nothing, asks nobody and leads only where a boat log may. */
class MarkdownFuzzTest {
  private static final Prose PROSE = new Prose();
  private static final Set<String> ELEMENTS =
      Set.of(
          "p",
          "h2",
          "h3",
          "h4",
          "h5",
          "h6",
          "blockquote",
          "pre",
          "code",
          "hr",
          "br",
          "ul",
          "ol",
          "li",
          "em",
          "strong",
          "del",
          "sup",
          "a",
          "div",
          "input",
          "table",
          "thead",
          "tbody",
          "tr",
          "th",
          "td",
          "figure",
          "figcaption",
          "img");
  private static final Set<String> ADDRESSES = Set.of("href", "src");

  private static final Surroundings SITE =
      new Surroundings() {
        @Override
        public Optional<String> href(Mention link) {
          return Optional.of("e.html").filter(e -> !link.path().contains("gone"));
        }

        @Override
        public Optional<Print> print(Mention picture) {
          return Optional.of(new Print("s.jpg", "", "", "l.jpg", 48, 32, "", ""))
              .filter(e -> !picture.path().contains("gone"));
        }
      };

  @FuzzTest(maxDuration = "14s")
  void markdown(byte[] bytes) {
    String text = new String(bytes, StandardCharsets.UTF_8);
    Problems problems = new Problems();
    Manuscript manuscript = PROSE.read(new Body("e.md", 1, text), problems);
    problems.sorted().forEach(problem -> Lines.stand(problem, List.of("e.md"), bytes));
    String html = PROSE.html(manuscript, SITE);
    assertEquals(html, PROSE.html(manuscript, SITE));
    Document page = Jsoup.parseBodyFragment(html);
    for (Element element : page.body().getAllElements()) {
      if (element != page.body()) {
        isHarmless(element);
      }
    }
  }

  private static void isHarmless(Element element) {
    String told = element.outerHtml();
    assertTrue(ELEMENTS.contains(element.tagName()), told);
    for (Attribute attribute : element.attributes()) {
      assertFalse(attribute.getKey().startsWith("on"), told);
      assertFalse(attribute.getKey().equals("style"), told);
      if (ADDRESSES.contains(attribute.getKey())) {
        assertTrue(leadsWell(attribute.getValue()), told);
      }
    }
    assertTrue(!element.tagName().equals("img") || element.attr("src").equals("s.jpg"), told);
  }

  private static boolean leadsWell(String address) {
    String plain = address.toLowerCase(Locale.ROOT);
    return plain.startsWith("http://")
        || plain.startsWith("https://")
        || plain.startsWith("mailto:")
        || plain.startsWith("#")
        || Set.of("e.html", "l.jpg", "s.jpg").contains(plain)
        || plain.startsWith("e.html#");
  }
}
