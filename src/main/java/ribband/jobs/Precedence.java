package ribband.jobs;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.ToLongFunction;

/**
 * What must come before what, as in a precedence diagram: steps, each after some others.
 *
 * @param after every step with those it comes after; without a circle
 */
record Precedence<T extends Comparable<? super T>>(Map<T, Set<T>> after) {

  /**
   * @param after steps with those they come after; those that are named there alone are steps too
   * @throws IllegalArgumentException where they go round in a circle
   */
  static <T extends Comparable<? super T>> Precedence<T> of(Map<T, ? extends Collection<T>> after) {
    Map<T, Set<T>> all = new TreeMap<>();
    after.forEach(
        (step, before) -> {
          all.computeIfAbsent(step, none -> new TreeSet<>()).addAll(before);
          before.forEach(first -> all.computeIfAbsent(first, none -> new TreeSet<>()));
        });
    return new Precedence<>(all);
  }

  /**
   * All steps, each behind those it comes after, the smallest first of those that could stand
   * there. A. B. Kahn, "Topological sorting of large networks", 1962.
   */
  List<T> inOrder() {
    Map<T, List<T>> next = followers();
    Map<T, Integer> open = new HashMap<>();
    after.forEach((step, before) -> open.put(step, before.size()));
    PriorityQueue<T> free = new PriorityQueue<>();
    open.forEach(
        (step, count) -> {
          if (count == 0) {
            free.add(step);
          }
        });
    List<T> order = new ArrayList<>();
    while (!free.isEmpty()) {
      T step = free.remove();
      order.add(step);
      for (T follower : next.getOrDefault(step, List.of())) {
        if (open.merge(follower, -1, Integer::sum) == 0) {
          free.add(follower);
        }
      }
    }
    if (order.size() < after.size()) {
      throw new IllegalArgumentException("steps go round in a circle: " + after);
    }
    return order;
  }

  /** For each step those that come after it, in their order; none for the last ones. */
  Map<T, List<T>> followers() {
    Map<T, List<T>> next = new HashMap<>();
    after.forEach(
        (step, before) ->
            before.forEach(
                first -> next.computeIfAbsent(first, none -> new ArrayList<>()).add(step)));
    return next;
  }

  /**
   * How long it takes from the start of each step to the end of all that must follow it.
   *
   * @param lasts how long a step takes, 0 or more
   * @param rests how long it is left alone before what follows can begin, 0 or more
   */
  Map<T, Long> tails(ToLongFunction<T> lasts, ToLongFunction<T> rests) {
    Map<T, List<T>> next = followers();
    Map<T, Long> tails = new HashMap<>();
    List<T> order = inOrder();
    for (int i = order.size() - 1; i >= 0; i--) {
      T step = order.get(i);
      OptionalLong rest = next.getOrDefault(step, List.of()).stream().mapToLong(tails::get).max();
      long behind = rest.isPresent() ? rests.applyAsLong(step) + rest.getAsLong() : 0;
      tails.put(step, lasts.applyAsLong(step) + behind);
    }
    return tails;
  }

  /** The longest way through: steps that must follow each other, the smallest among equals. */
  List<T> longest(ToLongFunction<T> lasts, ToLongFunction<T> rests) {
    Map<T, Long> tails = tails(lasts, rests);
    Map<T, List<T>> next = followers();
    List<T> way = new ArrayList<>();
    Collection<T> choice = after.keySet();
    while (!choice.isEmpty()) {
      T step =
          Collections.max(
              choice,
              Comparator.<T>comparingLong(tails::get).thenComparing(Comparator.reverseOrder()));
      way.add(step);
      choice = next.getOrDefault(step, List.of());
    }
    return way;
  }
}
