package ribband.chart;

/**
 * A note with a leader to the thing it tells of.
 *
 * @param x of the leader
 * @param foot height of the thing
 * @param head where the leader ends at the note; the foot where there is none
 * @param label the note; its text is empty where it found no room
 */
public record Callout(int x, int foot, int head, Label label) {
  boolean isTold() {
    return !label.text().isEmpty();
  }
}
