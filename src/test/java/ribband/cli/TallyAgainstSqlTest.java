package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ribband.ledger.GeneratedJournal;
import ribband.ledger.GeneratedJournal.Fact;

/**
 * The tally's CSV beside the same facts added up by an SQL database: {@code GROUP BY} for totals,
 * {@code RANK()} for ranks, window sums for running totals (SQL:2016; run by H2 2.4). ISO weeks are
 * the database's own, too.
 */
class TallyAgainstSqlTest {
  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 20260314, 77, 4711})
  void everyTallyEqualsTheDatabase(long seed) throws Exception {
    GeneratedJournal journal = GeneratedJournal.write(folder, seed, 150);
    try (Connection sql = DriverManager.getConnection("jdbc:h2:mem:")) {
      load(sql, journal);
      for (Cut cut :
          List.of(
              new Cut("", "true", "", true),
              new Cut("--from 2023-02", "dated >= DATE '2023-02-01'", "", false),
              new Cut("--to 2023", "dated <= DATE '2023-12-31'", "", false),
              new Cut(
                  "--from 2022-12-20 --to 2023-05",
                  "dated BETWEEN DATE '2022-12-20' AND DATE '2023-05-31'",
                  "",
                  false),
              new Cut("--phase planking", "true", "planking", true),
              new Cut("--phase unsorted", "true", "unsorted", true),
              new Cut(
                  "--phase varnish --from 2023", "dated >= DATE '2023-01-01'", "varnish", false))) {
        select(sql, journal, cut);
        for (String by : List.of("month", "year", "week", "entry", "phase")) {
          String told = tally(by, cut);
          assertTrue(told.lines().count() > 1, "no row by " + by + " " + cut.options());
          assertEquals(
              by.equals("phase") ? phases(sql, journal, cut) : periods(sql, journal, by, cut),
              told,
              "seed " + seed + " by " + by + " " + cut.options());
        }
      }
    }
  }

  /** A selection as typed, and the same in SQL. */
  private record Cut(String options, String days, String phase, boolean carried) {}

  private String tally(String by, Cut cut) {
    List<String> words = new ArrayList<>(List.of("tally", "--format", "csv", "--by", by));
    if (!cut.options().isEmpty()) {
      words.addAll(List.of(cut.options().split(" ")));
    }
    InMemory.Run run = new InMemory(folder).run(words.toArray(String[]::new));
    assertEquals(0, run.code(), run.err());
    return run.out();
  }

  private static void load(Connection sql, GeneratedJournal journal) throws SQLException {
    run(sql, "CREATE TABLE entry(no INT, dated DATE, path VARCHAR, address VARCHAR)");
    run(sql, "CREATE TABLE fact(no INT, phase VARCHAR, seconds BIGINT, minor BIGINT)");
    try (PreparedStatement entry = sql.prepareStatement("INSERT INTO entry VALUES(?,?,?,?)");
        PreparedStatement fact = sql.prepareStatement("INSERT INTO fact VALUES(?,?,?,?)")) {
      int number = 0;
      for (Fact one : journal.facts) {
        number++;
        set(entry, number, one.day(), one.file(), one.address());
        for (Map.Entry<String, Long> work : one.work().entrySet()) {
          set(fact, number, work.getKey(), work.getValue(), 0L);
        }
        for (Map.Entry<String, Long> money : one.money().entrySet()) {
          set(fact, number, money.getKey(), 0L, money.getValue());
        }
      }
    }
  }

  private static void set(PreparedStatement row, Object... values) throws SQLException {
    for (int i = 0; i < values.length; i++) {
      row.setObject(i + 1, values[i]);
    }
    row.executeUpdate();
  }

  /** Leaves what is selected in the tables {@code seen} and {@code part}. */
  private static void select(Connection sql, GeneratedJournal journal, Cut cut)
      throws SQLException {
    String phase = cut.phase().isEmpty() ? "true" : "phase = '" + cut.phase() + "'";
    run(sql, "DROP TABLE IF EXISTS part");
    run(sql, "DROP TABLE IF EXISTS seen");
    run(sql, "CREATE TABLE part AS SELECT * FROM fact WHERE " + phase);
    run(
        sql,
        "CREATE TABLE seen AS SELECT * FROM entry WHERE "
            + cut.days()
            + (cut.phase().isEmpty() ? "" : " AND no IN (SELECT no FROM part)"));
  }

  private static String periods(Connection sql, GeneratedJournal journal, String by, Cut cut)
      throws SQLException {
    String period =
        switch (by) {
          case "month" -> "FORMATDATETIME(dated, 'yyyy-MM')";
          case "year" -> "FORMATDATETIME(dated, 'yyyy')";
          case "week" ->
              "EXTRACT(ISO_WEEK_YEAR FROM dated) || '-W' || LPAD(EXTRACT(ISO_WEEK FROM dated), 2, '0')";
          default -> "address";
        };
    boolean entries = by.equals("entry");
    // Every day between the first and the last, so that empty periods stand with zeros.
    String days =
        entries
            ? "SELECT no, dated, path, address FROM seen"
            : "SELECT s.no, d.dated, '' AS path, '' AS address FROM (SELECT DATEADD(DAY, x, (SELECT"
                + " MIN(dated) FROM seen)) AS dated FROM SYSTEM_RANGE(0, (SELECT DATEDIFF(DAY,"
                + " MIN(dated), MAX(dated)) FROM seen))) d LEFT JOIN seen s ON s.dated = d.dated";
    String query =
        "WITH grouped AS (SELECT period, MIN(dated) AS d, MIN(path) AS p, COUNT(DISTINCT CASE WHEN"
            + " seconds > 0 THEN no END) AS sessions, COALESCE(SUM(seconds), 0) AS s,"
            + " COALESCE(SUM(minor), 0) AS m FROM (SELECT "
            + period
            + " AS period, dated, path, night.no AS no, seconds, minor FROM ("
            + days
            + ") AS night LEFT JOIN part ON part.no = night.no) GROUP BY period) SELECT period,"
            + " sessions, s, m, SUM(s) OVER (ORDER BY d, p) AS s_to, SUM(m) OVER (ORDER BY d, p) AS"
            + " m_to, RANK() OVER (ORDER BY s DESC) AS r FROM grouped ORDER BY d, p";
    StringBuilder csv = new StringBuilder(by);
    csv.append(",sessions,hours,cost,hours_to_date,cost_to_date");
    csv.append(entries ? "\n" : ",rank_by_hours\n");
    long work = carried(journal.carriedWork, cut);
    long money = carried(journal.carriedMoney, cut);
    try (Statement statement = sql.createStatement();
        ResultSet row = statement.executeQuery(query)) {
      while (row.next()) {
        csv.append(row.getString("period")).append(',').append(row.getLong("sessions"));
        csv.append(',').append(hours(sql, row.getLong("s")));
        csv.append(',').append(decimal(row.getLong("m"), journal));
        csv.append(',').append(hours(sql, row.getLong("s_to") + work));
        csv.append(',').append(decimal(row.getLong("m_to") + money, journal));
        csv.append(entries ? "" : "," + row.getLong("r")).append('\n');
      }
    }
    return csv.toString();
  }

  private static String phases(Connection sql, GeneratedJournal journal, Cut cut)
      throws SQLException {
    StringBuilder csv = new StringBuilder("phase,sessions,hours,cost,hours_planned,cost_planned\n");
    List<String> ids = new ArrayList<>(GeneratedJournal.PHASES);
    ids.add("unsorted");
    ids.removeIf(id -> !cut.phase().isEmpty() && !cut.phase().equals(id));
    for (String id : ids) {
      try (PreparedStatement query =
          sql.prepareStatement(
              "SELECT COUNT(DISTINCT CASE WHEN seconds > 0 THEN part.no END) AS sessions,"
                  + " COALESCE(SUM(seconds), 0) AS s, COALESCE(SUM(minor), 0) AS m FROM part JOIN"
                  + " seen ON seen.no = part.no WHERE phase = ?")) {
        query.setString(1, id);
        try (ResultSet row = query.executeQuery()) {
          row.next();
          long work =
              row.getLong("s") + (cut.carried() ? journal.carriedWork.getOrDefault(id, 0L) : 0);
          long money =
              row.getLong("m") + (cut.carried() ? journal.carriedMoney.getOrDefault(id, 0L) : 0);
          boolean unsorted = id.equals("unsorted");
          if (!unsorted || work != 0 || money != 0) {
            csv.append(id).append(',').append(row.getLong("sessions"));
            csv.append(',').append(hours(sql, work)).append(',').append(decimal(money, journal));
            csv.append(unsorted ? ",," : ",80," + BigDecimal.valueOf(500).setScale(journal.digits));
            csv.append('\n');
          }
        }
      }
    }
    return csv.toString();
  }

  private static long carried(Map<String, Long> amounts, Cut cut) {
    return amounts.entrySet().stream()
        .filter(one -> cut.carried() && (cut.phase().isEmpty() || cut.phase().equals(one.getKey())))
        .mapToLong(Map.Entry::getValue)
        .sum();
  }

  /** Rounded by the database, a half up, to four places. */
  private static String hours(Connection sql, long seconds) throws SQLException {
    try (PreparedStatement query =
        sql.prepareStatement("SELECT ROUND(CAST(? AS DECIMAL(40, 20)) / 3600, 4)")) {
      query.setLong(1, seconds);
      try (ResultSet row = query.executeQuery()) {
        row.next();
        BigDecimal hours = row.getBigDecimal(1);
        return hours.signum() == 0 ? "0" : hours.stripTrailingZeros().toPlainString();
      }
    }
  }

  private static String decimal(long minor, GeneratedJournal journal) {
    return BigDecimal.valueOf(minor, journal.digits).toPlainString();
  }

  private static void run(Connection sql, String statement) throws SQLException {
    try (Statement one = sql.createStatement()) {
      one.execute(statement);
    }
  }
}
