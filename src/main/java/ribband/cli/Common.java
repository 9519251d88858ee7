package ribband.cli;

import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import ribband.measure.Dates;
import ribband.measure.Unreadable;
import ribband.problem.Nearest;

/** The options of every command. */
@Command(
    headerHeading = "",
    synopsisHeading = "%nType     ",
    descriptionHeading = "%n",
    parameterListHeading = "%nArguments%n",
    optionListHeading = "%nOptions%n",
    footerHeading = "%nExamples%n",
    sortOptions = false)
final class Common {
  private static final LocalTime EVENING = LocalTime.of(18, 0);

  @Option(
      names = "--today",
      paramLabel = "DATE",
      order = 90,
      description = "reckon as if this day were today, as 2026-03-14")
  private String today;

  @Option(
      names = "--color",
      paramLabel = "WHEN",
      defaultValue = "auto",
      order = 91,
      description = "auto (on a terminal, unless NO_COLOR is set), always or never")
  private String color;

  @Option(
      names = {"-q", "--quiet"},
      order = 92,
      description = "tell errors and results only")
  private boolean quiet;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      order = 93,
      description = "tell this and stop")
  private boolean help;

  boolean isQuiet() {
    return quiet;
  }

  /** The day that stands for today. */
  LocalDate today(Clock clock) {
    return givenToday().orElseGet(() -> LocalDate.now(clock));
  }

  /** The evening of the day named to stand for today, when work in the shop is about to begin. */
  Optional<LocalDateTime> givenEvening() {
    return givenToday().map(day -> day.atTime(EVENING));
  }

  /** The day named to stand for today. */
  Optional<LocalDate> givenToday() {
    try {
      return today == null ? Optional.empty() : Optional.of(Dates.readDay(today));
    } catch (Unreadable e) {
      throw Refusal.wrongValue("--today", today, e);
    }
  }

  boolean isColored(Surroundings around) {
    return switch (color) {
      case "auto" -> around.wantsColor();
      case "always" -> true;
      case "never" -> false;
      default ->
          throw Refusal.wrongValue(
              "--color",
              color,
              new Unreadable(
                  "is no choice", Nearest.hint(color, List.of("auto", "always", "never"), "")));
    };
  }
}
