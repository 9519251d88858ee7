package ribband.card;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import ribband.measure.Name;
import ribband.photo.PictureKind;

/**
 * Gives each picture a name that the journal and any file system can hold and no other has; keeps
 * the names it gave.
 */
final class SoundNames {
  /** Path separators, what Windows refuses, and letters that cannot be seen. */
  private static final Pattern UNSOUND = Pattern.compile("[\\\\/:*?\"<>|\\p{C}\\p{Zl}\\p{Zp}]+");

  /** A dot hides a file, and a name that begins with {@code ~} is taken for a path. */
  private static final Pattern START = Pattern.compile("^[.~\\s]+");

  private static final Pattern END = Pattern.compile("[.\\s]+$");

  /** Windows takes these for devices, whatever their ending. */
  private static final Pattern DEVICE =
      Pattern.compile("(?i)(con|prn|aux|nul|com[0-9]|lpt[0-9])\\s*");

  /** Most file systems hold 255; this leaves room for a number and an ending. */
  private static final int MOST_BYTES = 200;

  /** As they compare. */
  private final Set<String> taken = new HashSet<>();

  /**
   * @param taken names that nothing else may bear
   */
  SoundNames(Set<String> taken) {
    taken.forEach(name -> this.taken.add(Name.plain(name)));
  }

  String give(String name, PictureKind kind) {
    String sound = sound(name, kind);
    int dot = sound.lastIndexOf('.');
    String stem = sound.substring(0, dot);
    String ending = sound.substring(dot);
    return Stream.iterate(1, n -> n + 1)
        .map(n -> n == 1 ? sound : stem + "-" + n + ending)
        .filter(free -> taken.add(Name.plain(free)))
        .findFirst()
        .orElseThrow();
  }

  /** The name on the card where it is sound; it has an ending always. */
  private static String sound(String name, PictureKind kind) {
    String composed = Normalizer.normalize(name, Normalizer.Form.NFC);
    String plain = START.matcher(UNSOUND.matcher(composed).replaceAll("-")).replaceFirst("");
    String whole = END.matcher(plain).replaceFirst("");
    boolean ends = CardFile.isNamedAsPicture(whole);
    int dot = ends ? whole.lastIndexOf('.') : whole.length();
    String stem = cut(END.matcher(whole.substring(0, dot)).replaceFirst(""));
    return noDevice(stem.isEmpty() ? "picture" : stem)
        + (ends ? whole.substring(dot) : ending(kind));
  }

  private static String noDevice(String stem) {
    boolean device = DEVICE.matcher(stem.split("\\.", 2)[0]).matches();
    return device ? "picture-" + stem : stem;
  }

  private static String ending(PictureKind kind) {
    return kind == PictureKind.JPEG ? ".jpg" : "." + kind.name().toLowerCase(Locale.ROOT);
  }

  private static String cut(String stem) {
    int end = stem.length();
    while (stem.substring(0, end).getBytes(StandardCharsets.UTF_8).length > MOST_BYTES) {
      end = stem.offsetByCodePoints(end, -1);
    }
    return END.matcher(stem.substring(0, end)).replaceFirst("");
  }
}
