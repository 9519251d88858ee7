package ribband.postcard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import ribband.measure.Currency;
import ribband.measure.Money;
import ribband.measure.Saying;

class LetteringTest {
  private static final Path FONTS = Path.of("src/main/resources/ribband/postcard");
  private static final Hand REGULAR = Hand.of(Weight.REGULAR, Ink.INK);
  private static final Hand TABULAR = new Hand(Weight.REGULAR, Figures.TABULAR, Ink.INK);

  @ParameterizedTest
  @EnumSource(Weight.class)
  void everyCurrencyIsSaidInOurOwnLetters(Weight weight) {
    for (Currency currency : Currency.all().values()) {
      String said = Saying.money(new Money(-1_234_567_890_123L), currency);
      said.codePoints()
          .forEach(
              character ->
                  assertNotEquals(
                      0, weight.alphabet().glyph(character), () -> said + " " + weight));
    }
  }

  @ParameterizedTest
  @EnumSource(Weight.class)
  void whatAMonthIsToldInIsInOurOwnLetters(Weight weight) {
    String told = "0123456789:,.¼½¾−–…’“”$€£¥%()áàâäãåæçéèêëíîïñóôöõøœßúûüÿğıİłńřśšžÐÞ\u00a0";
    told.codePoints()
        .forEach(
            character ->
                assertNotEquals(
                    0, weight.alphabet().glyph(character), () -> Character.getName(character)));
  }

  @Test
  void theFontsAreSmallAndTheirLicenceIsBesideThem() throws IOException {
    long bytes = 0;
    for (String name : List.of("light", "regular", "bold")) {
      bytes += Files.size(FONTS.resolve("lettering-" + name + ".ttf"));
    }
    String licence =
        Files.readString(FONTS.resolve("lettering-licence.txt"), StandardCharsets.UTF_8);

    assertTrue(bytes < 250_000, bytes + " bytes");
    assertTrue(licence.contains("SIL OPEN FONT LICENSE Version 1.1"));
  }

  @Test
  void pairsOfLettersAreKerned() {
    double apart = REGULAR.width("A") + REGULAR.width("V");

    assertTrue(REGULAR.width("AV") < apart - 0.02, apart + " to " + REGULAR.width("AV"));
  }

  @Test
  void figuresUnderOneAnotherAreAllAsWide() {
    for (char digit = '1'; digit <= '9'; digit++) {
      assertEquals(TABULAR.width("0000"), TABULAR.width("00" + digit + "0"), 1e-9);
    }
    assertNotEquals(REGULAR.width("0000"), REGULAR.width("0010"), 0.01);
    assertEquals(REGULAR.width("ab"), TABULAR.width("ab"), 0);
  }

  @Test
  void aLineReachesAsFarAsItsLettersDo() {
    Lettering x = Lettering.of("x", REGULAR);
    Lettering g = Lettering.of("Ág", REGULAR);

    assertEquals(0.0, x.reachBelow(), 0.02);
    assertEquals(0.215, g.reachBelow(), 0.01);
    assertTrue(g.reachAbove() > 0.85 && x.reachAbove() < 0.6);
    assertTrue(x.leftBearing() > 0 && x.leftBearing() < 0.1);
  }

  @Test
  void wordsWithoutInkHaveAWidthAlone() {
    assertEquals(0, Lettering.of("", REGULAR).width());
    assertTrue(REGULAR.width(" ") > 0.1);
    assertEquals(REGULAR.width(" "), REGULAR.width("\u00a0"), 1e-9);
  }

  /** A letter without a composed form: its mark stands over its middle. */
  @Test
  void aMarkStandsOverTheMiddleOfItsLetter() {
    Lettering plain = Lettering.of("m", REGULAR);
    Lettering marked = Lettering.of("m\u0301", REGULAR);

    assertEquals(plain.width(), marked.width(), 1e-9);
    assertEquals(
        plain.outline().getBounds2D().getCenterX(),
        marked.outline().getBounds2D().getCenterX(),
        1e-6);
    assertTrue(marked.reachAbove() > plain.reachAbove() + 0.05);
  }

  static Stream<String> otherWords() {
    return Stream.of(
        "Ψαρόβαρκα",
        "лодка",
        "木の舟",
        "🚤",
        "سفينة",
        "סירה 26 אב",
        "नाव",
        "\u0301",
        "a\u200db",
        "\ud83d",
        "\ue000",
        "\u202eabc",
        "(סירה)",
        "g\u0325",
        "ﷺ");
  }

  @ParameterizedTest
  @MethodSource("otherWords")
  void otherLettersStandWithinTheirLine(String words) {
    for (Weight weight : Weight.values()) {
      Lettering line = Lettering.of(PlainWords.of(words), Hand.of(weight, Ink.INK));
      Rectangle2D inked = line.outline().getBounds2D();

      assertTrue(line.width() >= 0, words);
      assertTrue(inked.isEmpty() || inked.getMinX() >= -1e-9, () -> words + inked);
      assertTrue(inked.isEmpty() || inked.getMaxX() <= line.width() + 1e-9, () -> words + inked);
      assertTrue(inked.isEmpty() || inked.getMinY() >= -1.2201, () -> words + inked);
      assertTrue(inked.isEmpty() || inked.getMaxY() <= 0.2701, () -> words + inked);
    }
  }

  @ParameterizedTest
  @EnumSource(Weight.class)
  void ourOwnLettersStandWithinTheirLine(Weight weight) {
    for (int character = 0x20; character < 0x2200; character++) {
      int glyph = weight.alphabet().glyph(character);
      Path2D outline = weight.alphabet().outline(glyph);
      Rectangle2D inked = outline.getBounds2D();
      assertTrue(inked.getMinY() >= -1.22 && inked.getMaxY() <= 0.24, character + ": " + inked);
    }
  }

  /** What a system without fonts makes Java throw. */
  static Stream<IntFunction<Font>> noFonts() {
    return Stream.of(
        style -> {
          throw new InternalError(
              "Fontconfig head is null, check your fonts or fonts configuration");
        },
        style -> {
          throw new NoClassDefFoundError("Could not initialize class sun.awt.X11FontManager");
        },
        style -> {
          throw new UnsatisfiedLinkError("libfreetype.so.6: cannot open shared object file");
        },
        style -> null);
  }

  @ParameterizedTest
  @MethodSource("noFonts")
  void withoutFontsABoxStandsForEachLetter(IntFunction<Font> none) {
    SpareLetters spare = new SpareLetters(none);

    Lettering two = spare.letter("木舟", Weight.REGULAR, Direction.RIGHTWARD);
    Lettering apart = spare.letter("木 舟", Weight.REGULAR, Direction.RIGHTWARD);

    assertEquals(1.4, two.width(), 1e-9);
    assertEquals(1.68, apart.width(), 1e-9);
    assertEquals(0.07, two.leftBearing(), 1e-6);
    assertEquals(0.7, two.reachAbove(), 1e-6);
    assertFalse(two.outline().contains(0.35, -0.35), "it is hollow");
    assertTrue(two.outline().contains(0.08, -0.35), "it has a line");
    assertTrue(two.outline().contains(0.35, -0.69), "it has a line");
  }

  @Test
  void aMarkedLetterIsBoxedOnce() {
    SpareLetters spare = new SpareLetters(style -> null);

    assertEquals(0.7, spare.letter("e\u0301", Weight.BOLD, Direction.LEFTWARD).width(), 1e-9);
  }

  /** Hebrew reads from the right: what follows it stands at its left. */
  @Test
  void wordsThatReadFromTheRightAreSeenSo() {
    Lettering name = Lettering.of("Dunlin", REGULAR);
    Lettering line = Lettering.of("סירה Dunlin", REGULAR);

    assertTrue(line.width() > name.width() + 1);
    for (double x = 0; x < name.width(); x += 0.01) {
      assertEquals(name.outline().contains(x, -0.3), line.outline().contains(x, -0.3), "at " + x);
    }
  }
}
