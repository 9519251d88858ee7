package ribband.past;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import ribband.measure.Hours;
import ribband.measure.Money;

/**
 * One session of the spreadsheet.
 *
 * @param at the cell it begins with
 * @param name of its entry, where the sheet has one; begins with the date
 * @param phase id
 * @param hours zero where none were worked
 * @param cost below zero for money that came back
 * @param note plain words; may be empty, may have several lines
 */
public record PastSession(
    CellAt at,
    LocalDate date,
    Optional<String> name,
    Optional<String> phase,
    Hours hours,
    Money cost,
    String note) {
  public PastSession {
    Objects.requireNonNull(at);
    Objects.requireNonNull(date);
    Objects.requireNonNull(name);
    Objects.requireNonNull(phase);
    Objects.requireNonNull(hours);
    Objects.requireNonNull(cost);
    Objects.requireNonNull(note);
  }

  /** Whether it says anything beside its date. */
  boolean saysSomething() {
    return name.isPresent() || !hours.isZero() || !cost.isZero() || !note.isEmpty();
  }

  /** All that it says; two rows that say the same have equal ones. */
  List<Object> said() {
    return List.of(date, name, phase, hours, cost, note);
  }
}
