package ribband.telling;

import java.util.List;
import java.util.Objects;
import ribband.ledger.Purchases.Spent;

/**
 * A receipt that purchases name.
 *
 * @param number from 1, in the order of the purchases
 * @param file journal path
 * @param copy its name among the papers' receipts: {@code 001-0314-epoxy.pdf}
 * @param lines the purchases that name it; at least one
 */
public record Receipt(int number, String file, String copy, List<Spent> lines) {
  public Receipt {
    Objects.requireNonNull(file);
    Objects.requireNonNull(copy);
    lines = List.copyOf(lines);
  }

  /** {@code 001}. */
  public String label() {
    return ReceiptName.label(number);
  }

  /** Where it lies in the papers' folder. */
  public String path() {
    return "receipts/" + copy;
  }
}
