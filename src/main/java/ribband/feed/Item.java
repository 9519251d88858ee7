package ribband.feed;

import java.time.Instant;
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
 */
record Item(
    String id, String address, String title, Instant dated, String html, Optional<String> image) {
  Item {
    Objects.requireNonNull(id);
    Objects.requireNonNull(address);
    title = XmlText.of(title);
    Objects.requireNonNull(dated);
    html = XmlText.of(html);
    Objects.requireNonNull(image);
  }
}
