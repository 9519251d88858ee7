package ribband.desk;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import ribband.journal.JournalFolder;

/** Lays a new journal: a commented project and a first entry. */
public final class NewJournal {
  private NewJournal() {}

  /**
   * Makes the folder, with those above it, and what is missing in it.
   *
   * @param today the first entry's date
   * @param zone for the project's clock times
   * @return the files made, in order
   * @throws FileAlreadyExistsException where the folder holds a project, or is no folder
   * @throws IOException where the disk refuses
   */
  public static List<Path> lay(Path folder, LocalDate today, ZoneId zone) throws IOException {
    Path project = folder.resolve(JournalFolder.PROJECT);
    if (Files.exists(project, LinkOption.NOFOLLOW_LINKS)) {
      throw new FileAlreadyExistsException(project.toString());
    }
    // By itself first, so that a file in its place is told as one.
    Files.createDirectories(folder);
    Path year = folder.resolve(Integer.toString(today.getYear()));
    Files.createDirectories(year);
    List<Path> made = new ArrayList<>();
    Path entry = year.resolve(today + "-first-night.md");
    if (!Files.exists(entry, LinkOption.NOFOLLOW_LINKS)) {
      made.add(write(entry, template("entry.md")));
    }
    String name = Objects.toString(folder.toAbsolutePath().normalize().getFileName(), "The build");
    String text = template("project.yaml");
    text = text.replace("{{zone}}", zone.getId()).replace("{{name}}", Yaml.text(name));
    // The project comes last: a folder without one can be laid again.
    made.add(0, write(project, text));
    return List.copyOf(made);
  }

  private static Path write(Path file, String text) throws IOException {
    return Files.writeString(file, text, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
  }

  private static String template(String name) throws IOException {
    try (InputStream in = NewJournal.class.getResourceAsStream("/ribband/desk/" + name)) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
