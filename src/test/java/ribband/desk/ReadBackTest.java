package ribband.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.journal.Journal;
import ribband.ledger.Ledger;
import ribband.ledger.Sums;
import ribband.past.Asked;
import ribband.past.Past;
import ribband.past.PastReader;
import ribband.problem.Problems;

/** What someone else writes while a sheet is brought is told apart from a fault of ours. */
class ReadBackTest {
  private static final String SHEET =
      "date,hours,phase,cost,note\n2026-03-14,2:45,planking,12.50,# fitted\n2026-03-15,,,,swept\n";

  @TempDir Path root;
  private Desk desk;
  private Journal before;
  private Bringing bringing;

  @BeforeEach
  void twoEntriesAreBrought() throws IOException {
    desk =
        new Desk(root)
            .with("project.yaml", "currency: USD", "phases: [lofting, planking]")
            .entry("2026/2026-03-01.md", "phase: lofting", "hours: 1", "cost: 3");
    before = desk.journal();
    byte[] bytes = SHEET.getBytes(StandardCharsets.UTF_8);
    Past past =
        PastReader.read("past.csv", bytes, Asked.NOTHING, before.project(), before.phases());
    bringing = Bringing.plan(before, past, Desk.NIGHT, new Problems());
    bringing.write(root, file -> {});
  }

  private ReadBack readBack() throws IOException {
    return ReadBack.of(bringing, before, desk.journal());
  }

  private static List<String> stems(ReadBack back) {
    return back.unlike().stream().map(entry -> entry.file().stem()).toList();
  }

  @Test
  void withNothingElseAllIsAsTold() throws IOException {
    assertEquals(new ReadBack(List.of(), true, true), readBack());
  }

  @Test
  void anotherEntryMayComeMeanwhile() throws IOException {
    desk.entry("2026/2026-03-16.md", "phase: planking", "hours: 2");
    assertEquals(new ReadBack(List.of(), false, false), readBack());
  }

  @Test
  void anotherFileOfNoFiguresIsAChangeToo() throws IOException {
    desk.with("2026/notes.txt", "to buy");
    assertEquals(new ReadBack(List.of(), true, false), readBack());
  }

  @Test
  void anEntryThatWasThereMayBeChangedOrTakenAway() throws IOException {
    desk.entry("2026/2026-03-01.md", "phase: lofting", "hours: 2", "cost: 3");
    assertEquals(new ReadBack(List.of(), false, false), readBack());
    Files.delete(root.resolve("2026/2026-03-01.md"));
    assertEquals(new ReadBack(List.of(), false, false), readBack());
  }

  @Test
  void theProjectMayBeChanged() throws IOException {
    desk.with("project.yaml", "name: Teal", "currency: USD", "phases: [lofting, planking]");
    assertEquals(new ReadBack(List.of(), true, false), readBack());
    desk.with("project.yaml", "currency: USD", "phases: [lofting]");
    ReadBack back = readBack();
    assertEquals(List.of("2026-03-14-planking"), stems(back));
    assertFalse(back.isUntouched());
  }

  @Test
  void aBroughtEntryThatSaysSomethingElseIsNamed() throws IOException {
    for (String other :
        List.of(
            "---\nphase: planking\nhours: 2:44\ncost: 12.50\n---\n\\# fitted\n",
            "---\nphase: lofting\nhours: 2:45\ncost: 12.50\n---\n\\# fitted\n",
            "---\nphase: planking\nhours: 2:45\ncost: 12.51\n---\n\\# fitted\n",
            "---\nphase: planking\nhours: 2:45\ncost: 12.50\n---\nFitted.\n")) {
      Files.writeString(root.resolve("2026/2026-03-14-planking.md"), other);
      ReadBack back = readBack();
      assertEquals(List.of("2026-03-14-planking"), stems(back), other);
      assertFalse(back.isUntouched(), other);
    }
  }

  /** The same said in other words is as good. */
  @Test
  void aBroughtEntryMayBeWrittenAnew() throws IOException {
    String same = "---\nhours: 2.75\nphase: planking\ncost: 12.5\n---\n\n\\# fitted\n";
    Files.writeString(root.resolve("2026/2026-03-14-planking.md"), same);
    assertEquals(new ReadBack(List.of(), true, false), readBack());
  }

  @Test
  void aBroughtEntryThatIsGoneIsNamed() throws IOException {
    Files.delete(root.resolve("2026/2026-03-15.md"));
    ReadBack back = readBack();
    assertEquals(List.of("2026-03-15"), stems(back));
    assertTrue(back.addsUp());
    assertFalse(back.isUntouched());
  }

  /** Two readings of one journal, with all that entries may hold, are equal. */
  @Test
  void theSampleJournalIsUntouchedByReadingItAgain() throws IOException {
    Desk sample = new Desk(Path.of("sample-journal"));
    Journal once = sample.journal();
    Bringing nothing = new Bringing(List.of(), 0, Ledger.of(once).whole(), Sums.NONE);
    assertEquals(new ReadBack(List.of(), true, true), ReadBack.of(nothing, once, sample.journal()));
  }
}
