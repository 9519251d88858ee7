package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A site that nobody gave an address has no feed, which its builder hears at each publish. */
class PublishWarningTest {
  private static final String WARNING =
      "warning: the site has no address, so it has no feed; write site: {address:"
          + " 'https://example.org/boat/'}, or site: {address: none} where there shall be none\n";

  @TempDir private Path folder;

  private InMemory journal(String project) throws IOException {
    return new InMemory(folder)
        .with("project.yaml", project)
        .with("2026-01-01.md", "---\nphase: planking\nhours: 1\n---\n");
  }

  @Test
  void eachPublishTellsItOnceAndCheckDoesNot() throws IOException {
    InMemory journal = journal("# A boat.\nname: Teal\n");
    String told = "project.yaml:1:1: " + WARNING + "1 warning in 1 entry\n";
    assertEquals(told, journal.run("publish").err());
    InMemory.Run again = journal.run("publish");
    assertEquals(told, again.err());
    assertTrue(again.out().contains("0 files written"), again.out());
    assertEquals("", journal.run("check").err());
    assertEquals("1 entry, no errors, no warnings\n", journal.run("check").out());
    assertFalse(Files.exists(folder.resolve("site/feed.xml")));
    assertFalse(Files.exists(folder.resolve("site/feed.json")));
  }

  @Test
  void itStandsWhereTheSiteIsSpokenOf() throws IOException {
    InMemory journal = journal("name: Teal\nsite:\n  show money: true\n");
    assertEquals(
        "project.yaml:2:1: " + WARNING + "1 warning in 1 entry\n", journal.run("publish").err());
    assertEquals("", journal.run("publish", "-q").err());
  }

  @Test
  void whoWantsNoAddressHearsNothing() throws IOException {
    InMemory journal = journal("name: Teal\nsite: {address: none}\n");
    assertEquals("", journal.run("publish").err());
    assertFalse(Files.exists(folder.resolve("site/feed.xml")));
  }

  @Test
  void anAddressTakenAwayTakesTheFeedsAlong() throws IOException {
    assertEquals("", journal("site: {address: 'https://example.org/'}\n").run("publish").err());
    assertTrue(Files.exists(folder.resolve("site/feed.xml")));
    assertEquals("", journal("site: {address: none}\n").run("publish").err());
    assertFalse(Files.exists(folder.resolve("site/feed.xml")));
    assertFalse(Files.exists(folder.resolve("site/feed.json")));
  }

  @Test
  void aJournalWithErrorsIsToldOfThemAlone() throws IOException {
    InMemory journal = journal("name: Teal\n").with("2026-01-02.md", "---\nhours: two\n---\n");
    String err = journal.run("publish").err();
    assertFalse(err.contains("no feed"), err);
    assertTrue(
        err.endsWith("1 error, 1 warning in 2 entries, nothing was published\n")
            || err.endsWith("1 error in 2 entries, nothing was published\n"),
        err);
  }
}
