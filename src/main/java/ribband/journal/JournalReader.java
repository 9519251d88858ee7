package ribband.journal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import ribband.journal.Checks.Gathered;
import ribband.journal.EntryReader.EntryRead;
import ribband.problem.Place;
import ribband.problem.Problem;
import ribband.problem.Problems;

/** Reads a whole journal from its folder; the only class here that opens its files. */
public final class JournalReader {
  private static final int FENCE_BYTES = 256;

  /** spec: entries of one day stand in the order of their paths; endings come last in it. */
  private static final Comparator<EntryRead> ORDER =
      Comparator.comparing((EntryRead read) -> read.entry().date())
          .thenComparing(read -> withoutEnding(read.entry().file()))
          .thenComparing(read -> read.entry().file());

  private JournalReader() {}

  /** So that the second entry of a night, named -2, does not come before the first. */
  private static String withoutEnding(String file) {
    return file.substring(0, file.lastIndexOf('.'));
  }

  /**
   * What came out of reading.
   *
   * @param journal all that could be read; whole only where no problem is an error
   * @param entries how many files are entries, those that could not be read too
   * @param problems in the order of their places
   */
  public record Read(Journal journal, int entries, List<Problem> problems) {
    public Read {
      problems = List.copyOf(problems);
    }
  }

  /**
   * Reads the project and every entry, in parallel, and checks them against each other.
   *
   * @param today for warnings of dates in the future
   * @throws InvalidPathException where the machine's own encoding cannot say the name of a file
   */
  public static Read read(JournalFolder folder, LocalDate today) {
    Problems problems = new Problems();
    Known known = project(folder, problems);
    List<OneRead> reads =
        folder.all().parallelStream()
            .filter(EntryName::isMarkdown)
            .map(file -> one(folder, known, file))
            .toList();
    reads.forEach(one -> problems.addAll(one.problems()));
    List<EntryRead> read =
        reads.stream().flatMap(one -> one.read().stream()).sorted(ORDER).toList();
    Checks checks = new Checks(known, read, problems);
    boolean someLost = reads.stream().anyMatch(OneRead::isLost);
    checks.run(today, someLost ? Gathered.SOME : Gathered.ALL);
    Journal journal = new Journal(folder, known.project(), checks.phases(), checks.entries());
    long lost = reads.stream().filter(OneRead::isLost).count();
    return new Read(journal, read.size() + (int) lost, problems.sorted());
  }

  /** Reads the project alone, for what needs no entry. */
  public static Read readProject(JournalFolder folder) {
    Problems problems = new Problems();
    Project project = project(folder, problems).project();
    return new Read(
        new Journal(folder, project, project.phases(), List.of()), 0, problems.sorted());
  }

  private record OneRead(Optional<EntryRead> read, List<Problem> problems) {
    boolean isLost() {
      return read.isEmpty() && problems.stream().anyMatch(Problem::isError);
    }
  }

  private static Known project(JournalFolder folder, Problems problems) {
    return source(folder, JournalFolder.PROJECT, problems)
        .map(source -> ProjectReader.read(folder, source, problems))
        .orElseGet(() -> ProjectReader.unread(folder));
  }

  /**
   * spec: a file is an entry if its name begins with a date, or if its folder's does and it opens
   * with a fence; other files are left alone.
   */
  private static OneRead one(JournalFolder folder, Known known, String file) {
    EntryName name = EntryName.of(file);
    Problems problems = new Problems();
    boolean dated = name.date().isPresent();
    if (!dated && !opensWithFence(folder, file)) {
      return new OneRead(Optional.empty(), List.of());
    }
    if (!dated && name.folderDate().isEmpty()) {
      source(folder, file, new Problems()).ifPresent(text -> warnOfUndated(text, problems));
      return new OneRead(Optional.empty(), problems.sorted());
    }
    Optional<EntryRead> read =
        source(folder, file, problems)
            .flatMap(text -> new EntryReader(folder, known, text, problems).read());
    return new OneRead(read, problems.sorted());
  }

  private static boolean opensWithFence(JournalFolder folder, String file) {
    byte[] start = new byte[FENCE_BYTES];
    try (InputStream in = Files.newInputStream(folder.path(file))) {
      int read = in.readNBytes(start, 0, start.length);
      String text = new String(start, 0, read, StandardCharsets.UTF_8);
      return FrontMatter.opensWithFence(text.replaceFirst("^\uFEFF", ""));
    } catch (IOException | InvalidPathException e) {
      // What cannot be opened is told where it has to be an entry, and left alone elsewhere.
      return true;
    }
  }

  /** A fenced note that says a date, but not where one is looked for, would be lost in silence. */
  private static void warnOfUndated(Source source, Problems problems) {
    Optional<String> loose = EntryName.looselyDated(source.file());
    boolean saysDate =
        loose.isPresent()
            || FrontMatter.of(source, new Problems())
                .filter(parts -> new Fields(parts.keys(), new Problems()).has("date"))
                .isPresent();
    if (saysDate) {
      problems.warning(
          new Place(source.file(), 1, 1),
          "the file is not read as an entry, because its name does not begin with a date; name it "
              + loose.orElse("2026-03-14-garboard.md"));
    }
  }

  private static Optional<Source> source(JournalFolder folder, String file, Problems problems) {
    if (folder.find(file).isEmpty()) {
      // Nothing but plain files of the journal is ever opened: a pipe would never end.
      problems.error(
          Place.of(file),
          folder.isKeptOut(file)
              ? "this is no plain file of the journal; put the file itself there"
              : "the file is not there; write one with a line name: Dunlin");
      return Optional.empty();
    }
    try {
      return bytes(folder.path(file), problems, file).flatMap(b -> Source.of(file, b, problems));
    } catch (NoSuchFileException e) {
      problems.error(Place.of(file), "the file went away while it was read; try again");
    } catch (IOException e) {
      problems.error(Place.of(file), "the file cannot be opened; check who may read it");
    }
    return Optional.empty();
  }

  /** The whole file as it stood at one moment; read twice where an editor was just saving it. */
  private static Optional<byte[]> bytes(Path path, Problems problems, String file)
      throws IOException {
    for (int attempt = 0; attempt < 2; attempt++) {
      State before = State.of(path);
      byte[] bytes;
      try (InputStream in = Files.newInputStream(path)) {
        bytes = in.readNBytes(Source.MOST_BYTES + 1);
      }
      if (State.of(path).equals(before)) {
        return Optional.of(bytes);
      }
    }
    problems.error(Place.of(file), "the file changes while it is read; save it and try again");
    return Optional.empty();
  }

  /** What tells one state of a file from the next. */
  private record State(long size, FileTime saved, Object file) {
    static State of(Path path) throws IOException {
      BasicFileAttributes now = Files.readAttributes(path, BasicFileAttributes.class);
      return new State(now.size(), now.lastModifiedTime(), now.fileKey());
    }
  }
}
