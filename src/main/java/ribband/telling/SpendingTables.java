package ribband.telling;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import ribband.journal.Journal;
import ribband.journal.JournalFolder;
import ribband.journal.Purchase;
import ribband.ledger.Cell;
import ribband.ledger.Purchases;
import ribband.ledger.Purchases.Kind;
import ribband.ledger.Purchases.Spent;
import ribband.measure.Money;
import ribband.measure.Packs;
import ribband.measure.Saying;
import ribband.measure.ShopTalk;
import ribband.site.Addresses;

/** Every purchase and its receipt, as the papers have them. */
final class SpendingTables {
  private final Journal journal;
  private final JournalFolder folder;
  private final Purchases purchases;
  private final Receipts receipts;
  private final ShopTalk talk;

  SpendingTables(Journal journal, Purchases purchases, Receipts receipts) {
    this.journal = journal;
    this.folder = journal.folder();
    this.purchases = purchases;
    this.receipts = receipts;
    this.talk = new ShopTalk(journal.project().units());
  }

  /**
   * A purchase.
   *
   * @param date for machines; empty where it is no single day
   * @param receipt the receipt's number, or that it was not found; may be empty
   * @param href the receipt's copy; may be empty
   */
  record Line(
      String date,
      String day,
      String what,
      String amount,
      String from,
      String phase,
      String receipt,
      String href,
      Cell cost) {}

  /**
   * A receipt with the purchases that name it.
   *
   * @param number empty where it was not found
   * @param href its copy; empty where it was not found
   */
  record ReceiptLine(
      String number, String href, String file, String day, String what, String from, Cell cost) {}

  List<Line> lines() {
    return purchases.lines().stream().map(this::line).toList();
  }

  private Line line(Spent spent) {
    Optional<Receipt> receipt = receipts.of(spent, folder);
    String notFound = Receipts.isMissing(spent, folder) ? "named, not found" : "";
    boolean isDay = spent.kind() == Kind.ITEM || spent.kind() == Kind.REST;
    return new Line(
        isDay ? spent.date().map(Object::toString).orElse("") : "",
        spent.when(),
        what(spent),
        spent.what().flatMap(Purchase::amount).map(this::packs).orElse(""),
        spent.from().orElse(""),
        spent.phase().map(journal::phaseTitle).orElse(""),
        receipt.map(Receipt::label).orElse(notFound),
        receipt.map(SpendingTables::href).orElse(""),
        new Cell.Paid(spent.amount(), journal.project().currency()));
  }

  private static String what(Spent spent) {
    return switch (spent.kind()) {
      case CARRIED -> "From before this journal, not itemised";
      case PRIVATE -> "Not listed";
      case REST -> spent.entry().map(entry -> entry.title() + ", not itemised").orElse("");
      case ITEM -> spent.what().map(Purchase::what).orElse("");
    };
  }

  private String packs(Packs packs) {
    String each = talk.written(packs.pack());
    return packs.count() == 1 ? each : Saying.count(packs.count()) + " of " + each;
  }

  List<ReceiptLine> receipts() {
    return receipts.there().values().stream()
        .map(r -> receipt(r.label(), href(r), r.file(), r.lines()))
        .toList();
  }

  List<ReceiptLine> missing() {
    return receipts.missing().entrySet().stream()
        .map(named -> receipt("", "", named.getKey(), named.getValue()))
        .toList();
  }

  private static String href(Receipt receipt) {
    return Addresses.href(Papers.PAGE, receipt.path());
  }

  private ReceiptLine receipt(String number, String href, String file, List<Spent> lines) {
    Money sum = Money.sum(lines.stream().map(Spent::amount).toList());
    return new ReceiptLine(
        number,
        href,
        file,
        lines.stream().map(Spent::when).distinct().collect(Collectors.joining("; ")),
        lines.stream().map(SpendingTables::what).collect(Collectors.joining("; ")),
        lines.stream().flatMap(l -> l.from().stream()).distinct().collect(Collectors.joining("; ")),
        new Cell.Paid(sum, journal.project().currency()));
  }
}
