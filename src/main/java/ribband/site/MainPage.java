package ribband.site;

import java.util.Arrays;
import java.util.List;

/** The pages that stand alone, in the order of the tabs: what each is called, and where it is. */
enum MainPage {
  BOAT("Boat", Addresses.HOME, "home", ""),
  MONEY(
      "Money",
      Addresses.MONEY,
      "money",
      "The running investment: every purchase, by date, phase and supplier."),
  MATERIALS(
      "Materials",
      Addresses.MATERIALS,
      "materials",
      "What is on the shelf, what is still needed, and how far each purchase went."),
  AHEAD(
      "Ahead",
      Addresses.AHEAD,
      "ahead",
      "What comes next, how much is left, and when she may float."),
  RECORDS(
      "Records",
      Addresses.RECORDS,
      "records",
      "The best months, the longest nights, the runs and the gaps."),
  LESSONS(
      "Lessons",
      Addresses.LESSONS,
      "lessons",
      "What to do better the next time, by phase, the newest first."),
  PICTURES(
      "Pictures", Addresses.PICTURES, "pictures", "Every picture of the build, month by month.");

  private final String title;
  private final String path;
  private final String template;
  private final String description;

  MainPage(String title, String path, String template, String description) {
    this.title = title;
    this.path = path;
    this.template = template;
    this.description = description;
  }

  /** Those that a site has. */
  static List<MainPage> of(Book book) {
    return Arrays.stream(values()).filter(page -> page.isIn(book)).toList();
  }

  private boolean isIn(Book book) {
    return switch (this) {
      case BOAT, RECORDS, PICTURES -> true;
      case MONEY -> book.showsMoney();
      case MATERIALS -> book.hasMaterials();
      case AHEAD -> book.ahead().isPresent();
      case LESSONS -> book.hasLessons();
    };
  }

  String title() {
    return title;
  }

  /** From the site's root. */
  String path() {
    return path;
  }

  String template() {
    return template;
  }

  /** One sentence; empty where the boat is told instead. */
  String description() {
    return description;
  }

  /** What its template shows. */
  Record view(Book book) {
    return switch (this) {
      case BOAT -> new HomePage(book).view();
      case MONEY -> new MoneyPage(book).view();
      case MATERIALS -> new MaterialsPage(book).view();
      case AHEAD -> new AheadPage(book).view();
      case RECORDS -> new RecordsPage(book).view();
      case LESSONS -> new LessonsPage(book).view();
      case PICTURES -> new PicturesPage(book).view();
    };
  }
}
