package ribband.journal;

import java.net.URI;
import java.util.Objects;
import java.util.Optional;
import ribband.problem.Place;

/**
 * What the project says about its site.
 *
 * @param about journal path of a Markdown file that tells of the boat
 */
public record SiteSettings(
    Address address, MoneyShown money, Optional<String> about, Robots robots) {
  public SiteSettings {
    Objects.requireNonNull(address);
    Objects.requireNonNull(money);
    Objects.requireNonNull(about);
    Objects.requireNonNull(robots);
  }

  /** Where the site will stand, as far as the builder says. */
  public sealed interface Address {
    /** The address, ending in a slash, http or https, with a host, no query, no fragment. */
    default Optional<URI> uri() {
      return Optional.empty();
    }
  }

  /** A site at an address. */
  public record At(URI address) implements Address {
    public At {
      Objects.requireNonNull(address);
    }

    @Override
    public Optional<URI> uri() {
      return Optional.of(address);
    }
  }

  /** A site that the builder says has no address, as one on a stick. */
  public record Nowhere() implements Address {}

  /**
   * An address that nobody spoke of.
   *
   * @param place where it could stand
   */
  public record Unsaid(Place place) implements Address {
    public Unsaid {
      Objects.requireNonNull(place);
    }
  }

  /** Whether any amount may stand on the site. */
  public enum MoneyShown {
    SHOWN,
    HIDDEN
  }

  /** What search engines are asked to do with the pages. */
  public enum Robots {
    WELCOME,
    NONE
  }
}
