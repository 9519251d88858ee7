package ribband.whole;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;

/** A published site, as it lies on disk. */
final class Published {
  private final Path site;

  Published(Path site) {
    this.site = site;
  }

  Path path() {
    return site;
  }

  /** Every file, its path in the site. */
  static List<Path> filesOf(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).sorted().toList();
    }
  }

  List<String> paths() throws IOException {
    return filesOf(site).stream().map(file -> site.relativize(file).toString()).toList();
  }

  List<String> pages() throws IOException {
    return paths().stream().filter(path -> path.endsWith(".html")).toList();
  }

  Document page(String path) throws IOException {
    return Jsoup.parse(text(path));
  }

  String text(String path) throws IOException {
    return Files.readString(site.resolve(path), StandardCharsets.UTF_8);
  }

  boolean has(String path) {
    return Files.isRegularFile(site.resolve(path));
  }

  /** What each file holds, by its path. */
  Map<String, String> hashes() throws IOException {
    return hashes(site, List.of());
  }

  /** Hash, size and time of each file of a folder, but those under some names. */
  static Map<String, String> hashes(Path folder, List<String> leftOut) throws IOException {
    Map<String, String> hashes = new TreeMap<>();
    for (Path file : filesOf(folder)) {
      String path = folder.relativize(file).toString();
      if (leftOut.stream().noneMatch(path::startsWith)) {
        hashes.put(path, hash(Files.readAllBytes(file)));
      }
    }
    return hashes;
  }

  static Map<String, String> times(Path folder, List<String> leftOut) throws IOException {
    Map<String, String> times = new TreeMap<>();
    for (Path file : filesOf(folder)) {
      String path = folder.relativize(file).toString();
      if (leftOut.stream().noneMatch(path::startsWith)) {
        times.put(path, Files.getLastModifiedTime(file).toString());
      }
    }
    return times;
  }

  private static String hash(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The files whose bytes hold a text; the fonts, in which any letters may stand, left out. */
  List<String> filesWith(String planted) throws IOException {
    return filesOf(site).stream()
        .filter(file -> !file.endsWith("assets/fonts.css"))
        .filter(
            file -> {
              try {
                String bytes = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
                return bytes.contains(planted);
              } catch (IOException e) {
                throw new IllegalStateException(e);
              }
            })
        .map(file -> site.relativize(file).toString())
        .toList();
  }
}
