package ribband.desk;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import ribband.journal.Entry;
import ribband.journal.Outlay;
import ribband.journal.Phase;
import ribband.ledger.Sums;
import ribband.measure.Currency;
import ribband.measure.Hours;
import ribband.measure.Money;
import ribband.past.PastSession;

/**
 * A past session as an entry that is not there yet.
 *
 * @param text of its file
 */
public record BroughtEntry(NewEntry file, PastSession session, String text) {
  public BroughtEntry {
    Objects.requireNonNull(file);
    Objects.requireNonNull(session);
    Objects.requireNonNull(text);
  }

  /** The shortest entry that says what the session says. */
  static String text(PastSession session, Currency currency) {
    StringBuilder text = new StringBuilder("---\n");
    session.phase().ifPresent(id -> text.append("phase: ").append(Yaml.text(id)).append('\n'));
    if (!session.hours().isZero()) {
      text.append("hours: ").append(Yaml.hours(session.hours())).append('\n');
    }
    if (!session.cost().isZero()) {
      text.append("cost: ").append(session.cost().decimal(currency)).append('\n');
    }
    text.append("---\n");
    return session.note().isEmpty()
        ? text.toString()
        : text.append(PlainWords.markdown(session.note())).append('\n').toString();
  }

  /** What a session adds to the totals. */
  static Sums sums(PastSession session) {
    String phase = session.phase().orElse(Phase.UNSORTED.id());
    Map<String, Hours> hours = session.hours().isZero() ? Map.of() : Map.of(phase, session.hours());
    Map<String, Money> cost = session.cost().isZero() ? Map.of() : Map.of(phase, session.cost());
    return new Sums(hours.isEmpty() ? 0 : 1, hours, cost);
  }

  /** All that an entry says of a session; two that say the same have equal ones. */
  static List<Object> said(Entry entry) {
    Map<String, Money> cost = new LinkedHashMap<>();
    for (Outlay outlay : entry.outlays()) {
      cost.merge(outlay.phase(), outlay.amount(), Money::plus);
    }
    cost.values().removeIf(Money::isZero);
    return List.of(entry.date(), entry.hours(), cost, entry.text().strip());
  }

  /** What a session's entry is to say. */
  static List<Object> said(PastSession session, String text) {
    Sums sums = sums(session);
    return List.of(session.date(), sums.hours(), sums.cost(), words(text));
  }

  /** What stands below the keys of an entry's text. */
  static String words(String text) {
    return text.substring(text.indexOf("---\n", 4) + 4).strip();
  }

  /**
   * Whether an entry that was read says this.
   *
   * @param entry may be null where none is there
   */
  boolean isSaidBy(Entry entry) {
    return entry != null && said(entry).equals(said(session, text));
  }
}
