package ribband.prose;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ribband.problem.Problems;

/** What a text becomes in an entry's page, whole. */
class EntryHtmlTest {
  private static void shows(String text, String html) {
    Read read = Read.of(text);
    assertEquals(html.strip(), read.html().strip(), text);
    assertEquals(List.of(), read.problems(), text);
  }

  @Test
  void paragraphsListsAndMarks() {
    shows(
        """
        Spread *thin*, **press**, ~~wait~~.
        Then `clamp  up`.

        - one
        - two

        3. three
        """,
        """
        <p>Spread <em>thin</em>, <strong>press</strong>, <del>wait</del>.
        Then <code>clamp  up</code>.</p>
        <ul><li>one</li><li>two</li></ul>
        <ol start="3"><li>three</li></ol>
        """);
  }

  @Test
  void headingsBeginAtTwoNeverSkipAndHaveIds() {
    shows(
        """
        ### The scarf
        # Für *alle*
        ###### The scarf
        ## Das Öl
        # constructor
        # 日本
        """,
        """
        <h2 id="h-the-scarf">The scarf</h2>
        <h2 id="h-fur-alle">Für <em>alle</em></h2>
        <h3 id="h-the-scarf-2">The scarf</h3>
        <h3 id="h-das-ol">Das Öl</h3>
        <h2 id="h-constructor">constructor</h2>
        <h2 id="h-section">日本</h2>
        """);
  }

  @Test
  void headingsStopAtSix() {
    shows(
        "# a\n## b\n### c\n#### d\n##### e\n###### f\n",
        """
        <h2 id="h-a">a</h2>
        <h3 id="h-b">b</h3>
        <h4 id="h-c">c</h4>
        <h5 id="h-d">d</h5>
        <h6 id="h-e">e</h6>
        <h6 id="h-f">f</h6>
        """);
  }

  @Test
  void emptyHeadingIsLeftOut() {
    shows("#\n\n## \n\nafter\n", "<p>after</p>");
  }

  @Test
  void headingLinksFindTheirHeading() {
    shows(
        "[a](#the-scarf) [b](#The%20Scarf) [c](#日本)\n\n# The scarf\n\n# 日本\n",
        """
        <p><a href="#h-the-scarf">a</a> <a href="#h-the-scarf">b</a> <a href="#h-section">c</a></p>
        <h2 id="h-the-scarf">The scarf</h2>
        <h2 id="h-section">日本</h2>
        """);
  }

  @Test
  void unknownHeadingIsAWarningAndWordsStay() {
    Read read = Read.of("See [there](#the-scraf).\n\n# The scarf\n");
    assertEquals("<p>See there.</p>\n<h2 id=\"h-the-scarf\">The scarf</h2>\n", read.html());
    assertEquals(
        List.of(
            "e.md:1:5: warning: no heading \"the-scraf\" in this text, the link's words stay;"
                + " did you mean \"the-scarf\"?"),
        read.problems());
  }

  @Test
  void linksToEntriesWebAndMail() {
    shows(
        """
        [scarf](2026-03-14-scarf.md "Last night"), [gone](gone.md), [up](../a%20b.md#x),
        [web](https://web.example/ä?a=1&b=2), <https://two.example>, <me@mail.example>, [ref].

        [ref]: HTTP://three.example
        """,
        """
        <p><a href="2026-03-14-scarf.html" title="Last night">scarf</a>, gone, <a href="../a%20b.html">up</a>,
        <a href="https://web.example/%C3%A4?a&#61;1&amp;b&#61;2" rel="noopener">web</a>, <a href="https://two.example" rel="noopener">https://two.example</a>, <a href="mailto:me&#64;mail.example">me&#64;mail.example</a>, <a href="HTTP://three.example">ref</a>.</p>
        """);
  }

  @Test
  void bareLinks() {
    shows(
        "See www.web.example/x, https://two.example/y_z. Or me@mail.example; not `www.no.example`.",
        """
        <p>See <a href="http://www.web.example/x" rel="noopener">www.web.example/x</a>, <a href="https://two.example/y_z" rel="noopener">https://two.example/y_z</a>. Or <a href="mailto:me&#64;mail.example">me&#64;mail.example</a>; not <code>www.no.example</code>.</p>
        """);
  }

  @Test
  void noLinkInALink() {
    shows(
        "[see www.two.example and ![pic](a.jpg)](https://web.example)",
        """
        <p><a href="https://web.example" rel="noopener">see www.two.example and <img src="s/a.jpg" width="48" height="32" loading="lazy" decoding="async" alt="pic" /></a></p>
        """);
  }

  @Test
  void linkWithoutWordsHasALabel() {
    shows("[](a.md)", "<p><a href=\"a.html\" aria-label=\"a.md\"></a></p>");
  }

  @Test
  void pictureAloneIsAFigure() {
    shows(
        "![A *clamped* scarf](scarf.jpg)\n\n![A stem](stem.jpg \"Dry fit\")\n",
        """
        <figure><a href="l/scarf.jpg"><img src="s/scarf.jpg" width="48" height="32" loading="lazy" decoding="async" alt="A clamped scarf" /></a><figcaption>A clamped scarf</figcaption></figure>
        <figure><a href="l/stem.jpg"><img src="s/stem.jpg" width="48" height="32" loading="lazy" decoding="async" alt="A stem" /></a><figcaption>Dry fit</figcaption></figure>
        """);
  }

  @Test
  void pictureWithoutWordsHasAnEmptyAltAndALabelledLink() {
    shows(
        "![](a.jpg)",
        """
        <figure><a href="l/a.jpg" aria-label="Larger picture"><img src="s/a.jpg" width="48" height="32" loading="lazy" decoding="async" alt="" /></a></figure>
        """);
  }

  @Test
  void pictureAmongWordsAndWithoutPrint() {
    shows(
        "See ![knee][k] and ![the gone one](gone.jpg).\n\n![gone too](gone.jpg)\n\n[k]: knee.jpg\n",
        """
        <p>See <a href="l/knee.jpg"><img src="s/knee.jpg" width="48" height="32" loading="lazy" decoding="async" alt="knee" /></a> and the gone one.</p>
        <p>gone too</p>
        """);
  }

  @Test
  void allOfAPrintReachesThePage() {
    Prose prose = new Prose();
    Manuscript text = prose.read(new Body("e.md", 1, "![words](a.jpg)"), new Problems());
    Print print =
        new Print(
            "../p/a-480.jpg",
            "../p/a-480.jpg 480w, ../p/a-960.jpg 960w",
            "(min-width: 40em) 38rem, 100vw",
            "../p/a-1600.jpg",
            480,
            320,
            "Alt \"given\"",
            "Not shown beside words");
    Surroundings site =
        new Surroundings() {
          @Override
          public Optional<String> href(Mention link) {
            return Optional.empty();
          }

          @Override
          public Optional<Print> print(Mention picture) {
            return Optional.of(print);
          }
        };
    assertEquals(
        """
        <figure><a href="../p/a-1600.jpg"><img src="../p/a-480.jpg" srcset="../p/a-480.jpg 480w , ../p/a-960.jpg 960w" sizes="(min-width: 40em) 38rem, 100vw" width="480" height="320" loading="lazy" decoding="async" alt="Alt &#34;given&#34;" /></a><figcaption>words</figcaption></figure>
        """,
        prose.html(text, site));
  }

  @Test
  void tablesScrollByKeyboardAndHeadTheirColumns() {
    shows(
        """
        | board | qty | |
        |:--|:-:|--:|
        | oak \\| ash | `2|3` | 1 | lost |
        | pine |

        a | b
        -|-
        """,
        """
        <div class="table" tabindex="0" role="region" aria-label="Table">
        <table><thead><tr><th scope="col" class="left">board</th><th scope="col" class="center">qty</th><td class="right"> </td></tr></thead><tbody><tr><td class="left">oak | ash</td><td class="center"><code>2|3</code></td><td class="right">1</td></tr><tr><td class="left">pine</td><td class="center"></td><td class="right"></td></tr></tbody></table>
        </div>
        <div class="table" tabindex="0" role="region" aria-label="Table 2">
        <table><thead><tr><th scope="col">a</th><th scope="col">b</th></tr></thead></table>
        </div>
        """);
  }

  @Test
  void taskListsSayWhatIsDone() {
    shows(
        "- [ ] bevel\n- [x] *glue*\n",
        """
        <ul><li class="task"><input type="checkbox" disabled="disabled" aria-label="not done" /> bevel</li><li class="task"><input type="checkbox" disabled="disabled" checked="checked" aria-label="done" /> <em>glue</em></li></ul>
        """);
  }

  @Test
  void looseTaskKeepsItsBoxBesideItsWords() {
    shows(
        "- [X] glue\n\n  wait\n",
        """
        <ul><li class="task">
        <p><input type="checkbox" disabled="disabled" checked="checked" aria-label="done" /> glue</p>
        <p>wait</p>
        </li></ul>
        """);
  }

  @Test
  void footnotesStandBelowInOrderOfUse() {
    shows(
        """
        One[^b] two[^a] one again[^b] none[^c].

        [^a]: Two.
        [^b]: One, see [it](x.md).
        """,
        """
        <p>One<sup id="fnref-1"><a href="#fn-1" aria-label="Footnote 1">1</a></sup> two<sup id="fnref-2"><a href="#fn-2" aria-label="Footnote 2">2</a></sup> one again<sup id="fnref-1-2"><a href="#fn-1" aria-label="Footnote 1">1</a></sup> none[^c].</p>
        <div class="footnotes">
        <ol><li id="fn-1">
        <p>One, see <a href="x.html">it</a>.</p>
        <a href="#fnref-1" class="back" aria-label="Back to the text, note 1">↩</a>
        <a href="#fnref-1-2" class="back" aria-label="Back to the text, note 1, use 2">↩</a></li><li id="fn-2">
        <p>Two.</p>
        <a href="#fnref-2" class="back" aria-label="Back to the text, note 2">↩</a></li></ol>
        </div>
        """);
  }

  @Test
  void unusedFootnoteIsAWarning() {
    Read read = Read.of("Text.\n\n[^a]: Never told.\n");
    assertEquals("<p>Text.</p>\n", read.html());
    assertEquals(
        List.of("e.md:3:1: warning: footnote \"[^a]\" is not shown; refer to it in the text"),
        read.problems());
  }

  @Test
  void rawHtmlIsShownAsText() {
    shows(
        """
        a <b onclick="x">b</b> <!-- c --> <?php d ?> &amp; &lt;i&gt;

        <div>
        *block*
        </div>

        <!-- comment -->
        """,
        """
        <p>a &lt;b onclick&#61;&#34;x&#34;&gt;b&lt;/b&gt; &lt;!-- c --&gt; &lt;?php d ?&gt; &amp; &lt;i&gt;</p>
        <p>&lt;div&gt;
        *block*
        &lt;/div&gt;</p>
        <p>&lt;!-- comment --&gt;</p>
        """);
  }

  @Test
  void codeBlocksKeepTheirText() {
    shows(
        "```sh onclick=x\na <b> {{ c }}\n```\n\n    d\te\n",
        "<pre><code>a &lt;b&gt; {{ c }}\n</code></pre>\n<pre><code>d\te\n</code></pre>\n");
  }

  @Test
  void templateMarksAreData() {
    shows(
        "{{ title }} {% include \"x\" %} {# y #} `{{ z }}`",
        "<p>{{ title }} {% include &#34;x&#34; %} {# y #} <code>{{ z }}</code></p>");
  }

  @Test
  void sameTextSameHtmlInBothLineEnds() {
    String text =
        "# A\n\nb  \nc\\\nd\n\n- e\n- [ ] f\n\n|g|h|\n|-|-|\n|i|j|\n\n```\nk\nl\n```\n\n<div>\nm\n</div>\n"
            + "\n`n\no` [p\nq](r.md) [^s]\n\n[^s]: t\n    u\n\n![v](w.jpg)\n";
    Read lf = Read.of(text);
    Read crlf = Read.of(text.replace("\n", "\r\n"));
    assertEquals(lf.html(), crlf.html());
    assertEquals(lf.manuscript().mentions(), crlf.manuscript().mentions());
    assertEquals(lf.manuscript().words(), crlf.manuscript().words());
    assertEquals(lf.html(), Read.of(text).html());
  }

  @Test
  void manyThreadsShareOneReader() {
    String text = "# A\n\n[b](c.md)[^d] ![e](f.jpg)\n\n|g|\n|-|\n|h|\n\n- [ ] i\n\n[^d]: j\n";
    String alone = Read.of(text).html();
    List<String> together =
        IntStream.range(0, 400).parallel().mapToObj(i -> Read.of(text).html()).distinct().toList();
    assertEquals(List.of(alone), together);
  }
}
