package ribband.photo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Writes pictures as cameras leave them, for tests of whole runs. */
public final class Camera {
  /** What is planted in each picture and may stand in no print of it. */
  public static final List<String> PLANTED =
      List.of(Exif.OWNER, Exif.SERIAL, Exif.COMMENT, "http://ns.adobe.com");

  private Camera() {}

  /**
   * Takes a picture whose upper left corner is red as it is stored.
   *
   * @param orientation 1 to 8, as EXIF tells it
   * @param taken as {@code 2026:03:14 20:25:41}
   */
  public static void shoot(Path file, int width, int height, int orientation, String taken)
      throws IOException {
    Files.createDirectories(file.getParent());
    byte[] jpeg = Scene.jpeg(Scene.of(width, height));
    Files.write(file, Exif.inJpeg(jpeg, Exif.tiff(orientation, taken)));
  }
}
