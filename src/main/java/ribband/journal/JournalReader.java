package ribband.journal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import ribband.problem.OneLine;
import ribband.problem.Place;
import ribband.problem.Problem;
import ribband.problem.Problems;

/** Reads a whole journal from its folder; the only class here that opens its files. */
public final class JournalReader {
  private static final Comparator<Entry> ORDER =
      Comparator.comparing(Entry::date).thenComparing(Entry::file);

  private JournalReader() {}

  /**
   * What came out of reading.
   *
   * @param journal all that could be read; whole only where no problem is an error
   * @param problems in the order of their places
   */
  public record Read(Journal journal, List<Problem> problems) {
    public Read {
      problems = List.copyOf(problems);
    }
  }

  /**
   * Reads the project and every entry, in parallel, and checks them against each other.
   *
   * @param today for warnings of dates in the future
   * @throws UncheckedIOException where the disk fails
   */
  public static Read read(JournalFolder folder, LocalDate today) {
    Problems problems = new Problems();
    Project project = project(folder, problems);
    List<OneRead> reads =
        folder.all().parallelStream()
            .filter(EntryName::isMarkdown)
            .map(f -> one(folder, project, f))
            .toList();
    reads.forEach(one -> problems.addAll(one.problems()));
    List<Entry> entries = new ArrayList<>();
    reads.forEach(one -> one.entry().ifPresent(entries::add));
    entries.sort(ORDER);
    new Checks(project, entries, problems).run(today);
    Journal journal = new Journal(folder, project, Checks.phasesOf(project, entries), entries);
    return new Read(journal, problems.sorted());
  }

  private record OneRead(Optional<Entry> entry, List<Problem> problems) {
    static final OneRead PASSED_OVER = new OneRead(Optional.empty(), List.of());
  }

  private static Project project(JournalFolder folder, Problems problems) {
    return source(folder, JournalFolder.PROJECT, problems)
        .map(source -> ProjectReader.read(folder, source, problems))
        .orElseGet(
            () -> ProjectReader.read(folder, new Source(JournalFolder.PROJECT, ""), problems));
  }

  /**
   * spec: a file is an entry if its name is dated, or if its folder's is and it opens with a fence.
   */
  private static OneRead one(JournalFolder folder, Project project, String file) {
    EntryName name = EntryName.of(file);
    Problems problems = new Problems();
    if (name.date().isPresent()) {
      return read(folder, project, source(folder, file, problems), problems);
    }
    if (!opensWithFence(folder, file)) {
      return OneRead.PASSED_OVER;
    }
    Optional<Source> source = source(folder, file, problems);
    if (name.folderDate().isPresent()) {
      return read(folder, project, source, problems);
    }
    source.ifPresent(text -> warnOfUndated(text, problems));
    return new OneRead(
        Optional.empty(), problems.sorted().stream().filter(p -> !p.isError()).toList());
  }

  private static OneRead read(
      JournalFolder folder, Project project, Optional<Source> source, Problems problems) {
    Optional<Entry> entry =
        source.flatMap(text -> new EntryReader(folder, project, text, problems).read());
    return new OneRead(entry, problems.sorted());
  }

  private static boolean opensWithFence(JournalFolder folder, String file) {
    byte[] start = new byte[8];
    try (var in = Files.newInputStream(folder.path(file))) {
      int read = in.readNBytes(start, 0, start.length);
      String text = new String(start, 0, read, StandardCharsets.ISO_8859_1);
      return text.replace("\u00ef\u00bb\u00bf", "").matches("---[ \\t]*(?s:[\\r\\n].*)?");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A fenced note with a date but not in its name would be lost without a word. */
  private static void warnOfUndated(Source source, Problems problems) {
    FrontMatter.of(source, new Problems())
        .filter(parts -> new Fields(parts.keys(), new Problems()).has("date"))
        .ifPresent(
            parts ->
                problems.warning(
                    new Place(source.file(), 1, 1),
                    "is not read as an entry, because its name does not begin with a date; rename"
                        + " it as 2026-03-14-garboard.md"));
  }

  private static Optional<Source> source(JournalFolder folder, String file, Problems problems) {
    Path path = folder.path(file);
    try {
      if (Files.size(path) > Source.MOST_BYTES) {
        return Source.of(file, new byte[Source.MOST_BYTES + 1], problems);
      }
      return Source.of(file, Files.readAllBytes(path), problems);
    } catch (IOException e) {
      problems.error(
          Place.of(file),
          "cannot be read ("
              + OneLine.of(String.valueOf(e.getMessage()))
              + "); check its permissions");
      return Optional.empty();
    }
  }
}
