package ribband.feed;

import java.time.Instant;
import java.util.List;
import java.util.Objects;

/**
 * What both feeds say.
 *
 * @param title the boat's name, plain
 * @param what she is; may be empty
 * @param home whole address of the site
 * @param atom whole address of the Atom feed
 * @param json whole address of the JSON feed
 * @param icon whole address of the site's icon
 * @param generator the tool and its version
 * @param updated when the last item was
 * @param items the newest first
 */
record Feed(
    String title,
    String what,
    String home,
    String atom,
    String json,
    String icon,
    String generator,
    Instant updated,
    List<Item> items) {
  Feed {
    title = XmlText.of(title);
    what = XmlText.of(what);
    Objects.requireNonNull(home);
    Objects.requireNonNull(atom);
    Objects.requireNonNull(json);
    Objects.requireNonNull(icon);
    Objects.requireNonNull(generator);
    Objects.requireNonNull(updated);
    items = List.copyOf(items);
  }
}
