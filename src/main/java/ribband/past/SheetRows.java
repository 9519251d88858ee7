package ribband.past;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import ribband.measure.Saying;
import ribband.problem.Place;
import ribband.problem.Problems;

/**
 * The cells of a file of separated values (RFC 4180, and what spreadsheets write beside it).
 *
 * @param rows all of them, empty ones too, so that they are numbered as spreadsheets number them
 */
record SheetRows(Separator separator, List<List<String>> rows) {
  static final int MOST_ROWS = 50_000;
  private static final int LOOKED_AT = 8 << 10;

  SheetRows {
    rows = rows.stream().map(List::copyOf).toList();
  }

  /** What parts the cells of a row. */
  enum Separator {
    COMMA(',', "commas"),
    SEMICOLON(';', "semicolons"),
    TAB('\t', "tabs");

    private final char sign;
    private final String plural;

    Separator(char sign, String plural) {
      this.sign = sign;
      this.plural = plural;
    }

    String plural() {
      return plural;
    }
  }

  /** Parts a text into cells; empty where it cannot be, which has been told. */
  static Optional<SheetRows> of(String file, String text, Asked asked, Problems problems) {
    Optional<Separator> named = named(text);
    String cells = named.isPresent() ? text.replaceFirst("^[^\r\n]*(?:\r\n|\r|\n|$)", "") : text;
    Separator separator = named.orElseGet(() -> likeliest(cells, asked));
    List<List<String>> rows = new ArrayList<>();
    try {
      read(cells, format(separator), rows);
    } catch (UncheckedIOException e) {
      problems.error(
          new Place(file, rows.size() + 1, 0),
          "a quoted cell of row "
              + (rows.size() + 1)
              + " does not end where the cell does; close it, and write a quote mark in it twice");
      return Optional.empty();
    }
    if (rows.size() > MOST_ROWS) {
      problems.error(
          Place.of(file),
          "the sheet has more than "
              + Saying.count(MOST_ROWS)
              + " rows; split it, and bring the parts one by one");
      return Optional.empty();
    }
    return Optional.of(new SheetRows(separator, rows));
  }

  /** Some spreadsheets write and read a first line {@code sep=;}, which is no row. */
  private static Optional<Separator> named(String text) {
    for (Separator separator : Separator.values()) {
      String line = "sep=" + separator.sign;
      boolean begins = text.regionMatches(true, 0, line, 0, line.length());
      if (begins && (text.length() == line.length() || text.charAt(line.length()) < ' ')) {
        return Optional.of(separator);
      }
    }
    return Optional.empty();
  }

  /** The one under which most columns have a name we know, else the one that parts most cells. */
  private static Separator likeliest(String text, Asked asked) {
    String top = text.substring(0, Math.min(text.length(), LOOKED_AT));
    return List.of(Separator.values()).stream()
        .max(
            Comparator.comparingInt((Separator s) -> named(loosely(top, s), asked))
                .thenComparingInt(s -> parted(loosely(top, s)))
                .thenComparing(Comparator.reverseOrder()))
        .orElseThrow();
  }

  private static int named(List<List<String>> rows, Asked asked) {
    return Header.find(rows, asked).map(Header::known).orElse(0);
  }

  private static int parted(List<List<String>> rows) {
    return rows.stream().filter(row -> !isBlank(row)).findFirst().map(List::size).orElse(0);
  }

  static boolean isBlank(List<String> row) {
    return row.stream().allMatch(String::isBlank);
  }

  /** The cells of a text that may break off anywhere. */
  private static List<List<String>> loosely(String text, Separator separator) {
    List<List<String>> rows = new ArrayList<>();
    CSVFormat format = format(separator).builder().setLenientEof(true).setTrailingData(true).get();
    read(text, format, rows);
    return rows;
  }

  /** Where a text that breaks off does so: its last row and the column of its last cell. */
  static Place end(String file, String text) {
    List<List<String>> rows = loosely(text, likeliest(text, Asked.NOTHING));
    boolean fresh = rows.isEmpty() || text.endsWith("\n") || text.endsWith("\r");
    return fresh
        ? new Place(file, rows.size() + 1, 1)
        : new Place(file, rows.size(), rows.get(rows.size() - 1).size());
  }

  private static CSVFormat format(Separator separator) {
    return CSVFormat.DEFAULT
        .builder()
        .setDelimiter(separator.sign)
        .setIgnoreEmptyLines(false)
        .get();
  }

  private static void read(String text, CSVFormat format, List<List<String>> rows) {
    try (CSVParser parser =
        CSVParser.builder().setReader(new StringReader(text)).setFormat(format).get()) {
      for (CSVRecord row : parser) {
        rows.add(row.toList());
        if (rows.size() > MOST_ROWS) {
          return;
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
