package ribband.prose;

import com.vladsch.flexmark.ast.ImageRef;
import com.vladsch.flexmark.ast.LinkNodeBase;
import com.vladsch.flexmark.html.HtmlWriter;
import com.vladsch.flexmark.util.ast.Node;
import java.util.stream.Stream;

/** Writes the tags of a text's pictures; for one rendering. */
final class PictureTags {
  private final Sheet sheet;

  PictureTags(Sheet sheet) {
    this.sheet = sheet;
  }

  boolean hasPrint(Node picture) {
    Mention mention = sheet.findings().byNode.get(picture);
    return mention != null && sheet.prints().containsKey(mention);
  }

  /**
   * A picture alone; its caption is the title where one is written, else its words, else what the
   * list of pictures says.
   */
  void figure(Node picture, HtmlWriter html) {
    String caption =
        Stream.of(title(picture), Words.inside(picture), print(picture).caption())
            .filter(words -> !words.isEmpty())
            .findFirst()
            .orElse("");
    html.tagLine(
        "figure",
        () -> {
          linked(picture, html);
          if (!caption.isEmpty()) {
            html.tag("figcaption").text(caption).tag("/figcaption");
          }
        });
  }

  /** A picture among words; its words alone where it has no print. */
  void inline(Node picture, boolean insideLink, HtmlWriter html) {
    if (!hasPrint(picture)) {
      html.text(Words.inside(picture));
    } else if (insideLink) {
      image(picture, html);
    } else {
      linked(picture, html);
    }
  }

  private void linked(Node picture, HtmlWriter html) {
    html.attr("href", print(picture).large());
    if (alt(picture).isEmpty()) {
      html.attr("aria-label", "Larger picture");
    }
    html.withAttr().tag("a", false, false, () -> image(picture, html));
  }

  private void image(Node picture, HtmlWriter html) {
    Print print = print(picture);
    html.attr("src", print.src());
    if (!print.srcset().isEmpty()) {
      html.attr("srcset", print.srcset()).attr("sizes", print.sizes());
    }
    html.attr("width", Integer.toString(print.width()))
        .attr("height", Integer.toString(print.height()))
        .attr("loading", "lazy")
        .attr("decoding", "async")
        .attr("alt", alt(picture))
        .withAttr()
        .tagVoid("img");
  }

  private Print print(Node picture) {
    return sheet.prints().get(sheet.findings().byNode.get(picture));
  }

  private String alt(Node picture) {
    String given = print(picture).alt();
    return given.isEmpty() ? Words.inside(picture) : given;
  }

  private static String title(Node picture) {
    LinkNodeBase written =
        picture instanceof ImageRef ref
            ? ref.getReferenceNode(picture.getDocument())
            : (LinkNodeBase) picture;
    return written.getTitle().isNull() ? "" : written.getTitle().unescape().strip();
  }
}
