package ribband.card;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ribband.journal.JournalFolder;
import ribband.measure.Unreadable;
import ribband.photo.Camera;

class CardTest {
  private static final Window WINDOW =
      Window.since(Optional.of(LocalDate.of(2026, 3, 12)), LocalDate.of(2026, 3, 14));

  private static final ZoneId ZONE = ZoneId.of("America/Chicago");

  private static final String TONIGHT = "2026:03:14 20:25:41";
  private static final String CUT = "is cut short; copy it again from the camera";

  @TempDir private Path folder;
  private Path card;
  private Path boat;
  private Path site;

  @BeforeEach
  void layThem() throws IOException {
    card = Files.createDirectory(folder.resolve("card")).toRealPath();
    boat = Files.createDirectory(folder.resolve("boat")).toRealPath();
    site = boat.resolve("site");
  }

  private Path shoot(String name, String taken) throws IOException {
    return shoot(name, 16, taken);
  }

  /** Pictures of different widths differ, and those of one width and time are the same. */
  private Path shoot(String name, int width, String taken) throws IOException {
    Camera.shoot(card.resolve(name), width, 12, 1, taken);
    return card.resolve(name);
  }

  private Path put(String name, byte[] bytes) throws IOException {
    Path file = card.resolve(name);
    Files.createDirectories(file.getParent());
    return Files.write(file, bytes);
  }

  private Path put(String name, String hex) throws IOException {
    return put(name, HexFormat.of().parseHex(hex));
  }

  private Picked pick() throws IOException {
    return pick(card, Set.of());
  }

  private Picked pick(Path from, Set<String> taken) throws IOException {
    try {
      return Card.pick(from, WINDOW, ZONE, JournalFolder.list(boat, site), site, taken);
    } catch (Unreadable e) {
      throw new AssertionError(e);
    }
  }

  private static List<String> names(Picked picked) {
    return picked.pictures().stream().map(Picture::name).toList();
  }

  private static List<String> told(Picked picked) {
    return picked.leftOut().stream()
        .map(left -> left.name() + " " + left.reason() + " " + left.detail())
        .map(String::strip)
        .toList();
  }

  @Test
  void emptyCardHoldsNothing() throws IOException {
    assertEquals(new Picked(List.of(), List.of()), pick());
  }

  @Test
  void picturesComeFromAllFoldersInTheOrderOfTheirTimes() throws IOException {
    Path second = shoot("DCIM/100BOAT/IMG_9998.JPG", "2026:03:14 20:00:01");
    Path third = shoot("DCIM/101BOAT/IMG_0002.JPG", "2026:03:14 21:00:00");
    Path first = shoot("DCIM/101BOAT/IMG_0003.JPG", "2026:03:13 19:00:00");
    assertEquals(
        new Picked(
            List.of(
                new Picture(first, "IMG_0003.JPG", LocalDateTime.of(2026, 3, 13, 19, 0, 0)),
                new Picture(second, "IMG_9998.JPG", LocalDateTime.of(2026, 3, 14, 20, 0, 1)),
                new Picture(third, "IMG_0002.JPG", LocalDateTime.of(2026, 3, 14, 21, 0, 0))),
            List.of()),
        pick());
  }

  @Test
  void picturesOfOneSecondStandAsTheCameraCountsThem() throws IOException {
    shoot("b/IMG_2.JPG", 16, TONIGHT);
    shoot("a/IMG_10.JPG", 17, TONIGHT);
    shoot("a/IMG_9.JPG", 18, TONIGHT);
    shoot("a10/IMG_9.JPG", 19, TONIGHT);
    shoot("a9/IMG_9.JPG", 20, TONIGHT);
    assertEquals(
        List.of("b/IMG_2.JPG", "a/IMG_9.JPG", "a9/IMG_9.JPG", "a10/IMG_9.JPG", "a/IMG_10.JPG"),
        pick().pictures().stream().map(p -> card.relativize(p.file()).toString()).toList());
    assertEquals(
        List.of("IMG_2.JPG", "IMG_9.JPG", "IMG_9-2.JPG", "IMG_9-3.JPG", "IMG_10.JPG"),
        names(pick()));
  }

  /** The night before ended at 4 in the morning there, which is 9 in Greenwich. */
  @Test
  void whatTellsNoTimeGoesByTheFilesOwnWhereThatIsBeforeTheWindow() throws IOException {
    put("IMG_1.HEIC", "0000001866747970686569630000000068656963");
    put("MVI_2.MP4", "00000018667479706d703432000000006d703432");
    shoot("IMG_3.JPG", "0000:00:00 00:00:00");
    put("notes.txt", "616263");
    FileTime last = FileTime.from(Instant.parse("2026-03-13T08:59:59Z"));
    FileTime first = FileTime.from(Instant.parse("2026-03-13T09:00:00Z"));
    for (String name : List.of("IMG_1.HEIC", "MVI_2.MP4", "IMG_3.JPG", "notes.txt")) {
      Files.setLastModifiedTime(card.resolve(name), last);
    }
    assertEquals(
        List.of(
            "IMG_1.HEIC OLDER 03:59 on 13 March 2026",
            "IMG_3.JPG OLDER 03:59 on 13 March 2026",
            "MVI_2.MP4 OLDER 03:59 on 13 March 2026",
            "notes.txt NO_PICTURE"),
        told(pick()));
    for (String name : List.of("IMG_1.HEIC", "MVI_2.MP4", "IMG_3.JPG", "notes.txt")) {
      Files.setLastModifiedTime(card.resolve(name), first);
    }
    assertEquals(
        List.of("IMG_1.HEIC HEIC", "IMG_3.JPG NO_TIME", "MVI_2.MP4 FILM", "notes.txt NO_PICTURE"),
        told(pick()));
  }

  @Test
  void namesOfTheEntrysFolderAreNotGivenAgain() throws IOException {
    shoot("IMG_1.JPG", TONIGHT);
    assertEquals(List.of("IMG_1-2.JPG"), names(pick(card, Set.of("img_1.jpg"))));
  }

  @ParameterizedTest
  @CsvSource({
    "2026:03:13 03:59:59, OLDER 03:59 on 13 March 2026",
    "2026:03:15 04:00:00, LATER 04:00 on 15 March 2026",
    "2000:01:01 00:00:00, OLDER 00:00 on 1 January 2000"
  })
  void picturesOfOtherNightsAreLeftOut(String taken, String why) throws IOException {
    shoot("a.jpg", taken);
    assertEquals(List.of(), names(pick()));
    assertEquals(List.of("a.jpg " + why), told(pick()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"2026:03:13 04:00:00", "2026:03:15 03:59:59"})
  void firstAndLastSecondOfTheWindowAreInIt(String taken) throws IOException {
    shoot("a.jpg", taken);
    assertEquals(List.of("a.jpg"), names(pick()));
  }

  @Test
  void whatIsNamedHeicAndNotKnownIsHeic() throws IOException {
    put("a.HEIC", new byte[5000]);
    put("b.heif", "00ff");
    put("c.heic", "keel".getBytes(US_ASCII));
    put("d.jpg", "00ff");
    assertEquals(
        List.of(
            "a.HEIC HEIC",
            "b.heif HEIC",
            "c.heic NO_PICTURE",
            "d.jpg DAMAGED is no picture known here; export it as JPEG or PNG"),
        told(pick()));
  }

  @Test
  void otherFilesAreLeftOutWithTheirReasons() throws IOException {
    put("a.jpg", "00000018667479706865696300000000");
    put("b.heic", "00000018667479706d69663100000000");
    put("c.avif", "00000018667479706176696600000000");
    put("d.cr3", "00000018667479706372782000000001");
    put("e.nef", "4d4d002a000000080000000000000000");
    put("f.bmp", "424d4600000000000000360000002800");
    put("g.mp4", "000000186674797069736f6d00000200");
    put("h.dat", "1a45dfa3a34286810142f7810142f281");
    put("i.MTS", "47400010000000000000000000000000");
    put("j.mov", new byte[0]);
    put("k.jpg", new byte[0]);
    put("l.jpg", new byte[5000]);
    put("m.jpg", "ffd8ffe000104a46494600010100000100010000ffd9");
    put("n.txt", "keel".getBytes(US_ASCII));
    put("o.pdf", "255044462d312e340a25e2e3cfd30a31");
    put("jpg", new byte[0]);
    put("p", new byte[3]);
    put("q.dat", new byte[0]);
    put("r.avi", "52494646240000004156492046464646");
    shoot("s.jpg", "0000:00:00 00:00:00");
    Path cut = shoot("t.jpg", TONIGHT);
    byte[] whole = Files.readAllBytes(cut);
    put("t.jpg", Arrays.copyOf(whole, whole.length / 2));
    put("u.jpg", "ffd8ffe000000000000000000000000000000000");
    Picked picked = pick();
    assertEquals(List.of(), names(picked));
    assertEquals(
        List.of(
            "a.jpg HEIC",
            "b.heic HEIC",
            "c.avif OTHER_FORMAT",
            "d.cr3 RAW",
            "e.nef RAW",
            "f.bmp OTHER_FORMAT",
            "g.mp4 FILM",
            "h.dat FILM",
            "i.MTS FILM",
            "j.mov FILM",
            "jpg NO_PICTURE",
            "k.jpg DAMAGED is empty; copy it again from the camera",
            "l.jpg DAMAGED is no picture known here; export it as JPEG or PNG",
            "m.jpg DAMAGED holds no picture; copy it again from the camera",
            "n.txt NO_PICTURE",
            "o.pdf NO_PICTURE",
            "p NO_PICTURE",
            "q.dat NO_PICTURE",
            "r.avi FILM",
            "s.jpg NO_TIME",
            "t.jpg DAMAGED " + CUT,
            "u.jpg DAMAGED is damaged; copy it again from the camera"),
        told(picked));
    assertEquals(card.resolve("a.jpg"), picked.leftOut().get(0).file());
  }

  @Test
  void leftOutStandByPathWithNumbersByValue() throws IOException {
    for (String name : List.of("10.txt", "9.txt", "b/1.txt", "a/1.txt")) {
      put(name, "keel".getBytes(US_ASCII));
    }
    assertEquals(
        List.of("9.txt", "10.txt", "a/1.txt", "b/1.txt"),
        pick().leftOut().stream().map(LeftOut::name).toList());
  }

  @Test
  void damagedPictureOfAnotherNightIsOnlyOlder() throws IOException {
    Path cut = shoot("a.jpg", "2025:03:14 20:25:41");
    byte[] whole = Files.readAllBytes(cut);
    put("a.jpg", Arrays.copyOf(whole, whole.length - 40));
    assertEquals(List.of("a.jpg OLDER 20:25 on 14 March 2025"), told(pick()));
  }

  @Test
  void hiddenAndSystemFilesAndSidecarsArePassedOver() throws IOException {
    for (String name :
        List.of(
            ".nomedia",
            ".DS_Store",
            "._IMG_1.JPG",
            ".trash/IMG_1.JPG",
            "Thumbs.db",
            "desktop.ini",
            "System Volume Information/WPSettings.dat",
            "$RECYCLE.BIN/a.dat",
            "MVI_1.THM",
            "IMG_1.AAE",
            "IMG_1.xmp")) {
      put(name, "keel".getBytes(US_ASCII));
    }
    shoot(".hidden/IMG_2.JPG", TONIGHT);
    assertEquals(new Picked(List.of(), List.of()), pick());
  }

  @Test
  void hiddenFolderThatWasNamedIsLookedInto() throws IOException {
    shoot(".phone/IMG_1.JPG", TONIGHT);
    assertEquals(List.of("IMG_1.JPG"), names(pick(card.resolve(".phone"), Set.of())));
  }

  @Test
  void contentThatTheJournalHasIsLeftOutUnderWhateverName() throws IOException {
    Path picture = shoot("IMG_1.JPG", TONIGHT);
    Path there = boat.resolve("2026/2026-03-14-keel/stem.jpeg");
    Files.createDirectories(there.getParent());
    Files.copy(picture, there);
    byte[] sameLength = Files.readAllBytes(picture);
    sameLength[sameLength.length - 1]++;
    Files.write(boat.resolve("2026/another.jpg"), sameLength);
    shoot("IMG_2.JPG", "2026:03:14 20:25:42");
    shoot("copy/IMG_1.JPG", TONIGHT);
    Picked picked = pick();
    assertEquals(List.of("IMG_2.JPG"), names(picked));
    assertEquals(
        List.of(
            "copy/IMG_1.JPG ALREADY_THERE 2026/2026-03-14-keel/stem.jpeg",
            "IMG_1.JPG ALREADY_THERE 2026/2026-03-14-keel/stem.jpeg"),
        told(picked));
  }

  @Test
  void fileThatLeftTheJournalIsNotInIt() throws Exception {
    Path picture = shoot("IMG_1.JPG", TONIGHT);
    Path there = Files.copy(picture, boat.resolve("stem.jpeg"));
    JournalFolder journal = JournalFolder.list(boat, site);
    Files.delete(there);
    Picked picked = Card.pick(card, WINDOW, ZONE, journal, site, Set.of());
    assertEquals(List.of("IMG_1.JPG"), names(picked));
  }

  @Test
  void samePictureTwiceIsTakenOnce() throws IOException {
    shoot("b/IMG_1.JPG", TONIGHT);
    shoot("a/IMG_2.JPG", TONIGHT);
    shoot("c/IMG_1.JPG", TONIGHT);
    Picked picked = pick();
    assertEquals(List.of("IMG_1.JPG"), names(picked));
    assertEquals(card.resolve("b/IMG_1.JPG"), picked.pictures().get(0).file());
    assertEquals(
        List.of(
            "a/IMG_2.JPG TWICE_ON_THE_CARD b/IMG_1.JPG",
            "c/IMG_1.JPG TWICE_ON_THE_CARD b/IMG_1.JPG"),
        told(picked));
  }

  @Test
  void folderInTheJournalHoldsWhatIsThereAlready() throws IOException {
    Camera.shoot(boat.resolve("in/IMG_1.JPG"), 16, 12, 1, TONIGHT);
    assertEquals(
        List.of("IMG_1.JPG ALREADY_THERE in/IMG_1.JPG"), told(pick(boat.resolve("in"), Set.of())));
  }

  @Test
  void ofAJournalTheSiteIsPassedOver() throws IOException {
    Camera.shoot(boat.resolve("2026/IMG_1.JPG"), 16, 12, 1, TONIGHT);
    Camera.shoot(site.resolve("a.jpg"), 17, 12, 1, TONIGHT);
    Camera.shoot(boat.resolve("old/b.jpg"), 18, 12, 1, TONIGHT);
    Files.createFile(boat.resolve("old").resolve(JournalFolder.SITE_FILES));
    Camera.shoot(boat.resolve(".ribband/c.jpg"), 19, 12, 1, TONIGHT);
    assertEquals(
        List.of("2026/IMG_1.JPG ALREADY_THERE 2026/IMG_1.JPG"), told(pick(boat, Set.of())));
  }

  @Test
  void siteThatIsNotThereYetMayHaveItsPlaceOnTheCard() throws Exception {
    shoot("IMG_1.JPG", TONIGHT);
    Path output = card.resolve("later/../site");
    Picked picked =
        Card.pick(card, WINDOW, ZONE, JournalFolder.list(boat, output), output, Set.of());
    assertEquals(List.of("IMG_1.JPG"), names(picked));
  }

  @Test
  void siteOnTheCardIsKnownThroughALink() throws Exception {
    shoot("site/a.jpg", TONIGHT);
    Path link = link(folder.resolve("link"), card.resolve("site"));
    Picked picked = Card.pick(card, WINDOW, ZONE, JournalFolder.list(boat, link), link, Set.of());
    assertEquals(new Picked(List.of(), List.of()), picked);
  }

  @Test
  void linkToAFileIsLookedAtAndOtherLinksAreTold() throws IOException {
    Path outside = folder.resolve("outside");
    Camera.shoot(outside.resolve("IMG_1.JPG"), 16, 12, 1, TONIGHT);
    link(card.resolve("a.jpg"), outside.resolve("IMG_1.JPG"));
    link(card.resolve("b"), outside);
    link(card.resolve("c.jpg"), outside.resolve("none.jpg"));
    link(card.resolve("d"), card);
    Picked picked = pick();
    assertEquals(List.of("a.jpg"), names(picked));
    assertEquals(
        List.of(
            "b UNREADABLE is a link to a folder; name that folder instead",
            "c.jpg UNREADABLE is a link that leads to no file",
            "d UNREADABLE is a link to a folder; name that folder instead"),
        told(picked));
  }

  @Test
  void cardMayBeNamedByALink() throws IOException {
    shoot("IMG_1.JPG", TONIGHT);
    Path link = link(folder.resolve("link"), card);
    assertEquals(pick(), pick(link, Set.of()));
  }

  private static Path link(Path link, Path target) throws IOException {
    try {
      return Files.createSymbolicLink(link, target);
    } catch (UnsupportedOperationException | FileSystemException e) {
      assumeTrue(false, "no links here");
      throw e;
    }
  }

  @Test
  @Timeout(20)
  void pipeIsNoPictureAndIsNotOpened() throws Exception {
    boolean made = false;
    try {
      String pipe = card.resolve("pipe.jpg").toString();
      made = new ProcessBuilder("mkfifo", pipe).start().waitFor() == 0;
    } catch (IOException e) {
      // No such program: told below.
    }
    assumeTrue(made, "no mkfifo here");
    assertEquals(List.of("pipe.jpg NO_PICTURE"), told(pick()));
  }

  @Test
  void fileThatTheDiskDoesNotGiveIsLeftOut() throws IOException {
    // The memory of a process begins with a page that nobody may read.
    Path unreadable = Path.of("/proc/self/mem");
    assumeTrue(Files.isRegularFile(unreadable), "no such file here");
    Path link = link(card.resolve("a.jpg"), unreadable);
    List<String> told = told(pick());
    Files.delete(link);
    assertEquals(
        List.of("a.jpg UNREADABLE cannot be read; try the card again, or another reader"), told);
  }

  @Test
  void fileAndFolderThatMayNotBeReadAreLeftOut() throws IOException {
    Path file = shoot("a.jpg", TONIGHT);
    Path inside = shoot("b/c.jpg", 17, TONIGHT).getParent();
    shoot("d.jpg", 18, TONIGHT);
    assumeTrue(Files.getFileStore(card).supportsFileAttributeView("posix"), "no modes here");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("---------"));
    Files.setPosixFilePermissions(inside, PosixFilePermissions.fromString("---------"));
    try {
      assumeFalse(Files.isReadable(file), "whoever may read all runs this");
      Picked picked = pick();
      assertEquals(List.of("d.jpg"), names(picked));
      String why = " UNREADABLE may not be read by you; ask for permission or copy it elsewhere";
      assertEquals(List.of("a.jpg" + why, "b" + why), told(picked));
    } finally {
      Files.setPosixFilePermissions(inside, PosixFilePermissions.fromString("rwx------"));
    }
  }

  @Test
  void whatFailsOnTheWayIsLeftOutAndOnlyTheCardItselfIsAFailure() throws IOException {
    CardFolder.Walk walk = new CardFolder.Walk(card, site);
    IOException denied = new AccessDeniedException("x");
    IOException broken = new IOException("broken");
    assertEquals("CONTINUE", walk.visitFileFailed(card.resolve("a"), denied).name());
    assertEquals("CONTINUE", walk.postVisitDirectory(card.resolve("b"), broken).name());
    assertEquals("CONTINUE", walk.postVisitDirectory(card.resolve("c"), null).name());
    assertEquals("CONTINUE", walk.visitFileFailed(card.resolve(".d"), denied).name());
    assertEquals(
        List.of(
            "a may not be read by you; ask for permission or copy it elsewhere",
            "b cannot be read; try the card again, or another reader"),
        walk.leftOut().stream().map(left -> left.name() + " " + left.detail()).toList());
    assertTrue(walk.leftOut().stream().allMatch(left -> left.reason() == Reason.UNREADABLE));
    assertEquals(denied, assertThrows(IOException.class, () -> walk.visitFileFailed(card, denied)));
    assertEquals(
        broken, assertThrows(IOException.class, () -> walk.postVisitDirectory(card, broken)));
  }

  @Test
  void cardThatIsNoFolderIsRefused() throws IOException {
    Path file = put("a.txt", "keel".getBytes(US_ASCII));
    assertEquals("is no folder; name the folder that holds the pictures", refusal(file));
    assertEquals(
        "is not there; name the folder that holds the pictures", refusal(card.resolve("none")));
  }

  private String refusal(Path from) throws IOException {
    JournalFolder journal = JournalFolder.list(boat, site);
    return assertThrows(
            Unreadable.class, () -> Card.pick(from, WINDOW, ZONE, journal, site, Set.of()))
        .getMessage();
  }

  @Test
  void nothingOnTheCardIsTouched() throws IOException {
    Path picture = shoot("IMG_1.JPG", TONIGHT);
    byte[] before = Files.readAllBytes(picture);
    pick();
    assertTrue(Arrays.equals(before, Files.readAllBytes(picture)));
    try (Stream<Path> files = Files.list(card)) {
      assertEquals(1, files.count());
    }
  }

  @Test
  void cardOfTwoThousandPicturesIsPickedInOrder() throws IOException {
    byte[] one = Files.readAllBytes(shoot("first.jpg", TONIGHT));
    Files.delete(card.resolve("first.jpg"));
    int at = new String(one, ISO_8859_1).indexOf(TONIGHT);
    for (int i = 0; i < 2000; i++) {
      LocalDateTime taken = LocalDateTime.of(2026, 3, 13, 3, 0).plusMinutes(i);
      String text = taken.toString().replace('-', ':').replace('T', ' ') + ":00";
      byte[] picture = one.clone();
      System.arraycopy(text.getBytes(US_ASCII), 0, picture, at, text.length());
      put("DCIM/" + (100 + i / 1000) + "/IMG_" + (2000 - i) + ".JPG", picture);
    }
    Picked picked = pick();
    // From 03:00 on: an hour is too early, and the window has two days.
    assertEquals(
        IntStream.range(60, 2000).mapToObj(i -> "IMG_" + (2000 - i) + ".JPG").toList(),
        names(picked));
    assertEquals(60, picked.leftOut().size());
    assertFalse(picked.leftOut().stream().anyMatch(left -> left.reason() != Reason.OLDER));
  }

  @Test
  void pictureWithoutAUsableNameIsRefused() {
    for (String name : List.of("", ".a.jpg", "a/b.jpg", "/a.jpg")) {
      LocalDateTime taken = LocalDateTime.of(2026, 3, 14, 20, 0);
      IllegalArgumentException thrown =
          assertThrows(
              IllegalArgumentException.class, () -> new Picture(Path.of("a"), name, taken));
      assertEquals("name " + name, thrown.getMessage());
    }
  }
}
