package ribband.past;

import java.util.Objects;
import ribband.measure.Unreadable;
import ribband.problem.OneLine;
import ribband.problem.Place;
import ribband.problem.Problem;

/**
 * Where a cell stands.
 *
 * @param file as the builder named it
 * @param row 1-based, as spreadsheets number it
 * @param column 1-based
 * @param heading of its column; may be empty
 */
public record CellAt(String file, int row, int column, String heading) {
  private static final int LETTERS = 26;

  public CellAt {
    Objects.requireNonNull(file);
    Objects.requireNonNull(heading);
    if (row < 1 || column < 1) {
      throw new IllegalArgumentException("no cell " + row + ":" + column);
    }
  }

  /** The letters of a column, 1-based: {@code A}, {@code Z}, {@code AA}. */
  static String letters(int column) {
    String last = Character.toString('A' + (column - 1) % LETTERS);
    return column <= LETTERS ? last : letters((column - 1) / LETTERS) + last;
  }

  public Place place() {
    return new Place(file, row, column);
  }

  /** What is wrong with a text that stands here. */
  public Problem error(String text, Unreadable why) {
    return Problem.error(
        place(), this + " " + OneLine.quote(text) + " " + why.wrong() + "; " + why.cure());
  }

  /** {@code C12 (Hours)}. */
  @Override
  public String toString() {
    String cell = letters(column) + row;
    return heading.isEmpty() ? cell : cell + " (" + OneLine.cut(heading) + ")";
  }
}
