package ribband.journal;

import java.net.IDN;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ribband.measure.Unreadable;

/** Reads the address of a site as a browser shows it. */
final class WebAddress {
  /** RFC 3986, without user, query and fragment: none of these belongs to a folder of pages. */
  private static final Pattern PARTS =
      Pattern.compile(
          "(?i)(https?)://([^\\s/?#@:\\[\\]]+|\\[[0-9a-f:.]+])" + "(:[0-9]{1,5})?(/[^?#]*)?");

  private static final Pattern PAGE = Pattern.compile("(?i)(.*/)[^/]*\\.(html?|php|xml)");

  private static final int LAST_PORT = 65_535;

  private WebAddress() {}

  /**
   * A site's address.
   *
   * @return ASCII alone: a host in other letters as RFC 3490 writes it, a path percent-encoded;
   *     ends in a slash
   */
  static URI read(String text) throws Unreadable {
    Matcher parts = PARTS.matcher(text);
    if (parts.matches()) {
      requireAFolder(text, parts);
      requireAPort(parts);
      try {
        URI uri = new URI(plain(parts));
        if (uri.getHost() != null) {
          return URI.create(uri.toASCIIString());
        }
      } catch (URISyntaxException | IllegalArgumentException e) {
        // told below, as any other address that is none
      }
    }
    throw new Unreadable(
        "is no address of a site",
        "write it in full, as https://example.org/boat/, or none where there shall be none");
  }

  private static void requireAFolder(String text, Matcher parts) throws Unreadable {
    Matcher page = PAGE.matcher(parts.group(4) == null ? "" : parts.group(4));
    if (page.matches()) {
      String folder = text.substring(0, parts.start(4)) + page.group(1);
      throw new Unreadable("is the address of one page", "write its folder's, " + folder);
    }
  }

  /** RFC 6335, 6: 16 bits, of which 0 names none. */
  private static void requireAPort(Matcher parts) throws Unreadable {
    String port = parts.group(3);
    if (port != null) {
      int number = Integer.parseInt(port.substring(1));
      if (number < 1 || number > LAST_PORT) {
        throw new Unreadable(
            "has port " + number + ", which is none", "write one from 1 to 65535, or leave it out");
      }
    }
  }

  private static String plain(Matcher parts) {
    String host = parts.group(2);
    String plainHost = host.startsWith("[") ? host : IDN.toASCII(host, IDN.USE_STD3_ASCII_RULES);
    String port = parts.group(3) == null ? "" : parts.group(3);
    String path = parts.group(4) == null ? "" : parts.group(4);
    return parts.group(1).toLowerCase(Locale.ROOT)
        + "://"
        + plainHost.toLowerCase(Locale.ROOT)
        + port
        + path
        + (path.endsWith("/") ? "" : "/");
  }
}
