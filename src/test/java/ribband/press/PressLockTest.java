package ribband.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PressLockTest {
  @TempDir Path folder;
  private Path site;
  private Path lock;

  @BeforeEach
  void nameFiles() throws Exception {
    folder = folder.toRealPath();
    site = folder.resolve("site");
    lock = folder.resolve(".ribband/lock");
  }

  @Test
  void aSecondRunInThisProcessIsBusyUntilTheFirstCloses() throws Exception {
    try (Press first = Press.open(site, folder.resolve("boat"))) {
      first.put("index.html", new byte[] {1});
      assertEquals(Long.toString(ProcessHandle.current().pid()), Files.readString(lock));
      for (int again = 0; again < 2; again++) {
        PressBusy busy =
            assertThrows(PressBusy.class, () -> Press.open(site, folder.resolve("boat")));
        assertEquals(message(ProcessHandle.current().pid()), busy.getMessage());
      }
      assertEquals(1, first.finish().written());
    }
    Press.open(site, folder.resolve("boat")).close();
  }

  @Test
  void aSecondProcessIsBusyUntilTheFirstIsKilled() throws Exception {
    Process other =
        new ProcessBuilder(
                List.of(
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-cp",
                    System.getProperty("java.class.path"),
                    OtherProcess.class.getName(),
                    site.toString(),
                    folder.resolve("boat").toString()))
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    try {
      BufferedReader said =
          new BufferedReader(new InputStreamReader(other.getInputStream(), StandardCharsets.UTF_8));
      assertEquals("open", said.readLine());
      PressBusy busy =
          assertThrows(PressBusy.class, () -> Press.open(site, folder.resolve("boat")));
      assertEquals(message(other.pid()), busy.getMessage());
    } finally {
      other.destroyForcibly().waitFor();
    }
    Path staged = folder.resolve(".ribband/staging/pages/1");
    assertEquals(1, Files.size(staged));
    try (Press next = Press.open(site, folder.resolve("boat"))) {
      assertEquals(false, Files.exists(staged));
      assertEquals(0, next.finish().written());
    }
  }

  /** A longer number of an older run leaves no figure behind. */
  @Test
  void theNumberOfAnOlderRunIsReplacedWhole() throws Exception {
    Tree.write(folder, ".ribband/lock", "12345678901234567890");
    Press.open(site, folder.resolve("boat")).close();
    assertEquals(Long.toString(ProcessHandle.current().pid()), Files.readString(lock));
  }

  @Test
  void aLockThatCannotBeOpenedIsToldEachTime() throws Exception {
    Files.createDirectories(lock);
    for (int again = 0; again < 2; again++) {
      IOException told =
          assertThrows(IOException.class, () -> Press.open(site, folder.resolve("boat")));
      assertEquals("cannot lock " + lock + ": Is a directory", told.getMessage());
    }
  }

  @Test
  void aRefusedOpenFreesTheLock() throws Exception {
    Press.open(site, folder.resolve("boat")).close();
    Tree.write(site, "site-files.txt", "broken");
    for (int again = 0; again < 2; again++) {
      assertThrows(PressRefused.class, () -> Press.open(site, folder.resolve("boat")));
    }
  }

  private String message(long process) {
    return "another run is at work here (process "
        + process
        + ") and holds "
        + lock
        + "; let it end, then run again";
  }
}
