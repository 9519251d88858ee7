package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory;

/** Links, pipes, odd names and odd orders of files, from the journal's folders to the pages. */
class StrangeFilesTest {
  private static final String PROJECT = "name: Teal\nphases: [planking]\n";
  private static final String NIGHT = "---\nphase: planking\nhours: 1\n---\n";

  @TempDir private Path folder;
  @TempDir private Path other;

  private Path own(String name) throws IOException {
    return Files.createDirectories(folder.resolve("2026-03-14-a")).resolve(name);
  }

  private void strangeFiles() throws IOException, InterruptedException {
    FullJournal.picture(other.resolve("secret.png"), 300, 200);
    Files.createSymbolicLink(own("passwd.jpg"), Path.of("/etc/passwd"));
    Files.createSymbolicLink(own("secret.png"), other.resolve("secret.png"));
    Files.createSymbolicLink(own("folder"), other);
    Files.createSymbolicLink(own("loop.jpg"), Path.of("loop.jpg"));
    Files.createDirectory(own("album.jpg"));
    assertEquals(0, new ProcessBuilder("mkfifo", own("pipe.jpg").toString()).start().waitFor());
  }

  @Test
  void whatIsNoPlainFileIsToldWhereItIsNamed() throws IOException, InterruptedException {
    strangeFiles();
    new InMemory(folder)
        .with("project.yaml", PROJECT)
        .with(
            "2026-03-14-a.md",
            """
            ---
            phase: planking
            hours: 1
            photos: [passwd.jpg, folder/secret.png, loop.jpg, pipe.jpg, album.jpg]
            ---
            ![x](secret.png)
            """);

    InMemory.Run run = new InMemory(folder).run("publish");

    assertEquals(1, run.code());
    assertEquals(
        """
        2026-03-14-a.md:4:10: error: picture "passwd.jpg" is no plain file of the journal; copy the picture itself into the journal
        2026-03-14-a.md:4:22: error: picture "folder/secret.png" is no plain file of the journal; copy the picture itself into the journal
        2026-03-14-a.md:4:41: error: picture "loop.jpg" is no plain file of the journal; copy the picture itself into the journal
        2026-03-14-a.md:4:51: error: picture "pipe.jpg" is no plain file of the journal; copy the picture itself into the journal
        2026-03-14-a.md:4:61: error: picture "album.jpg" is no plain file of the journal; copy the picture itself into the journal
        2026-03-14-a.md:6:1: error: picture "secret.png" is no plain file of the journal; copy the picture itself into the journal
        6 errors in 1 entry, nothing was published
        """,
        run.err());
    assertFalse(Files.exists(folder.resolve("site")));
  }

  @Test
  void aGalleryPassesOverWhatIsNoPlainFile() throws IOException, InterruptedException {
    strangeFiles();
    FullJournal.picture(own("plain.png"), 401, 300);
    new InMemory(folder).with("project.yaml", PROJECT).with("2026-03-14-a.md", NIGHT);

    InMemory.Run run = new InMemory(folder).run("publish");

    assertEquals(0, run.code(), run.err());
    Published site = new Published(folder.resolve("site"));
    assertEquals(
        List.of("401"), site.page("pictures.html").select(".prints img").eachAttr("width"));
    assertEquals(List.of(), site.filesWith("root:x:0"));
  }

  @Test
  void aPictureUnderAWrongNameIsShownByItsContent() throws IOException {
    new InMemory(folder).with("project.yaml", PROJECT).with("2026-03-14-a.md", NIGHT);
    FullJournal.picture(own("drawing.png"), 401, 300);
    Files.move(own("drawing.png"), own("drawing.jpg"));
    FullJournal.picture(own("photo.jpg"), 402, 300);
    Files.move(own("photo.jpg"), own("photo.png"));

    Published site = new Builder(folder).publish();

    assertEquals(
        Set.of("401", "402"),
        Set.copyOf(site.page("pictures.html").select(".prints img").eachAttr("width")));
  }

  @Test
  void everyAddressOfOddNamesIsFoundByAServer() throws IOException, InterruptedException {
    List<String> names =
        List.of(
            "two words",
            "50% off",
            "c#d",
            "e?f",
            "it's \"so\"",
            "--leading",
            "a&b<i>c",
            "{{ name }}",
            "semi;colon",
            "Spantenriß 舟",
            "é".repeat(100));
    InMemory journal = new InMemory(folder).with("project.yaml", PROJECT);
    for (String name : names) {
      journal.with("2026-03-14-" + name + ".md", NIGHT.replace("1", "0:30"));
    }
    FullJournal.picture(folder.resolve("2026-03-14-50% off/a #1? b.png"), 403, 300);
    new Builder(folder).publish();

    Set<URI> seen = visit(folder.resolve("site"));

    assertTrue(
        seen.stream().filter(uri -> uri.getPath().startsWith("/entries/")).count() >= names.size(),
        seen.toString());
    assertTrue(seen.stream().anyMatch(uri -> uri.getPath().endsWith("-403.jpg")), seen.toString());
  }

  /** Asks a server for the first page and all that it leads to; each has to be there. */
  private static Set<URI> visit(Path site) throws IOException, InterruptedException {
    HttpServer server =
        HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.createContext(
        "/",
        exchange -> {
          try (exchange) {
            Path file = site.resolve(exchange.getRequestURI().getPath().substring(1));
            boolean there = Files.isRegularFile(file);
            exchange.sendResponseHeaders(there ? 200 : 404, there ? Files.size(file) : -1);
            if (there) {
              Files.copy(file, exchange.getResponseBody());
            }
          }
        });
    server.start();
    try {
      URI root = URI.create("http://127.0.0.1:" + server.getAddress().getPort() + "/");
      HttpClient client = HttpClient.newHttpClient();
      Set<URI> seen = new TreeSet<>();
      List<URI> waiting = new ArrayList<>(List.of(root.resolve("index.html")));
      while (!waiting.isEmpty()) {
        URI address = waiting.remove(0);
        if (!root.getAuthority().equals(address.getAuthority()) || !seen.add(address)) {
          continue;
        }
        HttpResponse<String> page =
            client.send(
                HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofString());
        assertEquals(200, page.statusCode(), address.toString());
        if (address.getPath().endsWith(".html")) {
          Jsoup.parse(page.body(), address.toString())
              .select("[href], [src]")
              .forEach(
                  link -> {
                    String target = link.absUrl(link.hasAttr("href") ? "href" : "src");
                    waiting.add(URI.create(target.replaceFirst("#.*", "")));
                  });
        }
      }
      return seen;
    } finally {
      server.stop(0);
    }
  }

  @Test
  void theOrderInWhichFilesWereMadeMakesNoDifference() throws IOException {
    Map<String, String> first = Map.of();
    for (int seed = 0; seed < 20; seed++) {
      List<Integer> nights = new ArrayList<>(List.of(1, 2, 3, 4, 5, 6, 7, 8, 9));
      Collections.shuffle(nights, new Random(seed));
      Path journal = other.resolve("journal-" + seed);
      InMemory laid = new InMemory(Files.createDirectory(journal)).with("project.yaml", PROJECT);
      for (int night : nights) {
        String file = night % 3 == 0 ? "b/2026-02-01-%d.md" : "A/2026-02-01-x%d.md";
        laid.with(file.replace("%d", "" + night), NIGHT + "Night " + night + "\n");
      }
      Map<String, String> site = new Builder(journal).publish().hashes();
      first = seed == 0 ? site : first;
      assertEquals(first, site, "seed " + seed);
    }
  }
}
