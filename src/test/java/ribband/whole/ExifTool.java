package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * An independent reader and writer of what cameras note in pictures. Where it is not installed its
 * tests are skipped with the reason; where {@code RIBBAND_METADATA_TESTS=required} is set they fail
 * instead.
 */
final class ExifTool {
  private ExifTool() {}

  static void needed() {
    try {
      run("-ver");
    } catch (IOException e) {
      String reason = "ExifTool is not installed; .ci/run does it";
      if ("required".equals(System.getenv("RIBBAND_METADATA_TESTS"))) {
        fail(reason + ", and here it is required");
      }
      assumeTrue(false, reason);
    }
  }

  /** Writes tags into a picture. */
  static void plant(Path picture, List<String> tags) throws IOException {
    String[] file = {"-q", "-overwrite_original", picture.toString()};
    run(Stream.concat(tags.stream(), Stream.of(file)).toArray(String[]::new));
  }

  /** All it finds in a file or a folder, values told in full, binary ones too. */
  static String dump(Path place) throws IOException {
    return run("-a", "-u", "-U", "-ee", "-G1", "-s", "-b", "-r", place.toString())
        + run("-a", "-u", "-U", "-ee", "-G1", "-s", "-r", place.toString());
  }

  /** The tags of each kind of picture in a folder, as group and name. */
  static Map<String, Set<String>> tagsByKind(Path folder) throws IOException {
    Map<String, Set<String>> tags = new TreeMap<>();
    String kind = "";
    for (String line :
        run("-a", "-u", "-U", "-ee", "-G1", "-s", "-r", "-t", folder.toString()).lines().toList()) {
      String[] cells = line.split("\t", 3);
      if (cells.length < 3 || cells[0].equals("ExifTool") || cells[0].equals("System")) {
        continue;
      }
      if (cells[1].equals("FileType")) {
        kind = cells[2];
      }
      tags.computeIfAbsent(kind, any -> new TreeSet<>()).add(cells[0] + " " + cells[1]);
    }
    return tags;
  }

  private static String run(String... arguments) throws IOException {
    List<String> command = Stream.concat(Stream.of("exiftool"), Stream.of(arguments)).toList();
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    try {
      assertEquals(0, process.waitFor(), said);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return said;
  }
}
