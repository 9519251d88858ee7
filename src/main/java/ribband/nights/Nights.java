package ribband.nights;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import ribband.joints.Bonds;
import ribband.journal.Project;
import ribband.pieces.PieceCount;
import ribband.stock.Stock;

/**
 * What the nights from a moment on can bring.
 *
 * @param night the one that is asked about
 * @param held clamps that are still on
 */
public record Nights(Project project, Stock stock, LocalDate night, HeldClamps held) {
  /**
   * Looks at what is made by a moment.
   *
   * @param counts all of the project's
   * @param bonds theirs, at the moment
   */
  public static Nights of(Map<String, PieceCount> counts, Stock stock, Bonds bonds) {
    Project project = bonds.project();
    return new Nights(
        project,
        stock,
        bonds.now().atZone(project.zone()).toLocalDate(),
        HeldClamps.of(counts.values(), bonds));
  }

  /** What one of them can bring of a kind. */
  public Nightly of(PieceCount count, Setting setting) {
    Optional<Resin> resin = Resin.of(count.kind(), project, stock);
    return new Nightly(count, setting, ClampTime.of(count, project, night), held, resin);
  }

  /** What another setting would change. */
  public WhatIf whatIf(PieceCount count, Setting now, Setting changed) {
    return new WhatIf(of(count, now), of(count, changed));
  }
}
