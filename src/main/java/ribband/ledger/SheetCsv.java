package ribband.ledger;

import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;

/** Writes a sheet as comma-separated values of RFC 4180, lines ended by LF. */
public final class SheetCsv {
  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT.builder().setRecordSeparator("\n").get();

  /** What makes a spreadsheet take words for a formula. */
  private static final Pattern FORMULA = Pattern.compile("[=+\\-@\\t\\r].*", Pattern.DOTALL);

  private SheetCsv() {}

  public static void write(Sheet sheet, Appendable out) throws IOException {
    FORMAT.printRecord(out, sheet.columns().toArray());
    for (List<Cell> row : sheet.rows()) {
      FORMAT.printRecord(out, row.stream().map(SheetCsv::guarded).toArray());
    }
  }

  /** Only words are guarded: a refund stays a number. */
  private static String guarded(Cell cell) {
    boolean formula = !cell.isNumber() && FORMULA.matcher(cell.data()).matches();
    return formula ? "'" + cell.data() : cell.data();
  }
}
