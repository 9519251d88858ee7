package ribband.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import ribband.card.LeftOutWords;
import ribband.card.Window;
import ribband.desk.Tonight;
import ribband.desk.Tonight.Written;
import ribband.joints.BeforeBed;
import ribband.measure.Dates;
import ribband.measure.Night;
import ribband.measure.Saying;
import ribband.measure.Unreadable;
import ribband.problem.OneLine;
import ribband.problem.Problem;
import ribband.spoken.Spoken;
import ribband.spoken.SpokenLine;
import ribband.spoken.SpokenWords;

/** Begins a night's entry. */
@Command(
    name = "tonight",
    header = "Write down tonight: a new entry, filled with what is known",
    description = {
      "Makes a new file, never over another, and opens it in $VISUAL or $EDITOR on a terminal;"
          + " elsewhere it prints the path alone. Ends with what must still be looked at before"
          + " bed. Before 4 in the morning it is still the night before.",
      "",
      "Spaces part the words of $VISUAL; quotes round some of them make one word."
    },
    footer = {
      "  ribband tonight                          opens tonight's entry",
      "  ribband tonight --say \"planking 2:45, 23.70 sanding discs, two strakes on\"",
      "  ribband tonight --photos /media/card     with tonight's pictures",
      "  ribband tonight --date 2026-03-13        a night that was forgotten"
    })
final class TonightCommand implements Callable<Integer> {
  private static final int LONGEST_TITLE = 200;

  private final Surroundings around;

  @Mixin private JournalArgument journal;

  @Option(
      names = "--date",
      paramLabel = "DATE",
      description = "the night to write down, as 2026-03-14")
  private String date;

  @Option(names = "--title", paramLabel = "TEXT", description = "what the night is called")
  private String title;

  @Option(
      names = "--say",
      paramLabel = "LINE",
      description =
          "the night in a line: hours, money and pieces become keys, all else becomes text")
  private String say;

  @Option(
      names = "--photos",
      paramLabel = "DIR",
      description =
          "bring in the pictures taken since the last entry from a phone's or a card's folder, which"
              + " stays as it is")
  private String photos;

  @Mixin private Common options;

  TonightCommand(Surroundings around) {
    this.around = around;
  }

  @Override
  public Integer call() throws IOException, InterruptedException {
    LocalDate night = night();
    Optional<String> named = named();
    OpenJournal before = open();
    Optional<Spoken> spoken =
        Optional.ofNullable(say).map(line -> SpokenLine.read(line, before.journal(), night));
    Tonight tonight = new Tonight(before.journal(), night, now(), named, spoken);
    Written written = write(tonight, before.output());
    around.out().println(OneLine.of(shown(before, written.file())));
    // Before what is told on the other stream, which ends with what matters before bed.
    around.out().flush();
    if (isNightBefore()) {
      tell(List.of("before 4 in the morning: this is the night of " + Saying.day(night)));
    }
    tellBefore(tonight.before());
    spoken.ifPresent(said -> tellSaid(SpokenWords.told(said, before.journal().project())));
    if (photos != null) {
      tellPhotos(written, tonight.window());
    }
    new EntryEditor(around).open(written.file());
    OpenJournal after = open();
    tellProblems(before, after);
    tell(BeforeBed.of(after.journal(), after.problems(), now()).lines().toList());
    return ExitCode.DONE;
  }

  private LocalDate night() {
    if (date != null) {
      try {
        return Dates.readDay(date);
      } catch (Unreadable e) {
        throw Refusal.wrongValue("--date", date, e);
      }
    }
    return options.givenToday().orElseGet(this::byTheClock);
  }

  private LocalDate byTheClock() {
    return Night.at(LocalDateTime.now(around.clock()));
  }

  private boolean isNightBefore() {
    return date == null
        && options.givenToday().isEmpty()
        && byTheClock().isBefore(LocalDate.now(around.clock()));
  }

  private Optional<String> named() {
    if (title != null && title.codePointCount(0, title.length()) > LONGEST_TITLE) {
      throw Refusal.wrongValue(
          "--title",
          title,
          new Unreadable(
              "is longer than " + LONGEST_TITLE + " letters", "write the rest into the text"));
    }
    return Optional.ofNullable(title).filter(words -> !words.isBlank());
  }

  /** What was said stands nowhere else yet, so where the disk fails it is told. */
  private Written write(Tonight tonight, Path output) throws IOException {
    try {
      return writeAll(tonight, output);
    } catch (IOException e) {
      if (say != null && !say.isBlank()) {
        around.err().println("not written: " + OneLine.of(say));
      }
      throw e;
    }
  }

  private Written writeAll(Tonight tonight, Path output) throws IOException {
    if (photos == null) {
      return tonight.write();
    }
    try {
      return tonight.write(around.path(photos), around.clock().getZone(), output);
    } catch (Unreadable e) {
      throw Refusal.wrongValue("--photos", photos, e);
    }
  }

  private void tellSaid(List<String> lines) {
    tell(List.of(lines.isEmpty() ? "nothing was said" : "understood:"));
    tell(lines.stream().map(line -> "  " + line).toList());
  }

  private void tellPhotos(Written written, Window window) {
    int count = written.photos().size();
    tell(
        List.of(
            count == 0
                ? "no picture of this night was found"
                : Saying.counted(count, "picture", "pictures") + " in the entry's folder"));
    new LeftOutWords(written.leftOut(), window).line().ifPresent(line -> tell(List.of(line)));
  }

  private OpenJournal open() throws IOException {
    return OpenJournal.open(around, journal.folder(), options.today(around.clock()));
  }

  /** This moment, or as late on the day that stands for today. */
  private Instant now() {
    LocalTime clock = LocalTime.now(around.clock());
    return options
        .givenToday()
        .map(day -> day.atTime(clock).atZone(around.clock().getZone()).toInstant())
        .orElseGet(around.clock()::instant);
  }

  /** So that it can be opened from here. */
  private String shown(OpenJournal open, Path file) {
    Path root = open.journal().folder().root();
    Path inside = root.relativize(file);
    return journal
        .folder()
        .map(typed -> Path.of(typed).resolve(inside))
        .orElse(root.equals(around.here()) ? inside : file)
        .toString();
  }

  private void tellBefore(List<String> entries) {
    if (!entries.isEmpty()) {
      tell(
          List.of(
              "this night has "
                  + Saying.counted(entries.size(), "entry", "entries")
                  + " already: "
                  + Saying.list(entries)));
    }
  }

  /** What the entry made wrong; of what was wrong before only how much it is. */
  private void tellProblems(OpenJournal before, OpenJournal after) {
    List<Problem> fresh = new ArrayList<>(after.problems());
    fresh.removeAll(before.problems());
    new ProblemTeller(around, options).tell(after.only(fresh));
    if (after.errors() > 0) {
      String folder = journal.folder().map(typed -> " " + ShellWord.of(typed)).orElse("");
      around
          .err()
          .println(
              "the journal has "
                  + Saying.counted(after.errors(), "error", "errors")
                  + "; see "
                  + (after.errors() == 1 ? "it" : "them")
                  + " with: ribband check"
                  + folder);
    }
  }

  private void tell(List<String> lines) {
    if (!options.isQuiet()) {
      lines.forEach(line -> around.err().println(OneLine.of(line)));
    }
  }
}
