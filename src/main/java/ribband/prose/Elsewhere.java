package ribband.prose;

import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.owasp.html.Handler;
import org.owasp.html.HtmlPolicyBuilder;
import org.owasp.html.HtmlSanitizer;
import org.owasp.html.HtmlStreamEventReceiver;
import org.owasp.html.HtmlStreamRenderer;
import org.owasp.html.PolicyFactory;

/**
 * HTML of one of our pages as it is read elsewhere: with whole addresses, and without what only the
 * page's own style and script know. Safe for many threads.
 */
public final class Elsewhere {
  private static final Pattern NUMBER = Pattern.compile("[0-9]{1,9}");

  private final PolicyFactory policy =
      new HtmlPolicyBuilder()
          .allowElements("p", "h2", "h3", "h4", "h5", "h6", "blockquote", "pre", "code", "hr", "br")
          .allowElements("ul", "ol", "li", "em", "strong", "del", "sup", "a", "div", "input")
          .allowElements("table", "thead", "tbody", "tr", "th", "td", "figure", "figcaption", "img")
          .allowUrlProtocols("http", "https", "mailto")
          .allowAttributes("href", "title")
          .onElements("a")
          .allowAttributes("start")
          .matching(NUMBER)
          .onElements("ol")
          .allowAttributes("src", "alt")
          .onElements("img")
          .allowAttributes("width", "height")
          .matching(NUMBER)
          .onElements("img")
          .allowAttributes("type", "checked")
          .onElements("input")
          .toFactory();

  /**
   * The same for readers elsewhere. A box of a task list becomes a sign: most readers show no
   * boxes.
   *
   * @param html a page's, or a part of it
   * @param page the page's whole address, to which relative ones are
   */
  public String html(String html, URI page) {
    StringBuilder out = new StringBuilder(html.length() + html.length() / 4);
    HtmlStreamEventReceiver renderer = HtmlStreamRenderer.create(out, Handler.DO_NOTHING);
    HtmlSanitizer.sanitize(html, policy.apply(new WholeTags(renderer, page)));
    // See Wall: no other comment leaves the sanitizer.
    return out.toString().replace("<!-- -->", "");
  }

  /** Passes tags on with whole addresses. */
  private static final class WholeTags implements HtmlStreamEventReceiver {
    private final HtmlStreamEventReceiver out;
    private final URI page;

    private WholeTags(HtmlStreamEventReceiver out, URI page) {
      this.out = out;
      this.page = page;
    }

    @Override
    public void openTag(String element, List<String> attributes) {
      if (element.equals("input")) {
        out.text(attributes.contains("checked") ? "☑" : "☐");
        return;
      }
      List<String> whole = new ArrayList<>(attributes);
      for (int i = 0; i < whole.size(); i += 2) {
        if (whole.get(i).equals("href") || whole.get(i).equals("src")) {
          whole.set(i + 1, whole(whole.get(i + 1)));
        }
      }
      out.openTag(element, whole);
    }

    @Override
    public void closeTag(String element) {
      out.closeTag(element);
    }

    @Override
    public void text(String text) {
      out.text(text);
    }

    @Override
    public void openDocument() {
      out.openDocument();
    }

    @Override
    public void closeDocument() {
      out.closeDocument();
    }

    private String whole(String address) {
      // RFC 3986, 5.2.2 by hand for this one: Java leaves out the page's own name before a bare #.
      if (address.startsWith("#")) {
        return page + address;
      }
      try {
        return page.resolve(address).toString();
      } catch (IllegalArgumentException e) {
        // An address of the builder's that only browsers understand; all of ours are sound.
        return address;
      }
    }
  }
}
