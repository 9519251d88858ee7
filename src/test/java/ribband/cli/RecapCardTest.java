package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory.Run;
import ribband.whole.FullJournal;

/** The two pictures that {@code recap --card} draws: where they go, and what they never replace. */
class RecapCardTest {
  private static final String TEXT_OF_MARCH = "Siskin, March 2026\n";

  @TempDir Path journal;
  @TempDir Path beside;
  private InMemory memory;

  @BeforeEach
  void writeJournal() throws IOException {
    memory =
        new InMemory(journal)
            .with("project.yaml", "name: Siskin\ncurrency: EUR\n")
            .with(
                "2026-03-14-plank.md",
                "---\nphase: planking\nhours: 2:45\ncost: 12.50\nphotos: [{file: plank.png}]\n---\nOne plank.\n")
            .with("2026-04-02.md", "---\nphase: planking\nhours: 1\n---\nSwept.\n");
    FullJournal.picture(journal.resolve("2026-03-14-plank/plank.png"), 700, 400);
  }

  private Run recap(String... words) {
    List<String> all = new ArrayList<>(List.of("recap"));
    all.addAll(List.of(words));
    return memory.run(all.toArray(String[]::new));
  }

  private List<String> filesBeside() throws IOException {
    try (Stream<Path> files = Files.list(beside)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  private byte[] bytes(String file) throws IOException {
    return Files.readAllBytes(beside.resolve(file));
  }

  @Test
  void twoFilesAreDrawnAndTheTextIsTold() throws IOException {
    Run run = recap("2026-03", "--card", "--into", beside.toString());
    assertEquals(0, run.code(), run::err);
    assertEquals(TEXT_OF_MARCH, run.out().lines().findFirst().orElseThrow() + "\n");
    assertEquals(
        "drawn: "
            + beside.resolve("siskin-2026-03-card.png")
            + "\ndrawn: "
            + beside.resolve("siskin-2026-03-frame.png")
            + "\n",
        run.err());
    List<String> sizes = new ArrayList<>();
    for (String file : filesBeside()) {
      BufferedImage card = ImageIO.read(beside.resolve(file).toFile());
      sizes.add(file + " " + card.getWidth() + " x " + card.getHeight());
    }
    assertEquals(
        List.of("siskin-2026-03-card.png 1200 x 630", "siskin-2026-03-frame.png 1920 x 1080"),
        sizes);
  }

  @Test
  void withoutAFolderTheyLieWhereTheBuilderIs() throws IOException {
    memory.with("project.yaml", "name: 'Äsche & Co. / 2'\ncurrency: EUR\n");
    StringWriter told = new StringWriter();
    Surroundings around = new InMemory(beside).surroundings(new StringWriter(), told);
    int code =
        new Ribband(around).run("recap", journal.toString(), "--card", "--year", "2026", "-q");
    assertEquals("0 ", code + " " + told);
    assertEquals(List.of("äsche-co-2-2026-card.png", "äsche-co-2-2026-frame.png"), filesBeside());
  }

  /** A picture in an entry's folder is shown by the next publish, and a card tells amounts. */
  @Test
  void noneIsWrittenIntoTheJournal() throws IOException {
    Path boat = Files.createDirectories(beside.resolve("boat/2026/2026-03-14-plank"));
    InMemory inBoat = new InMemory(beside.resolve("boat"));
    inBoat.with("project.yaml", "name: Siskin\nphases: [planking]\n");
    inBoat.with("2026/2026-03-14-plank.md", "---\nphase: planking\nhours: 1\n---\nOne.\n");
    String card = beside.toRealPath().resolve("siskin-2026-03-card.png").toString();
    for (Path here : List.of(beside.resolve("boat"), boat)) {
      Run run = new InMemory(here).run("recap", "2026-03", "--card");
      assertEquals(0, run.code(), run::err);
      assertEquals("drawn: " + card, run.err().lines().findFirst().orElseThrow());
    }
    assertEquals(
        List.of("boat", "siskin-2026-03-card.png", "siskin-2026-03-frame.png"), filesBeside());
    assertEquals(
        new Run(
            2,
            "",
            "ribband: 2026 is a part of the journal, where a card might be taken for one of its"
                + " pictures; name a folder outside with --into\n"),
        inBoat.run("recap", "2026-03", "--card", "--into", "2026"));
  }

  @Test
  void aBoatWithoutALetterIsCalledBoat() throws IOException {
    memory.with("project.yaml", "name: '*'\ncurrency: EUR\n");
    assertEquals(0, recap("2026-03", "--card", "-q", "--into", beside.toString()).code());
    assertEquals(List.of("boat-2026-03-card.png", "boat-2026-03-frame.png"), filesBeside());
  }

  @Test
  void aCardOfOursIsDrawnAnew() throws IOException {
    String[] words = {"2026-03", "--card", "-q", "--into", beside.toString()};
    assertEquals(0, recap(words).code());
    byte[] first = bytes("siskin-2026-03-card.png");
    assertEquals(0, recap(words).code());
    assertArrayEquals(first, bytes("siskin-2026-03-card.png"));
    memory.with("2026-03-20.md", "---\nphase: planking\nhours: 3\n---\nMore.\n");
    assertEquals(0, recap(words).code());
    assertFalse(Arrays.equals(first, bytes("siskin-2026-03-card.png")));
    assertEquals(List.of("siskin-2026-03-card.png", "siskin-2026-03-frame.png"), filesBeside());
  }

  @Test
  void aFileOfSomebodyElseStaysAndNothingIsWritten() throws IOException {
    Path frame = beside.resolve("siskin-2026-03-frame.png");
    FullJournal.picture(frame, 20, 20);
    byte[] theirs = Files.readAllBytes(frame);
    Run run = recap("2026-03", "--card", "--into", beside.toString());
    assertEquals(
        new Run(
            2,
            "",
            "ribband: "
                + frame
                + " is no card that ribband drew and stays as it is; name another folder with"
                + " --into\n"),
        run);
    assertArrayEquals(theirs, Files.readAllBytes(frame));
    assertEquals(List.of("siskin-2026-03-frame.png"), filesBeside());
    Files.delete(frame);
    Files.createSymbolicLink(frame, journal.resolve("2026-03-14-plank/plank.png"));
    assertEquals(2, recap("2026-03", "--card", "--into", beside.toString()).code());
  }

  @Test
  void aFolderThatIsNotThereIsMadeUnlessItIsAPartOfTheJournal() throws IOException {
    Path deep = beside.resolve("posts/march");
    assertEquals(0, recap("2026-03", "--card", "--into", deep.toString()).code());
    assertTrue(Files.exists(deep.resolve("siskin-2026-03-card.png")));
    Path inside = journal.resolve("posts/march");
    assertEquals(2, recap("2026-03", "--card", "--into", inside.toString()).code());
    assertFalse(Files.exists(journal.resolve("posts")));
  }

  @Test
  void aFileIsNoFolderForCards() throws IOException {
    Path none = Files.writeString(beside.resolve("none"), "a file");
    assertEquals(
        new Run(3, "", "ribband: cannot write into " + none + ": it is no folder; name one\n"),
        recap("2026-03", "--card", "--into", none.toString()));
  }

  @Test
  void aFolderWithoutACardIsAskedAbout() {
    assertEquals(
        new Run(2, "", "ribband: --into is the folder of cards; write --card too\n"),
        recap("2026-03", "--into", beside.toString()));
  }

  @Test
  void hiddenMoneyIsNotOnTheCard() throws IOException {
    String[] words = {"2026-03", "--card", "-q", "--into", beside.toString()};
    assertEquals(0, recap(words).code());
    byte[] shown = bytes("siskin-2026-03-card.png");
    String hidden = "name: Siskin\ncurrency: EUR\nsite: {show money: false}\n";
    memory.with("project.yaml", hidden);
    assertEquals(0, recap(words).code());
    byte[] without = bytes("siskin-2026-03-card.png");
    assertFalse(Arrays.equals(shown, without));
    // What was never spent cannot be seen: the two are one picture, to the byte.
    memory.with(
        "2026-03-14-plank.md",
        "---\nphase: planking\nhours: 2:45\nphotos: [{file: plank.png}]\n---\nOne plank.\n");
    assertEquals(0, recap(words).code());
    assertArrayEquals(without, bytes("siskin-2026-03-card.png"));
    memory.with("project.yaml", "name: Siskin\ncurrency: EUR\n");
    assertEquals(0, recap(words).code());
    assertArrayEquals(without, bytes("siskin-2026-03-card.png"));
  }

  @Test
  void aJournalWithErrorsGetsNoCard() throws IOException {
    memory.with("2026-03-15.md", "---\nhours: 2;45\n---\n");
    Run run = recap("2026-03", "--card", "--into", beside.toString());
    assertEquals(1, run.code());
    assertEquals("", run.out());
    assertEquals(List.of(), filesBeside());
  }
}
