package ribband.photo;

/** Refuses, from the header alone, pictures whose pixels would fill the memory. */
final class PixelLimit {
  private static final int LONGEST_SIDE = 30_000;
  private static final long MOST_PIXELS = 100_000_000;

  private PixelLimit() {}

  /**
   * @param width px, as read from a header; may be 0 or negative in a hostile one
   * @param height px, likewise
   */
  static void check(int width, int height) throws UnfitPicture {
    if (width < 1 || height < 1) {
      throw UnfitPicture.damaged();
    }
    if (width > LONGEST_SIDE || height > LONGEST_SIDE || (long) width * height > MOST_PIXELS) {
      throw new UnfitPicture(
          "is "
              + width
              + " x "
              + height
              + " px, and more than 100 megapixels or 30000 px on a side are not read; save it"
              + " smaller");
    }
  }
}
