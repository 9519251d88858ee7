package ribband.stock;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import ribband.journal.Journal;
import ribband.measure.Name;
import ribband.problem.Problem;
import ribband.shop.Adhesive;

/**
 * Every material of a journal, as of a day.
 *
 * @param shelves those of the project in its order, then the others as entries first name them
 * @param warnings of what was used and was not there
 */
public record Stock(List<Shelf> shelves, List<Problem> warnings) {
  /** No material at all. */
  public static final Stock NONE = new Stock(List.of(), List.of());

  public Stock {
    shelves = List.copyOf(shelves);
    warnings = List.copyOf(warnings);
  }

  /**
   * Goes through a journal.
   *
   * @param asOf entries after it do not count, and what arrives after it is on order
   */
  public static Stock of(Journal journal, LocalDate asOf, Told told) {
    return new StockTaking(journal, asOf, told).take();
  }

  /** Whom it is told to. */
  public enum Told {
    /** All of it. */
    TO_THE_BUILDER,
    /** Private entries count in every amount, but what they made with it is not told. */
    TO_READERS
  }

  /** The shelf of a material, however it is spelled. */
  public Optional<Shelf> shelf(String material) {
    return shelves.stream()
        .filter(shelf -> Name.fold(shelf.material()).equals(Name.fold(material)))
        .findFirst();
  }

  /** The shelf of what an adhesive is mixed from. */
  public Optional<Shelf> shelf(Adhesive adhesive) {
    return shelf(GlueWork.materialOf(adhesive));
  }
}
