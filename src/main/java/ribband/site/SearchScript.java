package ribband.site;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * What a search looks at, as a script: a page that is opened from a disk may run one, but fetch
 * nothing. It assigns one value, which is JSON: the entries; the names of phases and materials,
 * which entries tell by number; and the words of lessons, captions and texts, each once, with the
 * entries they stand in (see {@link Concordance}).
 */
public final class SearchScript {
  public static final String BEGINNING = "globalThis.ribbandSearch = ";
  public static final String END = ";\n";

  private static final JsonFactory JSON =
      new JsonFactory().setCharacterEscapes(new ScriptEscapes());

  private final List<SearchEntry> entries;
  private final Numbers phases = new Numbers();
  private final Numbers materials = new Numbers();
  private final Concordance lessons = new Concordance();
  private final Concordance captions = new Concordance();
  private final Concordance texts = new Concordance();

  /** Names in the order they came, each told by its number. */
  private static final class Numbers {
    private final Map<String, Integer> numbers = new LinkedHashMap<>();

    int of(String name) {
      numbers.putIfAbsent(name, numbers.size());
      return numbers.get(name);
    }

    Set<String> names() {
      return numbers.keySet();
    }
  }

  private SearchScript(List<SearchEntry> entries, List<String> phaseOrder) {
    this.entries = entries;
    phaseOrder.stream()
        .filter(phase -> entries.stream().anyMatch(entry -> entry.phases().contains(phase)))
        .forEach(phases::of);
    for (int i = 0; i < entries.size(); i++) {
      SearchEntry entry = entries.get(i);
      lessons.add(i, words(entry.lessons()));
      captions.add(i, words(entry.captions()));
      texts.add(i, SearchWords.of(entry.text()));
    }
  }

  private static List<String> words(List<String> texts) {
    return texts.stream().flatMap(text -> SearchWords.of(text).stream()).toList();
  }

  /**
   * The script.
   *
   * @param entries in the order they are listed
   * @param phaseOrder titles of phases, in the order they are chosen from; others follow
   * @return UTF-8
   */
  public static byte[] of(List<SearchEntry> entries, List<String> phaseOrder) {
    StringWriter text = new StringWriter();
    text.write(BEGINNING);
    try (JsonGenerator json = JSON.createGenerator(text)) {
      new SearchScript(entries, phaseOrder).write(json);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    text.write(END);
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private void write(JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeArrayFieldStart("entries");
    for (SearchEntry entry : entries) {
      write(json, entry);
    }
    json.writeEndArray();
    names(json, "phases", phases);
    names(json, "materials", materials);
    SortedSet<String> words = new TreeSet<>();
    Stream.of(lessons, captions, texts).forEach(in -> words.addAll(in.words()));
    json.writeStringField("words", String.join(" ", words));
    json.writeStringField("lessons", lessons.packed(words));
    json.writeStringField("captions", captions.packed(words));
    json.writeStringField("texts", texts.packed(words));
    json.writeEndObject();
  }

  private void write(JsonGenerator json, SearchEntry entry) throws IOException {
    json.writeStartObject();
    json.writeStringField("href", entry.href());
    json.writeStringField("title", entry.title());
    json.writeStringField("day", entry.day());
    json.writeStringField("hours", entry.hours());
    numbers(json, "phases", entry.phases(), phases);
    numbers(json, "materials", entry.materials(), materials);
    json.writeEndObject();
  }

  private static void numbers(JsonGenerator json, String field, List<String> names, Numbers numbers)
      throws IOException {
    json.writeArrayFieldStart(field);
    for (String name : names) {
      json.writeNumber(numbers.of(name));
    }
    json.writeEndArray();
  }

  private static void names(JsonGenerator json, String field, Numbers numbers) throws IOException {
    json.writeArrayFieldStart(field);
    for (String name : numbers.names()) {
      json.writeString(name);
    }
    json.writeEndArray();
  }
}
