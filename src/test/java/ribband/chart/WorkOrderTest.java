package ribband.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import ribband.chart.WorkOrder.Lead;
import ribband.chart.WorkOrder.Sign;
import ribband.chart.WorkOrder.Step;

class WorkOrderTest {
  private static final Caption CAPTION =
      new Caption("order", "The order of work", "A line for each job.", "Two jobs wait.");

  private static Step step(String name, Sign sign, Integer... after) {
    return new Step(name, "Do " + name, sign, List.of(after), "");
  }

  @Test
  void eachStepStandsBelowAndRightOfWhatComesBeforeIt() {
    WorkOrder wide =
        WorkOrder.chart(
                CAPTION,
                List.of(
                    step("strakes", Sign.GOAL),
                    step("trim", Sign.WAITING, 0),
                    step("mask", Sign.READY),
                    step("paint", Sign.WAITING, 1, 2)))
            .wide();
    assertEquals(List.of(10, 34, 10, 58), wide.marks().stream().map(WorkOrder.Mark::x).toList());
    assertEquals(List.of(13, 39, 65, 91), wide.marks().stream().map(WorkOrder.Mark::y).toList());
    assertEquals(
        List.of(new Lead(10, 13, 34, 39), new Lead(34, 39, 58, 91), new Lead(10, 65, 58, 91)),
        wide.leads());
    assertEquals(List.of(8, 8, 8), wide.leads().stream().map(Lead::bend).toList());
    assertEquals(104, wide.height());
    assertTrue(wide.marks().stream().allMatch(mark -> mark.label().x() == 72));
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
    for (WorkOrder shape : List.of(chart.wide(), chart.narrow())) {
      assertEquals(WorkOrder.MOST, shape.marks().size());
      for (WorkOrder.Mark mark : shape.marks()) {
        int end = mark.label().x() + Lettering.width(mark.label().text());
        assertTrue(end <= shape.width(), mark.toString());
        assertTrue(mark.x() < mark.label().x());
      }
      assertTrue(shape.leads().stream().allMatch(lead -> lead.toX() > lead.x()));
      assertTrue(shape.leads().stream().allMatch(lead -> lead.bend() > 0));
    }
  }
}
