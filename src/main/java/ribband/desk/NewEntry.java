package ribband.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ribband.journal.Entry;
import ribband.journal.Journal;
import ribband.measure.Name;
import ribband.measure.Slug;
import ribband.press.LoneFile;

/**
 * An entry's file that is not there yet.
 *
 * @param folder journal path of the folder it lies in; empty for the journal's root
 * @param stem its name without the ending, and the name of its own folder of pictures
 */
public record NewEntry(String folder, String stem) {
  private static final String ENDING = ".md";

  /**
   * The first free name for a day: no file of the journal has it, in any folder, and no entry its
   * address; and the folder of pictures that goes with it is no other entry's.
   *
   * @param words what follows the date, in any letters; may be empty
   */
  public static NewEntry free(Journal journal, LocalDate day, String words) {
    NewEntry wished = wished(journal, day, words);
    Set<String> taken = new HashSet<>();
    journal.folder().all().forEach(file -> taken.add(Name.plain(nameOf(file))));
    journal.entries().forEach(entry -> taken.add(Name.plain(entry.address() + ENDING)));
    return Stream.iterate(1, n -> n + 1)
        .map(n -> n == 1 ? wished : new NewEntry(wished.folder, wished.stem + "-" + n))
        .filter(entry -> !taken.contains(Name.plain(entry.stem() + ENDING)))
        .filter(entry -> !entry.isInTheWay(journal))
        .findFirst()
        .orElseThrow();
  }

  /** Its name where no other file is in the way. */
  static NewEntry wished(Journal journal, LocalDate day, String words) {
    String slug = Slug.of(words);
    return new NewEntry(folder(journal, day), slug.isEmpty() ? day.toString() : day + "-" + slug);
  }

  private boolean isInTheWay(Journal journal) {
    Path root = journal.folder().root();
    Path own = root.resolve(pictures());
    return Files.exists(file(root), LinkOption.NOFOLLOW_LINKS)
        || Files.exists(own, LinkOption.NOFOLLOW_LINKS) && !Files.isDirectory(own)
        || journal.entries().stream().anyMatch(this::hasMyFolder);
  }

  private boolean hasMyFolder(Entry entry) {
    return isInMyFolder(entry.file())
        || entry.photos().stream().anyMatch(photo -> isInMyFolder(photo.file()));
  }

  private boolean isInMyFolder(String file) {
    return Name.plain(file).startsWith(Name.plain(pictures()) + "/");
  }

  private static String nameOf(String file) {
    return file.substring(file.lastIndexOf('/') + 1);
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
