package ribband.desk;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ribband.card.Card;
import ribband.card.LeftOut;
import ribband.card.Picked;
import ribband.card.Reason;
import ribband.card.Window;
import ribband.journal.Entry;
import ribband.journal.Journal;
import ribband.journal.Phase;
import ribband.measure.Unreadable;
import ribband.spoken.Spoken;

/**
 * A night's entry, to be written down.
 *
 * @param journal which may have errors: what is known of it is used
 * @param night its date
 * @param now for what is still soft
 * @param title empty where none is given
 * @param spoken empty where nothing was said
 */
public record Tonight(
    Journal journal,
    LocalDate night,
    Instant now,
    Optional<String> title,
    Optional<Spoken> spoken) {

  /**
   * What was written.
   *
   * @param file the entry's
   * @param photos those that the entry lists, in order
   * @param leftOut files of the card that are not among them
   */
  public record Written(Path file, List<String> photos, List<LeftOut> leftOut) {
    public Written {
      photos = List.copyOf(photos);
      leftOut = List.copyOf(leftOut);
    }
  }

  /** The paths of the entries that the night has already, in order. */
  public List<String> before() {
    return journal.entries().stream()
        .filter(entry -> entry.date().equals(night))
        .map(Entry::file)
        .toList();
  }

  /** When a picture must have been taken to be of this night. */
  public Window window() {
    return Window.since(
        journal.entries().stream()
            .map(Entry::date)
            .filter(date -> date.isBefore(night))
            .reduce((before, last) -> last),
        night);
  }

  /**
   * Writes the entry's file, whole or not at all, under a name that is free.
   *
   * @throws IOException where the disk fails, with a message that names what it failed on
   */
  public Written write() throws IOException {
    return put(entry -> List.of());
  }

  /**
   * Brings the night's pictures in and writes the entry that lists them. Stopped at any moment, it
   * leaves whole pictures in the folder of an entry that is not there yet; called again it lists
   * them.
   *
   * @param card the folder that holds them
   * @param zone in which its files' own times are told
   * @param output where the site goes
   * @throws Unreadable where that folder is none; nothing is written then
   * @throws IOException where the disk fails, with a message that names what it failed on
   */
  public Written write(Path card, ZoneId zone, Path output) throws Unreadable, IOException {
    NewEntry entry = free();
    Picked picked =
        Card.pick(card, window(), zone, journal.folder(), output, Set.copyOf(names(entry)));
    Written written = put(free -> OwnPictures.bring(picked.pictures(), journal, free));
    List<LeftOut> leftOut = new ArrayList<>(picked.leftOut());
    leftOut.removeIf(left -> isIn(entry, left));
    return new Written(written.file(), written.photos(), leftOut);
  }

  private Set<String> names(NewEntry entry) {
    Set<String> names = new HashSet<>();
    for (String file : journal.folder().in(entry.pictures())) {
      names.add(file.substring(file.lastIndexOf('/') + 1));
    }
    return names;
  }

  /** What lies in the entry's own folder already is listed, so it is not left out. */
  private static boolean isIn(NewEntry entry, LeftOut left) {
    return left.reason() == Reason.ALREADY_THERE
        && left.detail().startsWith(entry.pictures() + "/");
  }

  private interface Photos {
    List<String> of(NewEntry entry) throws IOException;
  }

  private Written put(Photos photos) throws IOException {
    while (true) {
      NewEntry entry = free();
      List<String> shown = photos.of(entry);
      try {
        Path file = entry.write(journal.folder().root(), draft(shown).text());
        return new Written(file, shown, List.of());
      } catch (FileAlreadyExistsException e) {
        // Somebody was faster: the name is taken now, and the next one is tried.
        continue;
      }
    }
  }

  private NewEntry free() {
    return NewEntry.free(journal, night, title.or(this::phase).orElse(""));
  }

  private Optional<String> phase() {
    return spoken.flatMap(Spoken::phase).or(() -> WorkedLast.phase(journal.entries(), night));
  }

  private Draft draft(List<String> photos) {
    Optional<String> phase = phase();
    return new Draft(
        title,
        phase,
        journal.phases().stream().map(Phase::id).toList(),
        spoken.map(said -> Said.of(said, journal.project(), phase)).orElse(Said.NOTHING),
        Reminders.of(journal, night, now, phase),
        photos);
  }
}
