package ribband.postcard;

import java.util.Objects;

/**
 * The hours of one phase.
 *
 * @param title the phase's, as it will stand
 * @param hours as they will stand, {@code 14½}
 * @param seconds the same, to be drawn and summed; 0 or more
 */
public record Share(String title, String hours, long seconds) {
  public Share {
    Objects.requireNonNull(title);
    Objects.requireNonNull(hours);
    if (seconds < 0) {
      throw new IllegalArgumentException("seconds of " + title + ": " + seconds);
    }
  }
}
