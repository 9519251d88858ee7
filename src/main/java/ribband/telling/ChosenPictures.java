package ribband.telling;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribband.album.Album;
import ribband.album.Leaf;
import ribband.album.Shot;
import ribband.ledger.Ledger;
import ribband.ledger.PhaseRow;
import ribband.ledger.Row;
import ribband.measure.Saying;
import ribband.recap.BestPicture;

/** Chooses the pictures of the papers: one for each month and one for each phase. */
final class ChosenPictures {
  /**
   * A picture.
   *
   * @param leaf of the entry that shows it
   * @param standsFor the months and phases, as headings name them
   */
  record Chosen(Leaf leaf, Shot shot, List<String> standsFor) {}

  /** By content. */
  private final Map<String, Chosen> chosen = new LinkedHashMap<>();

  private ChosenPictures() {}

  /** Those of the months, then those of the phases; a picture that stands for several, once. */
  static List<Chosen> of(Album album, Ledger ledger) {
    ChosenPictures pictures = new ChosenPictures();
    for (Row<YearMonth> month : ledger.months()) {
      pictures.choose(Saying.month(month.period()), BestPicture.of(album, ledger, month.period()));
    }
    for (PhaseRow row : ledger.phases()) {
      String id = row.phase().id();
      pictures.choose(
          row.phase().title(), BestPicture.of(album, ledger, entry -> entry.phases().contains(id)));
    }
    return List.copyOf(pictures.chosen.values());
  }

  private void choose(String name, Optional<BestPicture> picture) {
    picture.ifPresent(
        best ->
            chosen.merge(
                best.shot().facts().digest(),
                new Chosen(best.leaf(), best.shot(), List.of(name)),
                ChosenPictures::both));
  }

  private static Chosen both(Chosen first, Chosen again) {
    List<String> names = new ArrayList<>(first.standsFor());
    names.addAll(again.standsFor());
    return new Chosen(first.leaf(), first.shot(), List.copyOf(names));
  }
}
