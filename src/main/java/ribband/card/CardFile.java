package ribband.card;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;

/**
 * A file on the card.
 *
 * @param path where it lies
 * @param name its path from the card's folder, with slashes
 */
record CardFile(Path path, String name) {
  private static final Set<String> FILMS =
      Set.of(
          "mp4", "m4v", "mov", "avi", "3gp", "3g2", "mts", "m2ts", "webm", "mkv", "mpg", "mpeg",
          "wmv");

  private static final Set<String> PICTURES = Set.of("jpg", "jpeg", "jpe", "png", "gif", "webp");

  CardFile {
    Objects.requireNonNull(path);
    Objects.requireNonNull(name);
  }

  String lastName() {
    return name.substring(name.lastIndexOf('/') + 1);
  }

  boolean isNamedAsFilm() {
    return FILMS.contains(ending(name));
  }

  boolean isNamedAsHeic() {
    return Set.of("heic", "heif").contains(ending(name));
  }

  boolean isNamedAsPicture() {
    return isNamedAsPicture(name);
  }

  static boolean isNamedAsPicture(String name) {
    return PICTURES.contains(ending(name));
  }

  private static String ending(String name) {
    int dot = name.lastIndexOf('.');
    return dot < 0 ? "" : name.substring(dot + 1).toLowerCase(Locale.ROOT);
  }

  LeftOut leftOut(Reason reason) {
    return leftOut(reason, "");
  }

  LeftOut leftOut(Reason reason, String detail) {
    return new LeftOut(path, name, reason, detail);
  }
}
