package ribband.site;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import ribband.album.Leaf;
import ribband.album.Shot;
import ribband.measure.Saying;
import ribband.photo.PictureFacts;
import ribband.photo.PrintSize;
import ribband.prose.Print;

/** Shows pictures on one page: addresses, sizes and words for each. */
public final class Prints {
  private static final String IN_GALLERY =
      "(min-width: 80rem) 15rem, (min-width: 60rem) 27vw, (min-width: 40rem) 40vw, calc(100vw - 5rem)";
  private static final String ON_OWN_PAGE =
      "(min-width: 86rem) 33rem, (min-width: 60rem) 41vw, (min-width: 40rem) 86vw, calc(100vw - 5rem)";
  private static final String IN_TEXT = "(min-width: 50rem) 40rem, 92vw";
  private static final int SHOWN_WIDTH = 960;

  private final String page;

  /**
   * @param page the path of the page they are shown on
   */
  public Prints(String page) {
    this.page = page;
  }

  /**
   * A picture as a template shows it.
   *
   * @param shape {@code wide}, {@code tall} or {@code square}
   * @param caption may be empty
   * @param entryHref the entry it belongs to; empty on that entry's own page
   * @param day when, in short; empty on the entry's own page
   * @param first whether it is the first on the page, to be loaded at once
   */
  public record View(
      Print print,
      String shape,
      String caption,
      String entryHref,
      String entryTitle,
      String day,
      int number,
      boolean first) {}

  /** All pictures of an entry's page that its text does not show. */
  public List<View> besideText(Leaf leaf, boolean firstOnPage) {
    List<Shot> shots =
        leaf.shots().stream().filter(shot -> shot.where() == Shot.Where.LISTED).toList();
    return views(leaf, shots, ON_OWN_PAGE, 1, firstOnPage, false);
  }

  /** All pictures of several entries, each with its entry. */
  List<View> gallery(List<Leaf> leaves, boolean firstOnPage) {
    List<View> views = new ArrayList<>();
    for (Leaf leaf : leaves) {
      views.addAll(
          views(
              leaf,
              leaf.shots(),
              IN_GALLERY,
              views.size() + 1,
              firstOnPage && views.isEmpty(),
              true));
    }
    return views;
  }

  /** The one picture that stands for an entry; none or one. */
  List<View> cover(Leaf leaf, boolean firstOnPage) {
    return views(leaf, leaf.cover().stream().toList(), IN_GALLERY, 1, firstOnPage, true);
  }

  private List<View> views(
      Leaf leaf,
      List<Shot> shots,
      String sizes,
      int number,
      boolean firstOnPage,
      boolean withEntry) {
    List<View> views = new ArrayList<>();
    for (Shot shot : shots) {
      PictureFacts facts = shot.facts();
      LocalDate date = leaf.entry().date();
      views.add(
          new View(
              print(shot, leaf.alt(shot), sizes),
              shape(facts),
              shot.caption().orElse(""),
              withEntry ? Addresses.href(page, Addresses.entry(leaf.entry())) : "",
              leaf.entry().title(),
              withEntry ? Saying.day(date) : "",
              number + views.size(),
              firstOnPage && views.isEmpty()));
    }
    return views;
  }

  /** The print of a picture inside a text. */
  Print inText(Shot shot) {
    return print(shot, shot.alt().orElse(""), IN_TEXT);
  }

  private Print print(Shot shot, String alt, String sizes) {
    PictureFacts facts = shot.facts();
    List<PrintSize> made = PrintSize.of(facts);
    List<String> candidates = new ArrayList<>();
    for (PrintSize size : made) {
      candidates.add(href(facts, size) + " " + size.width() + "w");
    }
    PrintSize shown =
        made.stream()
            .filter(size -> size.width() <= SHOWN_WIDTH)
            .reduce((a, b) -> b)
            .orElse(made.get(0));
    PrintSize largest = made.get(made.size() - 1);
    return new Print(
        href(facts, shown),
        String.join(", ", candidates),
        sizes,
        href(facts, largest),
        shown.width(),
        shown.height(),
        alt);
  }

  private String href(PictureFacts facts, PrintSize size) {
    return Addresses.href(page, Addresses.print(facts, size));
  }

  private static String shape(PictureFacts facts) {
    int difference = facts.width() - facts.height();
    if (Math.abs(difference) * 10 <= facts.width()) {
      return "square";
    }
    return difference > 0 ? "wide" : "tall";
  }
}
