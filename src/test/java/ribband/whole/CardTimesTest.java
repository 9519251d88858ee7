package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.card.Card;
import ribband.card.Picked;
import ribband.card.Picture;
import ribband.card.Reason;
import ribband.card.Window;
import ribband.journal.JournalFolder;
import ribband.measure.Unreadable;
import ribband.photo.Camera;

/**
 * When pictures were taken, against ExifTool, which writes them and reads them: tag 0x9003 of EXIF
 * 2.32, 4.6.5.
 */
class CardTimesTest {
  private static final Pattern TAKEN =
      Pattern.compile(
          "\\[ExifIFD] +DateTimeOriginal +: (\\d+):(\\d\\d):(\\d\\d) (\\d\\d:\\d\\d:\\d\\d)");

  private static final Window EVER = new Window(LocalDateTime.MIN, LocalDateTime.MAX);

  @TempDir private Path folder;

  @BeforeAll
  static void needExifTool() {
    ExifTool.needed();
  }

  private static Path shoot(Path file, int width, String... tags) throws IOException {
    Camera.shoot(file, width, 12, 1, "2026:03:14 20:25:41");
    ExifTool.plant(file, List.of(tags));
    return file;
  }

  @Test
  void timesAreThoseThatExifToolReads() throws IOException, Unreadable {
    Path card = Files.createDirectory(folder.resolve("card")).toRealPath();
    Path boat = Files.createDirectory(folder.resolve("boat"));
    List<Path> timed = new ArrayList<>();
    for (int hour : new int[] {0, 3, 4, 12, 23}) {
      String taken = "2026:03:" + (10 + hour % 5) + (hour < 10 ? " 0" : " ") + hour + ":59:30";
      timed.add(shoot(card.resolve("a" + hour + ".jpg"), 16, "-EXIF:DateTimeOriginal=" + taken));
    }
    timed.add(
        shoot(
            card.resolve("big-endian.jpg"),
            17,
            "-all=",
            "-ExifByteOrder=MM",
            "-EXIF:DateTimeOriginal=2024:02:29 23:59:59",
            "-EXIF:SubSecTimeOriginal=870",
            "-EXIF:OffsetTimeOriginal=+13:00"));
    timed.add(
        shoot(
            card.resolve("behind-much-else.jpg"),
            18,
            "-XMP-dc:Description=" + "keel ".repeat(12_000),
            "-Comment=" + "stem ".repeat(12_000),
            "-EXIF:DateTimeOriginal=2026:03:01 01:02:03"));
    Path drawing = card.resolve("drawing.png");
    FullJournal.picture(drawing, 30, 20);
    ExifTool.plant(drawing, List.of("-EXIF:DateTimeOriginal=2026:03:02 04:05:06"));
    timed.add(drawing);
    Path lossy = card.resolve("lossy.webp");
    Files.copy(Path.of("src/test/resources/ribband/photo/lossy.webp"), lossy);
    ExifTool.plant(lossy, List.of("-EXIF:DateTimeOriginal=2026:03:03 07:08:09"));
    timed.add(lossy);
    Path untimed =
        shoot(
            card.resolve("untimed.jpg"),
            19,
            "-all=",
            "-EXIF:CreateDate=2026:03:14 20:25:41",
            "-EXIF:ModifyDate=2026:03:14 20:25:41");

    Picked picked =
        Card.pick(
            card,
            EVER,
            ZoneOffset.UTC,
            JournalFolder.list(boat, boat.resolve("site")),
            boat,
            Set.of());

    Map<String, LocalDateTime> found = new TreeMap<>();
    for (Picture picture : picked.pictures()) {
      found.put(picture.name(), picture.taken());
    }
    Map<String, LocalDateTime> read = new TreeMap<>();
    for (Path picture : timed) {
      read.put(picture.getFileName().toString(), read(picture));
    }
    assertEquals(9, read.size());
    assertEquals(read, found);
    assertEquals(1, picked.leftOut().size());
    assertEquals(untimed, picked.leftOut().get(0).file());
    assertEquals(Reason.NO_TIME, picked.leftOut().get(0).reason());
  }

  private static LocalDateTime read(Path picture) throws IOException {
    String dump = ExifTool.dump(picture);
    Matcher taken = TAKEN.matcher(dump);
    assertTrue(taken.find(), dump);
    return LocalDateTime.parse(
        taken.group(1) + "-" + taken.group(2) + "-" + taken.group(3) + "T" + taken.group(4));
  }
}
