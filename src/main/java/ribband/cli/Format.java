package ribband.cli;

import java.io.IOException;
import ribband.ledger.Sheet;
import ribband.ledger.SheetCsv;

/** How a listing is printed. */
enum Format {
  TABLE,
  CSV,
  JSON;

  static final String NAMES = "table (for reading), csv or json (for other programs)";

  static Format read(String text) {
    return FormatWord.read(text, values());
  }

  void print(Sheet sheet, Appendable out) throws IOException {
    switch (this) {
      case TABLE -> SheetTable.write(sheet, out);
      case CSV -> SheetCsv.write(sheet, out);
      case JSON -> SheetJson.write(sheet, out);
    }
  }
}
