package ribband.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The palette's contrast by the formula of WCAG 2.2 (relative luminance, success criterion 1.4.3).
 * Whatever is read or tells a figure is drawn in these inks and has to reach 4.5, which is more
 * than the 3 that graphics need (1.4.11). The thin rules are decoration and need nothing.
 */
class PaletteTest {
  private static final Path STYLE = Path.of("site-template/assets/ribband.css");

  /**
   * Known pairs: exact arithmetic from the WCAG definition; 767676 = 4.54 and 595959 = 7.0 are also
   * published.
   */
  @ParameterizedTest
  @CsvSource({
    "000000, ffffff, 21.0000",
    "595959, ffffff, 7.0047",
    "767676, ffffff, 4.5422",
    "777777, ffffff, 4.4781",
    "707070, ffffff, 4.9521",
    "949494, ffffff, 3.0335",
    "959595, ffffff, 2.9953",
    "ff0000, ffffff, 3.9985",
    "0000ff, ffffff, 8.5925",
    "333333, cccccc, 7.8675"
  })
  void theFormulaGivesTheKnownPairs(String ink, String paper, BigDecimal ratio) {
    assertEquals(ratio, rounded(contrast(ink, paper)));
  }

  @Test
  void inkStandsOutFromPaperInEveryTheme() throws IOException {
    String css = Files.readString(STYLE, StandardCharsets.UTF_8);
    List<Map<String, String>> themes = themes(css);
    assertEquals(3, themes.size(), "light, dark and print");
    for (Map<String, String> theme : themes) {
      for (String ink : List.of("ink", "ink-2", "accent")) {
        double ratio = contrast(theme.get(ink), theme.get("paper"));
        assertTrue(ratio >= 4.5, ink + " in " + theme + ": " + ratio);
      }
    }
  }

  private static List<Map<String, String>> themes(String css) {
    Matcher roots = Pattern.compile(":root \\{([^}]*)}").matcher(css);
    return roots
        .results()
        .map(
            root -> {
              Map<String, String> colours = new LinkedHashMap<>();
              Matcher colour =
                  Pattern.compile("--([a-z0-9-]+): #([0-9a-f]{3,6});").matcher(root.group(1));
              while (colour.find()) {
                String hex = colour.group(2);
                colours.put(
                    colour.group(1), hex.length() == 3 ? hex.replaceAll("(.)", "$1$1") : hex);
              }
              return colours;
            })
        .toList();
  }

  private static double contrast(String one, String other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(String hex) {
    double[] weights = {0.2126, 0.7152, 0.0722};
    double sum = 0;
    for (int i = 0; i < 3; i++) {
      double part = Integer.parseInt(hex.substring(2 * i, 2 * i + 2), 16) / 255.0;
      double linear = part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
      sum += weights[i] * linear;
    }
    return sum;
  }

  private static BigDecimal rounded(double ratio) {
    return BigDecimal.valueOf(ratio).setScale(4, RoundingMode.HALF_UP);
  }
}
