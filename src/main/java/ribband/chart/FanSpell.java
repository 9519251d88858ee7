package ribband.chart;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Months that follow one another and are too cold for the same. */
record FanSpell(YearMonth first, YearMonth last, String what) {
  static List<FanSpell> of(List<Fan.ColdMonth> months) {
    List<FanSpell> spells = new ArrayList<>();
    months.stream()
        .sorted(Comparator.comparing(Fan.ColdMonth::month))
        .forEach(month -> add(month, spells));
    return spells;
  }

  /** By date; rests of one name that follow each other without a day of work are one. */
  static List<Fan.Rest> joined(List<Fan.Rest> rests) {
    List<Fan.Rest> joined = new ArrayList<>();
    rests.stream()
        .sorted(Comparator.comparing(Fan.Rest::from))
        .forEach(
            rest -> {
              int end = joined.size() - 1;
              if (end >= 0 && goOn(joined.get(end), rest)) {
                joined.set(end, new Fan.Rest(rest.name(), joined.get(end).from(), rest.to()));
              } else {
                joined.add(rest);
              }
            });
    return joined;
  }

  private static boolean goOn(Fan.Rest rest, Fan.Rest next) {
    return rest.name().equals(next.name()) && !next.from().isAfter(rest.to().plusDays(1));
  }

  private static void add(Fan.ColdMonth month, List<FanSpell> spells) {
    int end = spells.size() - 1;
    if (end >= 0 && spells.get(end).goesOnWith(month)) {
      FanSpell longer = new FanSpell(spells.get(end).first, month.month(), month.what());
      spells.set(end, longer);
    } else {
      spells.add(new FanSpell(month.month(), month.month(), month.what()));
    }
  }

  private boolean goesOnWith(Fan.ColdMonth month) {
    return last.plusMonths(1).equals(month.month()) && what.equals(month.what());
  }
}
