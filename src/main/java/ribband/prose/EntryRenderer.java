package ribband.prose;

import com.vladsch.flexmark.ast.AutoLink;
import com.vladsch.flexmark.ast.Heading;
import com.vladsch.flexmark.ast.HtmlBlock;
import com.vladsch.flexmark.ast.HtmlBlockBase;
import com.vladsch.flexmark.ast.HtmlCommentBlock;
import com.vladsch.flexmark.ast.HtmlInline;
import com.vladsch.flexmark.ast.HtmlInlineBase;
import com.vladsch.flexmark.ast.HtmlInlineComment;
import com.vladsch.flexmark.ast.Image;
import com.vladsch.flexmark.ast.ImageRef;
import com.vladsch.flexmark.ast.Link;
import com.vladsch.flexmark.ast.LinkNodeBase;
import com.vladsch.flexmark.ast.LinkRef;
import com.vladsch.flexmark.ast.MailLink;
import com.vladsch.flexmark.ast.Paragraph;
import com.vladsch.flexmark.ast.Text;
import com.vladsch.flexmark.ext.footnotes.Footnote;
import com.vladsch.flexmark.ext.footnotes.FootnoteBlock;
import com.vladsch.flexmark.ext.gfm.strikethrough.Strikethrough;
import com.vladsch.flexmark.ext.gfm.tasklist.TaskListItem;
import com.vladsch.flexmark.html.HtmlWriter;
import com.vladsch.flexmark.html.renderer.NodeRendererContext;
import com.vladsch.flexmark.html.renderer.NodeRenderingHandler;
import com.vladsch.flexmark.html.renderer.NodeRenderingHandler.CustomNodeRenderer;
import com.vladsch.flexmark.html.renderer.PhasedNodeRenderer;
import com.vladsch.flexmark.html.renderer.RenderingPhase;
import com.vladsch.flexmark.parser.ListOptions;
import com.vladsch.flexmark.util.ast.Document;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.data.DataHolder;
import com.vladsch.flexmark.util.data.NullableDataKey;
import com.vladsch.flexmark.util.sequence.BasedSequence;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;

/**
 * Shows a text by the journal's policy where it differs from CommonMark: headings, links, raw HTML,
 * task lists; tables, pictures and footnotes have their own tags. For one rendering.
 */
final class EntryRenderer implements PhasedNodeRenderer {
  static final NullableDataKey<Sheet> SHEET = new NullableDataKey<>("SHEET");

  private final Sheet sheet;
  private final Findings findings;
  private final ListOptions listOptions;
  private final PictureTags pictures;
  private final NoteTags notes;
  private final TableTags tables = new TableTags();
  private boolean insideLink;

  EntryRenderer(DataHolder options) {
    sheet = SHEET.get(options);
    findings = sheet.findings();
    listOptions = ListOptions.get(options);
    pictures = new PictureTags(sheet);
    notes = new NoteTags(findings);
  }

  @Override
  public Set<NodeRenderingHandler<?>> getNodeRenderingHandlers() {
    Set<NodeRenderingHandler<?>> handlers = new LinkedHashSet<>(tables.handlers());
    add(handlers, Text.class, (node, context, html) -> html.text(Words.plain(node.getChars())));
    add(handlers, Heading.class, this::heading);
    add(handlers, Paragraph.class, this::paragraph);
    add(handlers, Link.class, this::link);
    add(handlers, LinkRef.class, this::linkRef);
    add(handlers, AutoLink.class, (node, context, html) -> bare(node, node.getText(), html));
    add(handlers, MailLink.class, (node, context, html) -> bare(node, node.getText(), html));
    add(handlers, Image.class, this::image);
    add(handlers, ImageRef.class, this::imageRef);
    add(handlers, HtmlBlock.class, this::htmlBlock);
    add(handlers, HtmlCommentBlock.class, this::htmlBlock);
    add(handlers, HtmlInline.class, this::htmlInline);
    add(handlers, HtmlInlineComment.class, this::htmlInline);
    add(handlers, Strikethrough.class, this::strikethrough);
    add(handlers, TaskListItem.class, this::task);
    add(handlers, Footnote.class, (node, context, html) -> notes.mark(node, insideLink, html));
    add(handlers, FootnoteBlock.class, (node, context, html) -> {});
    return handlers;
  }

  private static <N extends Node> void add(
      Set<NodeRenderingHandler<?>> handlers, Class<N> kind, CustomNodeRenderer<N> renderer) {
    handlers.add(new NodeRenderingHandler<>(kind, renderer));
  }

  @Override
  public Set<RenderingPhase> getRenderingPhases() {
    return Set.of(RenderingPhase.BODY_BOTTOM);
  }

  @Override
  public void renderDocument(
      NodeRendererContext context, HtmlWriter html, Document document, RenderingPhase phase) {
    notes.below(context, html);
  }

  private void heading(Heading node, NodeRendererContext context, HtmlWriter html) {
    Findings.Title title = findings.titles.get(node);
    if (title != null) {
      html.attr("id", title.id())
          .withAttr()
          .tagLine("h" + title.level(), () -> context.renderChildren(node));
    } else if (node.hasChildren()) {
      html.tagLine("p", () -> context.renderChildren(node));
    }
  }

  private void paragraph(Paragraph node, NodeRendererContext context, HtmlWriter html) {
    Optional<Node> alone = Figures.alone(node).filter(pictures::hasPrint);
    if (alone.isPresent()) {
      pictures.figure(alone.get(), html);
    } else if (node.getParent() instanceof TaskListItem task && task.getFirstChild() == node) {
      taskParagraph(task, node, context, html);
    } else if (listOptions.isInTightListItem(node)) {
      context.renderChildren(node);
    } else if (node.hasChildren()) {
      html.tagLine("p", () -> context.renderChildren(node));
    }
  }

  private void task(TaskListItem node, NodeRendererContext context, HtmlWriter html) {
    html.attr("class", "task")
        .withAttr()
        .tagLine(
            "li",
            () -> {
              boolean worded =
                  node.getFirstChild() instanceof Paragraph first
                      && Figures.alone(first).filter(pictures::hasPrint).isEmpty();
              if (!worded) {
                checkbox(node, html);
              }
              context.renderChildren(node);
            });
  }

  private void taskParagraph(
      TaskListItem task, Paragraph node, NodeRendererContext context, HtmlWriter html) {
    Runnable content =
        () -> {
          checkbox(task, html);
          context.renderChildren(node);
        };
    if (listOptions.isTightListItem(task)) {
      content.run();
    } else {
      html.tagLine("p", content);
    }
  }

  private static void checkbox(TaskListItem task, HtmlWriter html) {
    html.attr("type", "checkbox").attr("disabled", "disabled");
    if (task.isItemDoneMarker()) {
      html.attr("checked", "checked");
    }
    html.attr("aria-label", task.isItemDoneMarker() ? "done" : "not done")
        .withAttr()
        .tagVoid("input")
        .text(" ");
  }

  private void link(Link node, NodeRendererContext context, HtmlWriter html) {
    anchor(node, node, html, () -> context.renderChildren(node));
  }

  private void linkRef(LinkRef node, NodeRendererContext context, HtmlWriter html) {
    if (node.isDefined()) {
      LinkNodeBase reference = node.getReferenceNode(context.getDocument());
      anchor(node, reference, html, () -> context.renderChildren(node));
    } else if (node.hasChildren()) {
      html.text(node.getChars().prefixOf(node.getChildChars()).unescape());
      context.renderChildren(node);
      html.text(node.getChars().suffixOf(node.getChildChars()).unescape());
    } else {
      html.text(node.getChars().unescape());
    }
  }

  private void bare(LinkNodeBase node, BasedSequence text, HtmlWriter html) {
    anchor(node, node, html, () -> html.text(text.toString()));
  }

  /** A link with its words, or the words alone where it leads nowhere or stands in another link. */
  private void anchor(Node node, LinkNodeBase titled, HtmlWriter html, Runnable words) {
    Optional<String> href = insideLink ? Optional.empty() : href(node);
    if (href.isEmpty()) {
      words.run();
      return;
    }
    html.attr("href", href.get());
    if (Words.of(node).isEmpty()) {
      html.attr("aria-label", findings.byNode.get(node).target());
    }
    if (titled.getTitle().isNotNull() && !titled.getTitle().isBlank()) {
      html.attr("title", titled.getTitle().unescape());
    }
    if (href.get().startsWith("http")) {
      html.attr("rel", "noopener");
    }
    insideLink = true;
    html.withAttr().tag("a", false, false, words);
    insideLink = false;
  }

  private Optional<String> href(Node node) {
    String ready = findings.hrefs.get(node);
    Mention mention = findings.byNode.get(node);
    return Optional.ofNullable(
        ready != null || mention == null ? ready : sheet.hrefs().get(mention));
  }

  private void image(Image node, NodeRendererContext context, HtmlWriter html) {
    pictures.inline(node, insideLink, html);
  }

  private void imageRef(ImageRef node, NodeRendererContext context, HtmlWriter html) {
    if (node.isDefined()) {
      pictures.inline(node, insideLink, html);
    } else {
      html.text(node.getChars().unescape());
    }
  }

  private void htmlBlock(HtmlBlockBase node, NodeRendererContext context, HtmlWriter html) {
    html.tagLine("p", () -> html.text(node.getChars().normalizeEOL().strip()));
  }

  private void htmlInline(HtmlInlineBase node, NodeRendererContext context, HtmlWriter html) {
    html.text(node.getChars().normalizeEOL());
  }

  private void strikethrough(Strikethrough node, NodeRendererContext context, HtmlWriter html) {
    html.tag("del", false, false, () -> context.renderChildren(node));
  }
}
