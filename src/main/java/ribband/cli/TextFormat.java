package ribband.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import ribband.measure.Unreadable;
import ribband.problem.Nearest;
import ribband.site.Templates;
import ribband.telling.RecapText;

/** What a text to be pasted is written as. */
enum TextFormat {
  PLAIN,
  MARKDOWN,
  HTML;

  static final String NAMES = "plain, markdown or html (to be pasted into a page)";

  static TextFormat read(String text) {
    List<String> words = Arrays.stream(values()).map(TextFormat::word).toList();
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

  /** The text, its last line ended. */
  String of(RecapText text) {
    return switch (this) {
      case PLAIN -> text.plain();
      case MARKDOWN -> text.markdown();
      case HTML -> text.html(new Templates());
    };
  }
}
