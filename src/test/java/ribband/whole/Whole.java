package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;

/** Whole addresses, read back. */
final class Whole {
  private Whole() {}

  /**
   * The path of a file in the site.
   *
   * @param root the site's address
   */
  static String path(String address, String root) {
    assertTrue(address.startsWith(root), address);
    URI uri = URI.create(address);
    assertTrue(uri.toASCIIString().equals(address), address);
    String path = uri.getPath().substring(URI.create(root).getPath().length());
    return path.isEmpty() ? "index.html" : path;
  }
}
