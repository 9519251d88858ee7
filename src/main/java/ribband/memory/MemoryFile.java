package ribband.memory;

import java.io.BufferedOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.zip.CRC32;
import java.util.zip.CheckedOutputStream;

/**
 * A memory as bytes: a mark, the version, the number of pairs, the pairs, and a CRC-32 of all
 * before it. A text is its length in bytes (32 bits), then UTF-8.
 */
final class MemoryFile {
  private static final String MARK = "ribband memory 1\n";

  /** More than ten years of nights with pictures take; a larger file is none of ours. */
  private static final long LARGEST = 256L << 20;

  private static final int BUFFER = 1 << 16;

  private MemoryFile() {}

  static void write(Path file, String version, SortedMap<String, byte[]> pairs) throws IOException {
    CRC32 sum = new CRC32();
    try (DataOutputStream out =
        new DataOutputStream(
            new BufferedOutputStream(
                new CheckedOutputStream(Files.newOutputStream(file), sum), BUFFER))) {
      text(out, MARK);
      text(out, version);
      out.writeInt(pairs.size());
      for (Map.Entry<String, byte[]> pair : pairs.entrySet()) {
        text(out, pair.getKey());
        bytes(out, pair.getValue());
      }
      out.flush();
      out.writeInt((int) sum.getValue());
    }
  }

  private static void text(DataOutputStream out, String text) throws IOException {
    bytes(out, text.getBytes(StandardCharsets.UTF_8));
  }

  private static void bytes(DataOutputStream out, byte[] bytes) throws IOException {
    out.writeInt(bytes.length);
    out.write(bytes);
  }

  /** The pairs of a file; none where it is not one of ours, whole and of this version. */
  static Map<String, byte[]> read(Path file, String version) {
    try {
      if (!Files.isRegularFile(file) || Files.size(file) > LARGEST) {
        return Map.of();
      }
      byte[] bytes = Files.readAllBytes(file);
      int end = bytes.length - Integer.BYTES;
      if (end < 0 || ByteBuffer.wrap(bytes).getInt(end) != sum(bytes, end)) {
        return Map.of();
      }
      return pairs(ByteBuffer.wrap(bytes, 0, end), version);
    } catch (IOException | BufferUnderflowException | IllegalArgumentException e) {
      return Map.of();
    }
  }

  private static Map<String, byte[]> pairs(ByteBuffer in, String version) {
    if (!text(in).equals(MARK) || !text(in).equals(version)) {
      return Map.of();
    }
    int count = in.getInt();
    Map<String, byte[]> pairs = new HashMap<>();
    for (int i = 0; i < count; i++) {
      pairs.put(text(in), bytes(in));
    }
    return pairs;
  }

  private static String text(ByteBuffer in) {
    return new String(bytes(in), StandardCharsets.UTF_8);
  }

  private static byte[] bytes(ByteBuffer in) {
    int length = in.getInt();
    if (length < 0 || length > in.remaining()) {
      throw new BufferUnderflowException();
    }
    byte[] bytes = new byte[length];
    in.get(bytes);
    return bytes;
  }

  private static int sum(byte[] bytes, int length) {
    CRC32 sum = new CRC32();
    sum.update(bytes, 0, length);
    return (int) sum.getValue();
  }
}
