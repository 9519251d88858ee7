package ribband.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.function.BinaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ribband.cli.InMemory;
import ribband.whole.FullJournal;

/** The sites that are looked at, each from a journal of its own. */
enum Site {
  /** Every key of the format. */
  FULL,
  /** The same without an amount. */
  MONEY_HIDDEN,
  /** What {@code lay} lays: one short night, no picture, no money. */
  FIRST_NIGHT,
  /** The sample journal. */
  SAMPLE,
  /** No site: the papers of the full journal, on one long page. */
  PAPERS,
  /** No site: the papers of the sample journal. */
  SAMPLE_PAPERS;

  /** Publishes the site within a folder, and gives the folder it lies in. */
  Path publish(Path folder) throws IOException {
    Path site = folder.resolve("site");
    InMemory command = new InMemory(folder);
    String journal =
        switch (this) {
          case FULL, PAPERS -> {
            FullJournal.write(folder);
            yield ".";
          }
          case MONEY_HIDDEN -> {
            FullJournal.write(folder);
            String shown = FullJournal.PROJECT;
            command.with("project.yaml", shown.replace("show money: true", "show money: false"));
            yield ".";
          }
          case FIRST_NIGHT -> {
            assertEquals(0, command.run("lay", "boat").code());
            yield "boat";
          }
          case SAMPLE, SAMPLE_PAPERS -> Path.of("sample-journal").toAbsolutePath().toString();
        };
    boolean papers = this == PAPERS || this == SAMPLE_PAPERS;
    // The sample's last night; to the others it is far off, and nothing in a site tells of it.
    InMemory.Run run =
        command.run(
            papers ? "papers" : "publish",
            journal,
            papers ? "--into" : "-o",
            site.toString(),
            "--today",
            "2026-11-25");
    assertEquals(0, run.code(), run.err());
    return site.toRealPath();
  }

  static List<String> pages(Path site) throws IOException {
    try (Stream<Path> files = Files.walk(site)) {
      return files
          .map(file -> site.relativize(file).toString())
          .filter(path -> path.endsWith(".html"))
          .sorted()
          .toList();
    }
  }

  /** The longest page of each kind: of each folder one, and all that lie in none. */
  static List<String> kinds(Path site) throws IOException {
    return List.copyOf(
        pages(site).stream()
            .collect(
                Collectors.toMap(
                    page -> page.contains("/") ? Path.of(page).getParent().toString() : page,
                    page -> page,
                    BinaryOperator.maxBy(Comparator.comparingLong(page -> size(site, page))),
                    TreeMap::new))
            .values());
  }

  private static long size(Path site, String page) {
    try {
      return Files.size(site.resolve(page));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
