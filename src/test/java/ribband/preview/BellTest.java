package ribband.preview;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What wakes one who would rest for an hour. */
@Timeout(30)
class BellTest {
  private static final Duration HOUR = Duration.ofHours(1);
  private static final Duration MOMENT = Duration.ofMillis(60);

  @TempDir private Path folder;

  @Test
  void whatIsMadeChangedOrRemovedWakes() throws Exception {
    try (Bell bell = Bell.ofThisMachine()) {
      bell.listenTo(Set.of(folder));
      Path file = Files.writeString(folder.resolve("a.md"), "a");
      assertFalse(bell.rest(HOUR));
      bell.rest(MOMENT);
      Files.writeString(file, "b");
      assertFalse(bell.rest(HOUR));
      bell.rest(MOMENT);
      Files.delete(file);
      assertFalse(bell.rest(HOUR));
    }
  }

  @Test
  void aFolderThatWasGoneIsListenedToAgain() throws Exception {
    try (Bell bell = Bell.ofThisMachine()) {
      Path later = folder.resolve("later");
      bell.listenTo(Set.of(later));
      Files.createDirectory(later);
      bell.listenTo(Set.of(later));
      Files.delete(later);
      assertFalse(bell.rest(HOUR));
      bell.listenTo(Set.of());
      Files.createDirectory(later);
      bell.listenTo(Set.of(later));
      Files.writeString(later.resolve("a.md"), "a");
      assertFalse(bell.rest(HOUR));
    }
  }

  @Test
  void itEndsARestAndTakesNoNewFolders() throws Exception {
    Bell bell = Bell.ofThisMachine();
    bell.listenTo(Set.of(folder));
    assertFalse(bell.isClosed());
    bell.close();
    assertTrue(bell.isClosed());
    assertTrue(bell.rest(HOUR));
    assertTrue(bell.restInAnyCase(HOUR));
    bell.listenTo(Set.of(folder, folder.resolve("x")));
    bell.close();
  }

  @Test
  void withoutTheSystemsHelpItIsAPlainRest() throws Exception {
    Bell bell = new Bell(Optional.empty());
    bell.listenTo(Set.of(folder));
    assertFalse(bell.rest(MOMENT));
    bell.close();
    assertTrue(bell.rest(HOUR));
  }
}
