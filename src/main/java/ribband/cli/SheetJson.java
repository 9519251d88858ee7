package ribband.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter.NopIndenter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.core.util.Separators.Spacing;
import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import ribband.ledger.Cell;
import ribband.ledger.Sheet;

/** Writes a sheet as a JSON array of objects, one a line. */
final class SheetJson {
  private static final JsonFactory JSON = new JsonFactory();

  private SheetJson() {}

  static void write(Sheet sheet, Appendable out) throws IOException {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = JSON.createGenerator(text)) {
      json.setPrettyPrinter(oneObjectALine());
      json.writeStartArray();
      for (List<Cell> row : sheet.rows()) {
        json.writeStartObject();
        for (int i = 0; i < row.size(); i++) {
          json.writeFieldName(sheet.columns().get(i));
          write(row.get(i), json);
        }
        json.writeEndObject();
      }
      json.writeEndArray();
    }
    out.append(text.toString()).append('\n');
  }

  /** Numbers keep their decimals as they are: {@code 88.20}. */
  private static void write(Cell cell, JsonGenerator json) throws IOException {
    if (cell instanceof Cell.Blank) {
      json.writeNull();
    } else if (cell.isNumber()) {
      json.writeNumber(cell.data());
    } else {
      json.writeString(cell.data());
    }
  }

  private static DefaultPrettyPrinter oneObjectALine() {
    Separators separators =
        Separators.createDefaultInstance()
            .withObjectFieldValueSpacing(Spacing.AFTER)
            .withObjectEntrySpacing(Spacing.AFTER)
            .withArrayEmptySeparator("");
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter(separators);
    printer.indentArraysWith(new DefaultIndenter("  ", "\n"));
    printer.indentObjectsWith(NopIndenter.instance);
    return printer;
  }
}
