package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory;
import ribband.documents.Example;

/**
 * The commands of {@code docs/hosting.md}, as they stand there; the far side is a folder of this
 * machine.
 */
class HostingDocumentTest {
  private static final String FAR = "you@host.example:";
  private static final String STICK = "/media/stick/";

  @TempDir private Path folder;
  private Path boat;
  private Published site;
  private Map<String, String> whole;

  private record Ran(int code, String said) {}

  @BeforeEach
  void publish() throws IOException {
    boat = Files.createDirectories(folder.resolve("my-boat"));
    new InMemory(boat)
        .with("project.yaml", "name: Teal\ncurrency: USD\nphases: [{id: planking}]\n")
        .with("2026/2026-03-14-garboards.md", night("Garboards on"))
        .with("2026/2026-03-15-bär.md", night("Named by a bear"));
    FullJournal.picture(boat.resolve("2026/2026-03-14-garboards/plank.jpg"), 600, 400);
    FullJournal.picture(boat.resolve("2026/2026-03-15-bär/moulds.jpg"), 300, 400);
    site = new Builder(boat).publish();
    whole = site.hashes();
    Files.createDirectories(folder.resolve("far/boat"));
    Files.createDirectories(folder.resolve("stick"));
  }

  private static String night(String title) {
    return "---\ntitle: " + title + "\nphase: planking\nhours: 2\ncost: 5.00\n---\nDone.\n";
  }

  /** The commands that begin so, in their order. */
  private static List<String> commands(String begin) throws IOException {
    return Example.of(Path.of("docs/hosting.md")).stream()
        .filter(example -> example.kind().equals("sh"))
        .flatMap(example -> example.commands().stream())
        .filter(line -> line.startsWith(begin + " "))
        .toList();
  }

  /** Gives a command to the shell, in the folder that has the boat's. */
  private Ran run(String command) throws IOException, InterruptedException {
    String local =
        command.startsWith("ssh ")
            ? "cd far && " + command.substring(command.indexOf('\'') + 1, command.length() - 1)
            : command.replace(FAR, "far/").replace(STICK, "stick/");
    return inFolder(folder, local);
  }

  private static Ran inFolder(Path folder, String command)
      throws IOException, InterruptedException {
    Process shell =
        new ProcessBuilder("sh", "-c", command)
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .start();
    String said = new String(shell.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return new Ran(shell.waitFor(), said);
  }

  private void runAll(List<String> commands) throws IOException, InterruptedException {
    for (String command : commands) {
      Ran ran = run(command);
      assertEquals(0, ran.code(), command + ": " + ran.said());
    }
  }

  private static void needs(String tool) {
    boolean there =
        Arrays.stream(System.getenv().getOrDefault("PATH", "").split(":"))
            .anyMatch(part -> Files.isExecutable(Path.of(part, tool)));
    assumeTrue(there, tool + " is not installed");
  }

  private Published far() {
    return new Published(folder.resolve("far/boat"));
  }

  private void makePrivate() throws IOException {
    Path entry = boat.resolve("2026/2026-03-14-garboards.md");
    String text = Files.readString(entry, StandardCharsets.UTF_8);
    Files.writeString(entry, text.replaceFirst("---\n", "---\nprivate: true\n"));
    new Builder(boat).publish();
  }

  @Test
  void rsyncSendsPicturesFirstAndTakesAwayWhatWentPrivate()
      throws IOException, InterruptedException {
    needs("rsync");
    List<String> commands = commands("rsync");
    assertEquals(2, commands.size());

    runAll(commands.subList(0, 1));
    assertEquals(List.of(), far().pages());
    assertTrue(far().paths().containsAll(site.paths().stream().filter(this::isPrint).toList()));
    runAll(commands.subList(1, 2));
    assertEquals(whole, far().hashes());
    assertEquals(
        "rw-r--r--",
        PosixFilePermissions.toString(
            Files.getPosixFilePermissions(folder.resolve("far/boat/index.html"))));

    makePrivate();
    assertTrue(far().has("entries/2026-03-14-garboards.html"));
    runAll(commands);
    assertFalse(far().has("entries/2026-03-14-garboards.html"));
    assertEquals(site.hashes(), far().hashes());
    assertFalse(run(commands.get(1)).said().contains(".html"), "sent again");
  }

  private boolean isPrint(String path) {
    return path.startsWith("pictures/");
  }

  @Test
  void scpSendsAllAndDeletesNothing() throws IOException, InterruptedException {
    needs("scp");
    List<String> commands = commands("scp");
    assertEquals(2, commands.size());

    runAll(commands.subList(0, 1));
    assertEquals(List.of(), far().pages());
    runAll(commands.subList(1, 2));
    assertEquals(whole, far().hashes());

    makePrivate();
    runAll(commands);
    assertTrue(far().has("entries/2026-03-14-garboards.html"));

    run("chmod -R 700 far/boat");
    runAll(commands("ssh").subList(0, 1));
    assertEquals(
        List.of("rwxr-xr-x", "rw-r--r--"),
        List.of(mode("far/boat/pictures"), mode("far/boat/months.csv").replace('x', '-')));
  }

  @Test
  void scpSendsFirstWhatPagesNeedWhateverOfItThereIs() throws IOException, InterruptedException {
    needs("scp");
    String first = commands("scp").get(0);
    String project = Files.readString(boat.resolve("project.yaml"), StandardCharsets.UTF_8);
    String address = "site: {address: 'https://example.org/'}\n";

    assertEquals(List.of("assets", "pictures"), sentBy(first));

    new InMemory(boat).with("project.yaml", project + address);
    assertEquals(List.of("assets", "cards", "pictures"), sentBy(first));

    Files.delete(boat.resolve("2026/2026-03-14-garboards/plank.jpg"));
    Files.delete(boat.resolve("2026/2026-03-15-bär/moulds.jpg"));
    assertEquals(List.of("assets", "cards"), sentBy(first));

    new InMemory(boat).with("project.yaml", project);
    assertEquals(List.of("assets"), sentBy(first));
  }

  /** What of a site published anew a command sends to an empty folder. */
  private List<String> sentBy(String command) throws IOException, InterruptedException {
    new Builder(boat).publish();
    run("rm -r far/boat && mkdir far/boat");
    runAll(List.of(command));
    return topOf(folder.resolve("far/boat"));
  }

  private static List<String> topOf(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void theTableNamesAllThatIsInTheFolder() throws IOException {
    new InMemory(boat)
        .with(
            "project.yaml",
            "name: Teal\ncurrency: USD\nsite: {address: 'https://example.org/'}\n"
                + "phases: [{id: planking}]\n");
    new Builder(boat).publish();
    String text = Files.readString(Path.of("docs/hosting.md"), StandardCharsets.UTF_8);
    String table = text.substring(text.indexOf("| in the folder"), text.indexOf("Receipts, "));
    for (String name : topOf(boat.resolve("site"))) {
      String named = Files.isDirectory(boat.resolve("site").resolve(name)) ? name + "/" : name;
      boolean told = named.endsWith(".html") || table.contains("`" + named + "`");
      assertTrue(told, named);
    }
    long scripts =
        topOf(boat.resolve("site/assets")).stream().filter(name -> name.endsWith(".js")).count();
    assertEquals(4, scripts);
    assertTrue(table.contains("the four scripts"));
  }

  private String mode(String path) throws IOException {
    return PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve(path)));
  }

  @Test
  void aCopyOnAStickIsWholeAndEveryLinkResolvesThere() throws IOException, InterruptedException {
    runAll(commands("cp"));
    // Nothing may lean on where the site was made.
    Files.move(boat, folder.resolve("away"));
    Path dunlin = folder.resolve("stick/dunlin");
    Published copy = new Published(dunlin);
    assertEquals(whole, copy.hashes());

    List<String> dead = new ArrayList<>();
    int links = 0;
    for (String page : copy.pages()) {
      for (Element linking : copy.page(page).select("[href], [src]")) {
        String link = linking.attr(linking.hasAttr("href") ? "href" : "src");
        URI target = dunlin.resolve(page).toUri().resolve(link);
        if (target.getScheme().equals("file")) {
          links++;
          String path = target.getPath();
          if (!path.startsWith(dunlin.toUri().getPath()) || !Files.isRegularFile(Path.of(path))) {
            dead.add(page + " -> " + link);
          }
        }
      }
    }
    assertEquals(List.of(), dead);
    assertTrue(links > 100, links + " links");
  }

  @Test
  void theListFindsWhatIsMissingOrSpoiled() throws IOException, InterruptedException {
    needs("sha256sum");
    runAll(commands("cp"));
    Path dunlin = folder.resolve("stick/dunlin");
    List<String> checks = commands("sha256sum");
    assertEquals(1, checks.size());

    assertEquals(new Ran(0, ""), inFolder(dunlin, checks.get(0)));

    Files.delete(dunlin.resolve("money.html"));
    Files.writeString(dunlin.resolve("months.csv"), "half a fi");
    Ran found = inFolder(dunlin, checks.get(0));
    assertNotEquals(0, found.code());
    assertEquals(
        List.of("money.html: FAILED open or read", "months.csv: FAILED"),
        found.said().lines().filter(line -> !line.startsWith("sha256sum:")).toList());
  }

  @Test
  void theListIsCheckedOverThereToo() throws IOException, InterruptedException {
    needs("sha256sum");
    inFolder(folder, "cp -R my-boat/site/. far/boat/");
    String check = commands("ssh").get(1);

    assertEquals(new Ran(0, ""), run(check));

    Files.delete(folder.resolve("far/boat/index.html"));
    assertNotEquals(0, run(check).code());
  }

  @Test
  void theOtherToolForTheListReadsItToo() throws IOException, InterruptedException {
    needs("shasum");
    Ran ran = inFolder(boat.resolve("site"), "shasum -a 256 --check site-files.txt");

    assertEquals(0, ran.code(), ran.said());
    assertEquals(List.of(), ran.said().lines().filter(line -> !line.endsWith(": OK")).toList());
  }
}
