package ribband.recap;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.Predicate;
import ribband.album.Album;
import ribband.album.Leaf;
import ribband.album.Shot;
import ribband.journal.Entry;
import ribband.ledger.Ledger;
import ribband.measure.Hours;

/**
 * The picture that stands for a stretch of the build: one marked as a cover before the others, then
 * that of the longest night, then of the latest; of one entry the first.
 *
 * @param leaf of the entry that shows it; never a private one
 */
public record BestPicture(Leaf leaf, Shot shot) {
  /** The best of some days, the last one included; empty without a picture. */
  public static Optional<BestPicture> of(Album album, Ledger ledger, LocalDate from, LocalDate to) {
    return of(album, ledger, entry -> !entry.date().isBefore(from) && !entry.date().isAfter(to));
  }

  /** The best of a month. */
  public static Optional<BestPicture> of(Album album, Ledger ledger, YearMonth month) {
    return of(album, ledger, month.atDay(1), month.atEndOfMonth());
  }

  /** The best of some entries. */
  public static Optional<BestPicture> of(Album album, Ledger ledger, Predicate<Entry> which) {
    return album.shown().stream()
        .filter(leaf -> which.test(leaf.entry()))
        .flatMap(leaf -> leaf.cover().map(shot -> new BestPicture(leaf, shot)).stream())
        .max(
            Comparator.comparing((BestPicture picture) -> picture.shot().cover())
                .thenComparing(picture -> ledger.nights().getOrDefault(picture.date(), Hours.ZERO))
                .thenComparing(BestPicture::date));
  }

  private LocalDate date() {
    return leaf.entry().date();
  }
}
