package ribband.recap;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import ribband.album.Album;
import ribband.album.Leaf;
import ribband.album.Shot;
import ribband.journal.Entry;
import ribband.measure.Hours;

/**
 * The picture that stands for a stretch of the build: one marked as a cover before the others, then
 * that of the longest night, then of the latest; of one entry the first.
 *
 * @param leaf of the entry that shows it; never a private one
 */
public record BestPicture(Leaf leaf, Shot shot) {
  /** The best of some days, the last one included; empty without a picture. */
  public static Optional<BestPicture> of(Album album, LocalDate from, LocalDate to) {
    return of(album, entry -> !entry.date().isBefore(from) && !entry.date().isAfter(to));
  }

  /** The best of some entries. */
  public static Optional<BestPicture> of(Album album, Predicate<Entry> which) {
    List<BestPicture> pictures =
        album.shown().stream()
            .filter(leaf -> which.test(leaf.entry()))
            .flatMap(leaf -> leaf.cover().map(shot -> new BestPicture(leaf, shot)).stream())
            .toList();
    Map<LocalDate, Hours> nights = new HashMap<>();
    album.leaves().stream()
        .map(Leaf::entry)
        .forEach(entry -> nights.merge(entry.date(), entry.totalHours(), Hours::plus));
    return pictures.stream()
        .max(
            Comparator.comparing((BestPicture picture) -> picture.shot().cover())
                .thenComparing(picture -> nights.get(picture.leaf().entry().date()))
                .thenComparing(picture -> picture.leaf().entry().date()));
  }
}
