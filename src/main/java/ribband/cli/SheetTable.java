package ribband.cli;

import java.io.IOException;
import java.lang.Character.UnicodeScript;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import ribband.ledger.Cell;
import ribband.ledger.Sheet;
import ribband.problem.OneLine;

/** Writes a sheet for a terminal 80 columns wide: names to the left, figures to the right. */
final class SheetTable {
  private static final int WIDEST = 80;
  private static final int SHORTEST_NAME = 12;
  private static final String GAP = "  ";

  /** Periods, which are told apart by their whole names. */
  private static final Set<String> NEVER_CUT = Set.of("month", "week", "year");

  private static final Set<UnicodeScript> WIDE =
      EnumSet.of(
          UnicodeScript.HAN, UnicodeScript.HANGUL, UnicodeScript.HIRAGANA, UnicodeScript.KATAKANA);

  private final Appendable out;
  private final List<Integer> widths;

  private SheetTable(Appendable out, List<Integer> widths) {
    this.out = out;
    this.widths = widths;
  }

  static void write(Sheet sheet, Appendable out) throws IOException {
    List<String> upper = sheet.columns().stream().map(SheetTable::upperHead).toList();
    List<String> lower = sheet.columns().stream().map(SheetTable::lowerHead).toList();
    List<List<String>> opening = sheet.opening().stream().map(SheetTable::said).toList();
    List<List<String>> rows = sheet.rows().stream().map(SheetTable::said).toList();
    List<List<String>> total = sheet.total().stream().map(SheetTable::said).toList();
    List<List<String>> all = new ArrayList<>(List.of(upper, lower));
    all.addAll(opening);
    all.addAll(rows);
    all.addAll(total);
    boolean isCut = !NEVER_CUT.contains(sheet.columns().get(0));
    SheetTable table = new SheetTable(out, isCut ? cut(widths(all)) : widths(all));
    if (upper.stream().anyMatch(head -> !head.isEmpty())) {
      table.line(upper);
    }
    table.line(lower);
    table.rule();
    table.lines(opening);
    table.lines(rows);
    if (!total.isEmpty()) {
      table.rule();
      table.lines(total);
    }
  }

  /** {@code hours_to_date} stands as "hours" over "to date". */
  private static String upperHead(String column) {
    int cut = column.indexOf('_');
    return cut < 0 ? "" : column.substring(0, cut);
  }

  private static String lowerHead(String column) {
    return column.substring(column.indexOf('_') + 1).replace('_', ' ');
  }

  private static List<String> said(List<Cell> row) {
    return row.stream().map(cell -> OneLine.of(cell.said())).toList();
  }

  private static List<Integer> widths(List<List<String>> lines) {
    List<Integer> widths = new ArrayList<>();
    for (int i = 0; i < lines.get(0).size(); i++) {
      int column = i;
      widths.add(lines.stream().mapToInt(line -> width(line.get(column))).max().orElse(0));
    }
    return widths;
  }

  /** The names give way where a line would be too long for the screen. */
  private static List<Integer> cut(List<Integer> widths) {
    List<Integer> cut = new ArrayList<>(widths);
    int over = sum(widths) - WIDEST;
    if (over > 0) {
      cut.set(0, Math.min(cut.get(0), Math.max(SHORTEST_NAME, cut.get(0) - over)));
    }
    return cut;
  }

  private static int sum(List<Integer> widths) {
    int gaps = GAP.length() * (widths.size() - 1);
    return widths.stream().mapToInt(Integer::intValue).sum() + gaps;
  }

  private void lines(List<List<String>> lines) throws IOException {
    for (List<String> line : lines) {
      line(line);
    }
  }

  private void line(List<String> cells) throws IOException {
    String name = shortened(cells.get(0), widths.get(0));
    StringBuilder line = new StringBuilder(name).append(pad(name, 0));
    for (int i = 1; i < cells.size(); i++) {
      line.append(GAP).append(pad(cells.get(i), i)).append(cells.get(i));
    }
    out.append(line.toString().stripTrailing()).append('\n');
  }

  private void rule() throws IOException {
    out.append("─".repeat(sum(widths))).append('\n');
  }

  private String pad(String cell, int column) {
    return " ".repeat(widths.get(column) - width(cell));
  }

  private static String shortened(String name, int most) {
    if (width(name) <= most) {
      return name;
    }
    StringBuilder kept = new StringBuilder();
    int width = 1;
    for (int c : name.codePoints().toArray()) {
      width += width(c);
      if (width > most) {
        break;
      }
      kept.appendCodePoint(c);
    }
    return kept.toString().stripTrailing() + "…";
  }

  /** How many places of a terminal a text takes. */
  private static int width(String text) {
    return text.codePoints().map(SheetTable::width).sum();
  }

  private static int width(int c) {
    int type = Character.getType(c);
    if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK) {
      return 0;
    }
    return WIDE.contains(UnicodeScript.of(c)) ? 2 : 1;
  }
}
