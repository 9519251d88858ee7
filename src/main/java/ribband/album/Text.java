package ribband.album;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribband.problem.Place;
import ribband.prose.Mention;

/**
 * What is known of an entry's text once it has been read.
 *
 * @param opening its first paragraphs, for lists
 * @param words its first words, for search
 * @param around what its links and pictures led to when it was shown
 * @param html as it was shown then; empty where it was not
 */
record Text(String opening, String words, List<Mention> mentions, String around, String html) {
  /** Parts texts that are kept as one; no text of a journal holds it. */
  private static final String PART = "\0";

  Text {
    mentions = List.copyOf(mentions);
  }

  String packed() {
    List<String> parts = new ArrayList<>(List.of(opening, words, around, html));
    for (Mention mention : mentions) {
      parts.add(mention.kind().name());
      parts.add(mention.target());
      parts.add(mention.words());
      parts.add(Integer.toString(mention.place().line()));
      parts.add(Integer.toString(mention.place().column()));
    }
    return String.join(PART, parts);
  }

  /** What was packed; empty where it cannot be read back, and so is not known. */
  static Optional<Text> unpacked(String file, String packed) {
    String[] parts = packed.split(PART, -1);
    try {
      List<Mention> mentions = new ArrayList<>();
      for (int i = 4; i < parts.length; i += 5) {
        Place place =
            new Place(file, Integer.parseInt(parts[i + 3]), Integer.parseInt(parts[i + 4]));
        mentions.add(
            new Mention(Mention.Kind.valueOf(parts[i]), parts[i + 1], parts[i + 2], place));
      }
      return Optional.of(new Text(parts[0], parts[1], mentions, parts[2], parts[3]));
    } catch (IllegalArgumentException | IndexOutOfBoundsException e) {
      return Optional.empty();
    }
  }
}
