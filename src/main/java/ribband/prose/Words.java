package ribband.prose;

import com.vladsch.flexmark.ast.AutoLink;
import com.vladsch.flexmark.ast.Code;
import com.vladsch.flexmark.ast.HardLineBreak;
import com.vladsch.flexmark.ast.Heading;
import com.vladsch.flexmark.ast.HtmlBlockBase;
import com.vladsch.flexmark.ast.HtmlEntity;
import com.vladsch.flexmark.ast.HtmlInlineBase;
import com.vladsch.flexmark.ast.MailLink;
import com.vladsch.flexmark.ast.Paragraph;
import com.vladsch.flexmark.ast.RefNode;
import com.vladsch.flexmark.ast.Reference;
import com.vladsch.flexmark.ast.SoftLineBreak;
import com.vladsch.flexmark.ast.Text;
import com.vladsch.flexmark.ext.footnotes.Footnote;
import com.vladsch.flexmark.ext.footnotes.FootnoteBlock;
import com.vladsch.flexmark.ext.tables.TableBlock;
import com.vladsch.flexmark.ext.tables.TableRow;
import com.vladsch.flexmark.ext.tables.TableSeparator;
import com.vladsch.flexmark.util.ast.Block;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.sequence.BasedSequence;
import java.util.ArrayList;
import java.util.List;

/** The plain words of a parsed text, without any mark of Markdown. */
final class Words {
  private Words() {}

  /** The words of one node, on one line; may be empty. */
  static String of(Node node) {
    StringBuilder out = new StringBuilder();
    write(node, out);
    return collapsed(out);
  }

  /** The words of a node's children, for nodes that are themselves a link, picture or mark. */
  static String inside(Node node) {
    StringBuilder out = new StringBuilder();
    node.getChildren().forEach(child -> write(child, out));
    return collapsed(out);
  }

  /** One line a block, in order: paragraphs, headings, list items, table rows, code. */
  static List<String> blocks(Node root) {
    List<String> lines = new ArrayList<>();
    gather(root, lines);
    return List.copyOf(lines);
  }

  /**
   * The paragraphs that stand in no list, quotation or table and hold more than a picture, on one
   * line; not all of them where fewer are longer than asked for.
   *
   * @param wanted in characters (code points)
   */
  static String paragraphs(Node root, int wanted) {
    StringBuilder line = new StringBuilder();
    for (Node node : root.getChildren()) {
      if (line.codePointCount(0, line.length()) > wanted) {
        break;
      }
      if (node instanceof Paragraph && Figures.alone(node).isEmpty()) {
        String words = of(node);
        line.append(line.isEmpty() || words.isEmpty() ? "" : " ").append(words);
      }
    }
    return line.toString();
  }

  private static void gather(Node node, List<String> lines) {
    if (node instanceof FootnoteBlock
        || node instanceof Reference
        || node instanceof TableSeparator) {
      return;
    }
    boolean whole =
        node instanceof Paragraph
            || node instanceof Heading
            || node instanceof TableRow
            || node instanceof HtmlBlockBase
            || (node instanceof Block
                && !(node instanceof TableBlock)
                && !(node.getFirstChild() instanceof Block));
    if (whole) {
      String words = of(node);
      if (!words.isEmpty()) {
        lines.add(words);
      }
    } else {
      node.getChildren().forEach(child -> gather(child, lines));
    }
  }

  private static void write(Node node, StringBuilder out) {
    if (node instanceof Text text) {
      out.append(plain(text.getChars()));
    } else if (node instanceof HtmlEntity) {
      out.append(node.getChars().unescape());
    } else if (node instanceof Code code) {
      out.append(code.getText());
    } else if (node instanceof SoftLineBreak || node instanceof HardLineBreak) {
      out.append(' ');
    } else if (node instanceof AutoLink link) {
      out.append(link.getText().unescape());
    } else if (node instanceof MailLink link) {
      out.append(link.getText().unescape());
    } else if (node instanceof HtmlInlineBase) {
      out.append(node.getChars());
    } else if (node instanceof HtmlBlockBase block) {
      out.append(block.getContentChars());
    } else if (node instanceof Footnote note) {
      out.append(note.isDefined() ? "" : note.getChars().unescape());
    } else if (node instanceof RefNode ref && !ref.isDefined()) {
      out.append(ref.getChars().unescape());
    } else if (node instanceof Block block && !node.hasChildren()) {
      out.append(block.getContentChars());
    } else {
      boolean cells = node instanceof TableRow;
      node.getChildren()
          .forEach(
              child -> {
                write(child, out);
                out.append(cells ? " " : "");
              });
    }
  }

  /** Most text holds no escape, and looking for one is far cheaper than reading escapes. */
  static String plain(BasedSequence text) {
    String written = text.toString();
    boolean escapes = written.indexOf('\\') >= 0 || written.indexOf('&') >= 0;
    return escapes ? text.unescape() : written;
  }

  /** One space for each run of the white space of ASCII, none at either end. */
  private static String collapsed(CharSequence text) {
    StringBuilder line = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (!isGap(c)) {
        line.append(c);
      } else if (!line.isEmpty() && line.charAt(line.length() - 1) != ' ') {
        line.append(' ');
      }
    }
    return line.toString().strip();
  }

  private static boolean isGap(char c) {
    return c == ' ' || (c >= '\t' && c <= '\r');
  }
}
