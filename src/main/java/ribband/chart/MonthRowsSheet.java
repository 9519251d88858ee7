package ribband.chart;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Draws one chart of month rows for one width.
 *
 * @param months at least one, without gaps
 */
record MonthRowsSheet(
    Weight all,
    List<MonthRows.Phase> phases,
    List<MonthRows.Month> months,
    Optional<YearMonth> now,
    Yardstick yardstick) {
  private static final int MOST_NAME = 240;
  private static final int WIDEST_SLOT = 92;
  private static final int WIDEST_BAR = 40;
  private static final int FOOT = 44;

  /** Over the highest bar of a row, for its figure. */
  private static final int HEAD = 18;

  private static final int BETWEEN = 8;

  /** The names of the first and the last month stand out of their bars. */
  private static final int PHONE_MARGIN = 14;

  /** One row's figures. */
  private record Series(String name, Weight weight, List<Long> amounts) {
    private long total() {
      return amounts.stream().reduce(0L, Math::addExact);
    }

    private long highest() {
      return amounts.stream().reduce(0L, Math::max);
    }

    private long lowest() {
      return amounts.stream().reduce(0L, Math::min);
    }
  }

  /** Where the months stand. */
  private record Stations(int left, double slot) {
    private int at(int month) {
      return (int) Math.round(left + slot * month + slot / 2);
    }
  }

  Table table() {
    List<String> heads = new ArrayList<>(phases.stream().map(MonthRows.Phase::name).toList());
    heads.add("All");
    List<Table.Row> rows =
        months.stream()
            .map(month -> row(MonthNames.full(month.month()), month.amounts(), month.all()))
            .toList();
    List<Long> totals =
        IntStream.range(0, phases.size()).mapToObj(phase -> series(phase).total()).toList();
    return new Table("Month", heads, rows, List.of(row("All", totals, whole().total())));
  }

  private Table.Row row(String head, List<Long> amounts, long whole) {
    return Table.Row.of(
        head, Stream.concat(amounts.stream(), Stream.of(whole)).map(yardstick::figure).toList());
  }

  private Series whole() {
    return new Series("All", all, months.stream().map(MonthRows.Month::all).toList());
  }

  private Series series(int phase) {
    return new Series(
        phases.get(phase).name(),
        phases.get(phase).weight(),
        months.stream().map(month -> month.amounts().get(phase)).toList());
  }

  private List<Series> rows() {
    return Stream.concat(
            Stream.of(whole()), IntStream.range(0, phases.size()).mapToObj(this::series))
        .toList();
  }

  private static int tallest(Size size) {
    return switch (size) {
      case WIDE -> 88;
      case MIDDLE -> 76;
      case NARROW -> 64;
    };
  }

  MonthRows draw(Size size) {
    List<Series> rows = rows();
    Frame frame = frame(size, rows);
    double slot = Math.min((double) frame.span() / months.size(), WIDEST_SLOT);
    Stations stations = new Stations(frame.left(), slot);
    int bar = Math.max(1, Math.min(WIDEST_BAR, (int) (slot * 5 / 8)));
    long reach =
        rows.stream().mapToLong(row -> Math.max(row.highest(), -row.lowest())).max().orElse(0);
    Scale height = new Scale(0, Math.max(reach, 1), 0, tallest(size));
    List<MonthRows.Row> drawn = new ArrayList<>();
    int y = 0;
    for (Series row : rows) {
      int zero = y + lettered(size) + HEAD + height.at(row.highest());
      drawn.add(row(row, zero, size, height, stations, frame));
      y = zero + height.at(-row.lowest()) + BETWEEN;
    }
    YearMonth first = months.get(0).month();
    YearMonth last = months.get(months.size() - 1).month();
    int right = (int) Math.round(frame.left() + slot * months.size());
    return new MonthRows(
        frame.width(),
        y + FOOT,
        frame.left(),
        right,
        y,
        years(stations),
        bar,
        drawn,
        MonthMark.along(first, last, slot, month -> stations.at(MonthNames.between(first, month))));
  }

  private static int lettered(Size size) {
    return size == Size.NARROW ? Lettering.LINE : 0;
  }

  /** The names before the rows and the totals after them; on a phone both above. */
  private Frame frame(Size size, List<Series> rows) {
    if (size == Size.NARROW) {
      return new Frame(size.width(), PHONE_MARGIN, PHONE_MARGIN);
    }
    int name = Math.min(MOST_NAME, Lettering.widest(rows.stream().map(Series::name)));
    int total = Lettering.widest(rows.stream().map(row -> yardstick.figure(row.total())));
    return new Frame(size.width(), name + 20, total + 20);
  }

  private MonthRows.Row row(
      Series row, int zero, Size size, Scale height, Stations stations, Frame frame) {
    List<MonthRows.Bar> bars = new ArrayList<>();
    List<MonthRows.Bar> marked = new ArrayList<>();
    List<Label> peak = new ArrayList<>();
    for (int i = 0; i < months.size(); i++) {
      long amount = row.amounts().get(i);
      if (amount != 0) {
        int tall = Math.max(1, height.at(Math.abs(amount)));
        MonthRows.Bar bar = new MonthRows.Bar(stations.at(i), zero - Long.signum(amount) * tall);
        (now.filter(months.get(i).month()::equals).isPresent() ? marked : bars).add(bar);
        if (peak.isEmpty() && amount > 0 && amount == row.highest()) {
          peak.add(peak(bar, yardstick.figure(amount), frame));
        }
      }
    }
    String total = yardstick.figure(row.total());
    boolean isNarrow = size == Size.NARROW;
    int base = isNarrow ? zero - height.at(row.highest()) - HEAD : zero;
    int room =
        isNarrow ? frame.width() - Lettering.width(total) - 12 : Math.min(frame.left(), MOST_NAME);
    return new MonthRows.Row(
        row.weight(),
        new Label(0, base, Label.Anchor.START, Lettering.fit(row.name(), room)),
        zero,
        bars,
        marked,
        peak,
        new Label(frame.width(), base, Label.Anchor.END, total));
  }

  /** Over its bar, but on the sheet. */
  private static Label peak(MonthRows.Bar bar, String text, Frame frame) {
    int half = Lettering.width(text) / 2 + 1;
    int x = Math.max(frame.left() + half, Math.min(bar.x(), frame.end() - half));
    return new Label(x, bar.end() - 4, Label.Anchor.MIDDLE, text);
  }

  private List<Integer> years(Stations stations) {
    return IntStream.range(1, months.size())
        .filter(i -> months.get(i).month().getMonthValue() == 1)
        .mapToObj(i -> (int) Math.round(stations.left() + stations.slot() * i))
        .toList();
  }
}
