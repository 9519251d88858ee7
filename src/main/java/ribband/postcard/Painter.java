package ribband.postcard;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import net.coobird.thumbnailator.Thumbnails;

/** Inks a sheet. */
final class Painter {
  /** The white edge of a print, in units. */
  static final double PRINT_EDGE = 9;

  private Painter() {}

  static BufferedImage paint(Sheet sheet, Optional<BufferedImage> picture, Shape shape) {
    BufferedImage card =
        new BufferedImage(shape.width(), shape.height(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = card.createGraphics();
    try {
      g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
      g.setRenderingHint(RenderingHints.KEY_RENDERING, RenderingHints.VALUE_RENDER_QUALITY);
      g.setColor(Ink.PAPER.color());
      g.fillRect(0, 0, shape.width(), shape.height());
      g.scale(shape.scale(), shape.scale());
      for (Drawn line : sheet.drawn()) {
        draw(g, line);
      }
      if (sheet.print().isPresent() && picture.isPresent()) {
        lay(g, picture.get(), sheet.print().get(), shape);
      }
      for (Words words : sheet.words()) {
        g.setColor(words.hand().ink().color());
        g.fill(words.outline());
      }
    } finally {
      g.dispose();
    }
    return card;
  }

  private static void draw(Graphics2D g, Drawn line) {
    g.setColor(line.pen().ink().color());
    g.setStroke(line.pen().stroke());
    g.draw(line.path());
  }

  /** The picture's pixels fall on the card's own. */
  private static void lay(Graphics2D g, BufferedImage picture, Box print, Shape shape) {
    int left = (int) Math.round(print.x() * shape.scale());
    int top = (int) Math.round(print.y() * shape.scale());
    int width = Math.max(1, (int) Math.round(print.width() * shape.scale()));
    int height = Math.max(1, (int) Math.round(print.height() * shape.scale()));
    Box laid =
        new Box(
            left / shape.scale(),
            top / shape.scale(),
            width / shape.scale(),
            height / shape.scale());
    g.setColor(Ink.PRINT_EDGE.color());
    g.fill(Drawn.frame(laid.within(-PRINT_EDGE), Pen.RULE).path());
    draw(g, Drawn.frame(laid.within(-PRINT_EDGE), Pen.RULE));
    AffineTransform units = g.getTransform();
    g.setTransform(new AffineTransform());
    g.drawImage(scaled(picture, width, height), left, top, null);
    g.setTransform(units);
  }

  private static BufferedImage scaled(BufferedImage picture, int width, int height) {
    try {
      return Thumbnails.of(picture)
          .forceSize(width, height)
          .imageType(BufferedImage.TYPE_INT_RGB)
          .asBufferedImage();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
