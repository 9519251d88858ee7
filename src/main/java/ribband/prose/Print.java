package ribband.prose;

import java.util.Objects;

/**
 * The published form of a picture that a text shows; all addresses as they stand in the page.
 *
 * @param src the picture shown by default
 * @param srcset all sizes, as the HTML attribute; may be empty
 * @param sizes the HTML attribute; may be empty
 * @param large address of the largest
 * @param width of {@code src}, in pixels
 * @param height of {@code src}, in pixels
 * @param alt the description; empty: the words in the text stand in
 * @param caption what stands below it where the text gives no words; may be empty
 */
public record Print(
    String src,
    String srcset,
    String sizes,
    String large,
    int width,
    int height,
    String alt,
    String caption) {
  public Print {
    Objects.requireNonNull(src);
    Objects.requireNonNull(srcset);
    Objects.requireNonNull(sizes);
    Objects.requireNonNull(large);
    Objects.requireNonNull(alt);
    Objects.requireNonNull(caption);
    if (width < 1 || height < 1) {
      throw new IllegalArgumentException("print of " + width + " x " + height);
    }
  }
}
