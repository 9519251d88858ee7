package ribband.telling;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import ribband.album.Album;
import ribband.journal.Journal;
import ribband.ledger.Ledger;
import ribband.ledger.Purchases;
import ribband.measure.Money;
import ribband.measure.Saying;
import ribband.photo.Darkroom;
import ribband.photo.PictureFacts;
import ribband.photo.PrintSize;
import ribband.site.Frame;
import ribband.site.Templates;
import ribband.stock.Stock;

/**
 * What is wanted at the end of a build for registration, insurance or a buyer: one page to print,
 * the prints and the receipts it names. Private entries count in its figures and are told in none
 * of its words; money is told whatever the site hides.
 */
public final class Papers {
  /** The page itself. */
  public static final String PAGE = "papers.html";

  private static final List<String> LOOK =
      List.of("fonts.css", "ribband.css", "papers.css", "icon.svg", "fonts-licence.txt");

  private final Album album;
  private final Ledger ledger;
  private final Stock stock;
  private final Purchases purchases;
  private final Receipts receipts;
  private final List<ChosenPictures.Chosen> pictures;

  /**
   * @param stock as of the last entry's day, told to readers
   */
  public Papers(Album album, Ledger ledger, Stock stock) {
    this.album = album;
    this.ledger = ledger;
    this.stock = stock;
    this.purchases = Purchases.withUnpriced(album.journal());
    this.receipts = Receipts.of(purchases, album.journal().folder());
    this.pictures = ChosenPictures.of(album, ledger);
    requireAgreement();
  }

  /** By month and by phase the ledger has compared them; the list of purchases is another way. */
  private void requireAgreement() {
    Money listed = Money.sum(purchases.lines().stream().map(Purchases.Spent::amount).toList());
    if (!listed.equals(ledger.whole().totalCost())) {
      throw new IllegalStateException(
          "purchases come to " + listed + ", the ledger to " + ledger.whole().totalCost());
    }
  }

  /** The pictures to be printed, each once. */
  public List<PictureFacts> pictures() {
    return pictures.stream().map(chosen -> chosen.shot().facts()).toList();
  }

  /** The print that is shown of a picture: the largest that a darkroom makes. */
  public static String print(PictureFacts facts) {
    return Darkroom.fileName(facts, PrintSize.largest(facts));
  }

  /** Where a picture's print lies in the papers' folder. */
  public static String printPath(PictureFacts facts) {
    return "pictures/" + print(facts);
  }

  /** The receipts to be copied, in the order of their numbers. */
  public List<Receipt> receipts() {
    return List.copyOf(receipts.there().values());
  }

  /** How many receipts are named and not there. */
  public int missing() {
    return receipts.missing().size();
  }

  /**
   * The page and what it is drawn with, by path in the papers' folder.
   *
   * @param release the tool and its version
   */
  public Map<String, byte[]> files(String release) {
    Map<String, byte[]> files =
        LOOK.stream()
            .collect(
                Collectors.toMap(
                    name -> "look/" + name,
                    name -> Templates.asset("assets/" + name),
                    (a, b) -> a,
                    LinkedHashMap::new));
    files.put(PAGE, new Templates().draw("papers", frame(release), view()));
    return files;
  }

  private Frame frame(String release) {
    Journal journal = album.journal();
    String name = journal.project().name();
    return new Frame(
        name,
        journal.project().what().orElse(""),
        "Papers of " + name,
        "Papers",
        "What went into the boat, for registration, insurance or a buyer.",
        "",
        "",
        journal.asOf().map(Saying::day).orElse(""),
        List.of(),
        release,
        "",
        List.of());
  }

  private PapersPage.View view() {
    return new PapersPage(album, ledger, stock, purchases, receipts, pictures).view();
  }
}
