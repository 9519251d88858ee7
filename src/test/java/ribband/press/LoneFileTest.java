package ribband.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file that the builder named is the old one or the new one, whatever the disk does. */
class LoneFileTest {
  private static final byte[] NEW = "the new one".getBytes(StandardCharsets.UTF_8);

  /** No process has so high a number. */
  private static final String OF_A_KILLED_RUN = ".ribband-999999999999999.new";

  @TempDir Path folder;

  private Path old() throws IOException {
    return Files.writeString(folder.resolve("clamps.ics"), "the old one");
  }

  private TreeMap<String, String> there() throws IOException {
    TreeMap<String, String> there = new TreeMap<>();
    try (var files = Files.newDirectoryStream(folder)) {
      for (Path file : files) {
        there.put(file.getFileName().toString(), Files.readString(file));
      }
    }
    return there;
  }

  @Test
  void aFileIsWrittenAndWrittenOver() throws IOException {
    Path file = folder.resolve("clamps.ics");
    LoneFile.write(file, NEW);
    assertEquals("{clamps.ics=the new one}", there().toString());
    LoneFile.write(file, "another".getBytes(StandardCharsets.UTF_8));
    assertEquals("{clamps.ics=another}", there().toString());
  }

  /** The write, and the move; the removal of what waits comes after either. */
  @Test
  void afterAFailureTheOldFileStandsAndNothingElseIsLeft() throws IOException {
    Path file = old();
    for (int call = 1; call <= 2; call++) {
      FailingDisk disk = new FailingDisk(call, () -> {});
      String message =
          assertThrows(IOException.class, () -> LoneFile.write(file, NEW, disk)).getMessage();
      assertEquals("cannot write " + file + ": No space left on device", message);
      assertEquals("{clamps.ics=the old one}", there().toString());
    }
  }

  @Test
  void killedAtAnyCallTheOldFileStandsOrTheNewOne() throws IOException {
    FailingDisk unhurt = FailingDisk.never();
    LoneFile.write(folder.resolve("clamps.ics"), NEW, unhurt);
    assertEquals(3, unhurt.calls());
    for (int call = 1; call <= 3; call++) {
      Path file = old();
      boolean moved = call == 3;
      Runnable kill =
          () -> {
            throw new IllegalStateException("killed");
          };
      FailingDisk disk = new FailingDisk(call, kill);
      assertTrue(assertThrows(Exception.class, () -> LoneFile.write(file, NEW, disk)) != null);
      assertEquals(moved ? "the new one" : "the old one", there().get("clamps.ics"));
      LoneFile.write(file, NEW);
      assertEquals("{clamps.ics=the new one}", there().toString());
    }
  }

  @Test
  void aNewFileIsNeverWrittenOverAnother() throws IOException {
    Path file = old();
    Path original = Files.writeString(folder.resolve("original"), "a picture");
    assertThrows(FileAlreadyExistsException.class, () -> LoneFile.writeNew(file, NEW));
    assertThrows(FileAlreadyExistsException.class, () -> LoneFile.copyNew(original, file));
    Path dangling = folder.resolve("dangling");
    Files.createSymbolicLink(dangling, folder.resolve("nowhere"));
    assertThrows(FileAlreadyExistsException.class, () -> LoneFile.writeNew(dangling, NEW));
    Files.delete(dangling);
    LoneFile.writeNew(folder.resolve("new"), NEW);
    LoneFile.copyNew(original, folder.resolve("copied"));
    assertEquals(
        "{clamps.ics=the old one, copied=a picture, new=the new one, original=a picture}",
        there().toString());
  }

  /** The write, the move, the removal of what waited, the folder's names. */
  @Test
  void killedAtAnyCallANewFileIsWholeOrNotThere() throws IOException {
    Path file = folder.resolve("new");
    FailingDisk unhurt = FailingDisk.never();
    LoneFile.writeNew(file, NEW, unhurt);
    assertEquals(3, unhurt.calls());
    for (int call = 1; call <= 3; call++) {
      Files.deleteIfExists(file);
      FailingDisk disk = new FailingDisk(call, () -> {});
      String message =
          assertThrows(IOException.class, () -> LoneFile.writeNew(file, NEW, disk)).getMessage();
      assertEquals("cannot write " + file + ": No space left on device", message);
      assertEquals(call == 3 ? "{new=the new one}" : "{}", there().toString());
    }
  }

  @Test
  void anOriginalThatIsGoneIsTold() {
    Path original = folder.resolve("none");
    assertEquals(
        "cannot read " + original + ": " + original + " is not there",
        assertThrows(IOException.class, () -> LoneFile.copyNew(original, folder.resolve("copied")))
            .getMessage());
  }

  @Test
  void whatAKilledRunLeftGoesAndWhatARunAtWorkOrTheBuilderHasStays() throws IOException {
    long parent = ProcessHandle.current().parent().map(ProcessHandle::pid).orElse(1L);
    String atWork = ".ribband-" + parent + ".new";
    Files.writeString(folder.resolve(OF_A_KILLED_RUN), "half");
    Files.writeString(folder.resolve(atWork), "half");
    Files.writeString(folder.resolve(".ribband-mine.new"), "mine");
    LoneFile.write(folder.resolve("clamps.ics"), NEW);
    assertEquals(
        new TreeMap<>(
            java.util.Map.of(
                atWork, "half", ".ribband-mine.new", "mine", "clamps.ics", "the new one")),
        there());
  }

  @Test
  void whatAKilledRunLeftIsClearedWhereNothingIsWritten() throws IOException {
    Files.writeString(folder.resolve(OF_A_KILLED_RUN), "half");
    old();
    LoneFile.clear(folder);
    LoneFile.clear(folder.resolve("none"));
    assertEquals("{clamps.ics=the old one}", there().toString());
  }

  @Test
  void aFolderThatIsNotThereIsTold() {
    Path file = folder.resolve("none/clamps.ics");
    assertEquals(
        "cannot write " + file + ": " + file.getParent() + " is not there",
        assertThrows(IOException.class, () -> LoneFile.write(file, NEW)).getMessage());
  }
}
