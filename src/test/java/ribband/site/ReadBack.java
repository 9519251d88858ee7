package ribband.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;

/** What a script of search holds, read by other code than wrote it. */
public final class ReadBack {
  private static final String DIGITS =
      "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

  private final Map<?, ?> data;

  private ReadBack(Map<?, ?> data) {
    this.data = data;
  }

  /** Fails where the script is not one assignment of JSON. */
  public static ReadBack of(byte[] script) throws IOException {
    String text = new String(script, StandardCharsets.UTF_8);
    assertTrue(text.startsWith(SearchScript.BEGINNING) && text.endsWith(SearchScript.END), text);
    String value =
        text.substring(SearchScript.BEGINNING.length(), text.length() - SearchScript.END.length());
    try (JsonParser json = new JsonFactory().createParser(value)) {
      ReadBack read = new ReadBack((Map<?, ?>) value(json, json.nextToken()));
      assertNull(json.nextToken(), "more than one value");
      return read;
    }
  }

  private static Object value(JsonParser json, JsonToken token) throws IOException {
    switch (token) {
      case START_OBJECT:
        Map<String, Object> fields = new LinkedHashMap<>();
        while (json.nextToken() != JsonToken.END_OBJECT) {
          fields.put(json.currentName(), value(json, json.nextToken()));
        }
        return fields;
      case START_ARRAY:
        List<Object> items = new ArrayList<>();
        for (JsonToken next = json.nextToken();
            next != JsonToken.END_ARRAY;
            next = json.nextToken()) {
          items.add(value(json, next));
        }
        return items;
      case VALUE_NUMBER_INT:
        return json.getIntValue();
      default:
        assertEquals(JsonToken.VALUE_STRING, token);
        return json.getText();
    }
  }

  public List<String> names(String field) {
    return strings(data.get(field));
  }

  private static List<String> strings(Object list) {
    return ((List<?>) list).stream().map(String.class::cast).toList();
  }

  /**
   * The entries, their lessons, captions and text as their different words in the order of the
   * alphabet.
   */
  public List<SearchEntry> entries() {
    List<SearchEntry> entries = new ArrayList<>();
    List<?> all = (List<?>) data.get("entries");
    for (int i = 0; i < all.size(); i++) {
      Map<?, ?> entry = (Map<?, ?>) all.get(i);
      assertEquals(
          List.of("href", "title", "day", "hours", "phases", "materials"),
          List.copyOf(entry.keySet()));
      entries.add(
          new SearchEntry(
              (String) entry.get("href"),
              (String) entry.get("title"),
              (String) entry.get("day"),
              (String) entry.get("hours"),
              named(entry, "phases"),
              named(entry, "materials"),
              words("lessons", i),
              words("captions", i),
              String.join(" ", words("texts", i))));
    }
    return entries;
  }

  private List<String> named(Map<?, ?> entry, String field) {
    return ((List<?>) entry.get(field)).stream().map(n -> names(field).get((Integer) n)).toList();
  }

  private List<String> words(String field, int entry) {
    String[] words = ((String) data.get("words")).split(" ", -1);
    String[] gaps = ((String) data.get(field)).split(" ", -1);
    assertEquals(words.length, gaps.length, field);
    SortedSet<String> found = new TreeSet<>();
    for (int i = 0; i < words.length; i++) {
      if (numbers(gaps[i]).contains(entry)) {
        found.add(words[i]);
      }
    }
    return List.copyOf(found);
  }

  private static List<Integer> numbers(String gaps) {
    List<Integer> numbers = new ArrayList<>();
    int before = -1;
    int gap = 0;
    for (char digit : gaps.toCharArray()) {
      int value = DIGITS.indexOf(digit);
      gap = gap << 5 | value & 31;
      if (value >> 5 == 0) {
        before += gap + 1;
        numbers.add(before);
        gap = 0;
      }
    }
    return numbers;
  }
}
