package ribband.site;

import java.util.List;

/**
 * What stands around every page.
 *
 * @param boat the project's name
 * @param what it is, in words; may be empty
 * @param title of the page, unique on the site
 * @param sheet the page's name in the title block
 * @param description one sentence for those who list pages
 * @param root relative path up to the site's root, empty or {@code ../}
 * @param written the day of a page that no later one changes; empty on all others
 * @param asOf the day all figures are as of; empty where {@code written} stands, and for an empty
 *     journal
 * @param nav the main pages
 * @param release the tool and its version
 */
public record Frame(
    String boat,
    String what,
    String title,
    String sheet,
    String description,
    String root,
    String written,
    String asOf,
    List<Nav> nav,
    String release) {

  /**
   * A main page.
   *
   * @param here whether this is the page one is on
   */
  public record Nav(String title, String href, boolean here) {}
}
