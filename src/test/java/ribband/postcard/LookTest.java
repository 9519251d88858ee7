package ribband.postcard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.PathIterator;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** A card looks as the site does. */
class LookTest {
  private static final Pattern NUMBER = Pattern.compile("[0-9]+");

  @Test
  void theInksAreThoseOfTheSiteByDay() throws IOException {
    String sheet = read("site-template/assets/ribband.css");
    Map<String, String> inks =
        Pattern.compile("--(paper|ink|ink-2|rule|accent): #([0-9a-f]{6});")
            .matcher(sheet.substring(0, sheet.indexOf("@media")))
            .results()
            .collect(Collectors.toMap(found -> found.group(1), found -> found.group(2)));

    assertEquals(5, inks.size());
    inks.forEach(
        (name, rgb) -> {
          Ink ink = Ink.valueOf(name.toUpperCase(Locale.ROOT).replace('-', '_'));
          assertEquals(rgb, String.format(Locale.ROOT, "%06x", ink.color().getRGB() & 0xffffff));
        });
  }

  @Test
  void theHullIsThatOfTheSite() throws IOException {
    Draft draft = new Draft();
    HullLines.PROFILE.draw(draft, new Box(0, 0, 1000, 224));
    List<List<Integer>> curves =
        draft.done(Optional.empty()).drawn().stream()
            .filter(drawn -> drawn.pen() == Pen.FAIR)
            .map(LookTest::numbers)
            .toList();

    for (List<Integer> curve : fairLines(read("site-template/hull.peb"))) {
      assertTrue(curves.contains(curve), curve + " is not of " + curves);
    }
    assertEquals(8, curves.size());
  }

  private static List<List<Integer>> fairLines(String template) {
    List<List<Integer>> lines = new ArrayList<>();
    for (MatchResult path :
        Pattern.compile("non-scaling-stroke\" d=\"([^\"]+)\"")
            .matcher(template)
            .results()
            .toList()) {
      lines.add(
          NUMBER.matcher(path.group(1)).results().map(n -> Integer.valueOf(n.group())).toList());
    }
    assertEquals(8, lines.size());
    return lines;
  }

  private static List<Integer> numbers(Drawn drawn) {
    List<Integer> numbers = new ArrayList<>();
    double[] points = new double[6];
    for (PathIterator at = drawn.path().getPathIterator(null); !at.isDone(); at.next()) {
      int pairs =
          switch (at.currentSegment(points)) {
            case PathIterator.SEG_CUBICTO -> 3;
            default -> 1;
          };
      for (int i = 0; i < 2 * pairs; i++) {
        numbers.add((int) Math.round(points[i]));
      }
    }
    return numbers;
  }

  private static String read(String file) throws IOException {
    return Files.readString(Path.of(file), StandardCharsets.UTF_8);
  }
}
