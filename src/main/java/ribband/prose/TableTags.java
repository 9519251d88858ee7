package ribband.prose;

import com.vladsch.flexmark.ext.tables.TableBlock;
import com.vladsch.flexmark.ext.tables.TableBody;
import com.vladsch.flexmark.ext.tables.TableCell;
import com.vladsch.flexmark.ext.tables.TableHead;
import com.vladsch.flexmark.ext.tables.TableRow;
import com.vladsch.flexmark.ext.tables.TableSeparator;
import com.vladsch.flexmark.html.HtmlWriter;
import com.vladsch.flexmark.html.renderer.NodeRendererContext;
import com.vladsch.flexmark.html.renderer.NodeRenderingHandler;
import java.util.List;
import java.util.Locale;

/**
 * Writes the tags of a text's tables, each in a frame that scrolls by keyboard; for one rendering.
 */
final class TableTags {
  private int tables;

  List<NodeRenderingHandler<?>> handlers() {
    return List.of(
        new NodeRenderingHandler<>(TableBlock.class, this::table),
        new NodeRenderingHandler<>(
            TableHead.class,
            (node, context, html) -> html.tagLine("thead", () -> context.renderChildren(node))),
        new NodeRenderingHandler<>(TableSeparator.class, (node, context, html) -> {}),
        new NodeRenderingHandler<>(TableBody.class, this::body),
        new NodeRenderingHandler<>(
            TableRow.class,
            (node, context, html) -> html.tagLine("tr", () -> context.renderChildren(node))),
        new NodeRenderingHandler<>(TableCell.class, this::cell));
  }

  private void table(TableBlock node, NodeRendererContext context, HtmlWriter html) {
    tables++;
    // Regions of one page need names of their own.
    html.attr("class", "table")
        .attr("tabindex", "0")
        .attr("role", "region")
        .attr("aria-label", tables == 1 ? "Table" : "Table " + tables)
        .withAttr()
        .tagLine("div", () -> html.tagLine("table", () -> context.renderChildren(node)));
  }

  private void body(TableBody node, NodeRendererContext context, HtmlWriter html) {
    if (node.hasChildren()) {
      html.tagLine("tbody", () -> context.renderChildren(node));
    }
  }

  private void cell(TableCell node, NodeRendererContext context, HtmlWriter html) {
    boolean header = node.isHeader() && !Words.of(node).isEmpty();
    if (header) {
      html.attr("scope", "col");
    }
    if (node.getAlignment() != null) {
      html.attr("class", node.getAlignment().name().toLowerCase(Locale.ROOT));
    }
    html.withAttr().tag(header ? "th" : "td", false, false, () -> context.renderChildren(node));
    html.line();
  }
}
