package ribband.photo;

import java.util.Optional;

/** The build of a picture file as far as its bytes show it without decoding. */
sealed interface Outline permits JpegOutline, PngOutline, GifOutline, WebpOutline {
  /** Px, as stored. */
  int width();

  /** Px, as stored. */
  int height();

  /** Pictures that follow one another in an animated file; the first is the one that is shown. */
  default int frames() {
    return 1;
  }

  /** The TIFF block that holds the EXIF tags. */
  Optional<byte[]> exif();

  /** The ICC profile. */
  Optional<byte[]> profile();

  /** The file without what its pixels do not need and the decoder might stumble over. */
  byte[] pixels();

  /**
   * Walks the file from its first to its last mark.
   *
   * @throws UnfitPicture where marks are missing or wrong, or the picture is too large to decode
   */
  static Outline of(PictureKind kind, byte[] bytes) throws UnfitPicture {
    return switch (kind) {
      case JPEG -> JpegOutline.of(bytes);
      case PNG -> PngOutline.of(bytes);
      case GIF -> GifOutline.of(bytes);
      case WEBP -> WebpOutline.of(bytes);
    };
  }
}
