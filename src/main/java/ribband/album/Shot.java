package ribband.album;

import java.util.Objects;
import java.util.Optional;
import ribband.photo.PictureFacts;
import ribband.problem.Place;

/**
 * A picture in an entry.
 *
 * @param file journal path
 * @param caption as the entry has it, in its list or its text
 * @param alt as the entry has it
 * @param cover whether it was chosen to stand for the entry
 * @param where whether the text shows it already
 * @param place where the entry names it
 */
public record Shot(
    String file,
    PictureFacts facts,
    Optional<String> caption,
    Optional<String> alt,
    boolean cover,
    Where where,
    Place place) {

  /** Beside the text, or in it. */
  public enum Where {
    LISTED,
    IN_TEXT
  }

  public Shot {
    Objects.requireNonNull(file);
    Objects.requireNonNull(facts);
    Objects.requireNonNull(caption);
    Objects.requireNonNull(alt);
    Objects.requireNonNull(where);
    Objects.requireNonNull(place);
  }
}
