package ribband.recap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ribband.journal.Journal;
import ribband.journal.Phase;
import ribband.ledger.GeneratedJournal;
import ribband.ledger.GeneratedJournal.Fact;
import ribband.ledger.GeneratedJournal.Pieces;
import ribband.ledger.Journals;
import ribband.ledger.Ledger;
import ribband.measure.Currency;
import ribband.measure.Hours;
import ribband.measure.Money;
import ribband.measure.Saying;
import ribband.recap.Recap.Costs;
import ribband.recap.Recap.LongestNight;
import ribband.recap.Recap.PhaseShare;
import ribband.recap.Recap.PiecesMade;

/**
 * Every month and year of generated journals beside the same facts added up and ranked by an SQL
 * database (SQL:2016; run by H2 2.4).
 */
class RecapsAgainstSqlTest {
  @TempDir Path folder;

  private GeneratedJournal facts;
  private Connection sql;
  private Map<String, String> titles;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 77, 20260314})
  void everyPeriodEqualsTheDatabase(long seed) throws Exception {
    facts = GeneratedJournal.write(folder, seed, 200);
    Journal journal = Journals.read(folder);
    Recaps recaps = Recaps.of(journal, Ledger.of(journal));
    titles = new HashMap<>(Map.of("unsorted", "Unsorted"));
    journal.phases().forEach((Phase phase) -> titles.put(phase.id(), phase.title()));
    try (Connection connection = DriverManager.getConnection("jdbc:h2:mem:")) {
      sql = connection;
      load();
      List<String> months = texts("SELECT DISTINCT by_month FROM days ORDER BY by_month");
      assertEquals(months, recaps.months().stream().map(YearMonth::toString).toList());
      for (String month : months) {
        YearMonth period = YearMonth.parse(month);
        Recap recap = recaps.month(period).orElseThrow();
        same(recap, "month", month, Saying.month(period), period.atDay(1), period.atEndOfMonth());
      }
      List<String> years = texts("SELECT DISTINCT by_year FROM days ORDER BY by_year");
      assertEquals(years, recaps.years().stream().map(Year::toString).toList());
      assertTrue(years.size() > 1, "one year alone has no rank");
      for (String year : years) {
        Year period = Year.parse(year);
        Recap recap = recaps.year(period).orElseThrow();
        same(recap, "year", year, year, period.atDay(1), period.atDay(period.length()));
      }
      YearMonth first = YearMonth.parse(months.get(0));
      YearMonth last = YearMonth.parse(months.get(months.size() - 1));
      assertTrue(recaps.month(first.minusMonths(1)).isEmpty());
      assertTrue(recaps.month(last.plusMonths(1)).isEmpty());
      assertTrue(recaps.year(Year.from(first).minusYears(1)).isEmpty());
      assertTrue(recaps.year(Year.from(last).plusYears(1)).isEmpty());
    }
  }

  private void load() throws SQLException {
    run("CREATE TABLE work(dated DATE, phase VARCHAR, seconds BIGINT, no INT)");
    run("CREATE TABLE paid(dated DATE, minor BIGINT)");
    run("CREATE TABLE made(dated DATE, kind VARCHAR, pieces INT)");
    int number = 0;
    for (Fact fact : facts.facts) {
      number++;
      for (Map.Entry<String, Long> work : fact.work().entrySet()) {
        insert("work", fact.day(), work.getKey(), work.getValue(), number);
      }
      for (long minor : fact.money().values()) {
        insert("paid", fact.day(), minor);
      }
      for (Pieces made : fact.pieces()) {
        insert("made", fact.day(), made.kind(), made.count());
      }
    }
    LocalDate first = facts.facts.get(0).day();
    LocalDate last = facts.facts.get(facts.facts.size() - 1).day();
    run(
        "CREATE TABLE days AS SELECT dated, FORMATDATETIME(dated, 'yyyy-MM') AS by_month,"
            + " FORMATDATETIME(dated, 'yyyy') AS by_year FROM (SELECT DATEADD(DAY, x, DATE '"
            + first
            + "') AS dated FROM SYSTEM_RANGE(0, DATEDIFF(DAY, DATE '"
            + first
            + "', DATE '"
            + last
            + "')))");
  }

  private void insert(String table, Object... values) throws SQLException {
    String marks = "?" + ", ?".repeat(values.length - 1);
    try (PreparedStatement row =
        sql.prepareStatement("INSERT INTO " + table + " VALUES(" + marks + ")")) {
      for (int i = 0; i < values.length; i++) {
        row.setObject(i + 1, values[i]);
      }
      row.executeUpdate();
    }
  }

  private void same(
      Recap recap, String cut, String period, String title, LocalDate first, LocalDate last)
      throws SQLException {
    String in = " WHERE dated BETWEEN DATE '" + first + "' AND DATE '" + last + "'";
    String upTo = " WHERE dated <= DATE '" + last + "'";
    Hours worked = new Hours(number("SELECT SUM(seconds) FROM work" + in));
    long carried = facts.carriedWork.values().stream().mapToLong(Long::longValue).sum();
    Hours toDate = new Hours(number("SELECT SUM(seconds) FROM work" + upTo) + carried);
    Told rank = worked.isZero() ? new Told("", "") : rank(cut, period);
    Recap expected =
        new Recap(
            "Generated",
            title,
            first,
            last,
            Saying.hours(worked),
            Saying.hourOrHours(worked),
            Saying.hoursSpelledOut(worked),
            Saying.counted(
                number("SELECT COUNT(DISTINCT no) FROM work" + in), "session", "sessions"),
            Saying.counted(
                number("SELECT COUNT(DISTINCT dated) FROM work" + in), "night", "nights"),
            rank.rank(),
            rank.place(),
            phases(in, upTo),
            costs(in, upTo),
            pieces(in, upTo),
            longest(in),
            Saying.hours(toDate),
            Saying.hourOrHours(toDate),
            Saying.hoursSpelledOut(toDate));
    assertEquals(expected, recap);
  }

  private record Told(String rank, String place) {}

  private Told rank(String cut, String period) throws SQLException {
    run("DROP TABLE IF EXISTS sums");
    run(
        "CREATE TABLE sums AS SELECT by_"
            + cut
            + " AS period, SUM(seconds) AS s FROM days JOIN work ON work.dated = days.dated GROUP BY"
            + " by_"
            + cut);
    String own = "(SELECT s FROM sums WHERE period = '" + period + "')";
    List<String> better =
        texts("SELECT period FROM sums WHERE s > " + own + " ORDER BY s DESC, period");
    List<String> level =
        texts(
            "SELECT period FROM sums WHERE s = "
                + own
                + " AND period <> '"
                + period
                + "' ORDER BY period");
    String ties = level.isEmpty() ? "" : ", level with " + named(level, period);
    String fewer =
        level.size() > 1 ? ", level with " + Saying.number(level.size()) + " others" : ties;
    long all = number("SELECT COUNT(*) FROM sums");
    if (better.isEmpty()) {
      String best = "the best " + cut + " so far";
      return new Told(best + ties, best + fewer);
    }
    String standing = Saying.ordinal(better.size() + 1) + " of " + all + " " + cut + "s with work";
    String beaten =
        " (" + named(better, period) + (better.size() == 1 ? " beats it)" : " beat it)");
    return new Told(standing + ties + beaten, standing + fewer);
  }

  /** The first four by name, without their year where all have that of the one told of. */
  private static String named(List<String> periods, String told) {
    List<String> four = periods.subList(0, Math.min(4, periods.size()));
    boolean sameYear = four.stream().allMatch(p -> p.startsWith(told.substring(0, 4)));
    List<String> words = new ArrayList<>();
    for (String period : four) {
      words.add(
          period.length() == 4
              ? period
              : sameYear
                  ? Saying.monthName(YearMonth.parse(period))
                  : Saying.month(YearMonth.parse(period)));
    }
    if (periods.size() > 4) {
      words.add(Saying.number(periods.size() - 4L) + " more");
    }
    return Saying.list(words);
  }

  private List<PhaseShare> phases(String in, String upTo) throws SQLException {
    List<PhaseShare> shares = new ArrayList<>();
    List<String> order = new ArrayList<>(GeneratedJournal.PHASES);
    order.add("unsorted");
    StringBuilder places = new StringBuilder("CASE phase");
    for (String phase : order) {
      places.append(" WHEN '").append(phase).append("' THEN ").append(order.indexOf(phase));
    }
    for (String phase :
        texts(
            "SELECT phase FROM work"
                + in
                + " GROUP BY phase ORDER BY SUM(seconds) DESC, "
                + places
                + " END")) {
      String own = " AND phase = '" + phase + "'";
      long seconds = number("SELECT SUM(seconds) FROM work" + in + own);
      long toDate =
          number("SELECT SUM(seconds) FROM work" + upTo + own)
              + facts.carriedWork.getOrDefault(phase, 0L);
      shares.add(
          new PhaseShare(
              titles.get(phase),
              Saying.hours(new Hours(seconds)),
              seconds,
              Saying.hoursSpelledOut(new Hours(seconds)),
              Saying.hours(new Hours(toDate)),
              Saying.hoursSpelledOut(new Hours(toDate)),
              seconds == toDate));
    }
    return shares;
  }

  private Costs costs(String in, String upTo) throws SQLException {
    Currency currency = Currency.all().get(facts.currency);
    long moved = number("SELECT SUM(minor) FROM paid" + in);
    long toDate =
        number("SELECT SUM(minor) FROM paid" + upTo)
            + facts.carriedMoney.values().stream().mapToLong(Long::longValue).sum();
    return new Costs(
        moved == 0
            ? ""
            : Saying.money(new Money(Math.abs(moved)), currency)
                + (moved < 0 ? " came back" : " went out"),
        moved == 0 && toDate == 0 ? "" : Saying.money(new Money(toDate), currency));
  }

  private List<PiecesMade> pieces(String in, String upTo) throws SQLException {
    List<PiecesMade> pieces = new ArrayList<>();
    for (String kind : List.of("strakes", "plugs")) {
      String own = " AND kind = '" + kind + "'";
      long made = number("SELECT SUM(pieces) FROM made" + in + own);
      int done = (int) number("SELECT SUM(pieces) FROM made" + upTo + own);
      if (made != 0) {
        pieces.add(new PiecesMade(kind, made, done, 9999));
      }
    }
    return pieces;
  }

  private Optional<LongestNight> longest(String in) throws SQLException {
    try (Statement statement = sql.createStatement();
        ResultSet row =
            statement.executeQuery(
                "SELECT dated, SUM(seconds) AS s FROM work"
                    + in
                    + " GROUP BY dated ORDER BY s DESC, dated LIMIT 1")) {
      return row.next()
          ? Optional.of(
              new LongestNight(
                  Saying.dayInFull(row.getObject(1, LocalDate.class)),
                  Saying.hoursSpelledOut(new Hours(row.getLong(2)))))
          : Optional.empty();
    }
  }

  private long number(String query) throws SQLException {
    try (Statement statement = sql.createStatement();
        ResultSet row = statement.executeQuery(query)) {
      row.next();
      return row.getLong(1);
    }
  }

  private List<String> texts(String query) throws SQLException {
    List<String> texts = new ArrayList<>();
    try (Statement statement = sql.createStatement();
        ResultSet row = statement.executeQuery(query)) {
      while (row.next()) {
        texts.add(row.getString(1));
      }
    }
    return texts;
  }

  private void run(String statement) throws SQLException {
    try (Statement one = sql.createStatement()) {
      one.execute(statement);
    }
  }
}
