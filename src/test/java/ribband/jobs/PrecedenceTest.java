package ribband.jobs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class PrecedenceTest {
  /**
   * A textbook graph of sorting by precedence (from memory; its order with the smallest first
   * worked by hand).
   */
  @Test
  void theSmallestThatMayComeComesFirst() {
    Precedence<Integer> order =
        Precedence.of(
            Map.of(
                11, List.of(5, 7),
                8, List.of(7, 3),
                10, List.of(3, 11),
                2, List.of(11),
                9, List.of(11, 8)));
    assertEquals(List.of(3, 5, 7, 8, 11, 2, 9, 10), order.inOrder());
  }

  /**
   * A worked example of the critical path method, studylib.net/doc/8378728: A 6, then B 2 and C 2,
   * D 3 after B, F 2 after C, E 4 after D and F, G 1 after E; length 16, critical A-B-D-E-G, slack
   * of C and F 1.
   */
  @Test
  void theLongestWayIsTheCriticalPath() {
    Map<String, Integer> lasts = Map.of("A", 6, "B", 2, "C", 2, "D", 3, "F", 2, "E", 4, "G", 1);
    Precedence<String> order =
        Precedence.of(
            Map.of(
                "B", List.of("A"),
                "C", List.of("A"),
                "D", List.of("B"),
                "F", List.of("C"),
                "E", List.of("D", "F"),
                "G", List.of("E")));
    assertEquals(List.of("A", "B", "D", "E", "G"), order.longest(lasts::get, step -> 0));
    Map<String, Long> tails = order.tails(lasts::get, step -> 0);
    assertEquals(16, tails.get("A"));
    // A step's latest start is the length less its tail: C 7 and F 9, a day after they could begin.
    assertEquals(Map.of("B", 10L, "C", 9L, "D", 8L, "F", 7L, "E", 5L, "G", 1L, "A", 16L), tails);
  }

  @Test
  void aRestCountsBetweenStepsAndNotBehindTheLast() {
    Precedence<String> order = Precedence.of(Map.of("b", List.of("a")));
    assertEquals(Map.of("a", 6L, "b", 2L), order.tails(step -> 2, step -> 2));
  }

  @Test
  void theSmallestWayIsTakenAmongEquals() {
    Precedence<String> order =
        Precedence.of(Map.of("d", List.of("b", "c"), "e", List.of("a"), "f", List.of("b")));
    assertEquals(List.of("a", "e"), order.longest(step -> 1, step -> 0));
  }

  @Test
  void aCircleIsNoOrder() {
    Precedence<String> circle =
        Precedence.of(Map.of("a", List.of("b"), "b", List.of("a"), "c", List.of("a")));
    assertThrows(IllegalArgumentException.class, circle::inOrder);
  }

  /** Every order of work that could be, tried one by one. */
  @Test
  void anyGraphIsOrderedAndItsLongestWayIsTheLongestOfAll() {
    for (int seed = 0; seed < 300; seed++) {
      Random random = new Random(seed);
      int size = 1 + random.nextInt(8);
      Map<Integer, List<Integer>> after = new HashMap<>();
      Map<Integer, Integer> lasts = new HashMap<>();
      for (int step = 0; step < size; step++) {
        List<Integer> before = new ArrayList<>();
        for (int first = 0; first < step; first++) {
          if (random.nextInt(3) == 0) {
            before.add(first);
          }
        }
        after.put(step, before);
        lasts.put(step, random.nextInt(5));
      }
      Precedence<Integer> order = Precedence.of(after);
      List<Integer> sorted = order.inOrder();
      assertEquals(new TreeSet<>(after.keySet()), new TreeSet<>(sorted));
      Set<Integer> seen = new HashSet<>();
      for (int step : sorted) {
        assertTrue(seen.containsAll(after.get(step)), "seed " + seed);
        seen.add(step);
      }
      long longest = 0;
      for (int step = 0; step < size; step++) {
        longest = Math.max(longest, longestTo(step, after, lasts));
      }
      List<Integer> way = order.longest(lasts::get, step -> 0);
      assertEquals(longest, way.stream().mapToLong(lasts::get).sum(), "seed " + seed);
      for (int i = 1; i < way.size(); i++) {
        assertTrue(after.get(way.get(i)).contains(way.get(i - 1)), "seed " + seed);
      }
    }
  }

  private static long longestTo(
      int step, Map<Integer, List<Integer>> after, Map<Integer, Integer> lasts) {
    long before = 0;
    for (int first : after.get(step)) {
      before = Math.max(before, longestTo(first, after, lasts));
    }
    return before + lasts.get(step);
  }
}
