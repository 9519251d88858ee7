package ribband.prose;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.net.URI;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ElsewhereTest {
  private static final URI PAGE = URI.create("https://example.org/boat/entries/2026-03-14.html");
  private final Elsewhere elsewhere = new Elsewhere();

  private String of(String html) {
    return elsewhere.html(html, PAGE);
  }

  @ParameterizedTest
  @CsvSource({
    "../index.html, https://example.org/boat/index.html",
    "../entries/a%20b.html#h-x, https://example.org/boat/entries/a%20b.html#h-x",
    "b.html, https://example.org/boat/entries/b.html",
    "#fn-1, https://example.org/boat/entries/2026-03-14.html#fn-1",
    "//example.net/x, https://example.net/x",
    "https://example.net/?a=b, https://example.net/?a=b",
    "mailto:me@example.org, mailto:me@example.org",
    // Only a browser makes something of it.
    "https://example.net/%zz, https://example.net/%zz"
  })
  void addressesBecomeWhole(String written, String whole) {
    String attribute = whole.replace("=", "&#61;").replace("@", "&#64;");
    assertEquals(
        "<p><a href=\"" + attribute + "\">x</a></p>",
        of("<p><a href=\"" + written + "\">x</a></p>"));
  }

  @Test
  void picturesKeepTheirSizeAndLoseWhatOnlyThePageKnows() {
    assertEquals(
        "<figure><a href=\"https://example.org/boat/pictures/l.jpg\"><img"
            + " src=\"https://example.org/boat/pictures/s.jpg\" width=\"9\" height=\"6\" alt=\"A &amp; b\" />"
            + "</a><figcaption>c</figcaption></figure>",
        of(
            "<figure><a href=\"../pictures/l.jpg\" class=\"large\"><img src=\"../pictures/s.jpg\""
                + " srcset=\"../pictures/s.jpg 9w\" sizes=\"1px\" width=\"9\" height=\"6\""
                + " loading=\"lazy\" decoding=\"async\" alt=\"A &amp; b\"></a>"
                + "<figcaption>c</figcaption></figure>"));
  }

  @Test
  void wordsThatLookLikeTagsStayWords() {
    for (String words :
        List.of(
            "<pre><code>src&#61;&#34;../x&#34; &lt;img src&#61;&#34;../x&#34;&gt;</code></pre>",
            "<p>]]&gt; &lt;a href&#61;&#34;../x&#34;&gt;</p>")) {
      assertEquals(words, of(words));
    }
  }

  @Test
  void boxesOfATaskListBecomeSigns() {
    assertEquals(
        "<ul><li>☑ done</li><li>☐ open</li></ul>",
        of(
            "<ul><li class=\"task\"><input type=\"checkbox\" disabled=\"disabled\""
                + " checked=\"checked\" aria-label=\"done\" /> done</li><li class=\"task\">"
                + "<input type=\"checkbox\" disabled=\"disabled\" /> open</li></ul>"));
  }

  @Test
  void namesStylesAndScriptsAreLeftOut() {
    assertEquals(
        "<h2>x</h2><div>y</div>",
        of(
            "<h2 id=\"h-x\">x</h2><div class=\"table\" style=\"color:red\" onclick=\"a()\">y</div>"
                + "<script>alert(1)</script>"));
  }

  @Test
  void bracesStay() {
    assertEquals("<p>{{ x }}</p>", of("<p>{{ x }}</p>"));
  }
}
