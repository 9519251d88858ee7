package ribband.feed;

/** Text as XML 1.0 can carry it. */
final class XmlText {
  private XmlText() {}

  /**
   * The text without the characters that XML 1.0 knows no way to write (section 2.2, Char), its
   * line ends as a reader of XML hears them (section 2.11).
   */
  static String of(String text) {
    StringBuilder allowed = new StringBuilder(text.length());
    text.replace("\r\n", "\n")
        .replace('\r', '\n')
        .codePoints()
        .filter(XmlText::isAllowed)
        .forEach(allowed::appendCodePoint);
    return allowed.toString();
  }

  private static boolean isAllowed(int c) {
    return c == '\t'
        || c == '\n'
        || c >= 0x20 && c <= 0xD7FF
        || c >= 0xE000 && c <= 0xFFFD
        || c >= 0x10000;
  }
}
