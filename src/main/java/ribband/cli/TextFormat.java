package ribband.cli;

import ribband.site.Templates;
import ribband.telling.RecapText;

/** What a text to be pasted is written as. */
enum TextFormat {
  PLAIN,
  MARKDOWN,
  HTML;

  static final String NAMES = "plain, markdown or html (to be pasted into a page)";

  static TextFormat read(String text) {
    return FormatWord.read(text, values());
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
