package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory;

/** Papers made of a journal, each beside the other in a folder of the test's own. */
abstract class PapersRun {
  @TempDir Path scratch;
  Path folder;

  /** Where the papers go. */
  Path into;

  @BeforeEach
  void lay() throws IOException {
    folder = Files.createDirectory(scratch.resolve("journal"));
    into = scratch.resolve("papers");
  }

  final InMemory journal() {
    return new InMemory(folder);
  }

  final InMemory.Run run() {
    return journal().run("papers", "--into", into.toString());
  }

  /** The papers of a journal without errors. */
  final Published papers() {
    InMemory.Run run = run();
    assertEquals(0, run.code(), run.err());
    return new Published(into);
  }

  static String bought(String receipt, String cost) {
    return "---\nphase: planking\nmaterials:\n  bought:\n"
        + "    - {item: a thing, receipt: "
        + receipt
        + ", from: the yard, cost: "
        + cost
        + "}\n";
  }

  static String closed(String keys) {
    return keys + "---\n";
  }

  static String item(String receipt, String cost) {
    return "    - {item: another, receipt: " + receipt + ", cost: " + cost + "}\n";
  }
}
