package ribband.memory;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MemoryTest {
  private static final String VERSION = "0.1 widths 480 960 1600";

  @TempDir Path folder;

  private Path file;

  @BeforeEach
  void nameFile() {
    file = folder.resolve(".ribband/memory");
  }

  @Test
  void whatIsPutIsThereInTheNextRun() throws IOException {
    Memory first = Memory.load(file, VERSION);
    first.put("bär\t1", "two\nlines \\ and \0 a nought");
    first.put("empty", "");
    first.save();

    Memory second = Memory.load(file, VERSION);
    assertEquals(Optional.of("two\nlines \\ and \0 a nought"), second.get("bär\t1"));
    assertEquals(Optional.of(""), second.get("empty"));
    assertEquals(Optional.empty(), second.get("other"));
  }

  @Test
  void nothingButTheFileIsLeftBesideIt() throws IOException {
    save("a", "1");
    try (Stream<Path> files = Files.list(file.getParent())) {
      assertEquals(List.of(file), files.toList());
    }
  }

  @Test
  void onlyWhatARunTouchedIsKept() throws IOException {
    Memory first = Memory.load(file, VERSION);
    first.put("asked", "1");
    first.put("forgotten", "2");
    first.save();

    Memory second = Memory.load(file, VERSION);
    second.get("asked");
    second.put("new", "3");
    second.save();

    Memory third = Memory.load(file, VERSION);
    assertEquals(Optional.of("1"), third.get("asked"));
    assertEquals(Optional.of("3"), third.get("new"));
    assertEquals(Optional.empty(), third.get("forgotten"));
  }

  @Test
  void anotherVersionIsAnEmptyMemory() throws IOException {
    save("a", "1");
    assertEquals(Optional.empty(), Memory.load(file, VERSION + " ").get("a"));
    assertEquals(Optional.of("1"), Memory.load(file, VERSION).get("a"));
  }

  @Test
  void everyCutAndEveryFlippedByteIsAnEmptyMemory() throws IOException {
    save("key", "value");
    byte[] whole = Files.readAllBytes(file);
    for (int i = 0; i < whole.length; i++) {
      Files.write(file, java.util.Arrays.copyOf(whole, i));
      assertEquals(Optional.empty(), Memory.load(file, VERSION).get("key"), "cut at " + i);
      byte[] flipped = whole.clone();
      flipped[i] ^= 1;
      Files.write(file, flipped);
      assertEquals(Optional.empty(), Memory.load(file, VERSION).get("key"), "flipped at " + i);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "a", "someone else's notes, longer than a few bytes\n"})
  void aForeignFileIsAnEmptyMemoryAndIsReplaced(String foreign) throws IOException {
    Files.createDirectories(file.getParent());
    Files.writeString(file, foreign, StandardCharsets.UTF_8);
    assertEquals(Optional.empty(), Memory.load(file, VERSION).get("a"));
    save("a", "1");
    assertEquals(Optional.of("1"), Memory.load(file, VERSION).get("a"));
  }

  @Test
  void theOrderOfPuttingDoesNotShow() throws IOException {
    Memory one = Memory.load(file, VERSION);
    one.put("a", "1");
    one.put("b", "2");
    one.save();
    byte[] bytes = Files.readAllBytes(file);
    Files.delete(file);
    Memory other = Memory.load(file, VERSION);
    other.put("b", "2");
    other.put("a", "1");
    other.save();
    assertArrayEquals(bytes, Files.readAllBytes(file));
  }

  @Test
  void threadsMayShareIt() throws Exception {
    Memory memory = Memory.load(file, VERSION);
    List<Thread> threads = new ArrayList<>();
    for (int t = 0; t < 4; t++) {
      int from = t * 1000;
      threads.add(
          new Thread(
              () -> {
                for (int i = from; i < from + 1000; i++) {
                  memory.put("k" + i, "v" + i);
                }
              }));
    }
    threads.forEach(Thread::start);
    for (Thread thread : threads) {
      thread.join();
    }
    memory.save();
    Memory next = Memory.load(file, VERSION);
    for (int i = 0; i < 4000; i++) {
      assertEquals(Optional.of("v" + i), next.get("k" + i));
    }
  }

  @Test
  void aFileIsKnownByPathSizeAndTime() throws IOException {
    Instant written = Instant.parse("2026-03-14T20:25:00.000000001Z");
    Instant later = Instant.parse("2026-03-14T21:00:00Z");
    Path entry = Files.writeString(folder.resolve("e.md"), "four", StandardCharsets.UTF_8);
    Files.setLastModifiedTime(entry, FileTime.from(written));
    Memory first = Memory.load(file, VERSION);
    first.put(FileStamp.of("e.md", entry, later), "read");
    first.save();

    Memory second = Memory.load(file, VERSION);
    assertEquals(Optional.of("read"), second.get(FileStamp.of("e.md", entry, later)));
    assertEquals(Optional.empty(), second.get(FileStamp.of("f.md", entry, later)));
    Files.setLastModifiedTime(entry, FileTime.from(written.plusNanos(1)));
    assertEquals(Optional.empty(), second.get(FileStamp.of("e.md", entry, later)));
    Files.writeString(entry, "longer", StandardCharsets.UTF_8);
    Files.setLastModifiedTime(entry, FileTime.from(written));
    assertEquals(Optional.empty(), second.get(FileStamp.of("e.md", entry, later)));
  }

  @Test
  void aFileTouchedWithinTwoSecondsOfTheRunIsReadAgain() throws IOException {
    Instant run = Instant.parse("2026-03-14T20:25:02Z");
    Instant nextRun = run.plusSeconds(3600);
    Memory first = Memory.load(file, VERSION);
    first.put(new FileStamp("old", 4, run.minusSeconds(2), run), "old");
    first.put(new FileStamp("fresh", 4, run.minusSeconds(2).plusNanos(1), run), "fresh");
    first.put(new FileStamp("after", 4, run.plusSeconds(60), run), "after");
    first.save();

    Memory second = Memory.load(file, VERSION);
    assertEquals(
        Optional.of("old"), second.get(new FileStamp("old", 4, run.minusSeconds(2), nextRun)));
    assertEquals(
        Optional.empty(),
        second.get(new FileStamp("fresh", 4, run.minusSeconds(2).plusNanos(1), nextRun)));
    assertEquals(
        Optional.empty(), second.get(new FileStamp("after", 4, run.plusSeconds(60), nextRun)));
  }

  @Test
  void aClockSetBackMeansReadingAgain() throws IOException {
    Instant written = Instant.parse("2026-03-14T20:00:00Z");
    Memory first = Memory.load(file, VERSION);
    first.put(new FileStamp("e", 4, written, written.plusSeconds(10)), "read");
    first.save();
    Memory second = Memory.load(file, VERSION);
    assertEquals(
        Optional.empty(), second.get(new FileStamp("e", 4, written, written.minusSeconds(10))));
  }

  private void save(String key, String value) throws IOException {
    Memory memory = Memory.load(file, VERSION);
    memory.put(key, value);
    memory.save();
  }
}
