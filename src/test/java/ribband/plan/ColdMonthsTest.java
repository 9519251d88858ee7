package ribband.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.journal.Project;
import ribband.plan.ColdMonths.ColdMonth;

class ColdMonthsTest {
  @TempDir private Path folder;

  private Project project(String temperatures) throws IOException {
    return Boats.journal(
            folder,
            """
            materials: {epoxy: {unit: fl oz}, glue: {unit: fl oz}}
            adhesives:
              epoxy: {material: epoxy, coldest: 50 F}
              glue: {material: glue, coldest: 5 C}
              varnish: {}
            """
                + temperatures,
            "2026-05-01\nhours: 2")
        .project();
  }

  @Test
  void monthsBelowAnAdhesivesColdestAreFoundWithItsName() throws IOException {
    Project project =
        project("shop temperatures: {jan: 40.9 F, feb: 41 F, mar: 50 F, nov: 10 C, dec: 9.9 C}");
    assertEquals(
        List.of(
            new ColdMonth(YearMonth.of(2026, 12), List.of("epoxy")),
            new ColdMonth(YearMonth.of(2027, 1), List.of("epoxy", "glue")),
            new ColdMonth(YearMonth.of(2027, 2), List.of("epoxy"))),
        ColdMonths.of(project, LocalDate.of(2026, 11, 30), LocalDate.of(2027, 3, 1)));
  }

  @Test
  void theFirstAndTheLastMonthCount() throws IOException {
    Project project = project("shop temperatures: {jan: 30 F, feb: 30 F, mar: 30 F}");
    List<ColdMonth> cold =
        ColdMonths.of(project, LocalDate.of(2026, 1, 31), LocalDate.of(2026, 3, 1));
    assertEquals(
        List.of(YearMonth.of(2026, 1), YearMonth.of(2026, 2), YearMonth.of(2026, 3)),
        cold.stream().map(ColdMonth::month).toList());
  }

  @Test
  void withoutTemperaturesNoMonthIsCold() throws IOException {
    assertEquals(
        List.of(), ColdMonths.of(project(""), LocalDate.of(2026, 1, 31), LocalDate.of(2026, 3, 1)));
  }
}
