package ribband.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import ribband.journal.Journal;
import ribband.journal.JournalFolder;
import ribband.journal.JournalReader;
import ribband.problem.Problem;

/** A journal's folder that a test writes into and reads back. */
record Desk(Path root) {
  static final LocalDate NIGHT = LocalDate.of(2026, 3, 14);

  Desk with(String file, String... lines) throws IOException {
    Path path = root.resolve(file);
    Files.createDirectories(path.getParent());
    Files.writeString(path, String.join("\n", lines) + "\n", StandardCharsets.UTF_8);
    return this;
  }

  Desk entry(String file, String... keys) throws IOException {
    return with(file, "---\n" + String.join("\n", keys) + "\n---");
  }

  Path output() {
    return root.resolve("site");
  }

  JournalReader.Read read() throws IOException {
    return JournalReader.read(JournalFolder.list(root, output()), LocalDate.of(2199, 1, 1));
  }

  /** Which may have errors. */
  Journal journal() throws IOException {
    return read().journal();
  }

  List<String> problems() throws IOException {
    return read().problems().stream().map(Problem::toString).toList();
  }

  String text(String file) throws IOException {
    return Files.readString(root.resolve(file), StandardCharsets.UTF_8);
  }
}
