package ribband.journal;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import ribband.journal.Node.Mapping;
import ribband.problem.Place;
import ribband.problem.Problems;

/**
 * An entry's two halves.
 *
 * @param fenced whether it opens with a fence
 * @param keys what stands between the fences
 * @param text the Markdown below
 * @param textLine 1-based line where that begins
 */
record FrontMatter(boolean fenced, Mapping keys, String text, int textLine) {
  private static final int MOST_TEXT_BYTES = 1 << 20;

  /** Splits an entry; empty where a problem was told that hides the keys. */
  static Optional<FrontMatter> of(Source source, Problems problems) {
    String text = source.text();
    if (text.isBlank()) {
      problems.error(
          new Place(source.file(), 1, 1),
          "the entry is empty; write --- above and below its keys, and a few words");
      return Optional.empty();
    }
    if (!opensWithFence(text)) {
      return Optional.of(
          new FrontMatter(false, new Mapping(List.of(), Place.of(source.file())), text, 1));
    }
    // spec: only a fence at line 1 opens, the next line equal to --- closes.
    int start = text.indexOf('\n') + 1;
    int line = 2;
    for (int at = start; start > 0 && at < text.length(); line++) {
      int end = text.indexOf('\n', at);
      int stop = end < 0 ? text.length() : end;
      if (isFence(text.substring(at, stop))) {
        int closedAt = line;
        String body = end < 0 ? "" : text.substring(end + 1);
        if (body.getBytes(StandardCharsets.UTF_8).length > MOST_TEXT_BYTES) {
          problems.error(
              new Place(source.file(), closedAt + 1, 1),
              "the text is larger than 1 MiB; split the entry in two");
          return Optional.empty();
        }
        return keys(source, text.substring(start, at), problems)
            .map(keys -> new FrontMatter(true, keys, body, closedAt + 1));
      }
      if (end < 0) {
        break;
      }
      at = end + 1;
    }
    problems.error(
        new Place(source.file(), 1, 1),
        "the fence --- that opens here is never closed; write --- on a line of its own below the"
            + " keys");
    return Optional.empty();
  }

  private static Optional<Mapping> keys(Source source, String yaml, Problems problems) {
    Optional<Mapping> keys = YamlTree.read(yaml, source.file(), 1, problems);
    keys.ifPresent(mapping -> Lost.comments(source, mapping, problems));
    return keys;
  }

  static boolean opensWithFence(String text) {
    int end = text.indexOf('\n');
    return isFence(end < 0 ? text : text.substring(0, end));
  }

  private static boolean isFence(String line) {
    return line.stripTrailing().equals("---");
  }
}
