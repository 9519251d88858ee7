package ribband.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import ribband.journal.JournalFolder;
import ribband.memory.Memory;
import ribband.memory.TreeState;
import ribband.press.Press;

/**
 * What the last publish saw and made: where journal, site and tool are as they were then, the next
 * one has nothing to do. Only ever a shortcut; a publish with warnings is not remembered, so that
 * they are told again; but for the one of a site without an address, which would cost the shortcut
 * for good.
 */
final class LastPublish {
  private static final String JOURNAL = "journal";
  private static final String SITE = "site";
  private static final String LATEST = "latest entry";
  private static final String TOLD = "told";
  private static final String FILES = "files";
  private static final String ENTRIES = "entries";
  private static final String ADDRESS = "address";

  private final Memory memory;
  private final Path site;
  private final CompletableFuture<String> siteState;

  private LastPublish(Memory memory, Path site, CompletableFuture<String> siteState) {
    this.memory = memory;
    this.site = site;
    this.siteState = siteState;
  }

  /**
   * Loads what is remembered, and begins to look at the site: the journal can be listed meanwhile.
   *
   * @param site where it is, absolute
   */
  static LastPublish load(Path site) throws IOException {
    Path file = Press.workFolder(site).resolve("last-publish");
    Memory memory = Memory.load(file, Version.BUILD + " into " + site);
    CompletableFuture<String> siteState =
        memory.get(SITE).isPresent()
            ? CompletableFuture.supplyAsync(() -> state(site))
            : CompletableFuture.completedFuture("");
    return new LastPublish(memory, site, siteState);
  }

  private static String state(Path site) {
    try {
      return TreeState.of(site);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * What was made.
   *
   * @param told the first line of the summary
   * @param files how many the site has
   * @param entries how many the journal has
   */
  record Made(String told, int files, int entries, Address address) {
    /** Whether the journal says where its site stands. */
    enum Address {
      SAID,
      UNSAID
    }
  }

  /** What stands already, if a publish of this journal today would change nothing. */
  Optional<Made> stillStands(JournalFolder journal, LocalDate today) throws IOException {
    boolean same =
        !Version.BUILD.isEmpty()
            // What a killed run left is cleared by a whole publish alone.
            && Press.isAtRest(site)
            && journal.state().equals(memory.get(JOURNAL).orElse(""))
            && memory
                .get(LATEST)
                .flatMap(LastPublish::day)
                .filter(d -> !d.isAfter(today))
                .isPresent()
            && siteState.join().equals(memory.get(SITE).orElse(""));
    return same ? made() : Optional.empty();
  }

  private Optional<Made> made() {
    Optional<String> told = memory.get(TOLD);
    Optional<Integer> files = memory.get(FILES).flatMap(LastPublish::number);
    Optional<Integer> entries = memory.get(ENTRIES).flatMap(LastPublish::number);
    Optional<String> address = memory.get(ADDRESS);
    return told.isPresent() && files.isPresent() && entries.isPresent() && address.isPresent()
        ? Optional.of(new Made(told.get(), files.get(), entries.get(), address(address.get())))
        : Optional.empty();
  }

  private static Made.Address address(String text) {
    return text.equals(Made.Address.UNSAID.name()) ? Made.Address.UNSAID : Made.Address.SAID;
  }

  // What cannot be read back is simply not remembered.
  private static Optional<LocalDate> day(String text) {
    try {
      return Optional.of(LocalDate.parse(text));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  private static Optional<Integer> number(String text) {
    try {
      return Optional.of(Integer.valueOf(text));
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  /**
   * Remembers a publish without a problem but that of the address.
   *
   * @param began when the journal was listed; a file touched just before may change unseen
   */
  void remember(JournalFolder journal, LocalDate latest, Made made, Instant began)
      throws IOException {
    if (!Version.BUILD.isEmpty() && journal.isSettled(began)) {
      memory.put(JOURNAL, journal.state());
      memory.put(SITE, state(site));
      memory.put(LATEST, latest.toString());
      memory.put(TOLD, made.told());
      memory.put(FILES, Integer.toString(made.files()));
      memory.put(ENTRIES, Integer.toString(made.entries()));
      memory.put(ADDRESS, made.address().name());
      memory.save();
    }
  }
}
