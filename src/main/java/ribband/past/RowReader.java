package ribband.past;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import ribband.measure.Hours;
import ribband.measure.Money;
import ribband.measure.Reading;
import ribband.measure.Unreadable;
import ribband.past.HoursCell.Unit;
import ribband.problem.Problems;

/** Reads the cells of a row that has a date, and tells what is wrong with each; keeps nothing. */
final class RowReader {
  private final What dated;
  private final DateCells dates;
  private final Unit unit;
  private final MoneyCell money;
  private final PhaseNames phases;
  private final Problems problems;

  /**
   * @param dated which column tells the day: the date's or the entry's
   * @param unit what bare numbers of the hours count
   */
  RowReader(
      What dated,
      DateCells dates,
      Unit unit,
      MoneyCell money,
      PhaseNames phases,
      Problems problems) {
    this.dated = dated;
    this.dates = dates;
    this.unit = unit;
    this.money = money;
    this.phases = phases;
    this.problems = problems;
  }

  /** The session; empty where a cell cannot be read, which has been told. */
  Optional<PastSession> read(Row row) {
    long told = problems.errors();
    Optional<EntryCell> entry =
        dated == What.ENTRY
            ? value(row, What.ENTRY, text -> EntryCell.read(text, dates)).flatMap(e -> e)
            : Optional.empty();
    Optional<LocalDate> date =
        dated == What.ENTRY
            ? entry.map(EntryCell::date)
            : value(row, What.DATE, dates::read).flatMap(day -> day);
    Hours hours = value(row, What.HOURS, this::hours).orElse(Hours.ZERO);
    Money cost = value(row, What.COST, this::cost).orElse(Money.ZERO);
    Optional<String> phase = phase(row);
    String note = value(row, What.NOTE, Row::printable).orElse("");
    if (date.isEmpty() || problems.errors() > told) {
      return Optional.empty();
    }
    CellAt at = row.at(dated).orElseThrow();
    Optional<String> name = entry.map(EntryCell::name);
    return Optional.of(new PastSession(at, date.get(), name, phase, hours, cost, note));
  }

  private <T> Optional<T> value(Row row, What what, Reading<T> reading) {
    String text = row.text(what);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(reading.read(text));
    } catch (Unreadable e) {
      problems.addAll(List.of(row.at(what).orElseThrow().error(text, e)));
      return Optional.empty();
    }
  }

  /** A blank cell may have been given a phase too. */
  private Optional<String> phase(Row row) {
    CellAt at = row.at(What.PHASE).orElseGet(() -> row.at(dated).orElseThrow());
    try {
      return phases.read(Row.printable(row.text(What.PHASE)));
    } catch (Unreadable e) {
      problems.addAll(List.of(at.error(row.text(What.PHASE), e)));
      return Optional.empty();
    }
  }

  private Hours hours(String text) throws Unreadable {
    if (isDash(text)) {
      return Hours.ZERO;
    }
    Hours hours = HoursCell.read(text, unit);
    HoursCell.refuseMoreThanADay(hours);
    return hours;
  }

  private Money cost(String text) throws Unreadable {
    return isDash(text) ? Money.ZERO : money.read(text);
  }

  /** Spreadsheets show nothing as a dash. */
  private static boolean isDash(String text) {
    return text.matches("[-–—]");
  }
}
