package ribband.past;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import ribband.measure.Name;
import ribband.measure.Saying;
import ribband.problem.OneLine;

/**
 * The row that names the columns, and which of them are taken for what.
 *
 * @param row 1-based; 0 where no row names them
 * @param headings one a column
 * @param columns those taken
 * @param doubts what no column is taken for as several would do: their indexes
 */
record Header(
    int row, List<Heading> headings, Map<What, Column> columns, Map<What, List<Integer>> doubts) {
  private static final int LOOKED_AT = 50;
  static final String NONE = "none";

  Header {
    headings = List.copyOf(headings);
    columns = Map.copyOf(columns);
    doubts = Map.copyOf(doubts);
  }

  /** The first row that names a date and one thing more; else what was asked for by letters. */
  static Optional<Header> find(List<List<String>> rows, Asked asked) {
    List<Header> tops =
        IntStream.range(0, Math.min(rows.size(), LOOKED_AT))
            .filter(i -> !SheetRows.isBlank(rows.get(i)))
            .mapToObj(i -> of(i + 1, rows.get(i), asked))
            .filter(Header::suffices)
            .toList();
    return tops.stream()
        .filter(header -> header.known() > 0)
        .findFirst()
        .or(() -> tops.stream().findFirst().map(header -> header.ifNoDate(rows)));
  }

  private static Header of(int row, List<String> cells, Asked asked) {
    List<Heading> headings = cells.stream().map(Heading::of).toList();
    Map<What, Column> columns = new EnumMap<>(What.class);
    Map<What, List<Integer>> doubts = new EnumMap<>(What.class);
    asked
        .columns()
        .forEach(
            (what, name) ->
                index(name, headings)
                    .ifPresent(i -> columns.put(what, new Column(what, i, headings.get(i)))));
    for (int fit = 3; fit > 0; fit--) {
      for (What what : What.values()) {
        if (!columns.containsKey(what) && !asked.columns().containsKey(what)) {
          take(what, fit, headings, columns, doubts);
        }
      }
    }
    // A date tells the day better than an entry's name, which then is but a number or a word.
    if (columns.containsKey(What.DATE) && !asked.columns().containsKey(What.ENTRY)) {
      columns.remove(What.ENTRY);
    }
    return new Header(row, headings, columns, doubts);
  }

  private static void take(
      What what,
      int fit,
      List<Heading> headings,
      Map<What, Column> columns,
      Map<What, List<Integer>> doubts) {
    List<Integer> fitting =
        IntStream.range(0, headings.size())
            .filter(i -> headings.get(i).fit(what) == fit)
            .filter(i -> columns.values().stream().noneMatch(column -> column.index() == i))
            .boxed()
            .toList();
    if (fitting.size() == 1 && !doubts.containsKey(what)) {
      int index = fitting.get(0);
      columns.put(what, new Column(what, index, headings.get(index)));
    } else if (!fitting.isEmpty()) {
      doubts.putIfAbsent(what, fitting);
    }
  }

  /** The column that a heading, a letter or a number names; empty also for {@code none}. */
  private static Optional<Integer> index(String name, List<Heading> headings) {
    String wanted = Name.fold(name);
    for (int i = 0; i < headings.size(); i++) {
      if (!headings.get(i).text().isEmpty() && Name.fold(headings.get(i).text()).equals(wanted)) {
        return Optional.of(i);
      }
    }
    if (wanted.equals(NONE)) {
      return Optional.empty();
    }
    String letters = name.strip().toUpperCase(Locale.ROOT);
    return IntStream.range(0, headings.size())
        .filter(
            i -> CellAt.letters(i + 1).equals(letters) || Integer.toString(i + 1).equals(letters))
        .boxed()
        .findFirst();
  }

  private boolean suffices() {
    int found =
        columns.size() + doubts.size() + (headings.stream().anyMatch(Heading::isClock) ? 1 : 0);
    boolean dated =
        columns.containsKey(What.DATE)
            || columns.containsKey(What.ENTRY)
            || doubts.containsKey(What.DATE);
    return dated && found > 1;
  }

  /** How many columns have a name that we know. */
  int known() {
    return doubts.size()
        + (int)
            columns.values().stream()
                .filter(column -> column.heading().fit(column.what()) > 0)
                .count();
  }

  /** Columns named by letters may stand over no heading at all. */
  private Header ifNoDate(List<List<String>> rows) {
    Column dated = columns.getOrDefault(What.DATE, columns.get(What.ENTRY));
    boolean isDate = dated != null && DateForm.begins(rows.get(row - 1).get(dated.index()));
    if (!isDate) {
      return this;
    }
    Heading bare = Heading.of("");
    Map<What, Column> bareColumns = new EnumMap<>(What.class);
    columns.forEach(
        (what, column) -> bareColumns.put(what, new Column(what, column.index(), bare)));
    return new Header(0, headings.stream().map(h -> bare).toList(), bareColumns, Map.of());
  }

  /** {@code B "Hrs"}. */
  static String named(int index, Heading heading) {
    String letters = CellAt.letters(index + 1);
    return heading.text().isEmpty() ? letters : letters + " " + OneLine.quote(heading.text());
  }

  /** What was taken for what, and what was not used, a line each. */
  List<String> told() {
    List<String> lines = new ArrayList<>();
    List<String> taken =
        columns.values().stream()
            .sorted((a, b) -> Integer.compare(a.index(), b.index()))
            .map(Column::told)
            .toList();
    lines.add("took column " + Saying.list(taken));
    List<String> unused =
        IntStream.range(0, headings.size())
            .filter(i -> !headings.get(i).text().isEmpty())
            .filter(i -> columns.values().stream().noneMatch(column -> column.index() == i))
            .mapToObj(i -> named(i, headings.get(i)))
            .toList();
    if (!unused.isEmpty()) {
      lines.add("did not use column " + Saying.list(unused));
    }
    return lines;
  }
}
