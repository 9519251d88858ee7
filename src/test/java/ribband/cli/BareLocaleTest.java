package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program in a process of its own under {@code LC_ALL=C}, where Java hears ASCII alone. */
class BareLocaleTest {
  @TempDir Path folder;

  @Test
  void plainNamesWorkAndOutputIsUtf8() throws Exception {
    assumeUnix();
    new InMemory(folder)
        .with("project.yaml", "name: Bär\n")
        .with("2026-01-01.md", "---\nhours: ¾\nphase: x\n---\n");
    List<String> told = run(folder, "tally", "--by", "year");
    assertEquals("0", told.get(0));
    assertTrue(told.get(1).startsWith("Bär by year\n"), told.get(1));
    assertTrue(told.get(1).contains("  ¾  "), told.get(1));
  }

  @Test
  void aNameThatCannotBeSaidIsMetWithAHint() throws Exception {
    assumeUnix();
    new InMemory(folder).with("project.yaml", "name: x\n");
    shell("touch \"$(printf 'b\\303\\244r.jpg')\"");
    List<String> told = run(folder, "check");
    assertEquals("3", told.get(0));
    assertTrue(
        told.get(1).endsWith("run again with LC_ALL=C.UTF-8 set\n")
            && told.get(1).lines().count() == 1,
        told.get(1));
  }

  @Test
  void aFolderThatCannotBeSaidIsNotTakenForAnother() throws Exception {
    assumeUnix();
    shell("mkdir \"$(printf 'b\\303\\244')\"");
    Path inner;
    try (var names = Files.list(folder)) {
      inner = names.findFirst().orElseThrow();
    }
    List<String> told = run(inner, "lay", "boat");
    assertEquals("3", told.get(0));
    try (var names = Files.list(folder)) {
      assertEquals(1, names.count());
    }
  }

  private static void assumeUnix() {
    assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "needs /bin/sh");
  }

  private void shell(String command) throws Exception {
    assertEquals(
        0,
        new ProcessBuilder("/bin/sh", "-c", command).directory(folder.toFile()).start().waitFor());
  }

  /** The exit code, and all that was printed. */
  private static List<String> run(Path where, String... arguments)
      throws IOException, InterruptedException {
    String classes =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-cp", classes, "ribband.cli.Main"));
    command.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(command).directory(where.toFile());
    builder.environment().put("LC_ALL", "C");
    builder.environment().remove("JAVA_TOOL_OPTIONS");
    Process process = builder.redirectErrorStream(true).start();
    process.getOutputStream().close();
    String told = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return List.of(Integer.toString(process.waitFor()), told);
  }
}
