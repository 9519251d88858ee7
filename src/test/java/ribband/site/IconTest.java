package ribband.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** The icon of the site, drawn and as a picture, in the colours of the look. */
class IconTest {
  private static final Pattern COLOUR = Pattern.compile("#[0-9a-f]{6}");

  private static String text(String path) {
    return new String(Templates.asset(path), StandardCharsets.UTF_8);
  }

  private static List<String> colours(String text) {
    return COLOUR.matcher(text).results().map(found -> found.group()).toList();
  }

  private static String said(String css, String property) {
    return css.replaceFirst("(?s).*?--" + property + ": (#[0-9a-f]{6});.*", "$1");
  }

  @Test
  void itHasTheColoursOfDayAndNight() {
    String look = text("assets/ribband.css");
    String night = look.substring(look.indexOf("prefers-color-scheme: dark"));
    assertEquals(
        List.of(
            said(look, "paper"),
            said(look, "ink"),
            said(look, "accent"),
            said(night, "paper"),
            said(night, "ink"),
            said(night, "accent")),
        colours(text("assets/icon.svg")));
  }

  /** 180 px is what phones take for their first screen: common practice, no source. */
  @Test
  void itsPictureIsTheSameDrawingByDay() throws IOException {
    BufferedImage picture =
        ImageIO.read(new ByteArrayInputStream(Templates.asset("assets/icon-180.png")));
    assertEquals(List.of(180, 180), List.of(picture.getWidth(), picture.getHeight()));
    assertEquals(255, picture.getRGB(0, 0) >>> 24, "phones lay what is clear on black");

    Map<String, Integer> dots = new HashMap<>();
    for (int y = 0; y < 180; y++) {
      for (int x = 0; x < 180; x++) {
        dots.merge("#%06x".formatted(picture.getRGB(x, y) & 0xFFFFFF), 1, Integer::sum);
      }
    }
    List<String> day = colours(text("assets/icon.svg")).subList(0, 3);
    dots.values().removeIf(count -> count < 500);
    assertEquals(new TreeSet<>(day), new TreeSet<>(dots.keySet()));
    assertTrue(dots.get(day.get(1)) > dots.get(day.get(2)), "more ink than batten");
  }
}
