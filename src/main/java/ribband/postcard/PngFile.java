package ribband.postcard;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOInvalidTreeException;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** A card as a file: pixels, and who drew it; no time, no other word. */
final class PngFile {
  private static final String FORMAT = "javax_imageio_png_1.0";
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
  private static final String DRAWN_WITH = "Software";
  private static final String US = "Ribband";
  private static final byte[] OURS =
      ("tEXt" + DRAWN_WITH + "\0" + US).getBytes(StandardCharsets.ISO_8859_1);
  private static final byte[] PIXELS = "IDAT".getBytes(StandardCharsets.ISO_8859_1);
  private static final int LENGTH = 4;
  private static final int TYPE = 4;
  private static final int CRC = 4;

  private PngFile() {}

  static byte[] bytes(BufferedImage card) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      writer.setOutput(out);
      ImageWriteParam how = writer.getDefaultWriteParam();
      how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      how.setCompressionQuality(0.4f);
      IIOMetadata told =
          writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(card), how);
      told.mergeTree(FORMAT, software());
      writer.write(null, new IIOImage(card, null, told), how);
    } catch (IIOInvalidTreeException e) {
      throw new IllegalStateException(e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  private static IIOMetadataNode software() {
    IIOMetadataNode entry = new IIOMetadataNode("tEXtEntry");
    entry.setAttribute("keyword", DRAWN_WITH);
    entry.setAttribute("value", US);
    IIOMetadataNode texts = new IIOMetadataNode("tEXt");
    texts.appendChild(entry);
    IIOMetadataNode root = new IIOMetadataNode(FORMAT);
    root.appendChild(texts);
    return root;
  }

  /** Walks the chunks (W3C PNG, section 5.3) before the pixels. */
  static boolean isOurs(byte[] content) {
    if (content.length < SIGNATURE.length
        || !Arrays.equals(content, 0, SIGNATURE.length, SIGNATURE, 0, SIGNATURE.length)) {
      return false;
    }
    ByteBuffer in = ByteBuffer.wrap(content, SIGNATURE.length, content.length - SIGNATURE.length);
    while (in.remaining() >= LENGTH + TYPE) {
      int length = in.getInt();
      if (length < 0 || length > in.remaining() - TYPE - CRC) {
        return false;
      }
      byte[] chunk = new byte[TYPE + length];
      in.get(chunk);
      in.getInt();
      if (Arrays.equals(chunk, OURS)) {
        return true;
      }
      if (Arrays.equals(chunk, 0, TYPE, PIXELS, 0, TYPE)) {
        return false;
      }
    }
    return false;
  }
}
