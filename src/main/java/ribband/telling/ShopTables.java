package ribband.telling;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import ribband.joints.Bond;
import ribband.joints.Bonds;
import ribband.joints.Made;
import ribband.joints.Warm;
import ribband.journal.Entry;
import ribband.journal.Journal;
import ribband.measure.Saying;
import ribband.measure.ShopTalk;
import ribband.shop.Adhesive;
import ribband.stock.Move.Kind;
import ribband.stock.Shelf;
import ribband.stock.Stock;
import ribband.stock.StockWords;

/** What went into the boat and how it was glued and coated, as the papers have it. */
final class ShopTables {
  private final Journal journal;
  private final Stock stock;
  private final ShopTalk talk;
  private final StockWords words;

  ShopTables(Journal journal, Stock stock) {
    this.journal = journal;
    this.stock = stock;
    this.talk = new ShopTalk(journal.project().units());
    this.words = new StockWords(talk, Optional.empty());
  }

  /**
   * A material.
   *
   * @param estimated of what went in, how much was reckoned from areas; empty for none
   * @param left may be unknown
   */
  record Material(String name, String used, String estimated, String left) {}

  /** A joint or a coat. */
  record Glue(String date, String day, String kind, String what, String with, String temperature) {}

  /** Materials of which some went in. */
  List<Material> materials() {
    return stock.shelves().stream()
        .filter(shelf -> shelf.shown() == Entry.Shown.PUBLIC && wentIn(shelf))
        .map(this::material)
        .toList();
  }

  private static boolean wentIn(Shelf shelf) {
    return !shelf.sum(Kind.USED, Kind.ESTIMATED, Kind.MISSING).isZero();
  }

  private Material material(Shelf shelf) {
    return new Material(
        shelf.material(),
        words.own(shelf.sum(Kind.USED, Kind.ESTIMATED, Kind.MISSING)),
        shelf.sum(Kind.ESTIMATED).isZero() ? "" : words.own(shelf.sum(Kind.ESTIMATED)),
        shelf.amountOnHand().map(words::own).orElse("unknown"));
  }

  String otherMaterials() {
    long others =
        stock.shelves().stream()
            .filter(shelf -> shelf.shown() == Entry.Shown.PRIVATE && wentIn(shelf))
            .count();
    return others == 0 ? "" : Saying.counted(others, "more, not listed.", "more, not listed.");
  }

  List<Glue> glue() {
    Set<String> told =
        journal.entries().stream()
            .filter(Entry::isPublic)
            .map(Entry::address)
            .collect(Collectors.toSet());
    return Bonds.of(journal, endOfTheLastDay()).all().stream()
        .filter(bond -> told.contains(bond.made().entry()))
        .map(this::glue)
        .toList();
  }

  private Instant endOfTheLastDay() {
    LocalDate asOf = journal.asOf().orElse(LocalDate.EPOCH);
    return asOf.plusDays(1).atStartOfDay(journal.project().zone()).toInstant().minusSeconds(1);
  }

  private Glue glue(Bond bond) {
    Made made = bond.made();
    return new Glue(
        made.day().toString(),
        Saying.day(made.day()),
        bond.kind(),
        made.name(),
        made.adhesive().map(Adhesive::name).orElse(""),
        temperature(made.warm()));
  }

  private String temperature(Warm warm) {
    return switch (warm.from()) {
      case ENTRY -> warm.warmth().map(talk::warmth).orElse("");
      case MONTH -> warm.warmth().map(w -> talk.warmth(w) + ", the month's mean").orElse("");
      case RATED -> "not written down";
    };
  }
}
