package ribband.prose;

import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a link's target points at, judged the way a browser reads it.
 *
 * @param text the target without white space, control and direction characters
 * @param scheme lower case, without the colon; empty where there is none
 */
record Address(Reach reach, String text, String scheme) {
  /** How far a target reaches. */
  enum Reach {
    /** No target at all. */
    NOWHERE,
    /** A heading of the same text. */
    HEADING,
    /** A path relative to the entry. */
    FILE,
    /** A whole http, https or mailto address. */
    WEB,
    /** Begins like a web address but names no host or no mail box. */
    BROKEN_WEB,
    /** Any other scheme. */
    FOREIGN,
    /** {@code //host/path}. */
    HOST,
    /** A path from a root or a drive. */
    ROOT
  }

  private static final Pattern SCHEME = Pattern.compile("^([A-Za-z][A-Za-z0-9+.-]*):");
  private static final Pattern UNSEEN = Pattern.compile("[\\s\\p{Z}\\p{Cc}\\p{Cf}]+");
  // RFC 3986: unreserved, reserved but for the brackets, and the percent sign.
  private static final String PLAIN = "-._~:/?#@!$&'()*+,;=%";

  static Address of(String target) {
    // Browsers strip tabs and line ends anywhere in an address and read \ as /.
    String text = UNSEEN.matcher(target).replaceAll("");
    String slashed = text.replace('\\', '/');
    Matcher scheme = SCHEME.matcher(text);
    if (text.isEmpty()) {
      return new Address(Reach.NOWHERE, text, "");
    }
    if (scheme.find()) {
      return withScheme(text, scheme.group(1).toLowerCase(Locale.ROOT));
    }
    if (text.startsWith("#")) {
      return new Address(Reach.HEADING, text, "");
    }
    if (slashed.startsWith("//")) {
      return new Address(Reach.HOST, text, "");
    }
    return new Address(slashed.startsWith("/") ? Reach.ROOT : Reach.FILE, text, "");
  }

  /** The address for an {@code href}: ASCII, every character that needs it percent-encoded. */
  String href() {
    return encoded(text);
  }

  private static Address withScheme(String text, String scheme) {
    return switch (scheme) {
      case "http", "https" ->
          new Address(namesHost(text) ? Reach.WEB : Reach.BROKEN_WEB, text, scheme);
      case "mailto" ->
          new Address(
              text.indexOf('@') > "mailto:".length() ? Reach.WEB : Reach.BROKEN_WEB, text, scheme);
      default -> new Address(scheme.length() == 1 ? Reach.ROOT : Reach.FOREIGN, text, scheme);
    };
  }

  private static boolean namesHost(String text) {
    try {
      String authority = new URI(encoded(text)).getRawAuthority();
      return authority != null
          && !authority.isEmpty()
          && !authority.startsWith(".")
          && !authority.contains("..");
    } catch (URISyntaxException broken) {
      return false;
    }
  }

  private static String encoded(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    StringBuilder out = new StringBuilder(bytes.length);
    for (int i = 0; i < bytes.length; i++) {
      int b = bytes[i] & 0xff;
      boolean loosePercent = b == '%' && !(isHex(bytes, i + 1) && isHex(bytes, i + 2));
      if (!loosePercent && b < 0x80 && (Character.isLetterOrDigit(b) || PLAIN.indexOf(b) >= 0)) {
        out.append((char) b);
      } else {
        out.append('%').append(hex(b >> 4)).append(hex(b & 15));
      }
    }
    return out.toString();
  }

  private static boolean isHex(byte[] bytes, int at) {
    return at < bytes.length && Character.digit(bytes[at], 16) >= 0;
  }

  private static char hex(int digit) {
    return "0123456789ABCDEF".charAt(digit);
  }
}
