package ribband.documents;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import ribband.photo.Camera;

/** Fills a camera's card with the files that a document lists, each with the time it was taken. */
final class MemoryCard {
  private MemoryCard() {}

  /**
   * @param list a line a file: name, two spaces, time; no time for what is no picture
   */
  static void fill(Path card, String list) throws IOException {
    int width = 30;
    for (String line : list.split("\n")) {
      String[] file = line.split("  ");
      Path path = card.resolve("DCIM").resolve(file[0]);
      if (file[0].endsWith(".JPG")) {
        Camera.shoot(path, width++, 20, 1, file[1].replace('-', ':') + ":00");
      } else {
        Files.createDirectories(path.getParent());
        Files.write(path, HexFormat.of().parseHex(head(file[0])));
      }
    }
  }

  /** The boxes that such files begin with (ISO 14496-12, 4.3). */
  private static String head(String name) {
    return name.endsWith(".HEIC")
        ? "0000001866747970686569630000000068656963"
        : "00000018667479706d703432000000006d703432";
  }
}
