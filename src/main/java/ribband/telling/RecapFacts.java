package ribband.telling;

import java.util.ArrayList;
import java.util.List;
import ribband.measure.Saying;
import ribband.recap.Recap;
import ribband.recap.Recap.Costs;
import ribband.recap.Recap.LongestNight;
import ribband.recap.Recap.PhaseShare;
import ribband.recap.Recap.PiecesMade;

/**
 * A recap in lines, whatever they are written as.
 *
 * @param heading empty for none
 * @param summary a sentence
 * @param blocks none of them empty; the first may have no title, the others have one
 */
record RecapFacts(String heading, String summary, List<Block> blocks) {
  RecapFacts {
    blocks = List.copyOf(blocks);
  }

  /**
   * Lines about one thing.
   *
   * @param title empty for none
   */
  record Block(String title, List<String> lines) {
    Block {
      lines = List.copyOf(lines);
    }
  }

  /**
   * All that is told.
   *
   * @param next what comes next, a line each
   */
  static RecapFacts of(Recap recap, List<String> next) {
    List<Block> blocks =
        List.of(
            new Block("", inAll(recap)),
            new Block("Hours by phase", recap.phases().stream().map(RecapFacts::phase).toList()),
            new Block("Pieces", recap.pieces().stream().map(RecapFacts::pieces).toList()),
            new Block("What comes next", next));
    return new RecapFacts(
        recap.boat().isEmpty() ? recap.title() : recap.boat() + ", " + recap.title(),
        summary(recap),
        blocks.stream().filter(block -> !block.lines().isEmpty()).toList());
  }

  RecapFacts withoutHeading() {
    return new RecapFacts("", summary, blocks);
  }

  private static String summary(Recap recap) {
    return recap.isWorked()
        ? recap.inWords() + " over " + recap.nights() + ", " + recap.rank() + "."
        : "No work on the boat.";
  }

  private static List<String> inAll(Recap recap) {
    List<String> lines = new ArrayList<>();
    if (!recap.costs().toDate().isEmpty()) {
      lines.add(money(recap.costs()));
    }
    recap.longest().ifPresent(night -> lines.add(night(recap, night)));
    if (!recap.hoursToDate().equals("0")) {
      lines.add("The whole boat: " + recap.toDateInWords() + " to date");
    }
    return lines;
  }

  private static String night(Recap recap, LongestNight night) {
    return night.hours().equals(recap.inWords())
        ? "The night: " + night.day()
        : "Longest night: " + night.day() + ", " + night.hours();
  }

  private static String money(Costs costs) {
    return "Money: "
        + (costs.moved().isEmpty() ? "nothing went out" : costs.moved())
        + ", "
        + costs.toDate()
        + " to date";
  }

  /** In words: where such text is pasted, 18:40 may become a link to a moment of the video. */
  private static String phase(PhaseShare phase) {
    return phase.title()
        + ": "
        + phase.inWords()
        + (phase.isNew() ? ", its first" : ", " + phase.toDateInWords() + " to date");
  }

  private static String pieces(PiecesMade pieces) {
    return Saying.capitalised(pieces.kind()) + ": " + made(pieces);
  }

  /** {@code 2 made, 6 of 16 done}, {@code 4 made, all 16 done}, {@code all 16 made}. */
  private static String made(PiecesMade pieces) {
    boolean isWhole = pieces.done() == pieces.total();
    if (isWhole && pieces.count() == pieces.total()) {
      return all(pieces) + "made";
    }
    return Saying.count(Math.abs(pieces.count()))
        + (pieces.count() < 0 ? " scrapped, " : " made, ")
        + (isWhole
            ? all(pieces)
            : Saying.count(pieces.done()) + " of " + Saying.count(pieces.total()) + " ")
        + "done";
  }

  private static String all(PiecesMade pieces) {
    return switch (pieces.total()) {
      case 1 -> "";
      case 2 -> "both ";
      default -> "all " + Saying.count(pieces.total()) + " ";
    };
  }
}
