package ribband.journal;

import java.net.URI;
import java.util.Optional;

/**
 * What the project says about its site.
 *
 * @param address where it will stand, ending in a slash
 * @param about journal path of a Markdown file that tells of the boat
 */
public record SiteSettings(Optional<URI> address, MoneyShown money, Optional<String> about) {
  /** Whether any amount may stand on the site. */
  public enum MoneyShown {
    SHOWN,
    HIDDEN
  }
}
