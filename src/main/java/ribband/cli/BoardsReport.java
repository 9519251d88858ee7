package ribband.cli;

import java.io.PrintWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.apache.commons.numbers.fraction.BigFraction;
import ribband.ledger.Cell;
import ribband.ledger.Cell.Blank;
import ribband.ledger.Cell.Count;
import ribband.ledger.Cell.Measured;
import ribband.ledger.Cell.Words;
import ribband.ledger.Sheet;
import ribband.measure.Quantity;
import ribband.measure.Saying;
import ribband.measure.ShopTalk;
import ribband.measure.Unit;
import ribband.measure.Units;
import ribband.problem.Paragraph;
import ribband.shop.Board;
import ribband.shop.Caution;
import ribband.shop.Ripping.Edges;
import ribband.shop.StripPlan;
import ribband.shop.StripPlan.Strip;

/** Tells a board and the strips from it: to the builder, or to another program. */
record BoardsReport(Board board, ShopTalk shop, Optional<Ripped> ripped) {
  private static final int LABEL = 10;
  private static final BigFraction HUNDRED = BigFraction.of(100);

  private static final List<String> COLUMNS =
      List.of(
          "board_feet_each",
          "strips_per_board",
          "length_unit",
          "width_left",
          "strips_per_length",
          "lengths_per_strip",
          "length_left",
          "lost_share",
          "sawdust_share",
          "strips_needed",
          "boards",
          "board_feet");

  /**
   * A board ripped to strips.
   *
   * @param slope of its scarfs, and whether that is taken for granted
   * @param strips how many are needed, spare ones too; empty where nobody says
   */
  record Ripped(Strip strip, StripPlan plan, String slope, OptionalLong strips) {
    OptionalLong boards() {
      return strips.isPresent()
          ? OptionalLong.of(plan.boardsFor(strips.getAsLong()))
          : OptionalLong.empty();
    }
  }

  BoardsReport(Board board, ShopTalk shop) {
    this(board, shop, Optional.empty());
  }

  BoardsReport ripped(Ripped strips) {
    return new BoardsReport(board, shop, Optional.of(strips));
  }

  void tell(PrintWriter out) {
    out.print(Paragraph.of("", 0, title()));
    out.println();
    ripped.ifPresent(r -> strips(r, out));
    row(out, "board feet", boardFeet());
    board
        .billedAsInch()
        .ifPresent(
            billed ->
                row(
                    out,
                    "",
                    Saying.quantity(billed)
                        + " each where stock under an inch is billed as an inch, as is usual"
                        + " (common practice)"));
    if (ripped.isPresent()) {
      out.println();
      out.print(Paragraph.of("", 0, Caution.SAW.words()));
      out.print(Paragraph.of("", 0, Caution.DUST.words()));
      out.print(Paragraph.of("", 0, Caution.GOVERNS));
    }
  }

  private String title() {
    String size =
        board.thickness().map(t -> shop.written(t) + " x ").orElse("")
            + shop.written(board.width())
            + " x "
            + shop.written(board.length());
    return "Boards of "
        + size
        + ripped
            .map(
                r ->
                    ", ripped to strips "
                        + shop.written(r.strip().width())
                        + " wide with a saw that takes "
                        + shop.written(r.strip().kerf())
                        + (r.strip().edges() == Edges.TRIMMED ? ", both edges trimmed" : ""))
            .orElse("");
  }

  private void strips(Ripped r, PrintWriter out) {
    StripPlan plan = r.plan();
    String where = r.strip().length().isPresent() ? " across the width" : " from each board";
    row(out, "strips", Saying.count(plan.across().strips()) + where);
    row(out, "left over", width(plan.across().left()));
    r.strip().length().ifPresent(length -> row(out, "lengthwise", lengthwise(plan, length, r)));
    row(out, "lost", percent(plan.lost()) + " of the board, " + percent(plan.toSaw()) + " as dust");
    r.boards()
        .ifPresent(
            boards ->
                row(
                    out,
                    "to buy",
                    Saying.counted(boards, "board", "boards")
                        + " for "
                        + Saying.counted(r.strips().getAsLong(), "strip", "strips")));
  }

  /** To a hundredth where eighths do not tell it: the saw is set by such. */
  private String width(Quantity left) {
    return left.isZero() ? "nothing" : Saying.quantity(left.in(unit())) + " of the width";
  }

  private Unit unit() {
    return Unit.of(shop.units() == Units.US ? "in" : "mm");
  }

  private String left(Quantity left, String where) {
    return left.isZero() ? "nothing" : shop.reckoned(left) + " " + where;
  }

  private String lengthwise(StripPlan plan, Quantity length, Ripped r) {
    String one = shop.written(length);
    if (plan.joined() > 1) {
      return "one strip of "
          + one
          + " is scarfed from "
          + plan.joined()
          + " lengths; each scarf takes "
          + shop.reckoned(r.strip().scarf())
          + ", "
          + r.slope()
          + "; "
          + left(plan.endLeft(), "of the last length")
          + " left";
    }
    return Saying.counted(plan.cut(), "strip", "strips")
        + " of "
        + one
        + " from each length; "
        + left(plan.endLeft(), "of it")
        + " left";
  }

  private String boardFeet() {
    Quantity each = board.boardFeet();
    String thickness = board.thickness().isPresent() ? "" : ", taken as 1 in thick";
    Optional<Quantity> all = all();
    return said(each)
        + (all.isPresent() ? " each" : "")
        + thickness
        + all.map(a -> "; " + said(a) + " together").orElse("");
  }

  private Optional<Quantity> all() {
    return ripped
        .filter(r -> r.boards().isPresent())
        .map(r -> board.boardFeet().times(BigFraction.of(r.boards().getAsLong())));
  }

  /** A metric yard sells by the cubic metre. */
  private String said(Quantity boardFeet) {
    String feet = Saying.quantity(boardFeet);
    if (shop.units() == Units.US) {
      return feet;
    }
    BigDecimal cubicMetres =
        boardFeet
            .number()
            .multiply(Unit.of("in3").size().multiply(144))
            .divide(1_000_000)
            .bigDecimalValue(4, RoundingMode.HALF_UP);
    return feet + " (" + cubicMetres.toPlainString() + " m³)";
  }

  private static String percent(BigFraction share) {
    return share.multiply(HUNDRED).bigDecimalValue(0, RoundingMode.HALF_UP).toPlainString() + "%";
  }

  private static void row(PrintWriter out, String label, String words) {
    String head = "  " + label + " ".repeat(LABEL - label.length()) + "  ";
    out.print(Paragraph.of(head, head.length(), words));
  }

  /** One row; lengths in inches or millimetres, shares as parts of 1. */
  Sheet sheet() {
    Unit unit = unit();
    List<Cell> row = new ArrayList<>();
    row.add(number(Optional.of(board.boardFeet().number())));
    row.add(count(ripped.map(r -> (long) r.plan().across().strips())));
    row.add(Words.of(unit.name()));
    row.add(number(ripped.map(r -> r.plan().across().left().in(unit).number())));
    row.add(count(ripped.map(r -> (long) r.plan().cut())));
    row.add(count(ripped.map(r -> (long) r.plan().joined())));
    row.add(number(ripped.map(r -> r.plan().endLeft().in(unit).number())));
    row.add(number(ripped.map(r -> r.plan().lost())));
    row.add(number(ripped.map(r -> r.plan().toSaw())));
    row.add(count(ripped.flatMap(r -> boxed(r.strips()))));
    row.add(count(ripped.flatMap(r -> boxed(r.boards()))));
    row.add(number(all().map(Quantity::number)));
    return Sheet.of(COLUMNS, List.of(row));
  }

  private static Optional<Long> boxed(OptionalLong number) {
    return number.isPresent() ? Optional.of(number.getAsLong()) : Optional.empty();
  }

  private static Cell count(Optional<Long> number) {
    return number.<Cell>map(Count::new).orElse(new Blank());
  }

  private static Cell number(Optional<BigFraction> number) {
    return number
        .map(n -> new Quantity(n, Unit.PIECES))
        .<Cell>map(q -> new Measured(q, Saying.quantity(q)))
        .orElse(new Blank());
  }
}
