package ribband.journal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import ribband.problem.Problem;

/** Lays journals down in a folder of a test, and reads them. */
final class JournalFiles {
  static final LocalDate TODAY = LocalDate.of(2026, 12, 31);

  private JournalFiles() {}

  static void write(Path root, Map<String, String> files) throws IOException {
    for (Map.Entry<String, String> file : files.entrySet()) {
      write(root, file.getKey(), file.getValue().getBytes(StandardCharsets.UTF_8));
    }
  }

  static void write(Path root, String file, byte[] bytes) throws IOException {
    Path path = root.resolve(file);
    Files.createDirectories(path.getParent());
    Files.write(path, bytes);
  }

  static JournalReader.Read read(Path root) throws IOException {
    return JournalReader.read(JournalFolder.list(root, root.resolve("site")), TODAY);
  }

  static List<String> told(JournalReader.Read read) {
    return read.problems().stream().map(Problem::toString).toList();
  }
}
