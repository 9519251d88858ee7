package ribband.telling;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribband.journal.JournalFolder;
import ribband.journal.Purchase;
import ribband.ledger.Purchases;
import ribband.ledger.Purchases.Spent;

/**
 * The receipts that purchases name, numbered in the order of those, each file once.
 *
 * @param there by journal path
 * @param missing purchases by the name of a receipt that is not there
 */
record Receipts(Map<String, Receipt> there, Map<String, List<Spent>> missing) {
  static Receipts of(Purchases purchases, JournalFolder folder) {
    Map<String, List<Spent>> found = new LinkedHashMap<>();
    Map<String, List<Spent>> missing = new LinkedHashMap<>();
    for (Spent spent : purchases.lines()) {
      named(spent)
          .ifPresent(
              name -> {
                Optional<String> file = folder.find(name);
                (file.isPresent() ? found : missing)
                    .computeIfAbsent(file.orElse(name), n -> new ArrayList<>())
                    .add(spent);
              });
    }
    Map<String, Receipt> there = new LinkedHashMap<>();
    found.forEach(
        (file, lines) -> {
          int number = there.size() + 1;
          there.put(file, new Receipt(number, file, ReceiptName.of(number, file), lines));
        });
    return new Receipts(there, missing);
  }

  private static Optional<String> named(Spent spent) {
    return spent.what().flatMap(Purchase::receipt);
  }

  /** The receipt of a purchase; empty where it names none, or one that is not there. */
  Optional<Receipt> of(Spent spent, JournalFolder folder) {
    return named(spent).flatMap(folder::find).map(there::get);
  }

  static boolean isMissing(Spent spent, JournalFolder folder) {
    return named(spent).filter(name -> folder.find(name).isEmpty()).isPresent();
  }
}
