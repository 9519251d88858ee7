package ribband.spoken;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ribband.journal.JournalFolder;
import ribband.journal.JournalReader;
import ribband.journal.Phase;
import ribband.journal.Project;

/** The project of {@code docs/spoken.md}, or another one, and lines said of it. */
record Boat(Project project, List<Phase> phases) {
  static final Path DOCUMENT = Path.of("docs/spoken.md");
  private static final Pattern PROJECT =
      Pattern.compile("```yaml project\\.yaml\n(.*?)```", Pattern.DOTALL);

  /** That of the document, written into a folder and read as any other. */
  static Boat ofDocument(Path folder) throws IOException {
    Matcher project = PROJECT.matcher(Files.readString(DOCUMENT, StandardCharsets.UTF_8));
    assertEquals(true, project.find(), "no project.yaml in " + DOCUMENT);
    return of(folder, project.group(1));
  }

  static Boat of(Path folder, String yaml) throws IOException {
    Files.writeString(folder.resolve("project.yaml"), yaml, StandardCharsets.UTF_8);
    JournalReader.Read read =
        JournalReader.read(
            JournalFolder.list(folder, folder.resolve("site")), LocalDate.of(2026, 3, 14));
    assertEquals(List.of(), read.problems());
    return new Boat(read.journal().project(), read.journal().phases());
  }

  Spoken hear(String line) {
    return SpokenLine.read(line, project, phases);
  }

  List<String> told(String line) {
    return SpokenWords.told(hear(line), project);
  }

  /** What each column of the table shows; several things with a semicolon between. */
  List<String> cells(String line) {
    Spoken all = hear(line);
    return List.of(
        cell(new Spoken(all.worked(), all.phase(), List.of(), List.of(), List.of())),
        cell(new Spoken(List.of(), NO_PHASE, all.spent(), List.of(), List.of())),
        cell(new Spoken(List.of(), NO_PHASE, List.of(), all.pieces(), List.of())),
        cell(new Spoken(List.of(), NO_PHASE, List.of(), List.of(), all.loose())));
  }

  private static final Optional<String> NO_PHASE = Optional.empty();

  private String cell(Spoken part) {
    return String.join("; ", SpokenWords.told(part, project)).replace("into the text: ", "");
  }
}
