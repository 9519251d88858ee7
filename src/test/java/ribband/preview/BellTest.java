package ribband.preview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.WatchService;
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
  void aFolderThatIsMadeAnewIsListenedToAnew() throws Exception {
    try (Bell bell = Bell.ofThisMachine()) {
      Path anew = Files.createDirectory(folder.resolve("anew"));
      bell.listenTo(Set.of(anew));
      Files.delete(anew);
      assertFalse(bell.rest(HOUR));
      Files.createDirectory(anew);
      bell.listenTo(Set.of(anew));
      Files.writeString(anew.resolve("a.md"), "a");
      assertFalse(bell.rest(HOUR));
    }
  }

  /** What stirs is told in its order, so the first that is heard is of the folder that counts. */
  @Test
  void aFolderThatCountsNoMoreIsNotHeard() throws Exception {
    Path before = Files.createDirectory(folder.resolve("before"));
    Path now = Files.createDirectory(folder.resolve("now"));
    WatchService service = FileSystems.getDefault().newWatchService();
    try (Bell bell = new Bell(Optional.of(service))) {
      bell.listenTo(Set.of(before));
      bell.listenTo(Set.of(now));
      Files.writeString(before.resolve("a.md"), "a");
      Files.writeString(now.resolve("a.md"), "a");
      assertEquals(now, service.take().watchable());
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
