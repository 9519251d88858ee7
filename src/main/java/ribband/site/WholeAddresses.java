package ribband.site;

import java.net.URI;
import java.util.Objects;

/**
 * Whole addresses of what stands on a site, as they are written away from it.
 *
 * @param root the site's own, ASCII alone, ending in a slash
 */
public record WholeAddresses(URI root) {
  public WholeAddresses {
    Objects.requireNonNull(root);
  }

  /**
   * The address of a file.
   *
   * @param path from the site's root, not encoded; the first page is the folder itself
   */
  public String of(String path) {
    return path.equals(Addresses.HOME) ? root.toString() : root + Addresses.href("", path);
  }
}
