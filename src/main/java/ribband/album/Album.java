package ribband.album;

import java.util.List;
import java.util.Optional;
import ribband.journal.Journal;

/**
 * A journal whose words are parsed and whose pictures are looked at.
 *
 * @param leaves one for each entry, in their order, private ones too
 * @param about what the project tells of the boat, made safe
 */
public record Album(Journal journal, List<Leaf> leaves, Optional<String> about) {
  public Album {
    leaves = List.copyOf(leaves);
  }

  /** The leaves that the site may show. */
  public List<Leaf> shown() {
    return leaves.stream().filter(leaf -> leaf.entry().isPublic()).toList();
  }
}
