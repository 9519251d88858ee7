package ribband.prose;

import java.util.regex.Pattern;
import org.owasp.html.HtmlPolicyBuilder;
import org.owasp.html.PolicyFactory;

/**
 * The second wall: lets through exactly the elements and attributes that our own rendering writes,
 * whatever slipped past the first. Safe for many threads.
 */
final class Wall {
  private static final Pattern ID = Pattern.compile("(?:h|fn|fnref)-[a-z0-9-]+");
  private static final Pattern NUMBER = Pattern.compile("[0-9]{1,9}");

  private final PolicyFactory policy =
      new HtmlPolicyBuilder()
          .allowElements("p", "h2", "h3", "h4", "h5", "h6", "blockquote", "pre", "code", "hr", "br")
          .allowElements("ul", "ol", "li", "em", "strong", "del", "sup", "a", "div", "input")
          .allowElements("table", "thead", "tbody", "tr", "th", "td", "figure", "figcaption", "img")
          .allowUrlProtocols("http", "https", "mailto")
          .allowAttributes("id")
          .matching(ID)
          .onElements("h2", "h3", "h4", "h5", "h6", "li", "sup")
          .allowAttributes("href", "title", "aria-label")
          .onElements("a")
          .allowAttributes("rel")
          .matching(true, "noopener")
          .onElements("a")
          .allowAttributes("class")
          .matching(true, "back")
          .onElements("a")
          .allowAttributes("class")
          .matching(true, "task")
          .onElements("li")
          .allowAttributes("class")
          .matching(true, "left", "center", "right")
          .onElements("th", "td")
          .allowAttributes("class")
          .matching(true, "table", "footnotes")
          .onElements("div")
          .allowAttributes("role")
          .matching(true, "region")
          .onElements("div")
          .allowAttributes("tabindex")
          .matching(true, "0")
          .onElements("div")
          .allowAttributes("aria-label")
          .onElements("div", "input")
          .allowAttributes("scope")
          .matching(true, "col")
          .onElements("th")
          .allowAttributes("start")
          .matching(NUMBER)
          .onElements("ol")
          .allowAttributes("type")
          .matching(true, "checkbox")
          .onElements("input")
          .allowAttributes("disabled", "checked")
          .onElements("input")
          .allowAttributes("src", "srcset", "sizes", "alt")
          .onElements("img")
          .allowAttributes("width", "height")
          .matching(NUMBER)
          .onElements("img")
          .allowAttributes("loading")
          .matching(true, "lazy")
          .onElements("img")
          .allowAttributes("decoding")
          .matching(true, "async")
          .onElements("img")
          .toFactory();

  String pass(String html) {
    // The sanitizer parts {{ with an empty comment for template engines that run in the browser; no
    // other comment leaves it.
    return policy.sanitize(html).replace("<!-- -->", "");
  }
}
