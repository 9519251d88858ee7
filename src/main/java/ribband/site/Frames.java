package ribband.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribband.journal.Entry;
import ribband.journal.Project;
import ribband.journal.SiteSettings.Robots;
import ribband.measure.Saying;
import ribband.site.Faces.Face;

/** Makes the frame of each page. */
final class Frames {
  private final Book book;
  private final Optional<WholeAddresses> addresses;

  Frames(Book book) {
    this.book = book;
    this.addresses = book.journal().project().site().address().uri().map(WholeAddresses::new);
  }

  /**
   * The frame of a page with figures.
   *
   * @param page its path
   * @param sheet its name in the title block
   * @param title unique on the site, without the boat's name
   * @param description one sentence
   * @param face the picture that stands for it
   */
  Frame of(String page, String sheet, String title, String description, Optional<Face> face) {
    String asOf = book.journal().asOf().map(Saying::day).orElse("");
    String shared = page.equals(Addresses.HOME) ? book.journal().project().name() : title;
    return frame(page, sheet, title, description, "", asOf, shared(page, shared, "", face));
  }

  /** The frame of an entry's page: later nights leave it as it is. */
  Frame of(Entry entry, String title, String description, Optional<Face> face) {
    String page = Addresses.entry(entry);
    String written = Saying.day(entry.date());
    List<Frame.Shared> shared = shared(page, entry.title(), entry.date().toString(), face);
    return frame(page, entry.title(), title, description, written, "", shared);
  }

  private List<Frame.Shared> shared(String page, String title, String day, Optional<Face> face) {
    return addresses.stream()
        .map(
            whole ->
                new Frame.Shared(
                    whole.of(page),
                    title,
                    day.isEmpty() ? "website" : "article",
                    day,
                    face.stream().map(shown -> image(whole, shown)).toList(),
                    whole.of(Addresses.FEED_XML),
                    whole.of(Addresses.FEED_JSON)))
        .toList();
  }

  private static Frame.Image image(WholeAddresses whole, Face face) {
    return new Frame.Image(whole.of(face.path()), face.width(), face.height(), face.alt());
  }

  private Frame frame(
      String page,
      String sheet,
      String title,
      String description,
      String written,
      String asOf,
      List<Frame.Shared> shared) {
    Project project = book.journal().project();
    return new Frame(
        project.name(),
        project.what().orElse(""),
        page.equals(Addresses.HOME) ? project.name() : title + " – " + project.name(),
        sheet,
        description,
        Addresses.href(page, ""),
        written,
        asOf,
        nav(page),
        book.release(),
        project.site().robots() == Robots.NONE ? "none" : "",
        shared);
  }

  private List<Frame.Nav> nav(String page) {
    List<Frame.Nav> nav = new ArrayList<>();
    nav.add(item(page, "Boat", Addresses.HOME));
    nav.add(
        new Frame.Nav(
            "Months", Addresses.href(page, "index.html#months"), page.startsWith("months/")));
    nav.add(
        new Frame.Nav(
            "Phases", Addresses.href(page, "index.html#phases"), page.startsWith("phases/")));
    if (book.showsMoney()) {
      nav.add(item(page, "Money", Addresses.MONEY));
    }
    if (book.hasMaterials()) {
      nav.add(item(page, "Materials", Addresses.MATERIALS));
    }
    if (book.ahead().isPresent()) {
      nav.add(item(page, "Ahead", Addresses.AHEAD));
    }
    nav.add(item(page, "Records", Addresses.RECORDS));
    if (book.hasLessons()) {
      nav.add(item(page, "Lessons", Addresses.LESSONS));
    }
    nav.add(item(page, "Pictures", Addresses.PICTURES));
    return nav;
  }

  private static Frame.Nav item(String page, String title, String path) {
    return new Frame.Nav(title, Addresses.href(page, path), page.equals(path));
  }
}
