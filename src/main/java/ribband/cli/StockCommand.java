package ribband.cli;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import ribband.journal.Journal;
import ribband.measure.Currency;
import ribband.measure.Saying;
import ribband.measure.ShopTalk;
import ribband.measure.Unreadable;
import ribband.problem.Nearest;
import ribband.problem.OneLine;
import ribband.stock.Shelf;
import ribband.stock.Stock;
import ribband.stock.Stock.Told;
import ribband.stock.StockData;
import ribband.stock.StockList;

/** Tells what is on the shelf, and what to order. */
@Command(
    name = "stock",
    header = "Tell what is on the shelf, what is still needed and when to order it",
    description =
        "Bought less used, valued by moving weighted average; a count of the shelf (left) starts the"
            + " figure again. What is not there yet is on order. What is needed follows from the"
            + " glue area of the pieces not yet made, at your own measured spread once five nights"
            + " have measured it.",
    footer = {
      "  ribband stock                                  the shelf, and what to order",
      "  ribband stock --material epoxy --show moves    all that came and went",
      "  ribband stock --show kits                      how far each purchase went",
      "  ribband stock --show spreads                   your own spread, night by night",
      "  ribband stock --format csv > stock.csv         for a spreadsheet"
    })
final class StockCommand implements Callable<Integer> {
  private final Surroundings around;

  @Mixin private JournalArgument journal;

  @Option(
      names = "--show",
      paramLabel = "WHAT",
      defaultValue = "shelf",
      description = "shelf (if you name none), moves, kits or spreads")
  private String show;

  @Option(names = "--material", paramLabel = "NAME", description = "this material alone")
  private String material;

  @Mixin private FormatOption format;
  @Mixin private Common options;

  StockCommand(Surroundings around) {
    this.around = around;
  }

  @Override
  public Integer call() throws IOException, InterruptedException {
    Format how = format.read();
    StockList list = list();
    LocalDate today = options.today(around.clock());
    Journal read = SoundJournal.read(around, journal, options);
    Stock stock = Stock.of(read, today, Told.TO_THE_BUILDER);
    List<Shelf> shelves = material == null ? stock.shelves() : List.of(one(stock));
    Currency currency = read.project().currency();
    if (how != Format.TABLE) {
      how.print(StockData.of(list, shelves, currency), around.out());
      return ExitCode.DONE;
    }
    around
        .out()
        .println(OneLine.of(read.project().name()) + ", materials as of " + Saying.day(today));
    around.out().println();
    if (shelves.isEmpty()) {
      around.out().println("nothing yet");
    } else {
      new StockTable(
              new ShopTalk(read.project().units()),
              Optional.of(currency).filter(c -> !c.equals(Currency.NONE)),
              today,
              around.out())
          .tell(list, shelves);
    }
    return ExitCode.DONE;
  }

  private StockList list() {
    try {
      return StockList.read(show);
    } catch (Unreadable e) {
      throw Refusal.wrongValue("--show", show, e);
    }
  }

  private Shelf one(Stock stock) {
    return stock
        .shelf(material)
        .orElseThrow(
            () ->
                Refusal.wrongValue(
                    "--material",
                    material,
                    new Unreadable(
                        "is not among the materials",
                        Nearest.hint(
                            material,
                            stock.shelves().stream().map(Shelf::material).toList(),
                            "none is written yet"))));
  }
}
