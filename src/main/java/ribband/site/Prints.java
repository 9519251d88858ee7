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
import ribband.recap.BestPicture;

/** Shows pictures on one page: addresses, sizes and words for each. */
public final class Prints {
  private static final String IN_TEXT = "(min-width: 60rem) 714px, calc(100vw - 2.1rem)";
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
   * @param shape {@code tall}, {@code square}, {@code wide} or {@code long}; {@code little} where
   *     it is smaller than its place, {@code modest} where it is on a phone alone
   * @param caption may be empty
   * @param entryHref the entry it belongs to; empty on that entry's own page
   * @param entryTitle empty where the day stands in for it
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

  /** All pictures of an entry's page that its text does not show, the first the largest. */
  public List<View> besideText(Leaf leaf, boolean firstOnPage) {
    List<Shot> shots =
        leaf.shots().stream().filter(shot -> shot.where() == Shot.Where.LISTED).toList();
    int one = Math.min(1, shots.size());
    List<View> views = views(leaf, shots.subList(0, one), PrintPlace.PLATE, 1, firstOnPage, false);
    views.addAll(views(leaf, shots.subList(one, shots.size()), PrintPlace.LARGE, 2, false, false));
    return views;
  }

  /** All pictures of several entries, each with its entry. */
  List<View> gallery(List<Leaf> leaves, boolean firstOnPage) {
    List<View> views = new ArrayList<>();
    for (Leaf leaf : leaves) {
      views.addAll(
          views(
              leaf,
              leaf.shots(),
              PrintPlace.GALLERY,
              views.size() + 1,
              firstOnPage && views.isEmpty(),
              true));
    }
    return views;
  }

  /** The one picture that stands for an entry; none or one. */
  List<View> cover(Leaf leaf, boolean firstOnPage) {
    return views(leaf, leaf.cover().stream().toList(), PrintPlace.NOTICE, 1, firstOnPage, true);
  }

  /** The one picture that opens a page, large. */
  View lead(BestPicture best) {
    return views(best.leaf(), List.of(best.shot()), PrintPlace.LEAD, 1, true, true).get(0);
  }

  private List<View> views(
      Leaf leaf,
      List<Shot> shots,
      PrintPlace place,
      int number,
      boolean firstOnPage,
      boolean withEntry) {
    List<View> views = new ArrayList<>();
    for (Shot shot : shots) {
      PictureFacts facts = shot.facts();
      LocalDate date = leaf.entry().date();
      views.add(
          new View(
              print(shot, leaf.alt(shot), place.sizes(facts), ""),
              place.classes(facts),
              shot.caption().orElse(""),
              withEntry ? Addresses.href(page, Addresses.entry(leaf.entry())) : "",
              EntryNames.isTitled(leaf.entry()) ? leaf.entry().title() : "",
              withEntry ? Saying.day(date) : "",
              number + views.size(),
              firstOnPage && views.isEmpty()));
    }
    return views;
  }

  /** The print of a picture inside a text. */
  Print inText(Shot shot) {
    return print(shot, shot.alt().orElse(""), IN_TEXT, shot.caption().orElse(""));
  }

  private Print print(Shot shot, String alt, String sizes, String caption) {
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
    return new Print(
        href(facts, shown),
        String.join(", ", candidates),
        sizes,
        href(facts, PrintSize.largest(facts)),
        shown.width(),
        shown.height(),
        alt,
        caption);
  }

  private String href(PictureFacts facts, PrintSize size) {
    return Addresses.href(page, Addresses.print(facts, size));
  }
}
