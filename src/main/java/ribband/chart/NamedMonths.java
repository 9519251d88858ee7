package ribband.chart;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Chooses, for each phase, the month in which a chart names it: full, and not yet taken. */
final class NamedMonths {
  /** A month with less than this part of the phase's fullest is too thin to be named on. */
  private static final int THINNEST_PART = 3;

  private NamedMonths() {}

  /** For each phase the index of its month; -1 for a phase with nothing in any month. */
  static int[] choose(int phases, List<StackedMonths.Month> months) {
    int[] chosen = new int[phases];
    Arrays.fill(chosen, -1);
    Set<Integer> taken = new HashSet<>();
    // Phases with few months first: those with many can step aside.
    IntStream.range(0, phases)
        .boxed()
        .sorted(Comparator.comparingLong(phase -> filled(phase, months)))
        .forEach(phase -> chosen[phase] = choose(phase, months, taken));
    return chosen;
  }

  private static int choose(int phase, List<StackedMonths.Month> months, Set<Integer> taken) {
    List<Integer> fullestFirst =
        IntStream.range(0, months.size())
            .boxed()
            .filter(month -> amount(phase, month, months) != 0)
            .sorted(Comparator.comparingLong(month -> -amount(phase, month, months)))
            .toList();
    if (fullestFirst.isEmpty()) {
      return -1;
    }
    int fullest = fullestFirst.get(0);
    long least = amount(phase, fullest, months) / THINNEST_PART;
    int month =
        fullestFirst.stream()
            .filter(at -> !taken.contains(at) && amount(phase, at, months) >= least)
            .findFirst()
            .orElse(fullest);
    taken.add(month);
    return month;
  }

  private static long filled(int phase, List<StackedMonths.Month> months) {
    return months.stream().filter(month -> month.amounts().get(phase) != 0).count();
  }

  private static long amount(int phase, int month, List<StackedMonths.Month> months) {
    return Math.abs(months.get(month).amounts().get(phase));
  }
}
