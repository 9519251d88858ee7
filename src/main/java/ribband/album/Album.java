package ribband.album;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribband.journal.Journal;
import ribband.photo.PictureFacts;

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

  /** The facts of all pictures that may be shown, each once. */
  public List<PictureFacts> pictures() {
    Map<String, PictureFacts> byDigest = new LinkedHashMap<>();
    shown().stream()
        .flatMap(leaf -> leaf.shots().stream())
        .forEach(shot -> byDigest.putIfAbsent(shot.facts().digest(), shot.facts()));
    return List.copyOf(byDigest.values());
  }

  /** The leaves that the site may show. */
  public List<Leaf> shown() {
    return leaves.stream().filter(leaf -> leaf.entry().isPublic()).toList();
  }
}
