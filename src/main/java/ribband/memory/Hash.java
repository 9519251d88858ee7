package ribband.memory;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 in hexadecimal digits. */
public final class Hash {
  private static final int CHUNK = 1 << 16;

  private Hash() {}

  public static String of(byte[] content) {
    return HexFormat.of().formatHex(sha256().digest(content));
  }

  public static String of(Path file) throws IOException {
    MessageDigest digest = sha256();
    try (InputStream in = Files.newInputStream(file)) {
      byte[] chunk = new byte[CHUNK];
      for (int read = in.read(chunk); read >= 0; read = in.read(chunk)) {
        digest.update(chunk, 0, read);
      }
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
