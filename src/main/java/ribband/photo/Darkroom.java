package ribband.photo;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.WritableRaster;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.plugins.jpeg.JPEGImageWriteParam;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import net.coobird.thumbnailator.Thumbnails;
import ribband.memory.Hash;

/**
 * Makes the prints of a picture: JPEGs of several widths, upright, without any metadata. Keeps
 * nothing between calls and may be shared.
 */
public final class Darkroom {
  /** Changes whenever the look of a print would; a part of each print's name. */
  public static final String RECIPE = "480 960 1600, quality 0.82, recipe 3";

  private static final float QUALITY = 0.82f;
  private static final int CONTENT_DIGITS = 16;
  private static final String RECIPE_DIGITS =
      Hash.of(RECIPE.getBytes(StandardCharsets.UTF_8)).substring(0, 4);

  /** What the names of all prints of this picture begin with: 20 hex digits. */
  public static String stem(PictureFacts facts) {
    return facts.digest().substring(0, CONTENT_DIGITS) + RECIPE_DIGITS;
  }

  /** The file name of one print: {@code <stem>-<width>.jpg}. */
  public static String fileName(PictureFacts facts, PrintSize size) {
    return stem(facts) + "-" + size.width() + ".jpg";
  }

  /**
   * Writes all prints of a picture into a folder. The picture is decoded once; the largest print
   * comes from it, each smaller one from the next larger.
   *
   * @param folder exists; a print that is there already is replaced
   * @return the sizes written, smallest first
   * @throws UnfitPicture where pixels are missing or damaged, or the file is no longer the one the
   *     facts tell of; nothing is written then
   * @throws IOException where the file cannot be read or the folder not be written
   */
  public List<PrintSize> print(Path file, PictureFacts facts, Path folder)
      throws UnfitPicture, IOException {
    develop(
        file,
        facts,
        (size, jpeg) -> {
          write(jpeg, folder, fileName(facts, size));
          return true;
        });
    return PrintSize.of(facts);
  }

  /**
   * One print of a picture, in memory: to the byte what {@link #print} writes.
   *
   * @param wanted one of {@link PrintSize#of}
   * @throws UnfitPicture as {@link #print}
   * @throws IOException where the file cannot be read
   */
  public byte[] print(Path file, PictureFacts facts, PrintSize wanted)
      throws UnfitPicture, IOException {
    List<byte[]> prints = new ArrayList<>();
    develop(
        file,
        facts,
        (size, jpeg) -> {
          prints.add(jpeg);
          return !size.equals(wanted);
        });
    return prints.get(prints.size() - 1);
  }

  /** The pixels of a print that a darkroom made. */
  public static BufferedImage pixels(byte[] print) throws IOException {
    return ImageIO.read(new MemoryCacheImageInputStream(new ByteArrayInputStream(print)));
  }

  /** Takes prints as they come. */
  private interface Tray {
    /** Whether smaller ones are wanted too. */
    boolean take(PrintSize size, byte[] jpeg) throws IOException;
  }

  private static void develop(Path file, PictureFacts facts, Tray tray)
      throws UnfitPicture, IOException {
    List<PrintSize> sizes = PrintSize.of(facts);
    int largest = sizes.size() - 1;
    BufferedImage image = largest(file, facts, sizes.get(largest));
    boolean more = true;
    for (int i = largest; more && i >= 0; i--) {
      PrintSize size = sizes.get(i);
      image = i == largest ? image : shrink(image, size.asStored(facts));
      more = tray.take(size, encode(Turning.upright(image, facts.orientation())));
    }
  }

  /** The full picture's pixels are let go of on return. */
  private static BufferedImage largest(Path file, PictureFacts facts, PrintSize size)
      throws UnfitPicture, IOException {
    Negative negative = Decoder.decode(Original.read(file, facts), facts);
    BufferedImage image = scale(negative.pixels(), size.asStored(facts));
    negative.profile().ifPresent(icc -> Colours.toSrgb(image, icc));
    return image;
  }

  /** Scales in the stored position: turning is cheap on the small picture, dear on the large. */
  private static BufferedImage scale(BufferedImage image, PrintSize stored) throws IOException {
    boolean fits = image.getWidth() == stored.width() && image.getHeight() == stored.height();
    return fits && image.getType() == BufferedImage.TYPE_INT_RGB
        ? image
        : Thumbnails.of(image)
            .forceSize(stored.width(), stored.height())
            .imageType(BufferedImage.TYPE_INT_RGB)
            .asBufferedImage();
  }

  /** Areas that share pixels blur, so those are made crisp again. */
  private static BufferedImage shrink(BufferedImage image, PrintSize stored) {
    WritableRaster all = inBytes(image).getRaster();
    int width = image.getWidth();
    int height = image.getHeight();
    ShrinkingRaster rows = new ShrinkingRaster(width, height, stored.width(), stored.height());
    for (int y = 0; y < height; y++) {
      rows.setRect(0, y, all.createChild(0, y, width, 1, 0, 0, null));
    }
    BufferedImage small = rows.small().orElseThrow();
    return width % stored.width() == 0 ? small : Crispness.of(small);
  }

  private static BufferedImage inBytes(BufferedImage image) {
    BufferedImage inBytes =
        new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_3BYTE_BGR);
    Graphics2D copier = inBytes.createGraphics();
    copier.drawImage(image, 0, 0, null);
    copier.dispose();
    return inBytes;
  }

  private static byte[] encode(BufferedImage image) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      writer.setOutput(out);
      JPEGImageWriteParam how = new JPEGImageWriteParam(Locale.ROOT);
      how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      how.setCompressionQuality(QUALITY);
      how.setOptimizeHuffmanTables(true);
      // The writer takes other pixels one by one, which is twice the time for the same bytes.
      writer.write(null, new IIOImage(inBytes(image), null, null), how);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  /** Whole or not at all, also when the power fails: a half print would never be made again. */
  private static void write(byte[] bytes, Path folder, String name) throws IOException {
    Path part =
        folder.resolve(
            "."
                + name
                + "."
                + ProcessHandle.current().pid()
                + "."
                + Thread.currentThread().getId());
    try {
      try (FileChannel out =
          FileChannel.open(
              part,
              StandardOpenOption.CREATE,
              StandardOpenOption.TRUNCATE_EXISTING,
              StandardOpenOption.WRITE)) {
        ByteBuffer rest = ByteBuffer.wrap(bytes);
        while (rest.hasRemaining()) {
          out.write(rest);
        }
        out.force(true);
      }
      Files.move(part, folder.resolve(name), StandardCopyOption.ATOMIC_MOVE);
    } catch (FileSystemException e) {
      throw e;
    } catch (IOException e) {
      // A full or failing disk is told without the file by Java's channels.
      throw new FileSystemException(folder.resolve(name).toString(), null, e.getMessage());
    } finally {
      Files.deleteIfExists(part);
    }
  }
}
