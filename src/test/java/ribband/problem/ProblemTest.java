package ribband.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Problems as lines: one each, in order, harmless on a terminal. */
class ProblemTest {
  @Test
  void aProblemIsOneLineWithItsPlace() {
    assertEquals(
        "a.md:4:8: error: hours \"2;45\" is none; write 2:45",
        Problem.error(new Place("a.md", 4, 8), "hours \"2;45\" is none; write 2:45").toString());
    assertEquals("a.md:4: warning: x", Problem.warning(new Place("a.md", 4, 0), "x").toString());
    assertEquals("a.md: error: x", Problem.error(Place.of("a.md"), "x").toString());
  }

  @Test
  void whatCouldSteerATerminalIsShownAsItsNumber() {
    assertEquals(
        "a\\u000a.md: error: \\u001b[31m red\\u202e\\u2028\\ud800 é 舟",
        Problem.error(Place.of("a\n.md"), "\u001b[31m red\u202e\u2028\ud800 é 舟").toString());
  }

  @Test
  void longTextsAreCutAtSixtyCharactersAndNeverInsideOne() {
    assertEquals('"' + "a".repeat(60) + '"', OneLine.quote("a".repeat(60)));
    assertEquals('"' + "😀".repeat(60) + "...\"", OneLine.quote("😀".repeat(61)));
  }

  @Test
  void problemsStandByFileLineAndColumnEachOnce() {
    Problems problems = new Problems();
    problems.warning(new Place("b.md", 1, 1), "w");
    problems.error(new Place("a.md", 10, 1), "x");
    problems.error(new Place("a.md", 9, 12), "y");
    problems.error(new Place("a.md", 9, 2), "z");
    problems.error(new Place("a.md", 9, 2), "z");
    problems.error(Place.of("a.md"), "v");
    assertEquals(
        "[a.md: error: v, a.md:9:2: error: z, a.md:9:12: error: y, a.md:10:1: error: x,"
            + " b.md:1:1: warning: w]",
        problems.sorted().toString());
    assertEquals(5, problems.errors());
  }

  @Test
  void aNameIsAnsweredWithTheNearestRightOne() {
    List<String> keys = List.of("hours", "cost", "lead time", "photos");
    assertEquals(Optional.of("hours"), Nearest.to("huors", keys));
    assertEquals(Optional.of("hours"), Nearest.to("hour", keys));
    assertEquals(Optional.of("hours"), Nearest.to("HOURS", keys));
    assertEquals(Optional.of("lead time"), Nearest.to("lead_tme", keys));
    assertEquals(Optional.of("photos"), Nearest.to("phot", keys));
    assertEquals(Optional.empty(), Nearest.to("wind", keys));
    assertEquals(Optional.empty(), Nearest.to("x".repeat(100_000), keys));
  }

  @Test
  void whereNoneIsNearTheNamesThereAreAreListed() {
    assertEquals("did you mean \"cost\"?", Nearest.hint("csot", List.of("cost"), "none"));
    assertEquals("there is cost", Nearest.hint("wind", List.of("cost"), "none"));
    assertEquals("there are a, b", Nearest.hint("wind", List.of("a", "b"), "none"));
    assertEquals("none", Nearest.hint("wind", List.of(), "none"));
  }
}
