package ribband.site;

import io.pebbletemplates.pebble.PebbleEngine;
import io.pebbletemplates.pebble.loader.ClasspathLoader;
import java.io.BufferedWriter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStreamWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;

/** Draws views with the templates of {@code site-template/}. May be used by several threads. */
public final class Templates {
  private static final int PAGE_BYTES = 1 << 14;

  private final PebbleEngine engine;

  public Templates() {
    ClasspathLoader loader = new ClasspathLoader(Templates.class.getClassLoader());
    loader.setPrefix("site-template");
    loader.setCharset(StandardCharsets.UTF_8.name());
    engine =
        new PebbleEngine.Builder()
            .loader(loader)
            .strictVariables(true)
            .defaultLocale(Locale.ROOT)
            .newLineTrimming(true)
            .build();
  }

  /**
   * Draws a page.
   *
   * @param name of the template, without ending
   * @param frame what every page has, as {@code frame}
   * @param view what this page shows, as {@code page}
   */
  public byte[] draw(String name, Frame frame, Record view) {
    ByteArrayOutputStream page = new ByteArrayOutputStream(PAGE_BYTES);
    try (Writer out = new BufferedWriter(new OutputStreamWriter(page, StandardCharsets.UTF_8))) {
      draw(name, Map.of("frame", frame, "page", view), out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return page.toByteArray();
  }

  /**
   * Draws a part that can stand in any page.
   *
   * @param name of the template, without ending
   * @param view what it shows, as {@code page}
   */
  public String fragment(String name, Record view) {
    StringWriter out = new StringWriter();
    try {
      draw(name, Map.of("page", view), out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString();
  }

  private void draw(String name, Map<String, Object> values, Writer out) throws IOException {
    engine.getTemplate(name + ".peb").evaluate(out, values, Locale.ROOT);
  }

  /**
   * A style sheet, a font or a drawing, as it is.
   *
   * @param path in the folder of the templates
   */
  public static byte[] asset(String path) {
    try (InputStream in = Templates.class.getResourceAsStream("/site-template/" + path)) {
      if (in == null) {
        throw new IllegalStateException("no " + path + " in the program");
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
