package ribband.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.text.Normalizer;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ribband.journal.Entry;
import ribband.journal.Journal;
import ribband.measure.Name;
import ribband.press.LoneFile;

/**
 * An entry's file that is not there yet.
 *
 * @param folder journal path of the folder it lies in; empty for the journal's root
 * @param stem its name without the ending, and the name of its own folder of pictures
 */
public record NewEntry(String folder, String stem) {
  private static final String ENDING = ".md";
  private static final int LONGEST = 60;

  /**
   * The first free name for a day: none of the journal's files has it, in any folder, as two
   * entries of one name would have one address.
   *
   * @param words what follows the date, in any letters; may be empty
   */
  public static NewEntry free(Journal journal, LocalDate day, String words) {
    String folder = folder(journal, day);
    String slug = slug(words);
    String wished = slug.isEmpty() ? day.toString() : day + "-" + slug;
    List<String> taken =
        journal.folder().all().stream()
            .map(file -> file.substring(file.lastIndexOf('/') + 1))
            .map(Name::plain)
            .toList();
    return Stream.iterate(1, n -> n + 1)
        .map(n -> new NewEntry(folder, n == 1 ? wished : wished + "-" + n))
        .filter(entry -> !entry.isTaken(journal.folder().root(), taken))
        .findFirst()
        .orElseThrow();
  }

  private boolean isTaken(Path root, List<String> names) {
    return names.contains(Name.plain(stem + ENDING))
        || Files.exists(file(root), LinkOption.NOFOLLOW_LINKS);
  }

  /** Where the latest entry lies, its year and month made this day's; else a folder of the year. */
  private static String folder(Journal journal, LocalDate day) {
    if (journal.entries().isEmpty()) {
      return year(day);
    }
    Entry latest = journal.entries().get(journal.entries().size() - 1);
    List<String> parts = List.of(latest.file().split("/"));
    return parts.subList(0, parts.size() - 1).stream()
        .filter(part -> !part.startsWith(latest.date().toString()))
        .map(part -> moved(part, latest.date(), day))
        .collect(Collectors.joining("/"));
  }

  private static String moved(String part, LocalDate from, LocalDate to) {
    if (part.equals(year(from))) {
      return year(to);
    }
    if (part.equals(YearMonth.from(from).toString())) {
      return YearMonth.from(to).toString();
    }
    return part.equals(month(from)) ? month(to) : part;
  }

  private static String year(LocalDate day) {
    return day.toString().substring(0, 4);
  }

  private static String month(LocalDate day) {
    return day.toString().substring(5, 7);
  }

  private static String slug(String words) {
    String plain =
        Normalizer.normalize(words, Normalizer.Form.NFC)
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^\\p{L}\\p{M}\\p{N}]+", "-");
    int[] points = plain.codePoints().limit(LONGEST).toArray();
    return new String(points, 0, points.length).replaceAll("^-+|-+$", "");
  }

  /** Its journal path. */
  public String path() {
    return inFolder(stem + ENDING);
  }

  /** The journal path of its own folder of pictures. */
  public String pictures() {
    return inFolder(stem);
  }

  private String inFolder(String name) {
    return folder.isEmpty() ? name : folder + "/" + name;
  }

  /** Where it goes on the disk. */
  public Path file(Path root) {
    return root.resolve(path());
  }

  /**
   * Writes it, whole or not at all, with the folders above it.
   *
   * @throws FileAlreadyExistsException where a file has come there since; it is left as it is
   * @throws IOException where the disk fails, with a message that names what it failed on
   */
  public Path write(Path root, String text) throws IOException {
    Path file = file(root);
    LoneFile.makeFolder(file.getParent());
    LoneFile.writeNew(file, text.getBytes(StandardCharsets.UTF_8));
    return file;
  }
}
