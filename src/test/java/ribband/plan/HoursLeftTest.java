package ribband.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.measure.Hours;
import ribband.shop.Figure;

class HoursLeftTest {
  @TempDir private Path folder;

  private HoursLeft left(String project, String... entries) throws IOException {
    return HoursLeft.of(Boats.standing(folder, project, entries));
  }

  private static HoursLeft.Part part(String name, long hours, HoursLeft.Basis basis) {
    return new HoursLeft.Part(name, Boats.seconds(hours), basis);
  }

  @Test
  void eachPhaseIsReckonedByTheBestThatIsKnown() throws IOException {
    HoursLeft left =
        left(
            """
            phases:
              - {id: lofting, title: Lofting, hours: 20}
              - {id: planking, title: Planking, hours: 120}
              - {id: knees, title: Knees, hours: 30}
              - {id: fairing, title: Fairing, hours: 40}
              - {id: paint, title: Paint, hours: 10}
              - {id: spars, title: Spars, hours: 8}
              - {id: rigging, title: Rigging}
            pieces:
              strakes: {total: 16, phase: planking, hours: 5}
              frames: {total: 4, phase: planking}
              knees: {total: 6, phase: knees}
              blocks: {total: 3, phase: rigging, hours: 2}
            """,
            "2026-05-01\nphase: lofting\nhours: 22\ncomplete: {lofting: 100%}",
            "2026-05-02\nphase: planking\nhours: 4\npieces: {strakes: 2}",
            "2026-05-03-frames\nphase: planking\nhours: 9\npieces: {frames: 4}",
            "2026-05-03-knees\nphase: knees\nhours: 12",
            "2026-05-03-more\nphase: knees\npieces: {knees: 2}",
            "2026-05-04\nphase: fairing\nhours: 15\ncomplete: {fairing: 25%}",
            "2026-05-05\nphase: spars\nhours: 9");
    assertEquals(
        List.of(
            part("Lofting", 0, HoursLeft.Basis.FINISHED),
            part("Planking", 28, HoursLeft.Basis.PIECES),
            part("Knees", 24, HoursLeft.Basis.RATE),
            part("Fairing", 45, HoursLeft.Basis.RATE),
            part("Paint", 10, HoursLeft.Basis.PLAN),
            part("Spars", 0, HoursLeft.Basis.USED_UP),
            part("Rigging", 6, HoursLeft.Basis.PIECES)),
        left.parts());
    assertEquals(List.of(), left.leftOut());
    assertEquals(Figure.of(Boats.hours(113)), left.total());
  }

  @Test
  void aRateOfNothingIsNoRate() throws IOException {
    HoursLeft left =
        left(
            "phases: [{id: fairing, title: Fairing, hours: 40}]",
            "2026-05-04\nphase: fairing\nhours: 15\ncomplete: {fairing: 0%}");
    assertEquals(List.of(part("Fairing", 40, HoursLeft.Basis.PLAN)), left.parts());
  }

  @Test
  void oneKindWithoutARateLeavesThePhaseToItsPlan() throws IOException {
    String project =
        """
        phases: [{id: planking, title: Planking, hours: 120}]
        pieces:
          strakes: {total: 16, phase: planking, hours: 5}
          laps: {total: 16, phase: planking}
        """;
    assertEquals(
        List.of(part("Planking", 120, HoursLeft.Basis.PLAN)),
        left(project, "2026-05-02\nphase: planking\nhours: 4").parts());
  }

  @Test
  void whatHasNoPlanIsLeftOutByName() throws IOException {
    HoursLeft left =
        left(
            """
            phases:
              - {id: planking, title: Planking, hours: 12}
              - {id: rigging, title: Rigging}
              - {id: spars, title: Spars}
            pieces:
              cleats: {total: 4, hours: 1}
              pins: {total: 1}
            """,
            "2026-05-02\nphase: spars\nhours: 4\npieces: {pins: 1}\ncomplete: {spars: 100%}");
    assertEquals(List.of("Rigging", "cleats"), left.leftOut());
    assertEquals(
        List.of(
            part("Planking", 12, HoursLeft.Basis.PLAN), part("Spars", 0, HoursLeft.Basis.FINISHED)),
        left.parts());
  }

  @Test
  void whereNoPhaseIsPlannedPiecesOfNoPhaseCount() throws IOException {
    HoursLeft left =
        left(
            "pieces:\n  strakes: {total: 6, hours: 5}\n  laps: {total: 2}\n",
            "2026-05-02\nhours: 4\npieces: {strakes: 2}");
    assertEquals(List.of(part("strakes", 8, HoursLeft.Basis.PIECES)), left.parts());
    assertEquals(List.of("Unsorted", "laps"), left.leftOut());
  }

  @Test
  void aRateOfPiecesStaysExact() throws IOException {
    HoursLeft left =
        left(
            "pieces:\n  rivets: {total: 8}\n  roves: {total: 8}\n",
            "2026-05-01\nhours: 1\npieces: {rivets: 7}",
            "2026-05-02\nhours: 1\npieces: {roves: 7}");
    assertEquals(BigFraction.of(3600, 7), left.parts().get(0).seconds());
    assertEquals(Figure.of(new Hours(1029)), left.total());
  }

  @Test
  void theTotalIsRoundedUpOnce() {
    HoursLeft.Part third = new HoursLeft.Part("a", BigFraction.of(1, 3), HoursLeft.Basis.RATE);
    assertEquals(
        Figure.of(new Hours(1)), new HoursLeft(List.of(third, third, third), List.of()).total());
    assertEquals(
        Figure.of(new Hours(2)),
        new HoursLeft(List.of(third, third, third, third), List.of()).total());
  }

  @Test
  void withoutAnyPlanTheHoursLeftAreUnknown() throws IOException {
    HoursLeft left = left("", "2026-05-02\nphase: planking\nhours: 4");
    assertEquals(Figure.unknown("no phase has planned hours"), left.total());
    assertEquals(List.of("Planking"), left.leftOut());
  }

  @Test
  void lessThanNothingIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> part("a", -1, HoursLeft.Basis.RATE));
  }
}
