package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import ribband.cli.InMemory;

/** Somebody who runs commands in the folder of a journal. */
final class Builder {
  private final Path journal;

  Builder(Path journal) {
    this.journal = journal;
  }

  InMemory.Run run(String... arguments) {
    return new InMemory(journal).run(arguments);
  }

  /** The site made of a journal without errors. */
  Published publish() {
    InMemory.Run run = run("publish");
    assertEquals(0, run.code(), run.err());
    return new Published(journal.resolve("site"));
  }
}
