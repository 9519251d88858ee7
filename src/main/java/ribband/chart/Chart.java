package ribband.chart;

import java.util.Objects;

/**
 * A chart ready to be drawn: its words, its shape for a wide page and for a phone, its figures.
 *
 * @param <S> the kind of shape
 */
public record Chart<S>(Caption caption, S wide, S narrow, Table table) {
  public Chart {
    Objects.requireNonNull(caption);
    Objects.requireNonNull(wide);
    Objects.requireNonNull(narrow);
    Objects.requireNonNull(table);
  }
}
