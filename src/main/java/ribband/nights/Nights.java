package ribband.nights;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import ribband.joints.Bonds;
import ribband.journal.Project;
import ribband.pieces.PieceCount;
import ribband.stock.Stock;
import ribband.stock.Stock.Told;

/**
 * What the nights from a moment on can bring.
 *
 * @param night the one that is asked about
 * @param held clamps that are still on
 */
public record Nights(Project project, Stock stock, LocalDate night, HeldClamps held, Told told) {
  /**
   * Looks at what is made by a moment.
   *
   * @param counts all of the project's
   * @param bonds theirs, at the moment
   * @param told readers hear nothing of joints in private entries
   */
  public static Nights of(Map<String, PieceCount> counts, Stock stock, Bonds bonds, Told told) {
    Project project = bonds.project();
    return new Nights(
        project,
        stock,
        bonds.now().atZone(project.zone()).toLocalDate(),
        HeldClamps.of(counts.values(), bonds),
        told);
  }

  /** What one of them can bring of a kind. */
  public Nightly of(PieceCount count, Setting setting) {
    Optional<Resin> resin = Resin.of(count.kind(), project, stock);
    return new Nightly(count, setting, ClampTime.of(count, project, night, told), held, resin);
  }
}
