package ribband.press;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every change of the disk in its order: nothing is built on what a power cut could take back. */
class FlushTest {
  @TempDir Path folder;
  private Path site;

  @BeforeEach
  void nameTheSite() throws IOException {
    folder = folder.toRealPath();
    site = folder.resolve("out/site");
  }

  /** Tells the calls; each path by where it lies in the folder of the test. */
  private final class TellingDisk extends FailingDisk {
    private final List<String> told = new ArrayList<>();

    TellingDisk() {
      super(0, () -> {});
    }

    private void tell(String call, Path path) {
      told.add(call + " " + folder.relativize(path));
    }

    @Override
    public void makeFolder(Path made) throws IOException {
      tell("make", made);
      super.makeFolder(made);
    }

    @Override
    public void write(Path file, byte[] content) throws IOException {
      tell("write", file);
      super.write(file, content);
    }

    @Override
    public void force(Path path) throws IOException {
      tell("flush", path);
      super.force(path);
    }

    @Override
    public void move(Path from, Path to) throws IOException {
      tell("move", to);
      super.move(from, to);
    }

    @Override
    public void delete(Path path) throws IOException {
      tell("delete", path);
      super.delete(path);
    }
  }

  private List<String> publish(String... paths) throws Exception {
    TellingDisk disk = new TellingDisk();
    try (Press press = Press.open(site, folder.resolve("boat"), folder.resolve("home"), disk)) {
      Path print = Files.write(press.staging().resolve("print"), new byte[] {7});
      press.putFile("pictures/print.jpg", print);
      for (String path : paths) {
        press.put(path, path.getBytes(StandardCharsets.UTF_8));
      }
      press.finish();
    }
    // The first three make the folders of the work.
    return disk.told.subList(3, disk.told.size());
  }

  @Test
  void filesAreOnTheDiskBeforeTheListNamesThemAndFoldersBeforeTheLastList() throws Exception {
    assertEquals(
        List.of(
            "flush out/.ribband/staging/made/print",
            "write out/.ribband/staging/pages/1",
            "write out/.ribband/staging/pages/2",
            "make out/site",
            "flush out",
            "write out/.ribband/staging/pages/3",
            "move out/site/site-files.txt",
            "flush out/site",
            "make out/site/pictures",
            "move out/site/pictures/print.jpg",
            "make out/site/entries",
            "move out/site/entries/a.html",
            "make out/site",
            "move out/site/index.html",
            "flush out/site/entries",
            "flush out/site/pictures",
            "flush out/site",
            "write out/.ribband/staging/pages/4",
            "move out/site/site-files.txt",
            "flush out/site"),
        publish("index.html", "entries/a.html"));
  }

  @Test
  void whatIsRemovedIsFlushedInTheFolderItLeft() throws Exception {
    publish("index.html", "entries/a.html", "months/2026-03.html", "entries/b.html");
    assertEquals(
        List.of(
            "delete out/.ribband/staging/made/print",
            "make out/site",
            "flush out",
            "write out/.ribband/staging/pages/1",
            "move out/site/site-files.txt",
            "flush out/site",
            "flush out/site",
            "delete out/site/entries/a.html",
            "delete out/site/months/2026-03.html",
            "delete out/site/months",
            "flush out/site/entries",
            "flush out/site",
            "write out/.ribband/staging/pages/2",
            "move out/site/site-files.txt",
            "flush out/site"),
        publish("index.html", "entries/b.html"));
  }
}
