package ribband.cli;

import java.io.IOException;
import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import ribband.journal.Journal;
import ribband.ledger.Ledger;
import ribband.measure.Slug;
import ribband.postcard.Card;
import ribband.recap.BestPicture;
import ribband.recap.Recap;
import ribband.recap.Recaps;
import ribband.telling.RecapText;

/** Tells a month or a year as text. */
@Command(
    name = "recap",
    header = "Tell a month or a year, to be pasted under a video or a post",
    description =
        "Hours and how they rank, where they went, money, pieces, the longest night and what comes"
            + " next. What the journal hides stays hidden: with show money: false no amount is told,"
            + " and of a private entry its figures alone.",
    footer = {
      "  ribband recap                              the last full month",
      "  ribband recap 2026-03                      one month",
      "  ribband recap 2026-03 --format markdown    for a post",
      "  ribband recap --year 2026                  a whole year",
      "  ribband recap --card --into ~/for-posts    with two cards, as PNG files"
    })
final class RecapCommand implements Callable<Integer> {
  private final Surroundings around;

  @Mixin private PeriodOptions period;

  @Option(
      names = "--format",
      paramLabel = "HOW",
      defaultValue = "plain",
      order = 80,
      description = TextFormat.NAMES)
  private String format;

  @Mixin private CardOptions cards;
  @Mixin private Common options;

  RecapCommand(Surroundings around) {
    this.around = around;
  }

  @Override
  public Integer call() throws IOException, InterruptedException {
    TextFormat how = TextFormat.read(format);
    PeriodOptions.Asked asked = period.read(around);
    LocalDate today = options.today(around.clock());
    boolean card = cards.wanted();
    Inspection inspection = SoundJournal.inspect(around, asked.folder(), options);
    Journal read = inspection.open().journal();
    Ledger ledger = Ledger.of(read);
    Recaps recaps = Recaps.of(read, ledger);
    Recap recap = new PeriodChoice(recaps, today, this::note).of(asked);
    if (card) {
      draw(
          Card.of(
              recap,
              read.project().what(),
              BestPicture.of(inspection.album(), ledger, recap.first(), recap.last())),
          stem(read, asked, recap),
          read);
    }
    around.out().print(how.of(new RecapText(recap, recaps.next(recap))));
    return ExitCode.DONE;
  }

  /** The text comes after: where a card cannot be written, nothing is told as done. */
  private void draw(Card card, String stem, Journal read) throws IOException {
    new CardFiles(around, cards.folder(around, read.folder().root()))
        .write(card, stem, read.folder())
        .forEach(file -> note("drawn: " + file));
  }

  /** {@code dunlin-2026-03}: an entry's name begins with its date, and this is none. */
  private static String stem(Journal read, PeriodOptions.Asked asked, Recap recap) {
    String boat = Slug.of(read.project().name());
    String period =
        asked.year().map(Year::toString).orElse(YearMonth.from(recap.first()).toString());
    return (boat.isEmpty() ? "boat" : boat) + "-" + period;
  }

  private void note(String line) {
    if (!options.isQuiet()) {
      around.err().println(line);
    }
  }
}
