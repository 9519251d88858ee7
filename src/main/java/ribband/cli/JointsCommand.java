package ribband.cli;

import java.io.IOException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import ribband.joints.Bonds;
import ribband.joints.Due;
import ribband.joints.JointsCalendar;
import ribband.joints.JointsSheet;
import ribband.joints.JointsText;
import ribband.joints.Which;
import ribband.journal.Journal;
import ribband.measure.Dates;
import ribband.measure.Saying;
import ribband.measure.Unreadable;
import ribband.problem.OneLine;

/** Says how far joints and coats are, and what comes next. */
@Command(
    name = "joints",
    header = "Look after joints and coats: last look, clamps off, recoat",
    description = {
      "Times follow from project.yaml's adhesives, corrected for temperature: the one beside the"
          + " joint, else the shop's mean of that month. What is unknown is said to be unknown.",
      "",
      "The maker's data sheet and local rules govern."
    },
    footer = {
      "  ribband joints                            what is still soft, held or curing",
      "  ribband joints --calendar joints.ics      alarms for any calendar program",
      "  ribband joints --now \"2026-03-14 22:10\"   as it was at that moment",
      "  ribband joints --all --format csv         every one, for a spreadsheet"
    })
final class JointsCommand implements Callable<Integer> {
  private final Surroundings around;

  @Mixin private JournalArgument journal;

  @Option(names = "--all", description = "those that are cured or covered, too")
  private boolean all;

  @Option(
      names = "--calendar",
      paramLabel = "FILE",
      description =
          "write what is still ahead to this iCalendar file: last looks, clamps off, ends of recoat"
              + " windows, each with an alarm; only a calendar of ribband's is replaced")
  private String calendar;

  @Option(
      names = "--now",
      paramLabel = "MOMENT",
      description =
          "reckon as if it were this moment in the project's time zone: \"2026-03-14 22:10\", or"
              + " 22:10 for today; without it, with --today, 18:00 of that day")
  private String now;

  @Mixin private FormatOption format;
  @Mixin private Common options;

  JointsCommand(Surroundings around) {
    this.around = around;
  }

  @Override
  public Integer call() throws IOException, InterruptedException {
    Format how = format.read();
    Optional<LocalDateTime> given = givenNow();
    Journal read = SoundJournal.read(around, journal, options);
    ZoneId zone = read.project().zone();
    Instant moment =
        given.map(local -> local.atZone(zone).toInstant()).orElseGet(around.clock()::instant);
    Bonds bonds = Bonds.of(read, moment);
    Which which = all ? Which.ALL : Which.LIVE;
    if (calendar != null) {
      writeCalendar(bonds, which);
    }
    if (how == Format.TABLE) {
      around.out().print(JointsText.of(bonds, which));
    } else {
      how.print(JointsSheet.of(bonds, which), around.out());
    }
    return ExitCode.DONE;
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

  private void writeCalendar(Bonds bonds, Which which) throws IOException {
    List<Due> dues = JointsCalendar.dues(bonds, which);
    if (dues.isEmpty()) {
      around.err().println("no event " + (all ? "is known" : "is ahead") + ", no calendar written");
      return;
    }
    CalendarFile.write(around, calendar, JointsCalendar.of(bonds, dues));
    if (!options.isQuiet()) {
      around
          .err()
          .println(
              "wrote "
                  + OneLine.of(calendar)
                  + ": "
                  + Saying.counted(dues.size(), "event", "events"));
    }
  }
}
