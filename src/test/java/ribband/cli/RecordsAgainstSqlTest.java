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
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ribband.ledger.GeneratedJournal;
import ribband.ledger.GeneratedJournal.Fact;

/**
 * The records of a tally beside those an SQL database finds in the same facts: runs as groups of
 * days, or of ISO weeks, whose number less their place in line is one and the same; gaps by {@code
 * LAG} (SQL:2016; run by H2 2.4).
 */
class RecordsAgainstSqlTest {
  private static final String NIGHTS =
      "WITH nights AS (SELECT dated, SUM(amount) AS s FROM fact WHERE kind = 'work' AND %s GROUP BY"
          + " dated)";

  /** The number of each Monday's week, counted from one Monday in 1900. */
  private static final String WEEK = "DATEDIFF(DAY, DATE '1900-01-01', dated) / 7";

  private static final List<String> QUERIES =
      List.of(
          NIGHTS
              + " SELECT 'longest run of days', COUNT(*), 'days', MIN(dated), MAX(dated), '' FROM"
              + " (SELECT dated, DATEDIFF(DAY, DATE '1900-01-01', dated) - ROW_NUMBER() OVER (ORDER"
              + " BY dated) AS run FROM nights) GROUP BY run ORDER BY 2 DESC, 4 LIMIT 1",
          NIGHTS
              + " SELECT 'longest run of weeks', COUNT(DISTINCT week), 'weeks', MIN(dated),"
              + " MAX(dated), '' FROM (SELECT dated, "
              + WEEK
              + " AS week, "
              + WEEK
              + " - DENSE_RANK() OVER (ORDER BY "
              + WEEK
              + ") AS run FROM nights) GROUP BY run ORDER BY 2 DESC, 4 LIMIT 1",
          NIGHTS
              + " SELECT 'longest gap without work', DATEDIFF(DAY, before, dated) - 1, 'days',"
              + " DATEADD(DAY, 1, before), DATEADD(DAY, -1, dated), '' FROM (SELECT dated,"
              + " LAG(dated) OVER (ORDER BY dated) AS before FROM nights) WHERE DATEDIFF(DAY,"
              + " before, dated) > 1 ORDER BY 2 DESC, 4 LIMIT 1",
          NIGHTS
              + " SELECT 'best month', SUM(s), 'hours', DATE_TRUNC(MONTH, MIN(dated)),"
              + " LAST_DAY(MIN(dated)), FORMATDATETIME(MIN(dated), 'yyyy-MM') FROM nights GROUP BY"
              + " EXTRACT(YEAR FROM dated), EXTRACT(MONTH FROM dated) ORDER BY 2 DESC, 4 LIMIT 1",
          NIGHTS
              + " SELECT 'longest night', s, 'hours', dated, dated, '' FROM nights ORDER BY 2 DESC, 4"
              + " LIMIT 1",
          "SELECT 'largest purchase', amount, 'money', dated, dated, what FROM fact WHERE kind ="
              + " 'paid' AND amount > 0 AND %s ORDER BY amount DESC, dated, no LIMIT 1",
          "SELECT 'most pieces in a night', SUM(amount), 'pieces', dated, dated, what FROM fact"
              + " WHERE kind = 'made' AND %s GROUP BY dated, what HAVING SUM(amount) > 0 ORDER BY 2"
              + " DESC, 4, MIN(no) LIMIT 1");

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 20260314, 77, 4711, 8, 9, 10, 11})
  void everyRecordEqualsTheDatabase(long seed) throws Exception {
    GeneratedJournal journal = GeneratedJournal.write(folder, seed, 150);
    try (Connection sql = DriverManager.getConnection("jdbc:h2:mem:")) {
      load(sql, journal);
      for (String[] cut :
          List.of(
              new String[] {"", "true"},
              new String[] {"--from 2023-02", "dated >= DATE '2023-02-01'"},
              new String[] {"--to 2023", "dated <= DATE '2023-12-31'"},
              new String[] {"--phase planking", "phase = 'planking'"},
              new String[] {"--phase unsorted", "phase = 'unsorted'"},
              new String[] {
                "--phase varnish --from 2023", "phase = 'varnish' AND dated >= DATE '2023-01-01'"
              })) {
        String found = records(sql, cut[1], journal);
        assertTrue(found.lines().count() > 4, found);
        assertEquals(found, tally(cut[0]), "seed " + seed + " " + cut[0]);
      }
    }
  }

  private String tally(String options) {
    List<String> words = new ArrayList<>(List.of("tally", "--by", "record", "--format", "csv"));
    Arrays.stream(options.split(" ")).filter(word -> !word.isEmpty()).forEach(words::add);
    InMemory.Run run = new InMemory(folder).run(words.toArray(String[]::new));
    assertEquals(0, run.code(), run.err());
    return run.out();
  }

  private static void load(Connection sql, GeneratedJournal journal) throws SQLException {
    run(
        sql,
        "CREATE TABLE fact(no IDENTITY, kind VARCHAR, dated DATE, phase VARCHAR, amount BIGINT,"
            + " what VARCHAR)");
    for (Fact fact : journal.facts) {
      for (var work : fact.work().entrySet()) {
        insert(sql, "work", fact, work.getKey(), work.getValue(), "");
      }
      for (GeneratedJournal.Paid paid : fact.bought()) {
        insert(sql, "paid", fact, paid.phase(), paid.minor(), paid.what());
      }
      for (GeneratedJournal.Pieces made : fact.pieces()) {
        insert(sql, "made", fact, made.phase(), made.count(), made.kind());
      }
    }
  }

  private static void insert(
      Connection sql, String kind, Fact fact, String phase, long amount, String what)
      throws SQLException {
    run(
        sql,
        "INSERT INTO fact(kind, dated, phase, amount, what) VALUES(?, ?, ?, ?, ?)",
        kind,
        fact.day(),
        phase,
        amount,
        what);
  }

  private static void run(Connection sql, String words, Object... values) throws SQLException {
    try (PreparedStatement statement = sql.prepareStatement(words)) {
      for (int i = 0; i < values.length; i++) {
        statement.setObject(i + 1, values[i]);
      }
      statement.execute();
    }
  }

  private static String records(Connection sql, String cut, GeneratedJournal journal)
      throws SQLException {
    StringBuilder csv = new StringBuilder("record,figure,unit,from,to,what\n");
    for (String query : QUERIES) {
      try (PreparedStatement statement = sql.prepareStatement(query.replace("%s", cut));
          ResultSet row = statement.executeQuery()) {
        if (row.next()) {
          String unit = row.getString(3);
          csv.append(row.getString(1)).append(',').append(figure(row.getLong(2), unit, journal));
          csv.append(',').append(unit.equals("money") ? journal.currency : unit);
          csv.append(',').append(row.getDate(4)).append(',').append(row.getDate(5));
          csv.append(',').append(row.getString(6)).append('\n');
        }
      }
    }
    return csv.toString();
  }

  private static String figure(long number, String unit, GeneratedJournal journal) {
    return switch (unit) {
      case "money" -> BigDecimal.valueOf(number, journal.digits).toPlainString();
      case "hours" ->
          BigDecimal.valueOf(number)
              .divide(BigDecimal.valueOf(3600), 4, java.math.RoundingMode.HALF_UP)
              .stripTrailingZeros()
              .toPlainString();
      default -> Long.toString(number);
    };
  }
}
