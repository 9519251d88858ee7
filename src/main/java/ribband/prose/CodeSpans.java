package ribband.prose;

import com.vladsch.flexmark.ast.Code;
import com.vladsch.flexmark.html.HtmlWriter;
import com.vladsch.flexmark.html.renderer.NodeRenderer;
import com.vladsch.flexmark.html.renderer.NodeRendererContext;
import com.vladsch.flexmark.html.renderer.NodeRenderingHandler;
import java.util.Set;

/** Shows code spans with the white space that CommonMark 0.31.2 keeps and Flexmark folds. */
final class CodeSpans implements NodeRenderer {
  @Override
  public Set<NodeRenderingHandler<?>> getNodeRenderingHandlers() {
    return Set.of(new NodeRenderingHandler<>(Code.class, CodeSpans::code));
  }

  private static void code(Code node, NodeRendererContext context, HtmlWriter html) {
    html.tag("code").text(content(node.getText().toString())).tag("/code");
  }

  /** CommonMark 0.31.2, 'code spans': line ends are spaces; one space goes from either end. */
  private static String content(String written) {
    String text = written.replace('\n', ' ');
    boolean padded = text.length() > 2 && text.startsWith(" ") && text.endsWith(" ");
    return padded && !text.isBlank() ? text.substring(1, text.length() - 1) : text;
  }
}
