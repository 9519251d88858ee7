package ribband.press;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;

/** What the disk refuses is told with what failed, where and why. */
class RealDiskTest {
  private final Disk disk = new RealDisk();

  @TempDir Path folder;
  private Path file;
  private Path missing;

  @BeforeEach
  void writeAFile() throws IOException {
    file = Files.writeString(folder.resolve("notes.txt"), "mine");
    missing = folder.resolve("none/notes.txt");
  }

  private static void assertTold(String message, Executable call) {
    assertEquals(message, assertThrows(IOException.class, call).getMessage());
  }

  @Test
  void aFileIsWrittenWholeOnceAndNeverOver() throws IOException {
    byte[] content = new byte[300_000];
    content[299_999] = 1;
    disk.write(folder.resolve("big"), content);
    assertArrayEquals(content, Files.readAllBytes(folder.resolve("big")));
    assertTold(
        "cannot write " + file + ": " + file + " is already there",
        () -> disk.write(file, new byte[] {1}));
    assertEquals("mine", Files.readString(file));
  }

  @Test
  void whatIsNotThereIsNamed() {
    assertTold(
        "cannot write " + missing + ": " + missing + " is not there",
        () -> disk.write(missing, new byte[] {1}));
    assertTold(
        "cannot write " + missing + ": " + missing + " is not there", () -> disk.force(missing));
    assertTold(
        "cannot put in place " + file + ": " + missing + " is not there",
        () -> disk.move(missing, file));
  }

  @Test
  void aFileInThePlaceOfAFolderIsNamed() {
    assertTold(
        "cannot make the folder " + file + ": " + file + " is already there",
        () -> disk.makeFolder(file));
    Path below = file.resolve("below");
    assertTold("cannot remove " + below + ": Not a directory", () -> disk.delete(below));
  }

  @Test
  void aFolderThatHoldsAnythingStays() {
    assertThrows(DirectoryNotEmptyException.class, () -> disk.delete(folder));
    assertEquals(true, Files.exists(file));
  }

  @Test
  void filesAndFoldersAreBroughtDown() throws IOException {
    disk.force(file);
    disk.force(folder);
    assertEquals("mine", Files.readString(file));
  }

  @Test
  void eachReasonIsSaidInPlainWords() {
    Path at = Path.of("boat/site");
    assertEquals(
        "cannot write boat/site: permission denied",
        RealDisk.named("cannot write", at, new AccessDeniedException("x")).getMessage());
    assertEquals(
        "cannot write boat/site: No space left on device",
        RealDisk.named(
                "cannot write", at, new FileSystemException("x", null, "No space left on device"))
            .getMessage());
    assertEquals(
        "cannot write boat/site: x",
        RealDisk.named("cannot write", at, new FileSystemException("x")).getMessage());
    assertEquals(
        "cannot write boat/site: Input/output error",
        RealDisk.named("cannot write", at, new IOException("Input/output error")).getMessage());
    assertEquals(
        "cannot write boat/site: IOException",
        RealDisk.named("cannot write", at, new IOException()).getMessage());
  }
}
