package ribband.photo;

import java.io.IOException;
import java.nio.file.Path;

/** Reads picture files by their content; keeps nothing between calls and may be shared. */
public final class PictureReader {

  /**
   * What the file's bytes tell without decoding. Marks and checksums are walked to the file's end,
   * so a file that is cut short is told here already.
   *
   * @throws UnfitPicture where it is no picture that can be shown
   * @throws IOException where the file cannot be read at all
   */
  public PictureFacts facts(Path file) throws UnfitPicture, IOException {
    Original original = Original.read(file);
    byte[] bytes = original.bytes();
    PictureKind kind = PictureKind.of(bytes).orElseThrow(() -> OtherFormat.unfit(bytes));
    Outline outline = Outline.of(kind, bytes);
    ExifTags exif = outline.exif().map(ExifTags::of).orElse(ExifTags.NONE);
    boolean sideways = exif.orientation() >= 5;
    return new PictureFacts(
        original.digest(),
        original.checksum(),
        kind,
        exif.orientation(),
        sideways ? outline.height() : outline.width(),
        sideways ? outline.width() : outline.height(),
        outline.frames(),
        exif.taken());
  }

  /**
   * Decodes the whole picture and forgets it.
   *
   * @throws UnfitPicture where pixels are missing or damaged, or the file is no longer the one the
   *     facts tell of
   * @throws IOException where the file cannot be read at all
   */
  public void tryOut(Path file, PictureFacts facts) throws UnfitPicture, IOException {
    Decoder.decode(Original.read(file, facts), facts);
  }
}
