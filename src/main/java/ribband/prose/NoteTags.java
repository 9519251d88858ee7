package ribband.prose;

import com.vladsch.flexmark.ext.footnotes.Footnote;
import com.vladsch.flexmark.ext.footnotes.FootnoteBlock;
import com.vladsch.flexmark.html.HtmlWriter;
import com.vladsch.flexmark.html.renderer.NodeRendererContext;

/**
 * Writes the tags of a text's footnotes: the marks in it and the notes below; for one rendering.
 */
final class NoteTags {
  private final Findings findings;

  NoteTags(Findings findings) {
    this.findings = findings;
  }

  /** A mark; as written where its note is not there, without a link inside another link. */
  void mark(Footnote node, boolean insideLink, HtmlWriter html) {
    Findings.NoteMark mark = findings.marks.get(node);
    if (mark == null) {
      html.text(node.getChars().unescape());
      return;
    }
    html.attr("id", mark.id()).withAttr().tag("sup");
    String number = Integer.toString(mark.note());
    if (insideLink) {
      html.text(number);
    } else {
      html.attr("href", "#fn-" + number)
          .attr("aria-label", "Footnote " + number)
          .withAttr()
          .tag("a", false, false, () -> html.text(number));
    }
    html.tag("/sup");
  }

  /** The notes that the text uses, in the order of their first use. */
  void below(NodeRendererContext context, HtmlWriter html) {
    if (findings.notes.isEmpty()) {
      return;
    }
    html.attr("class", "footnotes")
        .withAttr()
        .tagLine("div", () -> html.tagLine("ol", () -> notes(context, html)));
  }

  private void notes(NodeRendererContext context, HtmlWriter html) {
    int number = 0;
    for (FootnoteBlock note : findings.notes) {
      number++;
      html.attr("id", "fn-" + number).withAttr().tagLine("li", note(note, number, context, html));
    }
  }

  private Runnable note(
      FootnoteBlock note, int number, NodeRendererContext context, HtmlWriter html) {
    return () -> {
      context.renderChildren(note);
      for (int use = 1; use <= findings.uses.get(number); use++) {
        backLink(new Findings.NoteMark(number, use), html);
      }
    };
  }

  private static void backLink(Findings.NoteMark mark, HtmlWriter html) {
    String label = "Back to the text, note " + mark.note();
    html.line()
        .attr("href", "#" + mark.id())
        .attr("class", "back")
        .attr("aria-label", mark.use() == 1 ? label : label + ", use " + mark.use())
        .withAttr()
        .tag("a")
        .text("↩")
        .tag("/a");
  }
}
