package ribband.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import ribband.chart.WorkOrder.Arc;
import ribband.chart.WorkOrder.Sign;
import ribband.chart.WorkOrder.Step;

class WorkOrderTest {
  private static final Caption CAPTION =
      new Caption("order", "The order of work", "A line for each job.", "Two jobs wait.");

  private static Step step(String name, Sign sign, Integer... after) {
    return new Step(name, "Do " + name, sign, List.of(after), "");
  }

  @Test
  void eachStepHasALineAndAnArcFromWhatComesBeforeIt() {
    WorkOrder wide =
        WorkOrder.chart(
                CAPTION,
                List.of(
                    step("strakes", Sign.GOAL),
                    step("trim", Sign.WAITING, 0),
                    step("mask", Sign.READY),
                    step("paint", Sign.WAITING, 1, 2)))
            .wide();
    // The widest arc spans two lines and reaches 16 and 8 out.
    assertTrue(wide.marks().stream().allMatch(mark -> mark.x() == 32));
    assertTrue(wide.marks().stream().allMatch(mark -> mark.label().x() == 46));
    assertEquals(List.of(13, 39, 65, 91), wide.marks().stream().map(WorkOrder.Mark::y).toList());
    assertEquals(
        List.of(new Arc(32, 13, 39, 11), new Arc(32, 39, 91, 0), new Arc(32, 65, 91, 11)),
        wide.arcs());
    assertEquals(104, wide.height());
  }

  @Test
  void itsTableIsTheOrderInWords() {
    Chart<WorkOrder> chart =
        WorkOrder.chart(
            CAPTION, List.of(new Step("trim", "Trim the ends", Sign.READY, List.of(), "nothing")));
    assertEquals(
        new Table(
            "Work",
            List.of("What", "Waits for"),
            List.of(Table.Row.of("trim", List.of("Trim the ends", "nothing"))),
            List.of()),
        chart.table());
  }

  @Test
  void whatStandsAloneIsLeftOutAndTheRestRenumbered() {
    assertEquals(
        List.of(step("b", Sign.READY), step("d", Sign.WAITING, 0)),
        WorkOrder.joined(
            List.of(
                step("a", Sign.READY),
                step("b", Sign.READY),
                step("c", Sign.READY),
                step("d", Sign.WAITING, 1))));
    assertEquals(List.of(), WorkOrder.joined(List.of(step("a", Sign.READY))));
  }

  @Test
  void fourHundredInARowStayWithinTheSheet() {
    List<Step> steps = new ArrayList<>();
    for (int i = 0; i < 400; i++) {
      Integer[] after = i == 0 ? new Integer[0] : new Integer[] {i - 1};
      steps.add(step("a job with a name that is far too long for a phone " + i, Sign.READY, after));
    }
    Chart<WorkOrder> chart = WorkOrder.chart(CAPTION, WorkOrder.joined(steps));
    assertEquals(400, chart.table().rows().size());
    for (WorkOrder shape : chart.shapes()) {
      assertEquals(WorkOrder.MOST, shape.marks().size());
      for (WorkOrder.Mark mark : shape.marks()) {
        int end = mark.label().x() + Lettering.width(mark.label().text());
        assertTrue(end <= shape.width(), mark.toString());
        assertTrue(mark.x() < mark.label().x());
      }
      assertTrue(shape.arcs().stream().allMatch(arc -> arc.toY() > arc.fromY()));
      assertTrue(
          shape.arcs().stream().allMatch(arc -> arc.x() - (arc.x() - arc.reach()) * 3 / 4 >= 0));
    }
  }
}
