package ribband.preview;

import java.util.Locale;
import java.util.Map;

/** The types of the files that a site may hold, by the endings of their names. */
final class ContentType {
  private static final Map<String, String> TYPES =
      Map.ofEntries(
          Map.entry("html", "text/html; charset=utf-8"),
          Map.entry("css", "text/css; charset=utf-8"),
          Map.entry("js", "text/javascript; charset=utf-8"),
          Map.entry("csv", "text/csv; charset=utf-8"),
          Map.entry("txt", "text/plain; charset=utf-8"),
          Map.entry("ics", "text/calendar; charset=utf-8"),
          Map.entry("xml", "application/xml"),
          Map.entry("json", "application/json"),
          Map.entry("svg", "image/svg+xml"),
          Map.entry("jpg", "image/jpeg"),
          Map.entry("png", "image/png"),
          Map.entry("gif", "image/gif"),
          Map.entry("webp", "image/webp"),
          Map.entry("woff2", "font/woff2"));

  private ContentType() {}

  /** The type of a file, for the browser to take as it is told. */
  static String of(String path) {
    String ending = path.substring(path.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    return TYPES.getOrDefault(ending, "application/octet-stream");
  }

  static boolean isPage(String path) {
    return path.endsWith(".html");
  }
}
