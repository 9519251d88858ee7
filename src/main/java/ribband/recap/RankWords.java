package ribband.recap;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import ribband.ledger.Records;
import ribband.ledger.Row;
import ribband.measure.Saying;

/** Says how a period ranks by its hours among all of its kind, and which ones beat it. */
final class RankWords<P extends Comparable<? super P>> {
  private static final int MOST_NAMED = 4;

  private final List<Row<P>> byRank;
  private final String kind;
  private final BiFunction<List<P>, P, List<String>> names;

  /**
   * Words about one kind of period.
   *
   * @param rows all there are
   * @param kind {@code month} or {@code year}
   * @param names of a few, where one is told of
   */
  RankWords(List<Row<P>> rows, String kind, BiFunction<List<P>, P, List<String>> names) {
    this.byRank = Records.byRank(rows);
    this.kind = kind;
    this.names = names;
  }

  /**
   * {@code the best month so far, level with May}, {@code second of 3 years with work (2025 beats
   * it)}.
   *
   * @param told it has hours
   */
  String of(Row<P> told) {
    List<P> better =
        byRank.stream()
            .takeWhile(other -> other.hours().compareTo(told.hours()) > 0)
            .map(Row::period)
            .toList();
    List<P> level = level(told);
    String ties = level.isEmpty() ? "" : ", level with " + named(level, told.period());
    return standing(told) + ties + beaten(better, told.period());
  }

  /**
   * The same in fewer words: {@code the best month so far, level with May}, {@code second of 3
   * years with work, level with two others}; those that beat it are not told.
   */
  String place(Row<P> told) {
    List<P> level = level(told);
    if (level.isEmpty()) {
      return standing(told);
    }
    String ties =
        level.size() == 1 ? named(level, told.period()) : Saying.number(level.size()) + " others";
    return standing(told) + ", level with " + ties;
  }

  /** In the fewest words: {@code the best month so far}, {@code third of 18 so far}. */
  String brief(Row<P> told) {
    int rank = told.rank().orElseThrow();
    return rank == 1 ? standing(told) : Saying.ordinal(rank) + " of " + byRank.size() + " so far";
  }

  private String standing(Row<P> told) {
    int rank = told.rank().orElseThrow();
    if (rank == 1 && byRank.size() == 1) {
      boolean isFirst = told.hoursToDate().equals(told.hours());
      return "the first " + kind + (isFirst ? " with work" : " in this journal");
    }
    if (rank == 1) {
      return "the best " + kind + " so far";
    }
    return Saying.ordinal(rank) + " of " + byRank.size() + " " + kind + "s with work";
  }

  private List<P> level(Row<P> told) {
    return byRank.stream()
        .filter(other -> other.hours().equals(told.hours()))
        .map(Row::period)
        .filter(other -> !other.equals(told.period()))
        .toList();
  }

  private String beaten(List<P> better, P told) {
    return better.isEmpty()
        ? ""
        : " (" + named(better, told) + (better.size() == 1 ? " beats it)" : " beat it)");
  }

  private String named(List<P> periods, P told) {
    List<P> first = periods.stream().limit(MOST_NAMED).toList();
    List<String> words = new ArrayList<>(names.apply(first, told));
    if (periods.size() > MOST_NAMED) {
      words.add(Saying.number(periods.size() - MOST_NAMED) + " more");
    }
    return Saying.list(words);
  }
}
