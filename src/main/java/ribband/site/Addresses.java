package ribband.site;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.stream.Collectors;
import ribband.journal.Entry;
import ribband.photo.Darkroom;
import ribband.photo.PictureFacts;
import ribband.photo.PrintSize;

/** Where each page and file of the site stands: paths from its root, with slashes, not encoded. */
public final class Addresses {
  public static final String HOME = "index.html";
  static final String MONEY = "money.html";
  static final String MATERIALS = "materials.html";
  static final String AHEAD = "ahead.html";
  static final String RECORDS = "records.html";
  static final String LESSONS = "lessons.html";
  static final String PICTURES = "pictures.html";
  static final String SEARCH = "search.js";
  static final String MONTHS_CSV = "months.csv";
  static final String PHASES_CSV = "phases.csv";

  /** The Atom feed. */
  public static final String FEED_XML = "feed.xml";

  /** The JSON feed. */
  public static final String FEED_JSON = "feed.json";

  private Addresses() {}

  public static String entry(Entry entry) {
    return "entries/" + entry.address() + ".html";
  }

  public static String month(YearMonth month) {
    return "months/" + month + ".html";
  }

  static String phase(String id) {
    return "phases/" + safe(id) + ".html";
  }

  /** Where the lessons of a phase stand on their page; no other place there begins like it. */
  static String lessonsId(String phase) {
    return "phase-" + safe(phase);
  }

  static String lessons(String phase) {
    return LESSONS + "#" + lessonsId(phase);
  }

  /** Where a picture's print stands. */
  public static String print(PictureFacts facts, PrintSize size) {
    return "pictures/" + Darkroom.fileName(facts, size);
  }

  /**
   * Where a month's card stands.
   *
   * @param content names all that it shows: others elsewhere keep a card by its address
   */
  public static String card(YearMonth month, String content) {
    return "cards/" + month + "-" + content + ".png";
  }

  /**
   * Spaces have no place in an address that people type. Nothing else is changed, so that two
   * phases with two names have two addresses.
   */
  private static String safe(String id) {
    return Normalizer.normalize(id, Normalizer.Form.NFC).replaceAll("[ \\u00a0]+", "-");
  }

  /**
   * A link from one page to a path of the site.
   *
   * @param from the page's own path
   * @return relative and percent-encoded
   */
  public static String href(String from, String to) {
    StringBuilder href = new StringBuilder();
    from.chars().filter(c -> c == '/').forEach(slash -> href.append("../"));
    int hash = to.indexOf('#');
    String path = hash < 0 ? to : to.substring(0, hash);
    return href + (isPlain(path) ? path : encoded(path)) + (hash < 0 ? "" : to.substring(hash));
  }

  /** Most addresses are, and a page of pictures has thousands. */
  private static boolean isPlain(String path) {
    return path.chars()
        .allMatch(
            c ->
                (c >= 'a' && c <= 'z')
                    || (c >= '0' && c <= '9')
                    || c == '-'
                    || c == '.'
                    || c == '/');
  }

  private static String encoded(String path) {
    return Arrays.stream(path.split("/", -1))
        .map(part -> URLEncoder.encode(part, StandardCharsets.UTF_8).replace("+", "%20"))
        .collect(Collectors.joining("/"));
  }
}
