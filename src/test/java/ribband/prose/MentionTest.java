package ribband.prose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ribband.problem.Place;

/** What a text mentions, and where. */
class MentionTest {
  private static final Place ANYWHERE = Place.of("e.md");

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n"})
  void placesAreExactInEitherLineEnd(String end) {
    String text =
        String.join(
            end,
            "One [a](a.md) ä😀 [b](b.md)",
            "> - ![c](c.jpg) **[d]**",
            "",
            "\t  code [no](no.md)",
            "",
            "| x | [e](e.md) |",
            "|---|---|",
            "| ß | é ![f](f.jpg) |",
            "",
            "- [ ] <https://g.example>, www.h.example i@i.example[^n]",
            "",
            "  [j](j.md)",
            "",
            "[d]: d.md",
            "[^n]: x [k](k.md)");
    List<String> places =
        Read.of(text, 20).manuscript().mentions().stream()
            .map(m -> m.target() + " " + m.place())
            .toList();
    assertEquals(
        List.of(
            "a.md e.md:20:5",
            "b.md e.md:20:18",
            "c.jpg e.md:21:5",
            "d.md e.md:21:19",
            "e.md e.md:25:7",
            "f.jpg e.md:27:9",
            "https://g.example e.md:29:7",
            "http://www.h.example e.md:29:28",
            "mailto:i@i.example e.md:29:42",
            "j.md e.md:31:3",
            "k.md e.md:34:9"),
        places);
  }

  @Test
  void targetIsReadFromEscapesAndEntitiesWordsArePlain() {
    Mention mention =
        Read.of("[the *scarf* `x` &amp; y](a\\_b&amp;c%20d.md#The%20end)")
            .manuscript()
            .mentions()
            .get(0);
    assertEquals(
        new Mention(
            Mention.Kind.LINK,
            "a_b&c%20d.md#The%20end",
            "the scarf x & y",
            new Place("e.md", 1, 1)),
        mention);
  }

  @ParameterizedTest
  @CsvSource({
    "a.md, a.md, ''",
    "../2026/a%20b.md#x, ../2026/a b.md, x",
    "<a b.jpg>, a b.jpg, ''",
    "b%C3%A4r.jpg, bär.jpg, ''",
    "50%.jpg, 50%.jpg, ''",
    "a+b.jpg, a+b.jpg, ''",
    "a.md?x=1#y, a.md, y",
    "a%23b.md, a#b.md, ''",
    "#c, '', c",
    "bär.md#ä%20ö, bär.md, ä ö"
  })
  void pathAndFragmentAreDecoded(String written, String path, String fragment) {
    String target = written.replaceAll("[<>]", "");
    Mention mention = new Mention(Mention.Kind.LINK, target, "", ANYWHERE);
    assertEquals(path, mention.path());
    assertEquals(fragment, mention.fragment());
  }

  @Test
  void onlyPathsAreRelative() {
    for (String target : List.of("a.md", "../a.md", "./a", "2026-03-14: x.md", "a b.md")) {
      assertTrue(new Mention(Mention.Kind.LINK, target, "", ANYWHERE).isRelative(), target);
    }
    for (String target : List.of("#a", "/a", "//a/b", "http://a.example", "mailto:a@b", "c:\\a")) {
      assertFalse(new Mention(Mention.Kind.LINK, target, "", ANYWHERE).isRelative(), target);
    }
  }
}
