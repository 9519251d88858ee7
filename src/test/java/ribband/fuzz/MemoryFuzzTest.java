package ribband.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.zip.CRC32;
import org.junit.jupiter.api.io.TempDir;
import ribband.memory.Memory;

/** A memory file of any bytes is an empty memory or a whole one, and can be saved over. */
class MemoryFuzzTest {
  @TempDir static Path folder;

  @FuzzTest(maxDuration = "6s")
  void memory(byte[] bytes) throws IOException {
    load(bytes);
    load(summed(bytes));
  }

  private static void load(byte[] bytes) throws IOException {
    Path file = folder.resolve("memory");
    Files.write(file, bytes);
    Memory memory = Memory.load(file, "1");
    Optional<String> value = memory.get("a");
    memory.put("b", "c");
    memory.save();
    Memory again = Memory.load(file, "1");
    assertEquals(value, again.get("a"));
    assertEquals(Optional.of("c"), again.get("b"));
    assertEquals(Optional.empty(), Memory.load(file, "2").get("b"));
  }

  /** With the right sum at the end, so that what stands before it is read. */
  private static byte[] summed(byte[] bytes) {
    CRC32 sum = new CRC32();
    sum.update(bytes);
    return ByteBuffer.allocate(bytes.length + 4).put(bytes).putInt((int) sum.getValue()).array();
  }
}
