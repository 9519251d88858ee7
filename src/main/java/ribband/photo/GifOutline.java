package ribband.photo;

import java.io.ByteArrayOutputStream;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Optional;

/**
 * The blocks of a GIF (GIF89a specification, sections 17 to 27), walked to the trailer.
 *
 * @param width px, of the first frame
 * @param height px, of the first frame
 * @param frames in all
 * @param pixels a GIF of the first frame alone
 */
record GifOutline(int width, int height, int frames, byte[] pixels) implements Outline {
  private static final int HEADER_AND_SCREEN = 13;
  private static final int EXTENSION = 0x21;
  private static final int GRAPHIC_CONTROL = 0xF9;
  private static final int IMAGE = 0x2C;
  private static final int TRAILER = 0x3B;

  static GifOutline of(byte[] bytes) throws UnfitPicture {
    Walk walk = new Walk(ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN));
    try {
      walk.run();
    } catch (BufferUnderflowException | IllegalArgumentException e) {
      throw UnfitPicture.cutShort();
    }
    return new GifOutline(walk.width, walk.height, walk.frames, walk.pixels.toByteArray());
  }

  @Override
  public Optional<byte[]> exif() {
    return Optional.empty();
  }

  @Override
  public Optional<byte[]> profile() {
    return Optional.empty();
  }

  /** One pass over the blocks; kept only while it runs. */
  private static final class Walk {
    private final ByteBuffer in;
    private final ByteArrayOutputStream pixels = new ByteArrayOutputStream();
    private int width;
    private int height;
    private int frames;

    Walk(ByteBuffer in) {
      this.in = in;
    }

    void run() throws UnfitPicture {
      in.position(HEADER_AND_SCREEN);
      passPalette(in.get(HEADER_AND_SCREEN - 3));
      keepFrom(0);
      for (int start = in.position(), mark = mark(); mark != TRAILER; mark = mark()) {
        switch (mark) {
          case EXTENSION -> extension(start);
          case IMAGE -> image(start);
          default -> throw UnfitPicture.damaged();
        }
        start = in.position();
      }
      if (width == 0) {
        throw new UnfitPicture("holds no picture; copy it again from the camera");
      }
      pixels.write(TRAILER);
    }

    private int mark() {
      return in.get() & 0xFF;
    }

    /** Of the extensions only the transparent colour of the first frame bears on its pixels. */
    private void extension(int start) {
      int label = in.get() & 0xFF;
      passSubBlocks();
      if (label == GRAPHIC_CONTROL && width == 0) {
        keepFrom(start);
      }
    }

    private void image(int start) throws UnfitPicture {
      in.position(in.position() + 4);
      int columns = in.getShort() & 0xFFFF;
      int rows = in.getShort() & 0xFFFF;
      passPalette(in.get());
      in.get();
      passSubBlocks();
      frames++;
      if (width == 0) {
        PixelLimit.check(columns, rows);
        width = columns;
        height = rows;
        keepFrom(start);
      }
    }

    /**
     * @param flags bit 7: there is one; bits 0 to 2: its size
     */
    private void passPalette(byte flags) {
      if (flags < 0) {
        in.position(in.position() + (3 << ((flags & 7) + 1)));
      }
    }

    private void passSubBlocks() {
      for (int length = in.get() & 0xFF; length > 0; length = in.get() & 0xFF) {
        in.position(in.position() + length);
      }
    }

    private void keepFrom(int start) {
      pixels.write(in.array(), start, in.position() - start);
    }
  }
}
