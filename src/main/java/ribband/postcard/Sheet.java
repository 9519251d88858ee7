package ribband.postcard;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A card laid out: all that is drawn, at its place, in units.
 *
 * @param drawn under the print and the words, in this order
 * @param print where the picture lies, in its own proportion
 */
record Sheet(List<Drawn> drawn, Optional<Box> print, List<Words> words) {
  Sheet {
    drawn = List.copyOf(drawn);
    Objects.requireNonNull(print);
    words = List.copyOf(words);
  }
}
