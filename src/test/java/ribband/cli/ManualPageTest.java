package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** The manual page and the completion hold every command and option there is. */
class ManualPageTest {
  private static final CommandSpec MODEL = Ribband.model();
  private static final String PAGE = ManualPage.of(MODEL, LocalDate.of(2026, 1, 1));

  /** The page's text between a command's heading and the next heading. */
  private static String told(String command) {
    int start = PAGE.indexOf(".SS \"" + command + " ");
    assertTrue(start > 0, command);
    int end = PAGE.indexOf("\n.S", start + 1);
    return PAGE.substring(start, end) + PAGE.substring(PAGE.indexOf(".SH \"OPTIONS\""));
  }

  @Test
  void everyOptionOfEveryCommandStandsUnderIt() {
    List<String> missing = new ArrayList<>();
    int options = 0;
    for (CommandLine command : MODEL.subcommands().values()) {
      CommandSpec spec = command.getCommandSpec();
      String told = told(spec.name());
      for (OptionSpec option : spec.options()) {
        String names = String.join(", ", option.names()).replace("-", "\\-");
        if (!told.contains("\\fB" + names)) {
          missing.add(spec.name() + " " + names);
        }
        options++;
      }
    }
    assertEquals(List.of(), missing);
    assertTrue(MODEL.subcommands().size() >= 14 && options > 100, "options seen: " + options);
  }

  @Test
  void anOptionStandsWithItsMeaning() {
    assertTrue(
        told("tally")
            .contains(
                """
                .TP
                \\fB\\-\\-from=\\fR\\fIDATE\\fR
                begin with this day, month or year: 2026\\-03\\-14, 2026\\-03 or 2026
                """),
        told("tally"));
  }

  @Test
  void noPercentSignStandsTwice() {
    assertTrue(PAGE.contains("10%") && !PAGE.contains("%%"));
  }

  @Test
  void whatAPersonTypesStaysAsTyped() {
    assertEquals(
        """
        \\&.ribband/ holds \\(dqit\\(aqs\\(dq \\e \\-\\- \\(ti \\(ha \\(ga
        """,
        new Roff().text(".ribband/ holds \"it's\" \\ -- ~ ^ `").toString());
  }

  @Test
  void longTextIsWrappedBetweenWords() {
    String word = "word ".repeat(40).strip();
    for (String line : new Roff().text(word).toString().split("\n")) {
      assertTrue(line.length() <= 78 && line.matches("(word ?)+"), line);
    }
  }
}
