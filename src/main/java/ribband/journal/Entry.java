package ribband.journal;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribband.measure.Hours;
import ribband.measure.Money;
import ribband.measure.Ordered;
import ribband.measure.Percent;

/**
 * One dated note.
 *
 * @param file journal path
 * @param address the date and the rest of the file's name, safe as a file name; unique
 * @param phase of all that names no other
 * @param hours by phase id, none of them zero
 * @param outlays what was spent; they add up to the entry's cost
 * @param left counted on the shelf
 * @param complete where phases stand, by phase id
 * @param mark what happened, in a few words, to stand on the charts
 * @param photos those listed or found in its own folder; none where {@code photos: none}
 * @param shown whether the site may show it
 * @param text its Markdown, may be blank
 * @param textLine 1-based line of the file where the text begins
 */
public record Entry(
    String file,
    LocalDate date,
    String address,
    String title,
    Optional<String> phase,
    Map<String, Hours> hours,
    List<Outlay> outlays,
    List<Amount> used,
    List<Amount> left,
    List<PieceWork> pieces,
    Map<String, Percent> complete,
    List<Joint> joints,
    List<Coat> coats,
    List<Job> todo,
    List<Mark> done,
    List<String> lessons,
    Optional<String> mark,
    List<Photo> photos,
    Shown shown,
    String text,
    int textLine) {

  /** Private entries are counted and never shown. */
  public enum Shown {
    PUBLIC,
    PRIVATE
  }

  public Entry {
    hours = Ordered.copy(hours);
    outlays = List.copyOf(outlays);
    used = List.copyOf(used);
    left = List.copyOf(left);
    pieces = List.copyOf(pieces);
    complete = Ordered.copy(complete);
    joints = List.copyOf(joints);
    coats = List.copyOf(coats);
    todo = List.copyOf(todo);
    done = List.copyOf(done);
    lessons = List.copyOf(lessons);
    photos = List.copyOf(photos);
  }

  public Hours totalHours() {
    return Hours.sum(hours.values());
  }

  public Money totalCost() {
    return Money.sum(outlays.stream().map(Outlay::amount).toList());
  }

  /** Its spending by phase id, in the order written. */
  public Map<String, Money> cost() {
    Map<String, Money> cost = new LinkedHashMap<>();
    outlays.forEach(outlay -> cost.merge(outlay.phase(), outlay.amount(), Money::plus));
    return cost;
  }

  /**
   * The ids of the phases it is of: those of its hours; an evening of looking and taking pictures
   * has none, but a phase.
   */
  public List<String> phases() {
    return hours.isEmpty() ? phase.stream().toList() : List.copyOf(hours.keySet());
  }

  public boolean isPublic() {
    return shown == Shown.PUBLIC;
  }
}
