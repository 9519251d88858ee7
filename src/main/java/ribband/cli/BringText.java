package ribband.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import ribband.desk.Bringing;
import ribband.desk.BroughtEntry;
import ribband.journal.Journal;
import ribband.ledger.Sums;
import ribband.measure.Saying;
import ribband.past.Past;
import ribband.past.PastSession;
import ribband.problem.OneLine;
import ribband.problem.Paragraph;

/** Tells what bringing a spreadsheet comes to. */
final class BringText {
  private static final int FIRST = 3;

  private final PrintWriter out;
  private final Journal journal;

  BringText(PrintWriter out, Journal journal) {
    this.out = out;
    this.journal = journal;
  }

  /** How the spreadsheet was read. */
  void tellReading(Past past) {
    List<PastSession> sessions = past.sessions();
    PastSession first = sessions.get(0);
    PastSession last = sessions.get(sessions.size() - 1);
    out.print(
        Paragraph.of(
            past.file() + ": ",
            2,
            Saying.counted(sessions.size(), "row", "rows")
                + " from "
                + Saying.day(first.date())
                + " through "
                + Saying.day(last.date())));
    past.remarks().forEach(remark -> out.print(Paragraph.of("  ", 4, remark)));
    out.println();
  }

  void tellTotals(Sums before, Sums brought) throws IOException {
    SheetTable.write(BringSheet.of(journal, before, brought), out);
    out.println();
    out.println(
        "sessions: "
            + Saying.count(before.sessions())
            + " before, "
            + Saying.count(brought.sessions())
            + " brought, "
            + Saying.count(before.sessions() + brought.sessions())
            + " after");
    out.println();
  }

  /** Which files are written, the first and the last of them. */
  void tellFiles(Bringing bringing) {
    if (bringing.already() > 0) {
      out.println(
          Saying.counted(bringing.already(), "session is", "sessions are")
              + " in the journal already and "
              + (bringing.already() == 1 ? "is" : "are")
              + " passed over");
    }
    List<String> files =
        bringing.entries().stream()
            .map(BroughtEntry::file)
            .map(file -> "  " + OneLine.of(file.path()))
            .toList();
    if (files.isEmpty()) {
      out.println("there is nothing to write");
      return;
    }
    out.println(Saying.counted(files.size(), "entry", "entries") + ":");
    if (files.size() <= 2 * FIRST + 1) {
      files.forEach(out::println);
      return;
    }
    files.subList(0, FIRST).forEach(out::println);
    out.println("  and " + (files.size() - 2 * FIRST) + " more, to");
    files.subList(files.size() - FIRST, files.size()).forEach(out::println);
  }
}
