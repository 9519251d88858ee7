package ribband.past;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import ribband.journal.Phase;
import ribband.journal.Project;
import ribband.measure.Name;
import ribband.measure.Saying;
import ribband.measure.Unreadable;
import ribband.past.HoursCell.Unit;
import ribband.problem.Place;
import ribband.problem.Problems;

/**
 * Reads a spreadsheet of past sessions, row by row, and tells of every cell that cannot be read;
 * one use.
 */
public final class PastReader {
  /** The largest file that is read. */
  public static final int MOST_BYTES = SheetText.MOST_BYTES;

  private final String file;
  private final Header header;
  private final What dated;
  private final List<Row> rows;
  private final DateCells dates;
  private final RowReader cells;
  private final RunningSums sums;
  private final Problems problems;
  private final List<PastSession> sessions = new ArrayList<>();
  private final List<String> remarks = new ArrayList<>();
  private final List<Integer> bare = new ArrayList<>();
  private final Map<String, PastSession> named = new LinkedHashMap<>();

  private PastReader(
      String file,
      Header header,
      List<Row> rows,
      MoneyCell money,
      PhaseNames phases,
      Asked asked,
      Problems problems) {
    this.file = file;
    this.header = header;
    this.rows = rows;
    this.problems = problems;
    dated = header.columns().containsKey(What.DATE) ? What.DATE : What.ENTRY;
    dates = DateCells.of(written(dated, rows), asked.dates(), problems);
    cells = new RowReader(dated, dates, unit(), money, phases, problems);
    sums = new RunningSums(money, unit());
  }

  /**
   * Reads it.
   *
   * @param file as the builder named it
   * @param project whose currency and phases the cells are read by
   * @param phases the journal's
   */
  public static Past read(
      String file, byte[] bytes, Asked asked, Project project, List<Phase> phases) {
    Problems problems = new Problems();
    return SheetText.of(file, bytes, problems)
        .flatMap(text -> SheetRows.of(file, text, asked, problems))
        .flatMap(sheet -> over(file, sheet, asked, project, phases, problems))
        .map(PastReader::read)
        .orElseGet(() -> new Past(file, List.of(), List.of(), problems.sorted()));
  }

  private static Optional<PastReader> over(
      String file,
      SheetRows sheet,
      Asked asked,
      Project project,
      List<Phase> phases,
      Problems problems) {
    Optional<Header> found = Header.find(sheet.rows(), asked);
    if (found.isEmpty()) {
      problems.error(
          Place.of(file),
          "no row names a column for the date and one for what was done; name them date, hours,"
              + " phase, cost, note, or say where they are with --column date=A --column hours=B");
      return Optional.empty();
    }
    Header header = found.get();
    List<Row> rows =
        IntStream.range(header.row(), sheet.rows().size())
            .filter(i -> !SheetRows.isBlank(sheet.rows().get(i)))
            .mapToObj(i -> new Row(file, i + 1, header.columns(), sheet.rows().get(i)))
            .toList();
    MoneyCell money =
        MoneyCell.of(project.currency(), texts(What.COST, rows), texts(What.HOURS, rows));
    new HeaderCheck(file, header, asked, problems).tell(money);
    if (problems.errors() > 0) {
      // Cells of a column that may be another one would be told in vain.
      return Optional.empty();
    }
    PhaseNames names = new PhaseNames(project, phases, asked.phases());
    PastReader reader = new PastReader(file, header, rows, money, names, asked, problems);
    reader.remark(sheet);
    return Optional.of(reader);
  }

  private static List<String> texts(What what, List<Row> rows) {
    return rows.stream().map(row -> row.text(what)).toList();
  }

  private static List<DateCells.Written> written(What dated, List<Row> rows) {
    return rows.stream()
        .map(row -> new DateCells.Written(row.at(dated).orElseThrow(), row.text(dated)))
        .toList();
  }

  private Unit unit() {
    return Optional.ofNullable(header.columns().get(What.HOURS))
        .map(column -> column.heading().unit())
        .orElse(Unit.HOURS);
  }

  private void remark(SheetRows sheet) {
    remarks.addAll(header.told());
    if (header.row() > 1) {
      remarks.add("passed over what stands above the header, which is row " + header.row());
    }
    if (sheet.separator() != SheetRows.Separator.COMMA) {
      remarks.add("cells are parted by " + sheet.separator().plural());
    }
    if (unit() == Unit.MINUTES) {
      remarks.add("bare numbers of that column for the hours are minutes");
    }
    if (dates.haveShortYears()) {
      remarks.add("years of two figures are read as 20..");
    }
  }

  private Past read() {
    rows.forEach(this::read);
    remarkOfBare();
    Likes.warn(file, sessions, problems);
    if (sessions.isEmpty() && problems.errors() == 0) {
      problems.error(Place.of(file), "no row tells of a session; check that it is the right sheet");
    }
    List<PastSession> inOrder =
        sessions.stream().sorted(Comparator.comparing(PastSession::date)).toList();
    return new Past(file, inOrder, remarks, problems.sorted());
  }

  private void read(Row row) {
    if (refuseBeyondHeader(row)) {
      return;
    }
    if (row.isBlank()) {
      bare.add(row.number());
      return;
    }
    if (row.text(dated).isEmpty() || RunningSums.isNamed(row, dated)) {
      withoutDate(row);
      return;
    }
    cells.read(row).ifPresent(session -> add(row, session));
  }

  /** Words behind a comma that should have stood in quotes would be lost. */
  private boolean refuseBeyondHeader(Row row) {
    int width = header.headings().size();
    for (int i = width; i < row.cells().size() && header.row() > 0; i++) {
      if (!row.cells().get(i).isBlank()) {
        Unreadable why =
            new Unreadable(
                "stands behind the last heading",
                "put quotes round a cell that holds a separator, or give the column a heading");
        CellAt at = new CellAt(file, row.number(), i + 1, "");
        problems.addAll(List.of(at.error(row.cells().get(i).strip(), why)));
        return true;
      }
    }
    return false;
  }

  private void add(Row row, PastSession session) {
    if (!session.saysSomething()) {
      bare.add(row.number());
      return;
    }
    if (session.name().isPresent()) {
      PastSession first = named.putIfAbsent(Name.plain(session.name().get()), session);
      if (first != null) {
        problems.error(
            session.at().place(),
            session.at() + " names the same entry as " + first.at() + "; give one another name");
      }
    }
    sums.add(session);
    sessions.add(session);
  }

  private void withoutDate(Row row) {
    if (sums.areIn(row)) {
      remarks.add("passed over row " + row.number() + ", which adds up the rows above it");
      return;
    }
    CellAt at = row.at(dated).orElseThrow();
    if (RunningSums.isNamed(row, dated)) {
      // With a row in error the sums cannot agree.
      if (problems.errors() == 0) {
        problems.error(
            at.place(),
            at
                + " begins a row of sums, but the rows above come to "
                + sums.told()
                + "; mend a row, or take this one out");
      }
      return;
    }
    problems.error(at.place(), at + " has no date; write one, or take the row out");
  }

  private void remarkOfBare() {
    if (!bare.isEmpty()) {
      List<String> first = bare.stream().limit(5).map(n -> Integer.toString(n)).toList();
      remarks.add(
          "passed over "
              + Saying.counted(bare.size(), "row", "rows")
              + " with no hours, cost or note: "
              + (bare.size() > first.size()
                  ? String.join(", ", first) + " and " + (bare.size() - first.size()) + " more"
                  : Saying.list(first)));
    }
  }
}
