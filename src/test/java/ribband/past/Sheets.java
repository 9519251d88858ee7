package ribband.past;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ribband.journal.Journal;
import ribband.journal.JournalFolder;
import ribband.journal.JournalReader;
import ribband.measure.Currency;
import ribband.problem.Problem;

/** Spreadsheets for tests, read for a project of three phases. */
final class Sheets {
  private static final String PHASES =
      "phases:\n  - {id: lofting, title: Lofting and moulds}\n  - planking\n  - side-decks\n";

  private final Journal journal;

  private Sheets(Journal journal) {
    this.journal = journal;
  }

  static Sheets in(String currency) {
    return of("currency: " + currency + "\n" + PHASES);
  }

  static Sheets of(String project) {
    try {
      Path root = Files.createTempDirectory("sheets");
      Path file = root.resolve(JournalFolder.PROJECT);
      Files.writeString(file, project, StandardCharsets.UTF_8);
      Journal journal =
          JournalReader.readProject(JournalFolder.list(root, root.resolve("site"))).journal();
      Files.delete(file);
      Files.delete(root);
      return new Sheets(journal);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  Past read(String csv) {
    return read(csv, Asked.NOTHING);
  }

  Past read(String csv, Asked asked) {
    return read(csv.getBytes(StandardCharsets.UTF_8), asked);
  }

  Past read(byte[] bytes, Asked asked) {
    return PastReader.read("past.csv", bytes, asked, journal.project(), journal.phases());
  }

  /** Each session on a line: day, name, phase, hours, cost, note. */
  String told(Past past) {
    Currency currency = journal.project().currency();
    return past.sessions().stream()
        .map(
            s ->
                Stream.of(
                        Optional.of(s.date().toString()),
                        s.name(),
                        s.phase(),
                        Optional.of(s.hours().decimal()),
                        Optional.of(s.cost().decimal(currency)),
                        Optional.of(s.note()))
                    .map(part -> part.orElse("-"))
                    .collect(Collectors.joining(" | ")))
        .collect(Collectors.joining("\n"));
  }

  /** The sessions where all is well, else what is wrong. */
  String outcome(String csv) {
    return outcome(csv, Asked.NOTHING);
  }

  String outcome(String csv, Asked asked) {
    Past past = read(csv, asked);
    return past.isSound() ? told(past) : problems(past);
  }

  static String problems(Past past) {
    return past.problems().stream().map(Problem::toString).collect(Collectors.joining("\n"));
  }

  static Asked asked(Map<What, String> columns) {
    return new Asked(columns, Map.of(), Optional.empty());
  }
}
