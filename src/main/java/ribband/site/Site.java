package ribband.site;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import ribband.ahead.Ahead;
import ribband.album.Album;
import ribband.album.Leaf;
import ribband.album.Showing;
import ribband.journal.Entry;
import ribband.journal.Journal;
import ribband.ledger.By;
import ribband.ledger.Ledger;
import ribband.ledger.MoneyColumns;
import ribband.ledger.Row;
import ribband.ledger.SheetCsv;
import ribband.ledger.TallySheet;
import ribband.measure.Currency;
import ribband.photo.PictureFacts;
import ribband.photo.PrintSize;
import ribband.prose.Crew;
import ribband.recap.MonthSentence;
import ribband.site.Faces.Face;
import ribband.stock.Stock;

/**
 * Draws every page of a site. Entry pages are drawn on all cores; the result does not depend on it.
 */
public final class Site {
  /** Styles, fonts, scripts and drawings, copied as they are. */
  public static final List<String> ASSETS =
      List.of(
          "assets/fonts.css",
          "assets/ribband.css",
          "assets/charts.css",
          "assets/viewer.css",
          "assets/viewer.js",
          "assets/icon.svg",
          "assets/icon-180.png",
          "assets/finder.css",
          "assets/finder.js",
          "assets/searcher.js",
          "assets/minisearch.js",
          "assets/minisearch-licence.txt",
          "assets/fonts-licence.txt");

  private final Book book;
  private final Templates templates = new Templates();
  private final Frames frames;
  private final Faces faces;
  private final Out out;

  /** Takes the files of a site; may be called by several threads. */
  @FunctionalInterface
  public interface Out {
    /**
     * @param path from the site's root, with slashes
     */
    void put(String path, byte[] content) throws IOException;
  }

  private Site(Book book, Map<YearMonth, MonthCard> cards, Out out) {
    this.book = book;
    this.frames = new Frames(book);
    this.faces = new Faces(book, cards);
    this.out = out;
  }

  /**
   * Draws the site.
   *
   * @param cards empty for a site without an address, as nobody would ever be shown one
   * @param release the tool and its version, named at the foot of each page
   * @return how many pages were drawn
   */
  public static int draw(
      Album album,
      Ledger ledger,
      Stock stock,
      Ahead ahead,
      Map<YearMonth, MonthCard> cards,
      String release,
      Out out) {
    return new Site(Book.of(album, ledger, stock, ahead, release), cards, out).draw();
  }

  /** Where the texts of a journal's entries will stand. */
  public static Showing showing(Journal journal) {
    return new EntryWords(journal);
  }

  /** The paths of a picture's prints in the site. */
  public static List<String> printPaths(PictureFacts facts) {
    return PrintSize.of(facts).stream().map(size -> Addresses.print(facts, size)).toList();
  }

  private int draw() {
    ASSETS.forEach(asset -> put(asset, Templates.asset(asset)));
    sheet(Addresses.MONTHS_CSV, By.MONTH);
    sheet(Addresses.PHASES_CSV, By.PHASE);
    SearchEntries search = new SearchEntries(book);
    put(Addresses.SEARCH, SearchScript.of(search.all(), search.phases()));
    return entries() + months() + phases() + mainPages();
  }

  private int entries() {
    List<Leaf> shown = book.album().shown();
    Map<String, Row<Entry>> rows = new HashMap<>();
    book.ledger().entries().forEach(row -> rows.put(row.period().file(), row));
    EntryPage pages = new EntryPage(book);
    Map<String, String> titles = EntryTitles.of(shown);
    draw(
        IntStream.range(0, shown.size()).boxed().toList(),
        i -> {
          Leaf leaf = shown.get(i);
          Entry entry = leaf.entry();
          Frame frame = frames.of(entry, titles.get(entry.file()), leaf.opening(), faces.of(leaf));
          Record view =
              pages.view(leaf, rows.get(entry.file()), at(shown, i - 1), at(shown, i + 1));
          put(Addresses.entry(entry), templates.draw("entry", frame, view));
        });
    return shown.size();
  }

  private static <T> void draw(List<T> things, Consumer<T> page) {
    Crew.work(
        things,
        thing -> {
          page.accept(thing);
          return thing;
        });
  }

  private static Optional<Entry> at(List<Leaf> leaves, int i) {
    return i < 0 || i >= leaves.size() ? Optional.empty() : Optional.of(leaves.get(i).entry());
  }

  private int months() {
    Map<YearMonth, List<Leaf>> leaves = book.shownByMonth();
    MonthPage pages = new MonthPage(book);
    draw(
        book.ledger().months(),
        month -> {
          List<Leaf> shown = leaves.getOrDefault(month.period(), List.of());
          MonthPage.View view = pages.view(month, shown);
          String path = Addresses.month(month.period());
          Optional<Face> card =
              faces.ofMonth(month.period(), view.sentence()).or(() -> faces.best(month.period()));
          Frame frame = frames.of(path, view.month(), view.month(), view.sentence(), card);
          put(path, templates.draw("month", frame, view));
        });
    return book.ledger().months().size();
  }

  private int phases() {
    PhasePage pages = new PhasePage(book);
    Map<String, String> titles = PhaseTitles.of(book);
    draw(
        book.ledger().phases(),
        row -> {
          PhasePage.View view = pages.view(row, book.album().shown());
          String id = row.phase().id();
          String path = Addresses.phase(id);
          Optional<Face> best = faces.best(entry -> entry.phases().contains(id));
          Frame frame = frames.of(path, view.title(), titles.get(id), view.sentence(), best);
          put(path, templates.draw("phase", frame, view));
        });
    return book.ledger().phases().size();
  }

  private int mainPages() {
    List<MainPage> pages = MainPage.of(book);
    Optional<Face> face = faceOfAll();
    for (MainPage page : pages) {
      String about = page == MainPage.BOAT ? about() : page.description();
      Frame frame = frames.of(page.path(), page.title(), page.title(), about, face);
      put(page.path(), templates.draw(page.template(), frame, page.view(book)));
    }
    return pages.size();
  }

  /** The card of the latest month, else the best picture of all. */
  private Optional<Face> faceOfAll() {
    List<Row<YearMonth>> months = book.ledger().months();
    MonthSentence sentence = new MonthSentence(book.journal(), book.ledger(), book.words());
    return months.stream()
        .skip(Math.max(0, months.size() - 1))
        .findFirst()
        .flatMap(month -> faces.ofMonth(month.period(), sentence.of(month)))
        .or(() -> faces.best(entry -> true));
  }

  private String about() {
    String name = book.journal().project().name();
    return book.journal().project().what().map(what -> name + ": " + what + ".").orElse(name);
  }

  private void sheet(String path, By by) {
    MoneyColumns money = book.words().shown() ? MoneyColumns.SHOWN : MoneyColumns.HIDDEN;
    Currency currency = book.journal().project().currency();
    StringBuilder csv = new StringBuilder();
    try {
      SheetCsv.write(TallySheet.of(book.ledger(), currency, by, money), csv);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    put(path, csv.toString().getBytes(StandardCharsets.UTF_8));
  }

  private void put(String path, byte[] content) {
    try {
      out.put(path, content);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
