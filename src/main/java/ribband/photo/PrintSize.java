package ribband.photo;

import java.util.List;
import java.util.stream.IntStream;

/**
 * The size of a print, upright.
 *
 * @param width px
 * @param height px; rounded half up, at least 1
 */
public record PrintSize(int width, int height) {
  private static final List<Integer> WIDTHS = List.of(480, 960, 1600);

  public PrintSize {
    if (width < 1 || height < 1) {
      throw new IllegalArgumentException("size " + width + " x " + height);
    }
  }

  /**
   * The prints made of a picture, smallest first, none wider than the picture: 480, 960 and 1600 px
   * wide; and its own width where that is below 1600 and none of these.
   */
  public static List<PrintSize> of(PictureFacts facts) {
    int widest = WIDTHS.get(WIDTHS.size() - 1);
    return IntStream.concat(
            WIDTHS.stream().mapToInt(width -> width).filter(width -> width <= facts.width()),
            IntStream.of(facts.width()).filter(width -> width < widest))
        .distinct()
        .sorted()
        .mapToObj(width -> new PrintSize(width, height(width, facts)))
        .toList();
  }

  /** The largest print made of a picture. */
  public static PrintSize largest(PictureFacts facts) {
    List<PrintSize> sizes = of(facts);
    return sizes.get(sizes.size() - 1);
  }

  /** The size before the picture is turned upright. */
  PrintSize asStored(PictureFacts facts) {
    return facts.liesOnItsSide() ? new PrintSize(height, width) : this;
  }

  private static int height(int width, PictureFacts facts) {
    long twice = 2L * width * facts.height();
    return (int) Math.max(1, (twice + facts.width()) / (2L * facts.width()));
  }
}
