package ribband.prose;

import java.util.concurrent.CancellationException;

/**
 * A text that stops whoever reads it once their thread is interrupted; Flexmark itself never looks.
 */
final class Leash implements CharSequence {
  private static final int READS_BETWEEN_LOOKS = 1 << 12;

  private final String text;

  /** Flexmark asks letter by letter, many times over; an array answers fastest. */
  private final char[] letters;

  private int reads;

  Leash(String text) {
    this.text = text;
    this.letters = text.toCharArray();
  }

  @Override
  public int length() {
    return letters.length;
  }

  @Override
  public char charAt(int index) {
    // Lost updates between threads only move the next look.
    if ((++reads & (READS_BETWEEN_LOOKS - 1)) == 0 && Thread.currentThread().isInterrupted()) {
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
