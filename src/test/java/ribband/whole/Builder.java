package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import ribband.cli.InMemory;

/** Somebody who runs commands and looks, after each, whether his journal is as he left it. */
final class Builder {
  private static final List<String> NOT_HIS = List.of("site", ".ribband", "published");

  private final Path journal;

  Builder(Path journal) {
    this.journal = journal;
  }

  /** Runs a command; no file of the journal may have been touched by it. */
  InMemory.Run run(String... arguments) throws IOException {
    Map<String, String> bytes = Published.hashes(journal, NOT_HIS);
    Map<String, String> times = Published.times(journal, NOT_HIS);
    InMemory.Run run = new InMemory(journal).run(arguments);
    assertEquals(bytes, Published.hashes(journal, NOT_HIS));
    assertEquals(times, Published.times(journal, NOT_HIS));
    return run;
  }

  /** The site made of a journal without errors. */
  Published publish() throws IOException {
    InMemory.Run run = run("publish");
    assertEquals(0, run.code(), run.err());
    return new Published(journal.resolve("site"));
  }
}
