package ribband.cli;

import java.io.PrintWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
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

/** Tells a board and the strips from it to the builder. */
record BoardsTable(Board board, Optional<RippedBoard> ripped, ShopTalk shop) {
  private static final int LABEL = 10;
  private static final BigFraction HUNDRED = BigFraction.of(100);

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

  private void strips(RippedBoard r, PrintWriter out) {
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

  private String lengthwise(StripPlan plan, Quantity length, RippedBoard r) {
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
    Optional<Quantity> all = ripped.flatMap(r -> r.boardFeet(board));
    return said(each)
        + (all.isPresent() ? " each" : "")
        + thickness
        + all.map(a -> "; " + said(a) + " together").orElse("");
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
}
