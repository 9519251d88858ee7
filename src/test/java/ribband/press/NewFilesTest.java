package ribband.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each of many new files is there whole or not, whatever the disk does. */
class NewFilesTest {
  private static final byte[] NEW = "a new one".getBytes(StandardCharsets.UTF_8);
  private static final List<String> NAMES = List.of("2026/03/a.md", "2026/03/b.md", "2027/c.md");

  @TempDir Path folder;

  private TreeMap<String, String> there() throws IOException {
    TreeMap<String, String> there = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        there.put(folder.relativize(file).toString(), Files.readString(file));
      }
    }
    return there;
  }

  private void write(Disk disk) throws IOException {
    try (NewFiles files = new NewFiles(disk)) {
      for (String name : NAMES) {
        files.write(folder.resolve(name), NEW);
      }
    }
  }

  @Test
  void theFilesAndTheirFoldersAreThere() throws IOException {
    try (NewFiles files = new NewFiles()) {
      for (String name : NAMES) {
        files.write(folder.resolve(name), NEW);
      }
    }
    assertEquals(
        "{2026/03/a.md=a new one, 2026/03/b.md=a new one, 2027/c.md=a new one}",
        there().toString());
  }

  /** Every folder that got a name is brought down, once, after the last file. */
  @Test
  void theNamesOfAllAreBroughtDownAtTheEnd() throws IOException {
    List<String> forced = new ArrayList<>();
    List<String> atFirst = new ArrayList<>();
    FailingDisk disk =
        new FailingDisk(0, () -> {}) {
          @Override
          public void force(Path path) throws IOException {
            if (forced.isEmpty()) {
              atFirst.addAll(there().keySet());
            }
            forced.add(folder.relativize(path).toString());
          }
        };
    write(disk);
    assertEquals(NAMES, atFirst);
    assertEquals(List.of("", "2026", "2026/03", "2027"), forced);
    forced.clear();
    try (NewFiles files = new NewFiles(disk)) {
      files.write(folder.resolve("2027/d.md"), NEW);
    }
    assertEquals(List.of("2027"), forced);
  }

  @Test
  void killedAtAnyCallEachFileIsWholeOrNotThere() throws IOException {
    FailingDisk unhurt = FailingDisk.never();
    write(unhurt);
    // Three folders made, three files written and moved, four folders brought down.
    assertEquals(13, unhurt.calls());
    for (int call = 1; call <= 13; call++) {
      for (String name : NAMES) {
        Files.deleteIfExists(folder.resolve(name));
      }
      Files.deleteIfExists(folder.resolve("2026/03"));
      Files.deleteIfExists(folder.resolve("2026"));
      Files.deleteIfExists(folder.resolve("2027"));
      List<String> killed = new ArrayList<>();
      FailingDisk disk =
          new FailingDisk(
              call,
              () -> {
                throw new IllegalStateException("killed");
              });
      try {
        write(disk);
      } catch (IllegalStateException e) {
        killed.add(e.getMessage());
      }
      assertEquals(List.of("killed"), killed);
      there()
          .forEach(
              (name, text) ->
                  assertTrue(name.endsWith(".new") || text.equals("a new one"), name + text));
      assertEquals(call > 9, there().keySet().containsAll(NAMES));
      // As the next run does, which clears what the killed one left.
      try (NewFiles files = new NewFiles(FailingDisk.never())) {
        for (String name : NAMES) {
          if (!Files.exists(folder.resolve(name))) {
            files.write(folder.resolve(name), NEW);
          }
        }
      }
      assertEquals(NAMES, List.copyOf(there().keySet()));
    }
  }

  @Test
  void aFileThatIsThereIsLeftAndThoseBeforeItStay() throws IOException {
    Files.createDirectories(folder.resolve("2026/03"));
    Path there = Files.writeString(folder.resolve("2026/03/b.md"), "the builder's");
    assertEquals(
        there.toString(),
        assertThrows(FileAlreadyExistsException.class, () -> write(new RealDisk())).getFile());
    assertEquals("{2026/03/a.md=a new one, 2026/03/b.md=the builder's}", there().toString());
  }

  @Test
  void aFullDiskIsToldByTheFile() throws IOException {
    Path file = folder.resolve("2026/03/a.md");
    // The calls before are the two folders.
    FailingDisk disk = new FailingDisk(3, () -> {});
    assertEquals(
        "cannot write " + file + ": No space left on device",
        assertThrows(IOException.class, () -> write(disk)).getMessage());
    assertEquals("{}", there().toString());
  }

  @Test
  void aFileInTheWayOfAFolderIsTold() throws IOException {
    Path inTheWay = Files.writeString(folder.resolve("2026"), "the builder's");
    assertEquals(
        "cannot make the folder " + inTheWay + ": " + inTheWay + " is already there",
        assertThrows(IOException.class, () -> write(new RealDisk())).getMessage());
  }
}
