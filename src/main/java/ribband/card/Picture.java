package ribband.card;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Objects;

/**
 * A picture to bring in.
 *
 * @param file where it lies on the card
 * @param name what it is to be called in the entry's folder: the card's own name, made sound and
 *     unique
 * @param taken by the camera's own clock
 */
public record Picture(Path file, String name, LocalDateTime taken) {
  public Picture {
    Objects.requireNonNull(file);
    Objects.requireNonNull(taken);
    if (name.isEmpty() || name.startsWith(".") || name.indexOf('/') >= 0) {
      throw new IllegalArgumentException("name " + name);
    }
  }
}
