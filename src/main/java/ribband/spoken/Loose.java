package ribband.spoken;

import java.util.Objects;
import java.util.Optional;

/**
 * Words that were not understood.
 *
 * @param words as typed, but for blanks and characters that cannot be seen
 * @param why what kept them from being understood, and what to write instead; empty for words that
 *     look like a remark
 */
public record Loose(String words, Optional<String> why) {
  public Loose {
    Objects.requireNonNull(words);
    Objects.requireNonNull(why);
  }
}
