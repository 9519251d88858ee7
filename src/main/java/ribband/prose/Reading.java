package ribband.prose;

import com.vladsch.flexmark.ast.AutoLink;
import com.vladsch.flexmark.ast.Heading;
import com.vladsch.flexmark.ast.Image;
import com.vladsch.flexmark.ast.ImageRef;
import com.vladsch.flexmark.ast.Link;
import com.vladsch.flexmark.ast.LinkRef;
import com.vladsch.flexmark.ast.MailLink;
import com.vladsch.flexmark.ext.footnotes.Footnote;
import com.vladsch.flexmark.ext.footnotes.FootnoteBlock;
import com.vladsch.flexmark.util.ast.Document;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.sequence.BasedSequence;
import java.util.HashSet;
import java.util.Set;
import java.util.function.Consumer;
import ribband.problem.Nearest;
import ribband.problem.OneLine;
import ribband.problem.Place;
import ribband.problem.Problems;

/** One reading of a parsed text, in the order it is shown: what it mentions and what is wrong. */
final class Reading {
  private final Document document;
  private final Lines lines;
  private final Problems problems;
  private final Set<Footnote> seen = new HashSet<>();
  private final Findings findings = new Findings();

  private Reading(Document document, Lines lines, Problems problems) {
    this.document = document;
    this.lines = lines;
    this.problems = problems;
  }

  static Findings of(Document document, Lines lines, Problems problems) {
    Reading reading = new Reading(document, lines, problems);
    // Notes first, then headings: both are shown below the text that may link to them.
    reading.overAll(reading::footnote);
    reading.overAll(reading::heading);
    reading.overAll(reading::mention);
    reading.unusedNotes();
    return reading.findings;
  }

  /** Visits the text, then the footnotes it uses; notes may add notes. */
  private void overAll(Consumer<Node> visitor) {
    visit(document, visitor);
    for (int i = 0; i < findings.notes.size(); i++) {
      findings.notes.get(i).getChildren().forEach(child -> visit(child, visitor));
    }
  }

  private void visit(Node node, Consumer<Node> visitor) {
    if (node instanceof FootnoteBlock) {
      return;
    }
    visitor.accept(node);
    node.getChildren().forEach(child -> visit(child, visitor));
  }

  private void footnote(Node node) {
    if (!(node instanceof Footnote mark) || mark.getFootnoteBlock() == null || !seen.add(mark)) {
      return;
    }
    FootnoteBlock note = mark.getFootnoteBlock();
    if (!findings.notes.contains(note)) {
      findings.notes.add(note);
    }
    int number = findings.notes.indexOf(note) + 1;
    int use = findings.uses.merge(number, 1, Integer::sum);
    findings.marks.put(mark, new Findings.NoteMark(number, use));
  }

  private void unusedNotes() {
    for (Node node : document.getChildren()) {
      if (node instanceof FootnoteBlock note && !findings.notes.contains(note)) {
        String name = OneLine.quote("[^" + note.getText() + "]");
        problems.warning(
            lines.at(note.getStartOffset()),
            "footnote " + name + " is not shown; refer to it in the text");
      }
    }
  }

  private void heading(Node node) {
    if (node instanceof Heading heading) {
      String words = Words.of(heading);
      if (!words.isEmpty()) {
        findings.titles.put(heading, findings.headings.next(heading.getLevel(), words));
      }
    }
  }

  private void mention(Node node) {
    if (node instanceof Link link) {
      link(node, target(link.getUrl()), Words.inside(node));
    } else if (node instanceof LinkRef ref && ref.isDefined()) {
      link(node, target(ref.getReferenceNode(document).getUrl()), Words.inside(node));
    } else if (node instanceof AutoLink link) {
      autoLink(link, link.getText().toString());
    } else if (node instanceof MailLink link) {
      link(node, "mailto:" + link.getText(), link.getText().toString());
    } else if (node instanceof Image image) {
      picture(node, target(image.getUrl()), Words.inside(node));
    } else if (node instanceof ImageRef ref && ref.isDefined()) {
      picture(node, target(ref.getReferenceNode(document).getUrl()), Words.inside(node));
    }
  }

  private void autoLink(AutoLink link, String text) {
    // spec: www. in running text is a web address.
    boolean bare = link.getOpeningMarker().isEmpty();
    String target = bare && text.regionMatches(true, 0, "www.", 0, 4) ? "http://" + text : text;
    if (!bare || Address.of(target).reach() != Address.Reach.BROKEN_WEB) {
      link(link, target, text);
    }
  }

  private void link(Node node, String target, String words) {
    Address address = Address.of(target);
    Mention mention =
        new Mention(Mention.Kind.LINK, target, words, lines.at(node.getStartOffset()));
    String quoted = "link to " + OneLine.quote(target);
    switch (address.reach()) {
      case FILE -> accept(node, mention);
      case WEB -> {
        accept(node, mention);
        findings.hrefs.put(node, address.href());
      }
      case HEADING -> headingLink(node, mention);
      case NOWHERE ->
          problems.warning(
              mention.place(), "a link without a target stays text; write where it leads");
      case BROKEN_WEB ->
          problems.warning(
              mention.place(), quoted + " is dropped, its words stay; write the whole address");
      case FOREIGN ->
          problems.warning(
              mention.place(),
              quoted
                  + " is dropped, its words stay; write http, https, mailto or a file of the"
                  + " journal");
      case HOST ->
          problems.warning(
              mention.place(), quoted + " is dropped, its words stay; write https: before it");
      case ROOT ->
          problems.warning(
              mention.place(),
              quoted + " is dropped, its words stay; write the path as seen from this entry");
    }
  }

  private void headingLink(Node node, Mention mention) {
    findings
        .headings
        .id(mention.fragment())
        .ifPresentOrElse(
            id -> {
              accept(node, mention);
              findings.hrefs.put(node, "#" + id);
            },
            () ->
                problems.warning(
                    mention.place(),
                    "no heading "
                        + OneLine.quote(mention.fragment())
                        + " in this text, the link's words stay; "
                        + Nearest.hint(
                            mention.fragment(), findings.headings.names(), "it has no headings")));
  }

  private void picture(Node node, String target, String words) {
    Place place = lines.at(node.getStartOffset());
    String quoted = OneLine.quote(target);
    switch (Address.of(target).reach()) {
      case FILE -> accept(node, new Mention(Mention.Kind.PICTURE, target, words, place));
      case NOWHERE, HEADING ->
          problems.error(place, "a picture without a file; name the file of the picture");
      case ROOT ->
          problems.error(
              place,
              "a picture outside the journal "
                  + quoted
                  + "; save it in the journal and name the file");
      case WEB, BROKEN_WEB, FOREIGN, HOST ->
          problems.error(
              place,
              "a picture from the net " + quoted + "; save it in the journal and name the file");
    }
  }

  private void accept(Node node, Mention mention) {
    findings.mentions.add(mention);
    findings.byNode.put(node, mention);
  }

  private static String target(BasedSequence url) {
    return url.unescape();
  }
}
