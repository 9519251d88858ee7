package ribband.preview;

import java.nio.charset.StandardCharsets;
import java.util.List;
import ribband.measure.Saying;
import ribband.site.Frame;
import ribband.site.Templates;

/** The pages and the box that only the preview has, drawn in the site's own look. */
final class PreviewPages {
  /** More are for the terminal. */
  private static final int MOST_TOLD = 20;

  private static final String SCRIPT = text("preview/head.html");

  /** The script stands before this, which is how its own file ends. */
  private static final String BEFORE = SCRIPT.substring(SCRIPT.lastIndexOf('\n') + 1);

  private final Templates templates = new Templates();
  private final String journal;
  private final String release;

  /**
   * @param journal what the journal's folder is called
   * @param release the tool and its version
   */
  PreviewPages(String journal, String release) {
    this.journal = journal;
    this.release = release;
  }

  /**
   * What the templates are given.
   *
   * @param heading how many there are; empty where there are none
   * @param below what that means for the pages
   * @param more how many are not listed; 0 where all are
   */
  record Box(
      String site, String mark, String heading, String below, List<Trouble> troubles, int more) {
    static Box of(Edition edition) {
      List<Trouble> all = edition.troubles();
      long warnings = all.stream().filter(Trouble::isWarning).count();
      int listed = Math.min(MOST_TOLD, all.size());
      return new Box(
          edition.site(),
          edition.mark(),
          all.isEmpty()
              ? ""
              : warnings == all.size()
                  ? Saying.counted(warnings, "warning", "warnings")
                  : Saying.counted(all.size(), "problem", "problems"),
          !Trouble.holdUp(all)
              ? ""
              : edition.isPublished()
                  ? "The pages stay as they were until all is mended."
                  : "The site comes here as soon as all is mended.",
          all.subList(0, listed),
          all.size() - listed);
    }
  }

  /** What a page asks for while it is open. */
  byte[] box(Edition edition) {
    return templates.draw("preview/box", frame("", ""), Box.of(edition));
  }

  /** Stands for every page until there is a site. */
  byte[] waiting(Edition edition) {
    return page(edition, "preview/waiting", "Not yet published", "/");
  }

  /** Stands for a page that is not there. */
  byte[] missing(Edition edition) {
    return page(edition, "preview/missing", "No such page", "/index.html");
  }

  private byte[] page(Edition edition, String template, String title, String first) {
    return withScript(templates.draw(template, frame(title, first), Box.of(edition)), edition);
  }

  private Frame frame(String title, String first) {
    return new Frame(
        journal,
        "",
        title,
        title,
        title,
        "/",
        "",
        "",
        List.of(new Frame.Nav("Boat", first, false)),
        release,
        "",
        List.of());
  }

  /** A page with the preview's script and style in its head; a page without a head as it is. */
  static byte[] withScript(byte[] page, Edition edition) {
    String text = new String(page, StandardCharsets.UTF_8);
    int at = text.indexOf(BEFORE);
    if (at < 0) {
      return page;
    }
    String script = SCRIPT.replace("EDITION", edition.site());
    return (text.substring(0, at) + script + text.substring(at + BEFORE.length()))
        .getBytes(StandardCharsets.UTF_8);
  }

  private static String text(String asset) {
    return new String(Templates.asset(asset), StandardCharsets.UTF_8).strip();
  }
}
