package ribband.shop;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * A figure, or the reason why there is none: what is unknown is said to be unknown.
 *
 * @param value empty where it is unknown
 * @param why goes on from "unknown:"; empty where there is a value
 */
public record Figure<T>(Optional<T> value, String why) {
  public Figure {
    Objects.requireNonNull(value);
    if (value.isPresent() != why.isEmpty()) {
      throw new IllegalArgumentException("a figure has a value or a reason: " + value + ", " + why);
    }
  }

  public static <T> Figure<T> of(T value) {
    return new Figure<>(Optional.of(value), "");
  }

  public static <T> Figure<T> unknown(String why) {
    return new Figure<>(Optional.empty(), why);
  }

  /** What a data sheet or an entry may leave out. */
  public static <T> Figure<T> of(Optional<T> value, String why) {
    return value.map(Figure::of).orElseGet(() -> unknown(why));
  }

  public <U> Figure<U> map(Function<T, U> next) {
    return value.map(v -> Figure.of(next.apply(v))).orElseGet(() -> unknown(why));
  }

  public <U> Figure<U> flatMap(Function<T, Figure<U>> next) {
    return value.map(next).orElseGet(() -> unknown(why));
  }
}
