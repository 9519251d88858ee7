package ribband.chart;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;

/**
 * A chart ready to be drawn: its words, its shape for each width, its figures.
 *
 * @param <S> the kind of shape
 */
public record Chart<S>(Caption caption, S wide, S middle, S narrow, Table table) {
  public Chart {
    Objects.requireNonNull(caption);
    Objects.requireNonNull(wide);
    Objects.requireNonNull(middle);
    Objects.requireNonNull(narrow);
    Objects.requireNonNull(table);
  }

  static <S> Chart<S> of(Caption caption, Function<Size, S> drawn, Table table) {
    return new Chart<>(
        caption, drawn.apply(Size.WIDE), drawn.apply(Size.MIDDLE), drawn.apply(Size.NARROW), table);
  }

  /** The shapes, the widest first. */
  List<S> shapes() {
    return List.of(wide, middle, narrow);
  }
}
