package ribband.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import ribband.cli.WatchRun;

/** The saves that the first week tells of; files and words are compared, and times are not. */
final class WatchedWeek {
  private WatchedWeek() {}

  static String run(Path yard, Path boat, String shown) throws Exception {
    Path entry = boat.resolve("2026/2026-03-13-planking.md");
    String first = Files.readString(entry).replace("title:", "title: Third strake up");
    try (WatchRun watch = new WatchRun(yard, boat.getFileName().toString())) {
      watch.published(1);
      WatchRun.save(entry, first + "Hung by eye, then by the batten.\n");
      watch.published(2);
      WatchRun.save(entry, first.replace("0:40", "0;40"));
      watch.said("the site stays as it is");
      WatchRun.save(entry, first + "Hung by eye, then by the batten, then again.\n");
      watch.published(3);
      String told = timeless(shown.substring(shown.indexOf('\n') + 1));
      for (String stream : new String[] {watch.out(), watch.err()}) {
        for (String line : timeless(stream).split("\n")) {
          assertTrue(told.contains(line + "\n"), line);
        }
      }
      assertEquals(told.lines().count(), lines(watch.out()) + lines(watch.err()));
    }
    return shown;
  }

  private static long lines(String stream) {
    return Stream.of(stream.split("\n")).count();
  }

  private static String timeless(String told) {
    return told.replaceAll("[0-9]{2}:[0-9]{2}:[0-9]{2}  ", "at  ")
        .replaceAll("in [0-9]+\\.[0-9] s", "in a while")
        .replaceAll(":[0-9]+/\n", ":PORT/\n");
  }
}
