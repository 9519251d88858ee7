package ribband.cli;

import java.io.IOException;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import ribband.measure.Dimension;
import ribband.measure.Percent;
import ribband.measure.Quantity;
import ribband.measure.Reading;
import ribband.measure.ShopTalk;
import ribband.measure.Unit;
import ribband.measure.Units;
import ribband.measure.Unreadable;
import ribband.shop.Board;
import ribband.shop.Ripping.Edges;
import ribband.shop.Slope;
import ribband.shop.StripPlan;
import ribband.shop.StripPlan.Strip;

/** Tells what comes out of a board, and how many to buy. */
@Command(
    name = "boards",
    header = "Tell board feet, strips from a board, and boards to buy",
    description = {
      "Exact, by nominal sizes. Strips longer than the board are scarfed from whole lengths. A"
          + " journal is needed for its units alone, and --units does without.",
      "",
      "Local rules and the saw's own manual govern."
    },
    footer = {
      "  ribband boards --board \"5/4 x 7 1/2 in x 11 ft\"",
      "  ribband boards --board \"6 in x 12 ft\" --strip \"1 1/2 in\" --kerf 1/8in \\",
      "          --need 22",
      "  ribband boards --board \"1 in x 6 in x 12 ft\" --strip 1/4in --kerf 1/8in \\",
      "          --need 40 --length 16ft --scarf 8:1 --thick 1/4in --spare 10%%"
    })
final class BoardsCommand implements Callable<Integer> {
  /** Thinner than any saw leaves: a tenth of a millimetre. */
  private static final Quantity THINNEST = new Quantity(BigFraction.of(1, 10), Unit.of("mm"));

  private static final Quantity LONGEST = new Quantity(BigFraction.of(100), Unit.of("m"));

  /** A usual slope of scarfs glued at home: common practice, no source. */
  private static final Slope USUAL = new Slope(8);

  private final Surroundings around;

  @Mixin private JournalArgument journal;

  @Option(
      names = "--board",
      paramLabel = "SIZE",
      order = 1,
      description =
          "width x length, with the thickness in front if you like: \"6 in x 12 ft\","
              + " \"1 in x 6 in x 12 ft\", \"5/4 x 6 in x 12 ft\" (quarters of an inch)")
  private String board;

  @Option(
      names = "--strip",
      paramLabel = "WIDTH",
      order = 2,
      description = "ripped to strips so wide: \"1 1/2 in\"")
  private String strip;

  @Option(
      names = "--kerf",
      paramLabel = "WIDTH",
      order = 3,
      description = "what a cut of the saw takes: 1/8in")
  private String kerf;

  @Option(
      names = "--trim",
      order = 4,
      description = "both edges of the board are trimmed off first")
  private boolean trim;

  @Option(names = "--need", paramLabel = "N", order = 5, description = "so many strips are needed")
  private String need;

  @Option(
      names = "--spare",
      paramLabel = "SHARE",
      order = 6,
      description = "more of them, for knots and breakage: 10%%")
  private String spare;

  @Option(
      names = "--length",
      paramLabel = "LENGTH",
      order = 7,
      description = "of one strip; the board's if not said")
  private String length;

  @Option(
      names = "--scarf",
      paramLabel = "SLOPE",
      order = 8,
      description = "of scarfs where strips are longer than boards: 12:1; 8:1 if not said")
  private String scarf;

  @Option(
      names = "--thick",
      paramLabel = "LENGTH",
      order = 9,
      description = "thickness of the strip at the scarf; the board's if not said")
  private String thick;

  @Option(
      names = "--units",
      paramLabel = "WHICH",
      order = 70,
      description = "us or metric; if not said, the journal's, else those of the board")
  private String units;

  @Mixin private FormatOption format;
  @Mixin private Common options;

  BoardsCommand(Surroundings around) {
    this.around = around;
  }

  @Override
  public Integer call() throws IOException {
    Format how = format.read();
    Wants wants = new Wants();
    Optional<OpenJournal> project = Workbench.project(around, journal, options);
    Optional<Board> from = wants.read("--board", board, Board::read);
    Units shown = Workbench.units(wants, units, project, from.map(Board::width));
    Optional<Quantity> width = wants.read("--strip", strip, sawn());
    Optional<Quantity> cut = wants.read("--kerf", kerf, Quantity.of(Dimension.LENGTH));
    Optional<Integer> count = wants.read("--need", need, Wants.whole(22));
    Optional<Percent> more = wants.read("--spare", spare, Percent::read);
    Optional<Quantity> run = wants.read("--length", length, sawn());
    Optional<Slope> slope = wants.read("--scarf", scarf, Slope::read);
    Optional<Quantity> stock = wants.read("--thick", thick, sawn());
    refuseWhatDoesNotFit(wants);
    wants.settle();
    Optional<RippedBoard> ripped =
        width.map(
            w ->
                ripped(
                    from.orElseThrow(),
                    new Strip(
                        w,
                        run,
                        cut.orElseThrow(),
                        trim ? Edges.TRIMMED : Edges.GOOD,
                        slope.orElse(USUAL).loss(stock.orElse(from.get().thick()))),
                    told(slope),
                    strips(count, more)));
    if (how == Format.TABLE) {
      new BoardsTable(from.orElseThrow(), ripped, new ShopTalk(shown)).tell(around.out());
    } else {
      how.print(BoardsData.of(from.orElseThrow(), ripped, shown), around.out());
    }
    return ExitCode.DONE;
  }

  private static Reading<Quantity> sawn() {
    return text -> {
      Quantity read = Wants.some(Dimension.LENGTH, "1 1/2 in").read(text);
      if (THINNEST.isMoreThan(read)) {
        throw new Unreadable("is thinner than any saw leaves", "write it as 1/4 in");
      }
      if (read.isMoreThan(LONGEST)) {
        throw new Unreadable("is longer than any strip", "write it as 16 ft");
      }
      return read;
    };
  }

  private void refuseWhatDoesNotFit(Wants wants) {
    if (board == null) {
      wants.refuse("nothing says which board; give its size, as --board \"6 in x 12 ft\"");
    }
    boolean isRipped =
        trim || Stream.of(kerf, need, spare, length, scarf, thick).anyMatch(o -> o != null);
    if (strip == null && isRipped) {
      wants.refuse("nothing says how wide the strips are; give --strip \"1 1/2 in\"");
    }
    if (strip != null && kerf == null) {
      wants.refuse("strips need --kerf, what a cut of the saw takes, as --kerf 1/8in");
    }
    if (spare != null && need == null) {
      wants.refuse("--spare is a share of the strips that --need counts");
    }
  }

  private RippedBoard ripped(Board from, Strip wanted, String slope, OptionalLong strips) {
    boolean isScarfed = wanted.length().filter(l -> l.isMoreThan(from.length())).isPresent();
    if (isScarfed && StripPlan.isScarfTooLong(from.length(), wanted.scarf())) {
      throw Refusal.wrongUsage(
          "a scarf would take more than half of the board's length; give the strip's own thickness"
              + " with --thick, or a steeper --scarf");
    }
    return StripPlan.of(from, wanted)
        .map(plan -> new RippedBoard(wanted, plan, slope, strips))
        .orElseThrow(
            () ->
                Refusal.wrongValue(
                    "--strip",
                    strip,
                    new Unreadable(
                        "is wider than the board" + (trim ? " when it is trimmed" : ""),
                        "no strip of that width comes from it")));
  }

  private static String told(Optional<Slope> slope) {
    return slope
        .map(s -> "at " + s.times() + ":1")
        .orElse("at " + USUAL.times() + ":1 (assumed, common practice)");
  }

  /** With the spare ones, whole ones. */
  private static OptionalLong strips(Optional<Integer> count, Optional<Percent> more) {
    if (count.isEmpty()) {
      return OptionalLong.empty();
    }
    BigFraction share = more.map(Percent::share).orElse(BigFraction.ZERO);
    return OptionalLong.of(
        BigFraction.ONE
            .add(share)
            .multiply(count.get())
            .bigDecimalValue(0, RoundingMode.CEILING)
            .longValueExact());
  }
}
