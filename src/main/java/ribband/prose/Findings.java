package ribband.prose;

import com.vladsch.flexmark.ast.Heading;
import com.vladsch.flexmark.ext.footnotes.Footnote;
import com.vladsch.flexmark.ext.footnotes.FootnoteBlock;
import com.vladsch.flexmark.util.ast.Node;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a reading found in a parsed text, by node; filled once by {@link Reading}, then only read.
 */
final class Findings {
  /**
   * A heading as it is shown.
   *
   * @param level 2 to 6
   * @param id unique in the text
   */
  record Title(int level, String id) {}

  /**
   * A mark in the text that points to a footnote.
   *
   * @param note 1-based, in the order of first use
   * @param use 1-based, among the marks of the same note
   */
  record NoteMark(int note, int use) {
    String id() {
      return "fnref-" + note + (use == 1 ? "" : "-" + use);
    }
  }

  final List<Mention> mentions = new ArrayList<>();
  final Map<Node, Mention> byNode = new IdentityHashMap<>();

  /** Addresses that need no surroundings: of the web, and of headings in the text. */
  final Map<Node, String> hrefs = new IdentityHashMap<>();

  final Headings headings = new Headings();
  final Map<Heading, Title> titles = new IdentityHashMap<>();
  final List<FootnoteBlock> notes = new ArrayList<>();
  final Map<Footnote, NoteMark> marks = new IdentityHashMap<>();
  final Map<Integer, Integer> uses = new HashMap<>();
}
