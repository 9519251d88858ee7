package ribband.stock;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribband.journal.Entry;
import ribband.journal.Outlay;
import ribband.journal.Purchase;
import ribband.measure.Currency;
import ribband.measure.Packs;
import ribband.measure.Quantity;
import ribband.measure.Saying;
import ribband.measure.ShopTalk;

/**
 * Says what a shelf tells in a builder's words.
 *
 * @param currency empty where no money is to be told
 */
public record StockWords(ShopTalk shop, Optional<Currency> currency) {
  /** {@code 20 there at the start, used up on 3 March 2026: 14 joints, 6 strakes, 9 nights}. */
  public String kit(Kit kit) {
    return came(kit) + ", " + went(kit);
  }

  /** What became of it: {@code 6 fl oz left: 1 coat, 2 nights}. */
  public String went(Kit kit) {
    return rest(kit) + (kit.isOpened() ? ": " + did(kit) : "");
  }

  /** What came, when and for how much. */
  public String came(Kit kit) {
    String what =
        kit.outlay()
            .flatMap(Outlay::purchase)
            .flatMap(Purchase::amount)
            .map(this::packs)
            .orElseGet(() -> shop.written(kit.amount()));
    String cost =
        kit.outlay()
            .flatMap(out -> currency.map(c -> " for " + Saying.money(out.amount(), c)))
            .orElse("");
    return what + " " + kit.from().words() + cost + when(kit);
  }

  private static String when(Kit kit) {
    LocalDate written = kit.entry().map(Entry::date).orElse(LocalDate.EPOCH);
    return kit.date()
        .map(
            day ->
                day.isAfter(written)
                    ? " on " + Saying.day(written) + ", here on " + Saying.day(day)
                    : " on " + Saying.day(day))
        .orElse("");
  }

  private String rest(Kit kit) {
    return kit.emptied()
        .map(day -> "used up on " + Saying.day(day))
        .orElse(kit.isOpened() ? own(kit.left()) + " left" : "not opened yet");
  }

  /** What it went into; nobody may have written that down. */
  private String did(Kit kit) {
    List<String> did = new ArrayList<>();
    if (kit.joints() > 0) {
      did.add(Saying.counted(kit.joints(), "joint", "joints"));
    }
    if (kit.coats() > 0) {
      did.add(Saying.counted(kit.coats(), "coat", "coats"));
    }
    kit.pieces()
        .forEach(
            (kind, count) ->
                did.add(count == 1 ? "one of the " + kind : Saying.count(count) + " " + kind));
    if (!kit.area().isZero()) {
      did.add(shop.reckoned(kit.area()));
    }
    if (kit.nights() > 0) {
      did.add(Saying.counted(kit.nights(), "night", "nights"));
    }
    return did.isEmpty() ? "nothing of it was written down" : String.join(", ", did);
  }

  private String packs(Packs packs) {
    String each = shop.written(packs.pack());
    return packs.count() == 1 ? each : packs.count() + " of " + each;
  }

  /** {@code measured 131 in² per fl oz over 7 nights, stated 140 in² per fl oz}. */
  public String spread(SpreadRate rate) {
    String stated =
        rate.adhesive().spread().map(s -> "stated " + shop.spread(s)).orElse("none stated");
    String measured =
        rate.measured()
            .map(
                s ->
                    "measured "
                        + shop.spread(s)
                        + " over "
                        + Saying.counted(rate.measures().size(), "entry", "entries"))
            .orElse("not measured yet");
    String counts =
        rate.basis() == SpreadRate.Basis.STATED && rate.measured().isPresent()
            ? "; the stated one counts until there are five"
            : "";
    return measured + ", " + stated + counts;
  }

  /** What to buy and by when, or that there is enough; then why. */
  public String need(Shelf shelf, LocalDate asOf) {
    Need need = shelf.need().orElseThrow();
    if (!need.isAsked()) {
      return "nothing asks for it";
    }
    List<String> why = new ArrayList<>();
    if (!need.forPieces().isZero()) {
      why.add(
          own(need.forPieces()) + " for " + shop.reckoned(need.area()) + " of pieces not yet made");
    }
    if (!need.neverBelow().isZero()) {
      why.add(shop.written(need.neverBelow()) + " kept in reserve");
    }
    if (!need.unreckoned().isEmpty()) {
      why.add(
          "not counting "
              + Saying.list(need.unreckoned())
              + ", whose glue area or spread is unknown");
    }
    why.add(held(shelf));
    return order(need, asOf) + " (" + String.join("; ", why) + ")";
  }

  private String held(Shelf shelf) {
    Quantity ordered = shelf.amountOnOrder();
    Quantity there = shelf.amountOnHand().orElse(Quantity.none(shelf.unit()));
    return own(there) + " on hand" + (ordered.isZero() ? "" : ", " + own(ordered) + " on order");
  }

  private String order(Need need, LocalDate asOf) {
    if (need.isEnough()) {
      return need.unreckoned().isEmpty() ? "enough" : "enough for what can be reckoned";
    }
    String amount = need.order().map(this::packs).orElseGet(() -> own(need.lacking()));
    String when =
        need.orderBy()
            .map(day -> day.isAfter(asOf) ? " by " + Saying.day(day) : " now")
            .orElse(" before the next of it is used (none was in the last 8 weeks)");
    return "order " + amount + when;
  }

  /** An amount of a material, in the unit it is kept in. */
  public String own(Quantity amount) {
    return shop.reckoned(amount, amount.unit());
  }
}
