package ribband.postcard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import ribband.measure.Currency;

class SheetPlanTest {
  private static final List<Optional<Proportion>> PICTURES =
      Stream.of("4:3", "3:4", "1:1", "16:9", "3:1", "9:1", "1:5", "2:1", "1:4000")
          .map(ratio -> ratio.split(":"))
          .map(ratio -> new Proportion(Integer.parseInt(ratio[0]), Integer.parseInt(ratio[1])))
          .map(Optional::of)
          .toList();

  @ParameterizedTest
  @EnumSource(Shape.class)
  void noWordsAreCutOrTouchOrTooSmallInAnyCurrency(Shape shape) {
    Random random = new Random(7);
    for (Currency currency : new TreeMap<>(Currency.all()).values()) {
      for (int i = 0; i < 3; i++) {
        Face face = Faces.strange(currency, random);
        int which = random.nextInt(PICTURES.size() + 1);
        Optional<Proportion> picture =
            which == PICTURES.size() ? Optional.empty() : PICTURES.get(which);
        Sheets.hold(SheetPlan.of(face, picture, shape), shape, face);
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Shape.class)
  void aPictureKeepsItsProportionAndIsLarge(Shape shape) {
    for (Optional<Proportion> picture : PICTURES.subList(0, PICTURES.size() - 1)) {
      Box print = SheetPlan.of(Faces.usual(), picture, shape).print().orElseThrow();
      double ratio = picture.orElseThrow().widthByHeight();
      assertEquals(ratio, print.width() / print.height(), 1e-9);
      assertTrue(print.height() > 365 || print.width() > 559, print::toString);
    }
  }

  /** Up to the longest that is usual, of letters of every width; each in a card of its own. */
  @ParameterizedTest
  @EnumSource(Shape.class)
  void theFirstNameStandsWholeHoweverLong(Shape shape) {
    for (String longest : LONG_NAMES) {
      assertEquals(80, longest.length(), longest);
      for (int letters : List.of(30, 55, 80)) {
        String name = longest.substring(0, letters).strip();
        for (Optional<Proportion> picture : CAMERA_PICTURES) {
          for (String money : List.of("$412.60", Faces.money(KWD, 576_600_000, 2_535_900_000L))) {
            Face face = named(name, money);
            Sheet sheet = SheetPlan.of(face, picture, shape);
            String said = sheet.words().stream().map(Words::text).collect(Collectors.joining(" "));
            String unbroken = said.replace(" ", "");
            assertTrue(unbroken.contains(name.replace(" ", "")), () -> name + " in " + said);
            assertTrue(unbroken.contains(face.what().replace(" ", "")), said);
            assertTrue(unbroken.contains(face.boat().replace(" ", "")), said);
            assertTrue(unbroken.contains(face.rank().replace(" ", "")), said);
            // The second phase has the same name, and is shortened where there is no more room.
            long shortened = sheet.words().stream().filter(w -> w.text().endsWith("…")).count();
            assertTrue(shortened <= 1, said);
            Sheets.hold(sheet, shape, face);
          }
        }
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Shape.class)
  void aSecondPhaseIsNamedInShortRatherThanLeftOut(Shape shape) {
    for (String name : LONG_NAMES) {
      for (Optional<Proportion> picture : CAMERA_PICTURES) {
        Face usual = Faces.usual();
        Face face =
            new Face(
                usual.boat(),
                usual.what(),
                usual.period(),
                usual.hours(),
                usual.unit(),
                usual.rank(),
                usual.nights(),
                List.of(new Share("Planking", "14½", 52_200), new Share(name, "8:20", 30_000)),
                usual.money(),
                usual.pieces());
        Sheet sheet = SheetPlan.of(face, picture, shape);
        List<String> said = sheet.words().stream().map(Words::text).toList();
        assertTrue(said.containsAll(List.of("Planking", "14½", "8:20")), said.toString());
        Sheets.hold(sheet, shape, face);
      }
    }
  }

  private static final Currency KWD = Currency.all().get("KWD");

  private static final List<String> LONG_NAMES =
      List.of(
          "Fairing, filling and sanding of the inside of the hull before the second coating",
          "Шпатлёвка, выравнивание и шлифовка внутренней стороны корпуса перед окраской дна",
          "Plankenlaschungen".repeat(5).substring(0, 80));

  private static final List<Optional<Proportion>> CAMERA_PICTURES =
      List.of(
          Optional.empty(),
          Optional.of(new Proportion(4, 3)),
          Optional.of(new Proportion(3, 4)),
          Optional.of(new Proportion(16, 9)),
          Optional.of(new Proportion(3, 1)));

  private static Face named(String title, String money) {
    return new Face(
        "Wandering Albatross of the Northern Shore",
        "A 15-foot glued-lapstrake skiff for oar and sail, built in a one-car garage",
        "March 2026",
        "26½",
        "hours",
        "third of 6 months with work, 99:25\u00a0hours to date",
        "9\u00a0nights",
        List.of(new Share(title, "14½", 52_200), new Share(title, "8:20", 30_000)),
        money,
        "622\u00a0of\u00a02,400\u00a0strakes");
  }

  @ParameterizedTest
  @CsvSource({
    "usual, 4, 3",
    "usual, 3, 4",
    "usual, 3, 1",
    "usual, 0, 0",
    "bare, 1, 1",
    "bare, 0, 0",
    "full, 4, 3",
    "full, 0, 0",
    "long, 16, 9"
  })
  void theWholeSheet(String face, int width, int height) throws IOException {
    Optional<Proportion> picture =
        width > 0 ? Optional.of(new Proportion(width, height)) : Optional.empty();
    String name = face + "-" + (width > 0 ? width + "x" + height : "none") + ".txt";

    String laid = told(SheetPlan.of(face(face), picture, Shape.SHARED));

    assertEquals(expected(name), laid, name);
  }

  static Face face(String name) {
    return switch (name) {
      case "usual" -> Faces.usual();
      case "bare" -> Faces.bare();
      case "full" -> full();
      default -> longWords();
    };
  }

  private static Face full() {
    return new Face(
        "Wandering Albatross of the Northern Shore",
        "A 15-foot glued-lapstrake skiff for oar and sail, built in a one-car garage",
        "2026",
        "1,234¾",
        "hours",
        "second of 3 years with work, 2,232½\u00a0hours to date",
        "211\u00a0nights",
        Faces.shares(2_212_200, 750_000, 372_600, 288_000, 252_000, 216_000, 180_000, 174_600),
        "KWD\u00a0123,456.789\u00a0went\u00a0out, KWD\u00a01,123,456.789\u00a0to\u00a0date",
        "16\u00a0of\u00a016\u00a0strakes");
  }

  private static Face longWords() {
    return new Face(
        "Albatross".repeat(9),
        "A skiff",
        "September 2026",
        "0:05",
        "hours",
        "9th of 19 months with work, level with May, June and July (October 2025, June 2025,"
            + " September 2025, August 2025 and four more beat it), and that is by far not all",
        "",
        List.of(new Share("x".repeat(80), "0:05", 300), new Share("Paint", "0", 0)),
        "USD\u00a0123,456,789,012.34",
        "4 strakes, 12 frames, 3 knees, 2 breasthooks and 1 stem, and so on to the end");
  }

  /** Words by place, then lines by pen. */
  static String told(Sheet sheet) {
    StringBuilder told = new StringBuilder();
    for (Words words : sheet.words()) {
      told.append(number(words.x()))
          .append(' ')
          .append(number(words.baseline()))
          .append(" size ")
          .append(number(words.size()))
          .append(' ')
          .append(words.hand().weight())
          .append(' ')
          .append(words.hand().ink())
          .append(' ')
          .append(words.text())
          .append('\n');
    }
    sheet.print().ifPresent(print -> told.append("print ").append(place(print)).append('\n'));
    for (Drawn drawn : sheet.drawn()) {
      Rectangle2D bounds = drawn.path().getBounds2D();
      Box box = new Box(bounds.getX(), bounds.getY(), bounds.getWidth(), bounds.getHeight());
      told.append(drawn.pen()).append(' ').append(place(box)).append('\n');
    }
    return told.toString();
  }

  private static String place(Box box) {
    return Stream.of(box.x(), box.y(), box.width(), box.height())
        .map(SheetPlanTest::number)
        .collect(Collectors.joining(" "));
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  private static String expected(String name) throws IOException {
    try (InputStream in = SheetPlanTest.class.getResourceAsStream(name)) {
      return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
