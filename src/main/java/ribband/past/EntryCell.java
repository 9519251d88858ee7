package ribband.past;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ribband.measure.Dates;
import ribband.measure.Unreadable;

/** An entry's name as {@code tally --by entry} tells it. */
record EntryCell(LocalDate date, String name) {
  private static final int LONGEST = 200;
  private static final Pattern NAME =
      Pattern.compile(
          "([0-9]{4}-[0-9]{2}-[0-9]{2})"
              + "(?:-[\\p{L}\\p{M}\\p{N}~](?:[\\p{L}\\p{M}\\p{N}._~-]{0,200}[\\p{L}\\p{M}\\p{N}~])?)?");

  /** The name; empty where its date could be two days, which has been told. */
  static Optional<EntryCell> read(String text, DateCells dates) throws Unreadable {
    String name = Normalizer.normalize(text, Normalizer.Form.NFC);
    Matcher parts = NAME.matcher(name);
    if (parts.matches() && name.getBytes(StandardCharsets.UTF_8).length <= LONGEST) {
      return Optional.of(new EntryCell(Dates.readDay(parts.group(1)), name));
    }
    // A name that is a date alone is one that spreadsheets show in their own way.
    if (DateForm.begins(name) && !name.matches("[0-9]{4}-[0-9]{2}-[0-9]{2}.+")) {
      return dates.read(name).map(day -> new EntryCell(day, day.toString()));
    }
    throw new Unreadable(
        "is no entry's name", "write its date and words without spaces, as 2026-03-14-garboard");
  }
}
