package ribband.site;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import ribband.album.Leaf;
import ribband.journal.Amount;
import ribband.journal.Entry;
import ribband.journal.Outlay;
import ribband.journal.Phase;
import ribband.journal.Purchase;
import ribband.measure.Saying;

/**
 * What a search looks at, as a script: a page that is opened from a disk may run one, but fetch
 * nothing. It assigns one value, which is JSON: the entries that may be shown, the newest first;
 * the names of phases and materials, which entries tell by number; and the words of lessons,
 * captions and texts, each once, with the entries they stand in (see {@link Concordance}).
 */
final class SearchScript {
  static final String BEGINNING = "globalThis.ribbandSearch = ";
  static final String END = ";\n";

  private static final JsonFactory JSON =
      new JsonFactory().setCharacterEscapes(new ScriptEscapes());

  private final Book book;
  private final List<Leaf> leaves;
  private final Numbers phases = new Numbers();
  private final Numbers materials = new Numbers();
  private final Concordance lessons = new Concordance();
  private final Concordance captions = new Concordance();
  private final Concordance texts = new Concordance();

  private SearchScript(Book book) {
    this.book = book;
    this.leaves = book.newestFirst();
  }

  static byte[] of(Book book) {
    SearchScript script = new SearchScript(book);
    script.gather();
    StringWriter text = new StringWriter();
    text.write(BEGINNING);
    try (JsonGenerator json = JSON.createGenerator(text)) {
      json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
      script.write(json);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    text.write(END);
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** Names in the order they came, each told by its number. */
  private static final class Numbers {
    private final Map<String, Integer> numbers = new LinkedHashMap<>();

    int of(String name) {
      return numbers.computeIfAbsent(name, none -> numbers.size());
    }

    Iterable<String> names() {
      return numbers.keySet();
    }
  }

  private void gather() {
    // The project's own order first, for the list one chooses from.
    Stream<Leaf> shown = leaves.stream();
    List<String> used = shown.flatMap(leaf -> phases(leaf.entry()).stream()).distinct().toList();
    book.journal().phases().stream()
        .map(Phase::id)
        .filter(used::contains)
        .forEach(id -> phases.of(book.phaseTitle(id)));
    for (int i = 0; i < leaves.size(); i++) {
      Leaf leaf = leaves.get(i);
      lessons.add(i, words(leaf.entry().lessons()));
      captions.add(i, words(leaf.shots().stream().flatMap(s -> s.caption().stream()).toList()));
      texts.add(i, SearchWords.of(leaf.words()));
    }
  }

  private static List<String> words(List<String> texts) {
    return texts.stream().flatMap(text -> SearchWords.of(text).stream()).toList();
  }

  /** Ids of the phases it worked in, else of the one it names. */
  private static List<String> phases(Entry entry) {
    return entry.hours().isEmpty()
        ? entry.phase().stream().toList()
        : List.copyOf(entry.hours().keySet());
  }

  private static List<String> materials(Entry entry) {
    return Stream.concat(
            entry.used().stream().map(Amount::material),
            entry.outlays().stream()
                .flatMap((Outlay outlay) -> outlay.purchase().stream())
                .map(Purchase::what))
        .distinct()
        .toList();
  }

  private void write(JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeArrayFieldStart("entries");
    for (Leaf leaf : leaves) {
      write(json, leaf.entry());
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

  private void write(JsonGenerator json, Entry entry) throws IOException {
    json.writeStartObject();
    json.writeStringField("href", Addresses.href(Addresses.HOME, Addresses.entry(entry)));
    json.writeStringField("title", entry.title());
    json.writeStringField("day", Saying.day(entry.date()));
    json.writeStringField(
        "hours", entry.totalHours().isZero() ? "" : Saying.hoursInWords(entry.totalHours()));
    List<Integer> in = new ArrayList<>();
    phases(entry).forEach(id -> in.add(phases.of(book.phaseTitle(id))));
    numbers(json, "phases", in);
    List<Integer> with = new ArrayList<>();
    materials(entry).forEach(name -> with.add(materials.of(name)));
    numbers(json, "materials", with);
    json.writeEndObject();
  }

  private static void numbers(JsonGenerator json, String field, List<Integer> numbers)
      throws IOException {
    json.writeArrayFieldStart(field);
    for (int number : numbers) {
      json.writeNumber(number);
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
