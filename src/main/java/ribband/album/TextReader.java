package ribband.album;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import ribband.journal.Entry;
import ribband.memory.Hash;
import ribband.memory.Memory;
import ribband.problem.Problems;
import ribband.prose.Body;
import ribband.prose.Manuscript;
import ribband.prose.Mention;
import ribband.prose.Prose;
import ribband.prose.Surroundings;

/**
 * Reads texts and shows them, or remembers both: a text without a problem is not read again while
 * it stays the same, nor shown again while all that it links to and shows does. May be used by
 * several threads.
 */
final class TextReader {
  private static final int OPENING = 220;

  /** How many words of a text a search looks at. */
  private static final int SEARCHED = 60;

  private final Prose prose;
  private final Memory memory;

  TextReader(Prose prose, Memory memory) {
    this.prose = prose;
    this.memory = memory;
  }

  /**
   * A text that was read.
   *
   * @param manuscript empty where the text is remembered
   * @param sound whether nothing was wrong with it
   */
  record Read(String key, Body body, Text text, Optional<Manuscript> manuscript, boolean sound) {}

  Read read(Entry entry, Problems problems) {
    Body body = EntryLinks.body(entry);
    String key = key(body);
    Optional<Text> known = memory.get(key).flatMap(packed -> Text.unpacked(body.file(), packed));
    if (known.isPresent()) {
      return new Read(key, body, known.get(), Optional.empty(), true);
    }
    Problems found = new Problems();
    Manuscript words = prose.read(body, found);
    problems.addAll(found.sorted());
    Text text =
        new Text(words.opening(OPENING), words.firstWords(SEARCHED), words.mentions(), "", "");
    return new Read(key, body, text, Optional.of(words), found.sorted().isEmpty());
  }

  /**
   * Safe HTML for the entry's page. It is made now, and fetched from the memory when it is asked
   * for: nobody could hold the pages of a whole journal.
   */
  Supplier<String> show(Read read, Surroundings surroundings) {
    Text text = read.text();
    String around = said(text, surroundings);
    if (read.manuscript().isEmpty() && text.around().equals(around)) {
      return remembered(read.key(), read.body().file());
    }
    Manuscript words = read.manuscript().orElseGet(() -> prose.read(read.body(), new Problems()));
    String html = prose.html(words, surroundings);
    if (read.sound()) {
      Text shown = new Text(text.opening(), text.words(), text.mentions(), around, html);
      memory.put(read.key(), shown.packed());
      return remembered(read.key(), read.body().file());
    }
    return () -> html;
  }

  private Supplier<String> remembered(String key, String file) {
    return () ->
        memory.get(key).flatMap(packed -> Text.unpacked(file, packed)).orElseThrow().html();
  }

  private static String key(Body body) {
    String all = body.file() + "\n" + body.firstLine() + "\n" + body.text();
    return Hash.of(all.getBytes(StandardCharsets.UTF_8));
  }

  /** All that the HTML of a text depends on beside the text. */
  private static String said(Text text, Surroundings around) {
    return text.mentions().stream()
        .map(
            mention ->
                mention.kind() == Mention.Kind.PICTURE
                    ? around.print(mention).toString()
                    : mention.isRelative() ? around.href(mention).toString() : "")
        .collect(Collectors.joining("\n"));
  }
}
