package ribband.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ribband.measure.Quantity;
import ribband.measure.Saying;
import ribband.measure.ShopUnits;
import ribband.measure.Units;
import ribband.measure.Unreadable;
import ribband.problem.Nearest;

/** What shop arithmetic takes from a journal, where there is one. */
final class Workbench {
  private Workbench() {}

  /**
   * The project of the journal named, else of the nearest upward; empty where there is none.
   *
   * @throws Refusal where a folder named holds none, or its project has errors, which have been
   *     told
   */
  static Optional<OpenJournal> project(Surroundings around, JournalArgument journal, Common options)
      throws IOException {
    Optional<OpenJournal.Found> found =
        journal.folder().isPresent()
            ? Optional.of(OpenJournal.find(around, journal.folder(), Optional.empty()))
            : OpenJournal.findNearest(around);
    if (found.isEmpty()) {
      return Optional.empty();
    }
    OpenJournal project = found.get().list(around).readProject();
    new ProblemTeller(around, options).tell(project);
    if (project.errors() > 0) {
      around
          .err()
          .println(
              Saying.counted(project.errors(), "error", "errors")
                  + " in project.yaml, nothing is reckoned");
      throw Refusal.journalHasErrors();
    }
    return Optional.of(project);
  }

  /**
   * The units asked for, else the project's, else those that the question was put in, else those of
   * a US shop.
   *
   * @param question the amount that is asked about; empty where it cannot be read
   */
  static Units units(
      Wants wants, String typed, Optional<OpenJournal> project, Optional<Quantity> question) {
    return wants
        .read("--units", typed, Workbench::units)
        .or(() -> project.map(p -> p.journal().project().units()))
        .or(() -> question.flatMap(ShopUnits::of))
        .orElse(Units.US);
  }

  private static Units units(String text) throws Unreadable {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "us" -> Units.US;
      case "metric" -> Units.METRIC;
      default ->
          throw new Unreadable("are no units", Nearest.hint(text, List.of("us", "metric"), ""));
    };
  }
}
