package ribband.telling;

import java.util.List;
import ribband.album.Album;
import ribband.album.Leaf;
import ribband.journal.Entry;
import ribband.journal.Journal;
import ribband.ledger.Cell;
import ribband.ledger.Ledger;
import ribband.ledger.Purchases;
import ribband.measure.Currency;
import ribband.measure.Saying;
import ribband.photo.PictureFacts;
import ribband.photo.PrintSize;
import ribband.site.Addresses;
import ribband.stock.Stock;

/** Says what the papers show, in their order. */
final class PapersPage {
  private final Album album;
  private final Ledger ledger;
  private final WorkTables work;
  private final SpendingTables spending;
  private final ShopTables shop;
  private final List<ChosenPictures.Chosen> pictures;

  PapersPage(
      Album album,
      Ledger ledger,
      Stock stock,
      Purchases purchases,
      Receipts receipts,
      List<ChosenPictures.Chosen> pictures) {
    this.album = album;
    this.ledger = ledger;
    this.work = new WorkTables(album.journal(), ledger);
    this.spending = new SpendingTables(album.journal(), purchases, receipts);
    this.shop = new ShopTables(album.journal(), stock);
    this.pictures = pictures;
  }

  /**
   * What the template shows.
   *
   * @param money whether the project has a currency
   * @param unlisted what is counted and not told; empty for nothing
   * @param hours of all work
   * @param worked the same in words
   * @param cost of all
   * @param estimated whether any use of a material is
   * @param otherMaterials those that only private entries name; empty for none
   */
  record View(
      boolean money,
      List<WorkTables.Fact> dates,
      String unlisted,
      ColumnHours hours,
      String worked,
      Cell cost,
      List<WorkTables.PhaseLine> phases,
      WorkTables.Planned planned,
      List<WorkTables.MonthLine> months,
      List<SpendingTables.Line> purchases,
      List<SpendingTables.ReceiptLine> receipts,
      List<SpendingTables.ReceiptLine> missing,
      List<ShopTables.Material> materials,
      boolean estimated,
      String otherMaterials,
      List<ShopTables.Glue> glue,
      List<Picture> pictures) {}

  /**
   * A picture.
   *
   * @param standsFor the months and phases it stands for
   * @param caption may be empty
   */
  record Picture(
      String src,
      int width,
      int height,
      String alt,
      String standsFor,
      String caption,
      String day) {}

  View view() {
    Journal journal = album.journal();
    boolean money = !journal.project().currency().equals(Currency.NONE);
    List<ShopTables.Material> materials = shop.materials();
    return new View(
        money,
        work.dates(),
        unlisted(),
        ColumnHours.of(ledger.whole().totalHours()),
        Saying.hoursInWords(ledger.whole().totalHours()),
        new Cell.Paid(ledger.whole().totalCost(), journal.project().currency()),
        work.phases(),
        work.planned(),
        work.months(),
        spending.lines(),
        spending.receipts(),
        spending.missing(),
        materials,
        materials.stream().anyMatch(material -> !material.estimated().isEmpty()),
        shop.otherMaterials(),
        shop.glue(),
        pictures.stream().map(PapersPage::picture).toList());
  }

  private String unlisted() {
    long entries =
        album.leaves().stream().map(Leaf::entry).filter(entry -> !entry.isPublic()).count();
    return entries == 0
        ? ""
        : Saying.counted(entries, "entry of the journal is", "entries of the journal are")
            + " private: counted in every figure here, and told in no word, picture or receipt.";
  }

  private static Picture picture(ChosenPictures.Chosen chosen) {
    PictureFacts facts = chosen.shot().facts();
    PrintSize size = PrintSize.largest(facts);
    Entry entry = chosen.leaf().entry();
    return new Picture(
        Addresses.href(Papers.PAGE, Papers.printPath(facts)),
        size.width(),
        size.height(),
        chosen.leaf().alt(chosen.shot()),
        String.join(" · ", chosen.standsFor()),
        chosen.shot().caption().orElse(""),
        Saying.day(entry.date()));
  }
}
