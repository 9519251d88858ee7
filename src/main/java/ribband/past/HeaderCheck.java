package ribband.past;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import ribband.measure.Name;
import ribband.measure.Saying;
import ribband.measure.Unreadable;
import ribband.problem.Nearest;
import ribband.problem.OneLine;
import ribband.problem.Place;
import ribband.problem.Problems;

/** Tells what is wrong with a header, before any cell below it is read; one use. */
final class HeaderCheck {
  private final String file;
  private final Header header;
  private final Asked asked;
  private final Problems problems;

  HeaderCheck(String file, Header header, Asked asked, Problems problems) {
    this.file = file;
    this.header = header;
    this.asked = asked;
    this.problems = problems;
  }

  /**
   * Tells all of it.
   *
   * @param money knows the journal's currency
   */
  void tell(MoneyCell money) {
    asked.columns().forEach(this::tellMissing);
    header.doubts().forEach(this::tellDoubt);
    tellClock();
    Optional.ofNullable(header.columns().get(What.COST))
        .ifPresent(cost -> tellOtherCurrency(cost, money));
  }

  private void tellMissing(What what, String name) {
    if (!header.columns().containsKey(what) && !Name.fold(name).equals(Header.NONE)) {
      List<String> names =
          header.headings().stream().map(Heading::text).filter(text -> !text.isEmpty()).toList();
      problems.error(
          new Place(file, header.row(), 0),
          "--column "
              + what.word()
              + "="
              + OneLine.cut(name)
              + " names no column; "
              + Nearest.hint(name, names, "write a letter, as B"));
    }
  }

  private void tellDoubt(What what, List<Integer> fitting) {
    if (!header.columns().containsKey(what)) {
      problems.error(
          at(fitting.get(0)),
          Saying.list(fitting.stream().map(this::named).toList())
              + " may each be the "
              + what.word()
              + "; say which with --column "
              + what.word()
              + "="
              + CellAt.letters(fitting.get(0) + 1)
              + (what == What.HOURS ? ", or write them in one column, as 2:45" : ""));
    }
  }

  /** Sessions told from when to when would count no hours. */
  private void tellClock() {
    if (header.columns().containsKey(What.HOURS) || asked.columns().containsKey(What.HOURS)) {
      return;
    }
    IntStream.range(0, header.headings().size())
        .filter(i -> header.headings().get(i).isClock())
        .findFirst()
        .ifPresent(
            i ->
                problems.error(
                    at(i),
                    "no column tells the hours, but "
                        + named(i)
                        + " tells a time; reckon the hours in a column of their own, or say"
                        + " --column hours=none"));
  }

  private void tellOtherCurrency(Column cost, MoneyCell money) {
    try {
      cost.heading().refuseOtherCurrency(money);
    } catch (Unreadable e) {
      problems.error(
          at(cost.index()), "column " + named(cost.index()) + " " + e.wrong() + "; " + e.cure());
    }
  }

  private Place at(int index) {
    return new Place(file, header.row(), index + 1);
  }

  private String named(int index) {
    return Header.named(index, header.headings().get(index));
  }
}
