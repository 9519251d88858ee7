package ribband.cli;

import java.io.IOException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import ribband.ahead.Ahead;
import ribband.ahead.AheadList;
import ribband.ahead.Wish;
import ribband.journal.Journal;
import ribband.measure.Dates;
import ribband.measure.Hours;
import ribband.measure.Unreadable;
import ribband.stock.Stock;
import ribband.stock.Stock.Told;

/** Tells what comes next, how much is left, and when she may float. */
@Command(
    name = "ahead",
    header = "Tell what can be done next, how much is left and when she may float",
    description = {
      "Ready jobs and what each frees, what waits for what, pieces left and what limits a night,"
          + " plan against actual, and a forecast drawn from your own weeks: odds, no promise.",
      "",
      "The maker's data sheet and local rules govern what may be glued, and when it bears a load."
    },
    footer = {
      "  ribband ahead                            all of it, for tonight",
      "  ribband ahead --evening 2h30             what fits, and what changes",
      "  ribband ahead --clamps 36                nights saved, and the new date",
      "  ribband ahead --show plan --format csv   earned value, for a spreadsheet"
    })
final class AheadCommand implements Callable<Integer> {
  private static final int MOST_CLAMPS = 99_999;

  private final Surroundings around;

  @Mixin private JournalArgument journal;

  @Option(
      names = "--evening",
      paramLabel = "HOURS",
      description = "what if evenings were so long: 2h30; without it your usual one")
  private String evening;

  @Option(
      names = "--clamps",
      paramLabel = "NUMBER",
      description = "what if the shop had so many; without it project.yaml's")
  private String clamps;

  @Option(
      names = "--show",
      paramLabel = "WHAT",
      description =
          "jobs, pieces, nights, plan, left or forecast alone; without it a table shows all, a data"
              + " file jobs")
  private String show;

  @Option(
      names = "--now",
      paramLabel = "MOMENT",
      description =
          "reckon as if it were this moment in the project's time zone: \"2026-03-14 22:10\", or"
              + " 22:10 for today; without it, with --today, 18:00 of that day")
  private String now;

  @Mixin private FormatOption format;
  @Mixin private Common options;

  AheadCommand(Surroundings around) {
    this.around = around;
  }

  @Override
  public Integer call() throws IOException, InterruptedException {
    Format how = format.read();
    Optional<AheadList> list = list();
    Wish wish = new Wish(evening(), clamps());
    Optional<LocalDateTime> given = givenNow();
    Journal read = SoundJournal.read(around, journal, options);
    ZoneId zone = read.project().zone();
    Instant moment =
        given.map(local -> local.atZone(zone).toInstant()).orElseGet(around.clock()::instant);
    LocalDate today = moment.atZone(zone).toLocalDate();
    Stock stock = Stock.of(read, today, Told.TO_THE_BUILDER);
    Ahead ahead = Ahead.of(read, stock, today, moment, wish, Told.TO_THE_BUILDER);
    if (how == Format.TABLE) {
      new AheadText(ahead, moment, around.out()).tell(list);
    } else {
      how.print(list.orElse(AheadList.JOBS).sheet(ahead), around.out());
    }
    return ExitCode.DONE;
  }

  private Optional<AheadList> list() {
    try {
      return show == null ? Optional.empty() : Optional.of(AheadList.read(show));
    } catch (Unreadable e) {
      throw Refusal.wrongValue("--show", show, e);
    }
  }

  private Optional<Hours> evening() {
    if (evening == null) {
      return Optional.empty();
    }
    try {
      Hours hours = Hours.read(evening);
      if (hours.isZero() || hours.compareTo(Hours.ofMinutes(24 * 60L)) > 0) {
        throw new Unreadable("is no evening", "write more than none and 24 h at most, as 2h30");
      }
      return Optional.of(hours);
    } catch (Unreadable e) {
      throw Refusal.wrongValue("--evening", evening, e);
    }
  }

  private OptionalInt clamps() {
    if (clamps == null) {
      return OptionalInt.empty();
    }
    if (!clamps.matches("[0-9]{1,6}") || Integer.parseInt(clamps) > MOST_CLAMPS) {
      throw Refusal.wrongValue(
          "--clamps",
          clamps,
          new Unreadable("is no number of clamps", "write figures alone, 99999 at most, as 36"));
    }
    return OptionalInt.of(Integer.parseInt(clamps));
  }

  private Optional<LocalDateTime> givenNow() {
    if (now == null) {
      return options.givenEvening();
    }
    try {
      return Optional.of(Dates.readMoment(options.today(around.clock())).read(now));
    } catch (Unreadable e) {
      throw Refusal.wrongValue("--now", now, e);
    }
  }
}
