package ribband.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder that the builder named is whole or not there, whatever the disk does. */
class LoneFolderTest {
  /** No process has so high a number. */
  private static final String OF_A_KILLED_RUN = ".ribband-999999999999999.new";

  private static final String WHOLE =
      "{papers=folder, papers/page.html=the page, papers/pictures=folder,"
          + " papers/pictures/a.jpg=a print, papers/receipts=folder, papers/receipts/001.txt=paid}";

  @TempDir private Path scratch;
  private Path desk;
  private Path receipt;

  @BeforeEach
  void lay() throws IOException {
    desk = Files.createDirectory(scratch.resolve("desk"));
    receipt = Files.writeString(scratch.resolve("receipt.txt"), "paid");
  }

  private String there() throws IOException {
    TreeMap<String, String> there = new TreeMap<>();
    try (Stream<Path> files = Files.walk(desk)) {
      for (Path file : files.filter(p -> !p.equals(desk) && Files.exists(p)).toList()) {
        there.put(
            desk.relativize(file).toString(),
            Files.isDirectory(file) ? "folder" : Files.readString(file));
      }
    }
    return there.toString();
  }

  private void write(Disk disk) throws IOException, PressRefused {
    try (LoneFolder folder = LoneFolder.at(desk.resolve("papers"), disk)) {
      Path made = Files.writeString(folder.workshop().resolve("a-960.jpg"), "a print");
      Files.writeString(folder.workshop().resolve("a-480.jpg"), "another");
      folder.putFile("pictures/a.jpg", made);
      folder.copy("receipts/001.txt", receipt);
      folder.put("page.html", "the page".getBytes(StandardCharsets.UTF_8));
      folder.finish();
    }
  }

  @Test
  void aNewFolderAndAnEmptyOneAreFilled() throws Exception {
    write(new RealDisk());
    assertEquals(WHOLE, there());
    desk = Files.createDirectories(scratch.resolve("other/papers")).getParent();
    write(new RealDisk());
    assertEquals(WHOLE, there());
  }

  @Test
  void withoutFinishNothingIsLeft() throws Exception {
    try (LoneFolder folder = LoneFolder.at(desk.resolve("papers"))) {
      assertEquals("{}", there());
      folder.put("a/b/page.html", new byte[1]);
    }
    assertEquals("{}", there());
  }

  @Test
  void afterAFailureAtAnyCallNothingIsLeft() throws Exception {
    FailingDisk unhurt = FailingDisk.never();
    write(unhurt);
    assertEquals(WHOLE, there());
    int last = unhurt.calls();
    assertTrue(last > 12, "calls " + last);
    Waiting.remove(desk.resolve("papers"), new RealDisk());
    for (int call = 1; call < last; call++) {
      FailingDisk disk = new FailingDisk(call, () -> {});
      String message = assertThrows(IOException.class, () -> write(disk)).getMessage();
      assertEquals(
          "cannot write " + desk.toRealPath().resolve("papers") + ": No space left on device",
          message);
      assertEquals("{}", there(), "call " + call);
    }
    // Only that its name is on the disk could not be made sure of.
    assertThrows(IOException.class, () -> write(new FailingDisk(last, () -> {})));
    assertEquals(WHOLE, there());
  }

  @Test
  void killedAtAnyCallItIsWholeOrNotThereAndTheNextRunClearsUp() throws Exception {
    FailingDisk unhurt = FailingDisk.never();
    write(unhurt);
    for (int call = 1; call <= unhurt.calls(); call++) {
      Waiting.remove(desk.resolve("papers"), new RealDisk());
      assertEquals("{}", there(), "call " + call);
      Disk disk = new Killed(call);
      assertThrows(IllegalStateException.class, () -> write(disk), "call " + call);
      String left = there();
      assertTrue(left.equals(WHOLE) || !left.contains("papers"), "call " + call + ": " + left);
      // The dead process had another number than this one.
      Path own = Waiting.in(desk);
      if (Files.exists(own)) {
        Files.move(own, desk.resolve(OF_A_KILLED_RUN));
      }
      if (left.equals(WHOLE)) {
        LoneFile.write(
            desk.resolve("papers/page.html"), "the page".getBytes(StandardCharsets.UTF_8));
      } else {
        write(new RealDisk());
      }
      assertEquals(WHOLE, there(), "call " + call);
    }
  }

  /** A disk whose process is killed: no call comes after that one. */
  private static final class Killed extends FailingDisk {
    private boolean dead;

    Killed(int call) {
      super(
          call,
          () -> {
            throw new IllegalStateException("killed");
          });
    }

    private void live() {
      if (dead) {
        throw new IllegalStateException("killed");
      }
      dead = true;
    }

    @Override
    public void makeFolder(Path folder) throws IOException {
      live();
      super.makeFolder(folder);
      dead = false;
    }

    @Override
    public void write(Path file, byte[] content) throws IOException {
      live();
      super.write(file, content);
      dead = false;
    }

    @Override
    public void copy(FileChannel content, Path file) throws IOException {
      live();
      super.copy(content, file);
      dead = false;
    }

    @Override
    public void force(Path path) throws IOException {
      live();
      super.force(path);
      dead = false;
    }

    @Override
    public void move(Path from, Path to) throws IOException {
      live();
      super.move(from, to);
      dead = false;
    }

    @Override
    public void delete(Path path) throws IOException {
      live();
      super.delete(path);
      dead = false;
    }
  }

  @Test
  void whatAKilledRunLeftGoesAndWhatARunAtWorkHasStays() throws Exception {
    long parent = ProcessHandle.current().parent().map(ProcessHandle::pid).orElse(1L);
    String atWork = ".ribband-" + parent + ".new";
    Files.createDirectories(desk.resolve(OF_A_KILLED_RUN).resolve("pictures"));
    Files.writeString(desk.resolve(OF_A_KILLED_RUN).resolve("pictures/half.jpg"), "half");
    Files.createDirectories(desk.resolve(atWork));
    LoneFile.write(desk.resolve("clamps.ics"), new byte[] {'x'});
    assertEquals("{" + atWork + "=folder, clamps.ics=x}", there());
  }

  @Test
  void whatIsThereIsRefusedAndStays() throws Exception {
    Files.createDirectories(desk.resolve("full"));
    Files.writeString(desk.resolve("full/mine.txt"), "mine");
    Files.writeString(desk.resolve("file"), "mine");
    Files.createDirectories(desk.resolve("site"));
    Files.writeString(desk.resolve("site/site-files.txt"), "");
    Files.createDirectories(desk.resolve(".ribband"));
    Files.createSymbolicLink(desk.resolve("nowhere"), desk.resolve("none"));
    String before = there();

    String full = "%s is there and is no empty folder; choose an empty or a new folder";
    String site =
        "%s lies in a site, or in a work folder of the tool; choose a folder outside, as what lies"
            + " in a site is published";
    refused("full", full);
    refused("file", full);
    refused("", full);
    refused("site/papers", site);
    refused("site", full);
    refused(".ribband/papers", site);
    refused(
        "none/papers",
        "%s is to lie in a folder that is not there; make that folder first, or choose another");
    refused("nowhere", "%s is a link that leads nowhere; remove it or mend it");
    assertEquals(before, there());
  }

  private void refused(String name, String told) {
    Path folder = desk.resolve(name);
    assertEquals(
        "the output " + told.replace("%s", folder.toString()),
        assertThrows(PressRefused.class, () -> LoneFolder.at(folder)).getMessage());
  }

  @Test
  void aFileThatCannotBeReadIsNamed() throws Exception {
    Path none = scratch.resolve("none.txt");
    try (LoneFolder folder = LoneFolder.at(desk.resolve("papers"))) {
      assertEquals(
          "cannot read " + none + ": " + none + " is not there",
          assertThrows(IOException.class, () -> folder.copy("a.txt", none)).getMessage());
    }
    assertEquals("{}", there());
  }

  @Test
  void largeFilesAreCopiedToTheLastByte() throws Exception {
    byte[] large = new byte[(1 << 24) + 3];
    large[large.length - 1] = 7;
    Files.write(receipt, large);
    try (LoneFolder folder = LoneFolder.at(desk.resolve("papers"))) {
      folder.copy("a.pdf", receipt);
      folder.finish();
    }
    assertEquals(-1, Files.mismatch(receipt, desk.resolve("papers/a.pdf")));
    assertEquals(List.of("a.pdf"), List.of(desk.resolve("papers").toFile().list()));
  }
}
