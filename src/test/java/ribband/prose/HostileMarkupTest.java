package ribband.prose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Markup that attacks a page, written down from memory of well-known attacks: shown, never run. */
class HostileMarkupTest {
  static final List<String> ATTACKS =
      List.of(
          "<script>alert(1)</script>",
          "<SCRIPT SRC=//host.example/x.js></SCRIPT>",
          "<scr<script>ipt>alert(1)</script>",
          "<script\n>alert(1)</script\n>",
          "<script/x>alert(1)</script>",
          "<<script>alert(1)//<</script>",
          "<img src=x onerror=alert(1)>",
          "<img src=\"javascript:alert(1)\">",
          "<img/src='x'/onerror='alert(1)'>",
          "<IMG \"\"\"><SCRIPT>alert(1)</SCRIPT>\">",
          "<svg onload=alert(1)>",
          "<svg><script>alert(1)</script></svg>",
          "<svg/onload=alert(1)//",
          "<svg><a xlink:href=\"javascript:alert(1)\"><text y=9>x</text></a></svg>",
          "<math><mi xlink:href=\"javascript:alert(1)\">x</mi></math>",
          "<body onload=alert(1)>",
          "<iframe src=\"javascript:alert(1)\"></iframe>",
          "<iframe srcdoc=\"<script>alert(1)</script>\"></iframe>",
          "<object data=\"data:text/html,<script>alert(1)</script>\"></object>",
          "<embed src=\"javascript:alert(1)\">",
          "<a href=\"javascript:alert(1)\">x</a>",
          "<a href=\"jav&#x0A;ascript:alert(1)\">x</a>",
          "<a onmouseover=\"alert(1)\">x</a>",
          "<form action=\"javascript:alert(1)\"><button>x</button></form>",
          "<button formaction=\"javascript:alert(1)\">x</button>",
          "<input autofocus onfocus=alert(1)>",
          "<details open ontoggle=alert(1)>",
          "<video><source onerror=alert(1)></video>",
          "<audio src=x onerror=alert(1)>",
          "<marquee onstart=alert(1)>",
          "<link rel=stylesheet href=\"//host.example/x.css\">",
          "<meta http-equiv=refresh content=\"0;url=javascript:alert(1)\">",
          "<base href=\"javascript:alert(1)//\">",
          "<style>@import '//host.example/x.css';</style>",
          "<div style=\"background:url(javascript:alert(1))\">x</div>",
          "<p style=\"width:expression(alert(1))\">x</p>",
          "<!--[if gte IE 4]><script>alert(1)</script><![endif]-->",
          "<!-- --!><script>alert(1)</script>",
          "<![CDATA[<script>alert(1)</script>]]>",
          "<?xml version=\"1.0\"?><script>alert(1)</script>",
          "</p></div><script>alert(1)</script>",
          "<noscript><p title=\"</noscript><img src=x onerror=alert(1)>\"></noscript>",
          "<template><script>alert(1)</script></template>",
          "<textarea></textarea><script>alert(1)</script>",
          "<title></title><script>alert(1)</script>",
          "<xmp><script>alert(1)</script></xmp>",
          "<table background=\"javascript:alert(1)\"><tr><td>x</td></tr></table>",
          "`<script>alert(1)</script>`",
          "[x](a.md \"onmouseover=alert(1)\")",
          "[x](a.md '\"><script>alert(1)</script>')",
          "[x](\"onmouseover=alert(1))",
          "[x](<a.md\" onclick=\"alert(1)>)",
          "![\"onerror=alert(1)](a.jpg)",
          "![x\\\" onerror=\\\"alert(1)](a.jpg)",
          "![<script>alert(1)</script>](a.jpg '<svg onload=alert(1)>')",
          "# <img src=x onerror=alert(1)>",
          "# x\" onclick=\"alert(1)",
          "x[^\"><script>alert(1)</script>]\n\n[^\"><script>alert(1)</script>]: y",
          "|<script>|\n|-|\n|alert(1)</script>|",
          "- [ ] <script>alert(1)</script>",
          "~~~ \"><script>alert(1)</script>\nx\n~~~",
          "&lt;script&gt;alert(1)&lt;/script&gt;",
          "&#60;script&#62;alert(1)&#60;/script&#62;",
          "\\<script>alert(1)\\</script>",
          "<https://web.example/\"onmouseover=alert(1)>",
          "https://web.example/\"onmouseover=alert(1)",
          "<a@b.example\"onclick=alert(1)>");

  static List<String> attacks() {
    return ATTACKS;
  }

  @ParameterizedTest
  @MethodSource("attacks")
  void isHarmlessAloneAndInsideWords(String attack) {
    for (String text : List.of(attack, "words " + attack + " words", "> - " + attack)) {
      Document page = Jsoup.parseBodyFragment(Read.of(text).html());
      LinkPolicyTest.assertHarmless(page);
    }
  }

  /** The second wall alone, the attacks given to it as markup. */
  @ParameterizedTest
  @MethodSource("attacks")
  void isHarmlessBehindTheSecondWallAlone(String attack) {
    LinkPolicyTest.assertHarmless(Jsoup.parseBodyFragment(new Wall().pass(attack)));
  }

  @Test
  void secondWallKeepsNoForeignIdClassOrRole() {
    assertEquals(
        "<p>a</p><h2>b</h2><div>c</div><a href=\"x.html\">d</a>",
        new Wall()
            .pass(
                "<p id=\"h-a\" class=\"x\">a</p><h2 id=\"constructor\">b</h2>"
                    + "<div role=\"alert\" tabindex=\"5\">c</div>"
                    + "<a href=\"x.html\" target=\"_blank\" rel=\"opener\">d</a>"));
  }

  @Test
  void secondWallLeavesNoComment() {
    assertFalse(new Wall().pass("<p>{{ a }} <!-- b --></p>").contains("<!--"));
  }
}
