package ribband.prose;

import com.vladsch.flexmark.ast.Image;
import com.vladsch.flexmark.ast.ImageRef;
import com.vladsch.flexmark.ast.Paragraph;
import com.vladsch.flexmark.util.ast.Node;
import java.util.Optional;

/** Tells which pictures stand alone in their paragraph. */
final class Figures {
  private Figures() {}

  /** The picture that is all a paragraph holds. */
  static Optional<Node> alone(Node paragraph) {
    Node only = paragraph.getFirstChild();
    boolean single = paragraph instanceof Paragraph && only != null && only.getNext() == null;
    return single && isPicture(only) ? Optional.of(only) : Optional.empty();
  }

  static boolean isPicture(Node node) {
    return node instanceof Image || (node instanceof ImageRef ref && ref.isDefined());
  }
}
