package ribband.site;

import java.util.Objects;

/**
 * The card of a month, a picture in the site.
 *
 * @param path from the site's root
 * @param width px
 * @param height px
 */
public record MonthCard(String path, int width, int height) {
  public MonthCard {
    Objects.requireNonNull(path);
  }
}
