package ribband.chart;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ribband.measure.Saying;

/** Sets the dates of a fan's ends over the zero line, in an order that keeps leaders clear. */
record FanEnds(Fan.Done done, Size size) {
  /** The dates with their odds, in order; the better odds stand for all that end on a day. */
  private Map<LocalDate, String> named() {
    Map<LocalDate, String> odds = new LinkedHashMap<>();
    odds.put(done.p50(), "even odds");
    odds.put(done.p80(), "4 in 5");
    odds.put(done.p95(), "19 in 20");
    // On a phone the year stands under the months alone.
    odds.replaceAll(
        (date, said) ->
            said + ": " + (size == Size.NARROW ? Saying.shortDay(date) : Saying.day(date)));
    return odds;
  }

  int widest() {
    return Lettering.widest(named().values().stream());
  }

  List<Callout> lay(Days across, int zero, Clearance clearance) {
    List<Notes.Note> ends = new ArrayList<>();
    named().forEach((date, said) -> ends.add(new Notes.Note(across.at(date), zero, said)));
    boolean fitRight =
        ends.stream().allMatch(end -> end.x() + Lettering.width(end.text()) <= clearance.width());
    if (!fitRight) {
      return ends.stream()
          .map(end -> lay(end, List.of(Notes.Side.ABOVE_LEFT, Notes.Side.ABOVE), clearance))
          .toList();
    }
    // The last stands lowest, so that no leader runs through a date.
    Collections.reverse(ends);
    List<Callout> laid = new ArrayList<>();
    for (Notes.Note end : ends) {
      laid.add(0, lay(end, List.of(Notes.Side.ABOVE_RIGHT, Notes.Side.ABOVE), clearance));
    }
    return laid;
  }

  /** On the first side that has room, however far: all on one side read as one list. */
  private static Callout lay(Notes.Note end, List<Notes.Side> sides, Clearance clearance) {
    return sides.stream()
        .map(side -> new Notes(clearance, List.of(side)).lay(List.of(end)).get(0))
        .filter(Callout::isTold)
        .findFirst()
        .orElseGet(() -> new Notes(clearance, List.of()).lay(List.of(end)).get(0));
  }
}
