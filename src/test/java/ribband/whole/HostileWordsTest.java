package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory;

/** Whatever a builder types, in any field, is words on the page: no template and no markup. */
class HostileWordsTest {
  private static final List<String> FIELDS =
      List.of(
          "name",
          "what",
          "phase",
          "title",
          "item",
          "seller",
          "material",
          "joint",
          "coat",
          "job",
          "lesson",
          "caption",
          "alt",
          "text",
          "about",
          "glue");

  private static final String ATTACK =
      "{{ frame.boat }}{% include 'x' %}{# y #}</title></script><script>alert(1)</script>"
          + "<img src=x onerror=alert(2)>\" onmouseover=\"alert(3)\" x='&amp;";

  /** Of names that figures are kept under. */
  private static final Set<String> SHORT_FIELDS = Set.of("material", "glue");

  private static final String SHORT_ATTACK = "{{ 1+1 }}{% y %}<i x=\"1\">'&amp;";

  @TempDir private Path folder;
  private Published site;

  /** The attack in single quotes of YAML, with the field's name before it. */
  private static String in(String field) {
    return "'" + words(field).replace("'", "''") + "'";
  }

  private static String words(String field) {
    return "f-" + field + (SHORT_FIELDS.contains(field) ? SHORT_ATTACK : ATTACK);
  }

  @BeforeEach
  void publish() throws IOException {
    new InMemory(folder)
        .with(
            "project.yaml",
            String.join(
                "\n",
                "name: " + in("name"),
                "what: " + in("what"),
                "currency: USD",
                "site: {about: about.md}",
                "phases: [{id: a, title: " + in("phase") + "}]",
                "adhesives: {" + in("glue") + ": {pot life: 20 min}}",
                ""))
        .with("about.md", words("about") + "\n")
        .with(
            "{{d}}<i>/2026-01-01-{{x}}{% y %}<b onclick='z'>\"&.md",
            String.join(
                "\n",
                "---",
                "title: " + in("title"),
                "phase: a",
                "hours: 1",
                "materials:",
                "  used: {" + in("material") + ": 3 ml}",
                "  bought: [{item: " + in("item") + ", cost: 2, from: " + in("seller") + "}]",
                "joints: [{name: " + in("joint") + ", adhesive: " + in("glue") + "}]",
                "coats: [{what: " + in("coat") + "}]",
                "todo: [{id: j, what: " + in("job") + "}]",
                "lesson: " + in("lesson"),
                "photos: [{file: \"{{p}}<i>.png\", caption: "
                    + in("caption")
                    + ", alt: "
                    + in("alt")
                    + "}]",
                "---",
                words("text"),
                ""));
    FullJournal.picture(folder.resolve("{{p}}<i>.png"), 300, 200);
    site = new Builder(folder).publish();
  }

  @Test
  void everyFieldIsShownAsItIsTyped() throws IOException {
    StringBuilder all = new StringBuilder();
    for (String name : site.pages()) {
      Document page = site.page(name);
      all.append(page.text()).append('\n');
      page.select("img").forEach(image -> all.append(image.attr("alt")).append('\n'));
    }
    List<String> missing = new ArrayList<>();
    for (String field : FIELDS) {
      // Markdown reads its own marks in a text; what is a tag there is words nevertheless.
      String expected = field.equals("text") || field.equals("about") ? "f-" + field : words(field);
      String folded = all.toString().toLowerCase(Locale.ROOT);
      if (!folded.contains(expected.toLowerCase(Locale.ROOT))) {
        missing.add(field);
      }
    }
    assertEquals(List.of(), missing);
  }

  @Test
  void noPageGetsAnElementOrAttributeFromIt() throws IOException {
    Set<String> found = new TreeSet<>();
    int pages = 0;
    for (String name : site.pages()) {
      for (Element element : site.page(name).getAllElements()) {
        boolean ours = element.attr("src").matches("(\\.\\./)?assets/[a-z]+\\.js");
        if (!ours && Set.of("script", "b", "i", "iframe", "style").contains(element.tagName())) {
          found.add(name + " " + element.tagName());
        }
        for (Attribute attribute : element.attributes()) {
          if (attribute.getKey().matches("on.*|style|x")) {
            boolean drawn = attribute.getKey().equals("x") && element.closest("svg") != null;
            found.add(drawn ? "" : name + " " + element.tagName() + " " + attribute.getKey());
          }
        }
        if (element.tagName().equals("img") && !element.attr("src").contains("pictures/")) {
          found.add(name + " " + element);
        }
      }
      pages++;
    }
    found.remove("");
    assertEquals(Set.of(), found);
    assertEquals(10, pages, "one page of each kind");
  }
}
