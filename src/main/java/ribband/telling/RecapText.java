package ribband.telling;

import java.util.List;
import ribband.recap.Recap;
import ribband.site.Templates;

/** Writes a month or a year as text to be pasted: under a video, into a post, into a page. */
public final class RecapText {
  private final RecapFacts facts;

  /**
   * The text of a recap.
   *
   * @param next what comes next, a line each; may be empty
   */
  public RecapText(Recap recap, List<String> next) {
    this.facts = RecapFacts.of(recap, next);
  }

  /** Short lines without any markup, each ended by LF. */
  public String plain() {
    StringBuilder text = new StringBuilder();
    text.append(facts.heading()).append("\n\n").append(facts.summary()).append('\n');
    for (RecapFacts.Block block : facts.blocks()) {
      text.append('\n');
      if (!block.title().isEmpty()) {
        text.append(block.title()).append('\n');
      }
      block.lines().forEach(line -> text.append(line).append('\n'));
    }
    return text.toString();
  }

  /** Markdown (CommonMark) with headings and lists. */
  public String markdown() {
    StringBuilder text = new StringBuilder();
    text.append("## ").append(MarkdownWords.of(facts.heading())).append("\n\n");
    text.append(MarkdownWords.of(facts.summary())).append('\n');
    for (RecapFacts.Block block : facts.blocks()) {
      text.append('\n');
      if (!block.title().isEmpty()) {
        text.append("### ").append(block.title()).append("\n\n");
      }
      block.lines().forEach(line -> text.append("- ").append(MarkdownWords.of(line)).append('\n'));
    }
    return text.toString();
  }

  /** HTML that can stand in any page, headings of the second and third level in it. */
  public String html(Templates templates) {
    return templates.fragment("recap", facts);
  }

  /** The same without its heading, for a page or a feed that has one. */
  public String htmlBody(Templates templates) {
    return templates.fragment("recap", facts.withoutHeading());
  }
}
