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
 * @param robots what search engines are asked; empty for nothing
 * @param shared what leaves the site with a link to the page; none or one
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
    String release,
    String robots,
    List<Shared> shared) {
  /** Letters of a name that leave the bar along the top one line. */
  private static final int BAR = 26;

  public Frame {
    nav = List.copyOf(nav);
    shared = List.copyOf(shared);
  }

  /** The boat's name for the bar: of a long one as many whole words as it has room for. */
  public String boatInBar() {
    if (boat.codePointCount(0, boat.length()) <= BAR) {
      return boat;
    }
    int most = boat.offsetByCodePoints(0, BAR);
    int space = boat.lastIndexOf(' ', most);
    return boat.substring(0, space > 0 ? space : most).replaceFirst("[,;:]$", "") + "…";
  }

  /**
   * A main page.
   *
   * @param here whether this is the page one is on
   */
  public record Nav(String title, String href, boolean here) {}

  /**
   * What other sites and feed readers are told of a page; all addresses are whole.
   *
   * @param address the page's own, the one that counts
   * @param title without the boat's name
   * @param type {@code article} or {@code website}, as the Open Graph protocol names them
   * @param day the page's, in ISO 8601; empty where it has none
   * @param images none or one
   * @param atom where the Atom feed stands
   * @param json where the JSON feed stands
   */
  public record Shared(
      String address,
      String title,
      String type,
      String day,
      List<Image> images,
      String atom,
      String json) {
    public Shared {
      images = List.copyOf(images);
    }
  }

  /**
   * The picture that stands for a page.
   *
   * @param address whole
   * @param width px
   * @param height px
   */
  public record Image(String address, int width, int height, String alt) {}
}
