package ribband.prose;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import ribband.problem.Place;

/**
 * A link or a picture that a text names.
 *
 * @param target where it points, as written, its escapes and entities read, its percent signs not
 * @param words the link's text or the picture's description, plain; may be empty
 * @param place where it begins in the file
 */
public record Mention(Kind kind, String target, String words, Place place) {
  /** What is mentioned. */
  public enum Kind {
    LINK,
    PICTURE
  }

  public Mention {
    Objects.requireNonNull(kind);
    Objects.requireNonNull(target);
    Objects.requireNonNull(words);
    Objects.requireNonNull(place);
  }

  /** The path without query and fragment, percent signs decoded; of use where it is relative. */
  public String path() {
    String path = target;
    for (char end : new char[] {'#', '?'}) {
      int at = path.indexOf(end);
      path = at < 0 ? path : path.substring(0, at);
    }
    return decoded(path);
  }

  /** What stands behind the {@code #}, percent signs decoded; empty where there is none. */
  public String fragment() {
    int at = target.indexOf('#');
    return at < 0 ? "" : decoded(target.substring(at + 1));
  }

  /** Whether it names a file of the journal, relative to the entry. */
  public boolean isRelative() {
    return Address.of(target).reach() == Address.Reach.FILE;
  }

  /**
   * A percent sign that begins no escape stands for itself, as in a file called {@code 50%.jpg}.
   */
  private static String decoded(String written) {
    String careful = written.replaceAll("%(?![0-9A-Fa-f]{2})", "%25").replace("+", "%2B");
    return URLDecoder.decode(careful, StandardCharsets.UTF_8);
  }
}
