package ribband.prose;

import java.time.Duration;
import java.util.concurrent.CancellationException;

/** A text that stops whoever still reads it when its time is up; Flexmark itself never looks. */
final class Leash implements CharSequence {
  private static final int READS_BETWEEN_LOOKS = 1 << 12;

  private final String text;

  /** Flexmark asks letter by letter, many times over; an array answers fastest. */
  private final char[] letters;

  private final long end;
  private int reads;

  /**
   * @param time how long it may be read from now on
   */
  Leash(String text, Duration time) {
    this.text = text;
    this.letters = text.toCharArray();
    this.end = System.nanoTime() + time.toNanos();
  }

  @Override
  public int length() {
    return letters.length;
  }

  @Override
  public char charAt(int index) {
    // Lost updates between threads only move the next look.
    if ((++reads & (READS_BETWEEN_LOOKS - 1)) == 0 && System.nanoTime() - end > 0) {
      throw new CancellationException("deadline");
    }
    return letters[index];
  }

  @Override
  public CharSequence subSequence(int start, int end) {
    return text.subSequence(start, end);
  }

  @Override
  public String toString() {
    return text;
  }
}
