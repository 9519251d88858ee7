package ribband.feed;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One item of both feeds. Its texts hold only characters that XML 1.0 allows, so that either feed
 * says the same.
 *
 * @param id a {@code tag:} URI (RFC 4151)
 * @param address of its page, whole
 * @param title plain
 * @param dated when it was published, as the journal has it
 * @param html safe, every address in it whole
 * @param image whole address of the picture that stands for it
 * @param phases that it is of
 */
record Item(
    String id,
    String address,
    String title,
    Instant dated,
    String html,
    Optional<String> image,
    List<Tag> phases) {
  Item {
    Objects.requireNonNull(id);
    Objects.requireNonNull(address);
    title = XmlText.of(title);
    Objects.requireNonNull(dated);
    html = XmlText.of(html);
    Objects.requireNonNull(image);
    phases = List.copyOf(phases);
  }

  /**
   * What an item is filed under, on one line: XML keeps no other in an attribute (section 3.3.3).
   *
   * @param term for machines
   * @param label for people
   */
  record Tag(String term, String label) {
    Tag {
      term = line(term);
      label = line(label);
    }

    private static String line(String text) {
      return XmlText.of(text).replaceAll("[\\t\\n]", " ");
    }
  }
}
