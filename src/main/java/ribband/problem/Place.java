package ribband.problem;

import java.util.Comparator;
import java.util.Objects;

/**
 * Where in the journal something stands.
 *
 * @param file path from the journal's root, parts joined by {@code /}; never empty
 * @param line 1-based; 0 where the whole file is meant
 * @param column 1-based, in characters of the line (code points); 0 where the whole line is meant
 */
public record Place(String file, int line, int column) implements Comparable<Place> {
  private static final Comparator<Place> ORDER =
      Comparator.comparing(Place::file)
          .thenComparingInt(Place::line)
          .thenComparingInt(Place::column);

  public Place {
    Objects.requireNonNull(file);
    if (line < 0 || column < 0) {
      throw new IllegalArgumentException("negative place " + line + ":" + column);
    }
  }

  /** A file as a whole. */
  public static Place of(String file) {
    return new Place(file, 0, 0);
  }

  @Override
  public int compareTo(Place other) {
    return ORDER.compare(this, other);
  }

  /** {@code file}, {@code file:line} or {@code file:line:column}, as far as they are known. */
  @Override
  public String toString() {
    if (line == 0) {
      return file;
    }
    return column == 0 ? file + ":" + line : file + ":" + line + ":" + column;
  }
}
