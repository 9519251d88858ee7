package ribband.chart;

import io.pebbletemplates.pebble.PebbleEngine;
import io.pebbletemplates.pebble.loader.ClasspathLoader;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Prints sheets through the site's own templates: {@code target/chart-proof/*.html}, to look at.
 */
final class Proof {
  private final PebbleEngine engine;

  Proof() {
    ClasspathLoader loader = new ClasspathLoader();
    loader.setPrefix("site-template");
    loader.setCharset("UTF-8");
    engine =
        new PebbleEngine.Builder()
            .loader(loader)
            .strictVariables(true)
            .autoEscaping(true)
            .defaultLocale(Locale.ROOT)
            .build();
  }

  String page(String theme, List<Sheets.Sheet> sheets) throws IOException {
    Writer page = new StringWriter();
    engine.getTemplate("proof/page.peb").evaluate(page, Map.of("theme", theme, "sheets", sheets));
    return page.toString();
  }

  void print(Path folder) throws IOException {
    Files.createDirectories(folder);
    for (String theme : List.of("light", "dark", "print")) {
      Files.writeString(folder.resolve(theme + ".html"), page(theme, Sheets.all()));
    }
    copy("proof/proof.css", folder.resolve("proof.css"));
    copy("assets/charts.css", folder.resolve("charts.css"));
  }

  private static void copy(String resource, Path file) throws IOException {
    try (InputStream in = Proof.class.getResourceAsStream("/site-template/" + resource)) {
      Files.write(file, in.readAllBytes());
    }
  }
}
