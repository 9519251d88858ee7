package ribband.card;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ribband.photo.PictureKind;

class SoundNamesTest {
  private static String sound(String name) {
    return new SoundNames(Set.of()).give(name, PictureKind.JPEG);
  }

  @Test
  void namesAreUniqueWhateverTheirCapitalsAndTheWayTheirLettersAreComposed() {
    SoundNames names = new SoundNames(Set.of("img_2031.jpg", "Spante\u0301.jpg"));
    List<String> given =
        Stream.of("IMG_2031.JPG", "IMG_2031.JPG", "IMG_2032.JPG", "Img_2032.jpg", "spant\u00e9.jpg")
            .map(name -> names.give(name, PictureKind.JPEG))
            .toList();
    assertEquals(
        List.of(
            "IMG_2031-2.JPG",
            "IMG_2031-3.JPG",
            "IMG_2032.JPG",
            "Img_2032-2.jpg",
            "spant\u00e9-2.jpg"),
        given);
  }

  @Test
  void numberThatIsTakenIsPassedOver() {
    SoundNames names = new SoundNames(Set.of("a.jpg", "a-2.jpg"));
    assertEquals("a-3.jpg", names.give("a.jpg", PictureKind.JPEG));
  }

  /** Names of devices and letters that a name cannot hold: common practice, no source. */
  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      value = {
        "IMG_2031.JPG, IMG_2031.JPG",
        "`Plank 3, port.jpeg`, `Plank 3, port.jpeg`",
        "a:b*c?d\"e<f>g|h.jpg, a-b-c-d-e-f-g-h.jpg",
        "C:\\boat.jpg, C-boat.jpg",
        ".hidden.jpg, hidden.jpg",
        "..jpg, jpg.jpg",
        "~keel.jpg, keel.jpg",
        "AUX.JPG, picture-AUX.JPG",
        "aux.1.jpg, picture-aux.1.jpg",
        "com7 .jpg, picture-com7.jpg",
        "lpt3.png, picture-lpt3.png",
        "console.jpg, console.jpg",
        "keel.jpg., keel.jpg",
        "keel .jpg, keel.jpg",
        "keel, keel.jpg",
        "keel.dat, keel.dat.jpg",
        "jpg, jpg.jpg",
        "garboard (1).WebP, garboard (1).WebP",
        "-n.jpg, -n.jpg"
      })
  void namesAreMadeSound(String name, String sound) {
    assertEquals(sound, sound(name));
  }

  @Test
  void lettersThatCannotBeSeenAreTakenOut() {
    assertEquals("a-b.jpg", sound("a\u0000\u001b\u202e\nb.jpg"));
    assertEquals("a-b.jpg", sound("a\u2028b.jpg"));
    assertEquals("a-b.jpg", sound("a\ud800b.jpg"));
    assertEquals("\u00e9.jpg", sound("e\u0301.jpg"));
    assertEquals("keel.jpg", sound("keel.jpg . ."));
    assertEquals("picture.jpg", sound(". ."));
    assertEquals("-.jpg", sound("\u0001.jpg"));
  }

  @Test
  void endingIsThatOfTheContentWhereThereIsNone() {
    SoundNames names = new SoundNames(Set.of());
    assertEquals("a.jpg", names.give("a", PictureKind.JPEG));
    assertEquals("a.png", names.give("a", PictureKind.PNG));
    assertEquals("a.webp", names.give("a", PictureKind.WEBP));
    assertEquals("a.gif", names.give("a", PictureKind.GIF));
    assertEquals("b.jpg", names.give("b.jpg", PictureKind.PNG));
  }

  @Test
  void longNameIsCutBetweenLetters() {
    assertEquals("a".repeat(200) + ".jpg", sound("a".repeat(200) + ".jpg"));
    assertEquals("a".repeat(200) + ".jpg", sound("a".repeat(201) + ".jpg"));
    assertEquals("\u00e9".repeat(100) + ".jpg", sound("\u00e9".repeat(120) + ".jpg"));
    String anchors = sound("x" + "\u2693".repeat(80) + ".jpg");
    assertEquals("x" + "\u2693".repeat(66) + ".jpg", anchors);
    String pairs = sound("x" + "\ud83d\udea3".repeat(80) + ".jpg");
    assertEquals("x" + "\ud83d\udea3".repeat(49) + ".jpg", pairs);
    assertEquals("a".repeat(199) + ".jpg", sound("a".repeat(199) + "  b.jpg"));
    SoundNames names = new SoundNames(Set.of());
    names.give("a".repeat(250) + ".jpg", PictureKind.JPEG);
    String second = names.give("a".repeat(251) + ".jpg", PictureKind.JPEG);
    assertEquals("a".repeat(200) + "-2.jpg", second);
    assertTrue(second.getBytes(StandardCharsets.UTF_8).length < 255);
  }
}
