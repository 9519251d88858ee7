package ribband.ahead;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ribband.cli.InMemory;

/** Jobs that a cold shop keeps from what they name. */
class ColdWorkTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          2026-11-15 | The rest of the varnish      | ; varnish is not used below 50 °F, and the shop's mean in November is 46 °F
          2026-11-15 | Varnish, second coat         | ; varnish is not used below 50 °F, and the shop's mean in November is 46 °F
          2026-11-15 | A coat of clear-varnish      | ; clear varnish is not used below 55 °F, and the shop's mean in November is 46 °F
          2026-11-15 | Unvarnished work             | ''
          2026-11-15 | Oil the oars                 | ''
          2026-10-15 | The rest of the varnish      | ''
          2026-12-15 | The rest of the varnish      | ''
          """)
  void aReadyJobHasTheFactBesideIt(String today, String what, String fact) throws IOException {
    String told =
        new InMemory(folder)
            .with(
                "project.yaml",
                """
                units: us
                adhesives:
                  varnish: {rated at: 70 F, recoat: 12 h to 72 h, coldest: 50 F}
                  clear varnish: {rated at: 70 F, recoat: 12 h to 72 h, coldest: 55 F}
                  oil: {rated at: 70 F, recoat: 12 h to 72 h}
                shop temperatures: {oct: 58 F, nov: 46 F}
                """)
            .with("2026-10-01.md", "---\ntodo: [{id: job, what: '" + what + "'}]\n---\n")
            .run("ahead", "--show", "jobs", "--today", today)
            .out();
    assertEquals(
        "Ready tonight job: " + what + fact,
        told.lines()
            .dropWhile(line -> !line.equals("Ready tonight"))
            .takeWhile(line -> !line.isEmpty())
            .map(String::strip)
            .reduce((a, b) -> a + " " + b)
            .orElse(""));
  }

  @ParameterizedTest
  @CsvSource({"nov", "dec"})
  void aJobThatWaitsForAnotherSaysNothingOfTheColdYet(String month) throws IOException {
    String told =
        new InMemory(folder)
            .with(
                "project.yaml",
                "adhesives: {varnish: {coldest: 10 C}}\nshop temperatures: {" + month + ": 2 C}\n")
            .with("2026-10-01.md", "---\ntodo: [{id: sand}, {id: varnish, after: [sand]}]\n---\n")
            .run("ahead", "--show", "jobs", "--today", "2026-11-15")
            .out();
    assertEquals(-1, told.indexOf("not used below"), told);
  }
}
