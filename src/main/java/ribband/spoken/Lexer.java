package ribband.spoken;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ribband.measure.Name;
import ribband.spoken.Lexeme.Mark;

/** Cuts a line into words, names of the project and what stands between parts. */
final class Lexer {
  /** Around a word; a foot or an inch behind a figure belongs to it. */
  private static final String AROUND = "\"'“”„‘’«»()[]{}*_:";

  private static final Pattern UNIT_ON =
      Pattern.compile("([0-9][0-9.,:/¼½¾⅓⅔⅛⅜⅝⅞]{0,12})(h|hr|hrs|hour|hours|m|min|mins|minutes)");
  private static final List<String> SHORTENED = List.of("h", "hr", "hrs", "m", "min", "mins");

  private final String line;
  private final Vocabulary vocabulary;
  private final List<Lexeme> read = new ArrayList<>();

  private Lexer(String line, Vocabulary vocabulary) {
    this.line = line;
    this.vocabulary = vocabulary;
  }

  /**
   * The line with single blanks: what cannot be seen becomes a blank, half a character the sign for
   * one that is missing.
   */
  static String tidy(String line) {
    StringBuilder tidy = new StringBuilder(line.length());
    line.codePoints()
        .map(Lexer::visible)
        .filter(c -> c != ' ' || (tidy.length() > 0 && tidy.charAt(tidy.length() - 1) != ' '))
        .forEach(tidy::appendCodePoint);
    return tidy.toString().strip();
  }

  private static int visible(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.SPACE_SEPARATOR,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          ' ';
      case Character.SURROGATE -> 0xFFFD;
      default -> c;
    };
  }

  /**
   * @param line tidy
   */
  static List<Lexeme> read(String line, Vocabulary vocabulary) {
    Lexer lexer = new Lexer(line, vocabulary);
    int start = 0;
    while (start < line.length()) {
      int blank = line.indexOf(' ', start);
      int end = blank < 0 ? line.length() : blank;
      lexer.chunk(start, end);
      start = end + 1;
    }
    return lexer.named();
  }

  /** What stands between two blanks. */
  private void chunk(int from, int to) {
    int start = from;
    for (int i = from; i < to; i++) {
      Mark mark = mark(i, start, to);
      if (mark != Mark.WORD) {
        word(start, i);
        add(i, i + 1, line.substring(i, i + 1), mark);
        start = i + 1;
      }
    }
    word(start, to);
  }

  private Mark mark(int at, int start, int to) {
    char c = line.charAt(at);
    boolean insideFigures =
        at > 0 && isFigure(line.charAt(at - 1)) && at + 1 < to && isFigure(line.charAt(at + 1));
    return switch (c) {
      case ',' -> insideFigures ? Mark.WORD : Mark.COMMA;
      case ';', '!', '?', '…', '—' -> Mark.STOP;
      case '.' -> stop(at, start, to);
      default -> Mark.WORD;
    };
  }

  /** A stop ends a sentence at the end of a word, unless the word is shortened by it. */
  private Mark stop(int at, int start, int to) {
    if (at + 1 < to && line.charAt(at + 1) == '.') {
      return Mark.STOP;
    }
    for (int i = at + 1; i < to; i++) {
      if (",;".indexOf(line.charAt(i)) < 0 && AROUND.indexOf(line.charAt(i)) < 0) {
        return Mark.WORD;
      }
    }
    String before = Name.plain(line.substring(start, at)).replaceFirst("^[0-9]+", "");
    if (before.equals("no") || before.equals("nos")) {
      return Mark.WORD;
    }
    return SHORTENED.contains(before) ? Mark.COMMA : Mark.STOP;
  }

  private static boolean isFigure(char c) {
    return c >= '0' && c <= '9';
  }

  private void word(int from, int to) {
    int start = from;
    int end = to;
    while (start < end && AROUND.indexOf(line.charAt(start)) >= 0) {
      start++;
    }
    while (start < end && isAround(end - 1, start)) {
      end--;
    }
    if (start == end) {
      return;
    }
    String plain = Name.plain(line.substring(start, end)).replace('’', '\'');
    Matcher unit = UNIT_ON.matcher(plain);
    if (unit.matches() && plain.length() == end - start) {
      int cut = start + unit.group(1).length();
      add(start, cut, unit.group(1), Mark.WORD);
      add(cut, end, unit.group(2), Mark.WORD);
      return;
    }
    if (plain.length() > 1 && plain.charAt(0) == '#' && plain.length() == end - start) {
      add(start, start + 1, "#", Mark.WORD);
      add(start + 1, end, plain.substring(1), Mark.WORD);
      return;
    }
    add(start, end, plain, markOf(plain));
  }

  private boolean isAround(int at, int start) {
    boolean quotedWhole = at == line.length() - 1 && AROUND.indexOf(line.charAt(0)) >= 0;
    boolean footOrInch =
        !quotedWhole
            && "\"'”’".indexOf(line.charAt(at)) >= 0
            && at > start
            && isFigure(line.charAt(at - 1));
    return AROUND.indexOf(line.charAt(at)) >= 0 && !footOrInch;
  }

  private static Mark markOf(String plain) {
    return switch (plain) {
      case "and", "&" -> Mark.AND;
      case "then", "plus", "+" -> Mark.THEN;
      default -> Mark.WORD;
    };
  }

  private void add(int start, int end, String plain, Mark mark) {
    OptionalInt whole = mark == Mark.WORD ? NumberWords.read(plain) : OptionalInt.empty();
    read.add(new Lexeme(start, end, plain, mark, whole, Named.NOTHING));
  }

  /** The words read, with those that are one name or one number together made one. */
  private List<Lexeme> named() {
    List<Lexeme> named = new ArrayList<>();
    int at = 0;
    while (at < read.size()) {
      int count = nameAt(at);
      Lexeme joined = count > 0 ? joined(at, count) : numberAt(at);
      named.add(joined);
      at += Math.max(count, joined.end() > read.get(at).end() ? 2 : 1);
    }
    return named;
  }

  /** How many words from here are the longest name; 0 for none. */
  private int nameAt(int at) {
    StringBuilder key = new StringBuilder();
    int most = 0;
    for (int n = 0; n < vocabulary.longest() && at + n < read.size(); n++) {
      Lexeme next = read.get(at + n);
      if (next.mark() != Mark.WORD && (next.mark() != Mark.AND || n == 0)) {
        break;
      }
      key.append(n == 0 ? "" : "-").append(next.mark() == Mark.AND ? "and" : next.plain());
      if (!vocabulary.find(key.toString()).isNothing()) {
        most = n + 1;
      }
    }
    return most;
  }

  private Lexeme joined(int at, int count) {
    StringBuilder key = new StringBuilder();
    for (Lexeme part : read.subList(at, at + count)) {
      key.append(key.isEmpty() ? "" : "-").append(part.is("&") ? "and" : part.plain());
    }
    Named name = vocabulary.find(key.toString());
    int end = read.get(at + count - 1).end();
    return new Lexeme(
        read.get(at).start(), end, key.toString(), Mark.WORD, OptionalInt.empty(), name);
  }

  /** {@code twenty} and {@code five} are one number. */
  private Lexeme numberAt(int at) {
    Lexeme first = read.get(at);
    if (at + 1 == read.size() || first.whole().isEmpty()) {
      return first;
    }
    Lexeme second = read.get(at + 1);
    String both = first.plain() + "-" + second.plain();
    OptionalInt whole = NumberWords.read(both);
    return whole.isEmpty()
        ? first
        : new Lexeme(first.start(), second.end(), both, Mark.WORD, whole, Named.NOTHING);
  }
}
