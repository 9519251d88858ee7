package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ribband.cli.InMemory.Run;

/**
 * A generated spreadsheet, added up by an SQL database that reads the very same file (H2 2.4,
 * {@code CSVREAD}), beside what the journal says once it was brought: as entries, and as carried
 * work.
 */
class BringAgainstSqlTest {
  private static final List<String> PHASES = List.of("lofting", "planking", "varnish");
  private static final String PROJECT =
      "name: Teal\ncurrency: USD\nphases: [lofting, planking, varnish]\n";

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 20260314, 77, 4711})
  void everyFigureEqualsTheDatabases(long seed) throws IOException, SQLException {
    Path sheet = folder.resolve("past.csv");
    Files.writeString(sheet, sheet(new SplittableRandom(seed)), StandardCharsets.UTF_8);
    String expected = database(sheet);
    InMemory here =
        new InMemory(folder).with("boat/project.yaml", PROJECT).with("new/project.yaml", PROJECT);
    done(here.run("bring", "past.csv", "boat", "--write", "-q"));
    assertEquals(expected, byPhase(here, "boat"));
    Run block = here.run("bring", "past.csv", "new", "--carried", "-q");
    done(block);
    here.with("carried/project.yaml", PROJECT + block.out());
    assertEquals(
        expected.replaceAll("(?m)^(\\w+),\\d+,", "$1,0,"), byPhase(here, "carried"), block.out());
  }

  private static void done(Run run) {
    assertEquals(0, run.code(), run.err());
  }

  private static String byPhase(InMemory here, String journal) {
    return here.run("tally", journal, "--by", "phase", "--format", "csv")
        .out()
        .replaceFirst("(?s)^[^\n]*\n", "")
        .replaceAll("(?m),,$", "");
  }

  /** Dates, decimal hours and money, notes with all that may stand in quotes. */
  private static String sheet(SplittableRandom random) {
    StringBuilder csv = new StringBuilder("date,hours,phase,cost,note\r\n");
    LocalDate day = LocalDate.of(2023, 11, 3);
    for (int i = 0; i < 200; i++) {
      day = day.plusDays(random.nextInt(4));
      csv.append(day).append(',');
      // 0.0025 h is 9 s: what the database adds in decimals is exact in seconds.
      csv.append(BigDecimal.valueOf(random.nextInt(0, 2000) * 25L, 4)).append(',');
      csv.append(PHASES.get(random.nextInt(PHASES.size()))).append(',');
      csv.append(BigDecimal.valueOf(random.nextLong(-9_999, 999_999), 2)).append(',');
      csv.append("\"Night ").append(i).append(", \"\"fair\"\"\r\n# as can be\"\r\n");
    }
    return csv.toString();
  }

  private static String database(Path sheet) throws SQLException {
    String sums =
        "SELECT phase, COUNT(NULLIF(CAST(hours AS DECIMAL(20, 4)), 0)),"
            + " SUM(CAST(hours AS DECIMAL(20, 4))), SUM(CAST(cost AS DECIMAL(20, 2)))"
            + " FROM CSVREAD('"
            + sheet.toString().replace("'", "''")
            + "') GROUP BY phase ORDER BY phase";
    StringBuilder told = new StringBuilder();
    try (Connection sql = DriverManager.getConnection("jdbc:h2:mem:");
        PreparedStatement query = sql.prepareStatement(sums);
        ResultSet row = query.executeQuery()) {
      while (row.next()) {
        told.append(row.getString(1)).append(',').append(row.getInt(2)).append(',');
        told.append(plain(row.getBigDecimal(3))).append(',');
        told.append(row.getBigDecimal(4).setScale(2, RoundingMode.UNNECESSARY)).append('\n');
      }
    }
    return told.toString();
  }

  private static String plain(BigDecimal hours) {
    return hours.signum() == 0 ? "0" : hours.stripTrailingZeros().toPlainString();
  }
}
