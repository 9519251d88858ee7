package ribband.feed;

import java.net.URI;
import java.time.LocalDate;
import java.util.Locale;
import ribband.site.WholeAddresses;

/**
 * Names of items that stay as they are whatever becomes of title, scheme and port: {@code tag:}
 * URIs (RFC 4151) of host, day and path.
 */
final class TagUris {
  private final WholeAddresses addresses;

  TagUris(WholeAddresses addresses) {
    this.addresses = addresses;
  }

  /**
   * @param path of the item's page in the site
   */
  String of(LocalDate day, String path) {
    String page = URI.create(addresses.of(path)).getRawPath();
    return "tag:" + authority() + "," + day + ":" + page;
  }

  /**
   * RFC 4151, 2.1: letters, figures, hyphens and dots, so that an address in figures is spelled.
   */
  private String authority() {
    String host = addresses.root().getHost().toLowerCase(Locale.ROOT);
    return host.replaceAll("[\\[\\]]", "").replace(':', '-');
  }
}
