package ribband.cli;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import ribband.ledger.Sheet;
import ribband.ledger.SheetCsv;
import ribband.measure.Unreadable;
import ribband.problem.Nearest;

/** How a listing is printed. */
enum Format {
  TABLE,
  CSV,
  JSON;

  static final String NAMES = "table (for reading), csv or json (for other programs)";

  static Format read(String text) {
    List<String> words = Arrays.stream(values()).map(Format::word).toList();
    int which = words.indexOf(text.strip().toLowerCase(Locale.ROOT));
    if (which < 0) {
      throw Refusal.wrongValue(
          "--format", text, new Unreadable("is no format", Nearest.hint(text, words, "")));
    }
    return values()[which];
  }

  private String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  void print(Sheet sheet, Appendable out) throws IOException {
    switch (this) {
      case TABLE -> SheetTable.write(sheet, out);
      case CSV -> SheetCsv.write(sheet, out);
      case JSON -> SheetJson.write(sheet, out);
    }
  }
}
