package ribband.cli;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import ribband.journal.Journal;
import ribband.journal.Phase;
import ribband.ledger.By;
import ribband.ledger.Ledger;
import ribband.ledger.MoneyColumns;
import ribband.ledger.Records;
import ribband.ledger.Selection;
import ribband.ledger.Sheet;
import ribband.ledger.TallySheet;
import ribband.measure.Currency;
import ribband.measure.Name;
import ribband.measure.Saying;
import ribband.measure.Unreadable;
import ribband.problem.Nearest;
import ribband.problem.OneLine;

/** Adds the journal up. */
@Command(
    name = "tally",
    header = "Add up hours and money",
    description =
        "Exact to the second and the cent. Work carried in from before the journal stands in the"
            + " figures to date and in the phases; --from and --to leave it out and start at zero.",
    footer = {
      "  ribband tally                                every month and how it ranks",
      "  ribband tally --by phase                     hours and money beside the plan",
      "  ribband tally --from 2026-01 --to 2026-03    January through March",
      "  ribband tally --phase planking --by week     one phase, week by week",
      "  ribband tally --by record                    the best and the longest",
      "  ribband tally --format csv > months.csv      for a spreadsheet"
    })
final class TallyCommand implements Callable<Integer> {
  private final Surroundings around;

  @Mixin private JournalArgument journal;

  @Option(
      names = "--by",
      paramLabel = "WHAT",
      defaultValue = "month",
      description = "a row for each month (if you name none), year, phase, week, entry or record")
  private String by;

  @Option(
      names = "--from",
      paramLabel = "DATE",
      description = "begin with this day, month or year: 2026-03-14, 2026-03 or 2026")
  private String from;

  @Option(names = "--to", paramLabel = "DATE", description = "end with it, the whole of it counted")
  private String to;

  @Option(names = "--phase", paramLabel = "ID", description = "count this phase alone")
  private String phase;

  @Mixin private FormatOption format;
  @Mixin private Common options;

  TallyCommand(Surroundings around) {
    this.around = around;
  }

  @Override
  public Integer call() throws IOException, InterruptedException {
    Format how = format.read();
    By rows = rows();
    Optional<LocalDate> first =
        Optional.ofNullable(from).map(d -> DayRange.read("--from", d).first());
    Optional<LocalDate> last = Optional.ofNullable(to).map(d -> DayRange.read("--to", d).last());
    if (first.isPresent() && last.isPresent() && first.get().isAfter(last.get())) {
      throw Refusal.wrongUsage("--from " + from + " is later than --to " + to + "; swap them");
    }
    Journal read = SoundJournal.read(around, journal, options);
    Optional<Phase> one = Optional.ofNullable(phase).map(id -> phase(read, id));
    Selection selection = new Selection(first, last, one.map(Phase::id));
    Ledger ledger = Ledger.of(read, selection);
    print(read, ledger, selection, one, rows, how);
    return ExitCode.DONE;
  }

  private By rows() {
    try {
      return By.read(by);
    } catch (Unreadable e) {
      throw Refusal.wrongValue("--by", by, e);
    }
  }

  private static Phase phase(Journal journal, String typed) {
    List<Phase> phases = new ArrayList<>(journal.phases());
    phases.add(Phase.UNSORTED);
    return phases.stream()
        .filter(known -> Name.fold(known.id()).equals(Name.fold(typed)))
        .findFirst()
        .orElseThrow(
            () ->
                Refusal.wrongValue(
                    "--phase",
                    typed,
                    new Unreadable(
                        "is not among the phases",
                        Nearest.hint(typed, phases.stream().map(Phase::id).toList(), ""))));
  }

  private void print(
      Journal journal, Ledger ledger, Selection selection, Optional<Phase> one, By rows, Format how)
      throws IOException {
    Currency currency = journal.project().currency();
    if (how != Format.TABLE) {
      how.print(TallySheet.of(ledger, currency, rows, MoneyColumns.SHOWN), around.out());
      return;
    }
    around.out().println(title(journal, selection, one, rows));
    around.out().println();
    if (!table(ledger, currency, rows, how)) {
      around.out().println("nothing yet");
    }
  }

  /** Whether there was anything to tell. */
  private boolean table(Ledger ledger, Currency currency, By rows, Format how) throws IOException {
    if (rows == By.RECORD) {
      return RecordsTable.write(Records.of(ledger), currency, around.out());
    }
    // A person has no use for columns of money that a build without a currency cannot have.
    MoneyColumns money = currency.equals(Currency.NONE) ? MoneyColumns.HIDDEN : MoneyColumns.SHOWN;
    Sheet sheet = TallySheet.of(ledger, currency, rows, money);
    if (!sheet.rows().isEmpty()) {
      how.print(sheet, around.out());
    }
    return !sheet.rows().isEmpty();
  }

  private static String title(Journal journal, Selection selection, Optional<Phase> one, By rows) {
    String name = OneLine.of(journal.project().name());
    StringBuilder title =
        new StringBuilder(rows == By.RECORD ? "Records of " + name : name + " by " + rows.word());
    one.ifPresent(phase -> title.append(", ").append(OneLine.of(phase.title())));
    selection.from().ifPresent(day -> title.append(", from ").append(Saying.day(day)));
    selection
        .to()
        .ifPresent(
            day ->
                title
                    .append(selection.from().isPresent() ? " through " : ", through ")
                    .append(Saying.day(day)));
    return title.toString();
  }
}
