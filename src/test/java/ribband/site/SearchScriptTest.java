package ribband.site;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;

class SearchScriptTest {
  private static final SearchEntry GARBOARDS =
      new SearchEntry(
          "entries/2026-03-14-garboards.html",
          "Garboards on",
          "14 March 2026",
          "2¾ hours",
          List.of("Fairing", "Planking"),
          List.of("epoxy", "ring nails"),
          List.of("Dry-fit first.", "Wipe, dry."),
          List.of("The scarf"),
          "The first planks. The twist!");

  private static final SearchEntry LOFTING =
      new SearchEntry(
          "entries/2026-01-02.html",
          "Lofting",
          "2 January 2026",
          "",
          List.of("Extra"),
          List.of("epoxy"),
          List.of(),
          List.of(),
          "");

  private static String text(List<SearchEntry> entries, String... phases) {
    return new String(SearchScript.of(entries, List.of(phases)), StandardCharsets.UTF_8);
  }

  @Test
  void aScriptAssignsEntriesNamesAndWords() {
    assertEquals(
        """
        globalThis.ribbandSearch = {"entries":[\
        {"href":"entries/2026-03-14-garboards.html","title":"Garboards on","day":"14 March 2026",\
        "hours":"2¾ hours","phases":[1,0],"materials":[0,1]},\
        {"href":"entries/2026-01-02.html","title":"Lofting","day":"2 January 2026","hours":"",\
        "phases":[2],"materials":[0]}],\
        "phases":["Planking","Fairing","Extra"],"materials":["epoxy","ring nails"],\
        "words":"dry first fit planks scarf the twist wipe",\
        "lessons":"A A A     A","captions":"    A A  ","texts":" A  A  A A "};
        """,
        text(List.of(GARBOARDS, LOFTING), "Lofting and moulds", "Planking", "Fairing"));
  }

  @Test
  void aJournalWithoutEntriesHasAScriptToo() {
    assertEquals(
        "globalThis.ribbandSearch = {\"entries\":[],\"phases\":[],\"materials\":[],\"words\":\"\","
            + "\"lessons\":\"\",\"captions\":\"\",\"texts\":\"\"};\n",
        text(List.of(), "Planking"));
  }

  /** ECMA-262 names what ends a line; HTML, "Restrictions for contents of script elements". */
  @Test
  void noWordEndsTheScriptALineOrAnElement() throws IOException {
    String hostile = "</script><!--\u2028\u2029\u0000\u001b\u007f\u0085\u009f\"\\';\r\n\ufeffé😀";
    SearchEntry entry =
        new SearchEntry(
            hostile,
            hostile,
            hostile,
            hostile,
            List.of(hostile),
            List.of(hostile),
            List.of(),
            List.of(),
            "");

    byte[] script = SearchScript.of(List.of(entry), List.of());

    String body = new String(script, StandardCharsets.UTF_8).replaceFirst("\n$", "");
    assertTrue(body.chars().noneMatch(c -> c == '<' || Character.isISOControl(c)), body);
    assertTrue(body.chars().noneMatch(c -> c == 0x2028 || c == 0x2029), body);
    assertTrue(
        body.contains("\\u003C/script>\\u003C!--\\u2028\\u2029\\u0000\\u001B\\u007F\\u0085\\u009f"),
        body);
    assertEquals(List.of(entry), ReadBack.of(script).entries());
  }

  @Test
  void whatIsReadBackIsWhatWentIn() throws IOException {
    List<SearchEntry> read =
        ReadBack.of(SearchScript.of(List.of(LOFTING, GARBOARDS), List.of())).entries();

    assertEquals(LOFTING, read.get(0));
    assertEquals(List.of("dry", "first", "fit", "wipe"), read.get(1).lessons());
    assertEquals(List.of("scarf", "the"), read.get(1).captions());
    assertEquals("first planks the twist", read.get(1).text());
  }

  /** What a reader waits for when he first asks, packed as a host packs it. */
  @Test
  void aThousandFullEntriesAreUnderTwoHundredKilobytes() throws IOException {
    List<SearchEntry> entries = new ArrayList<>();
    Language language = new Language(7);
    for (int i = 0; i < 1000; i++) {
      entries.add(language.entry(i));
    }
    byte[] script = SearchScript.of(entries, List.of());
    assertArrayEquals(script, SearchScript.of(entries, List.of()));

    int all = packed(script);
    for (String asset : List.of("finder.js", "finder.css", "searcher.js", "minisearch.js")) {
      all += packed(Files.readAllBytes(Path.of("site-template/assets", asset)));
    }
    assertTrue(all < 200_000, all + " bytes");
    assertTrue(all > 120_000, all + " bytes: the language has become too plain");
  }

  private static int packed(byte[] content) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (GZIPOutputStream packing = new GZIPOutputStream(bytes)) {
      packing.write(content);
    }
    return bytes.size();
  }

  /**
   * Words as unlike each other as those of a natural language: the n-th comes once for n times the
   * first (Zipf's law). There are 10,000 of them: 78,000 words of English documentation, counted
   * for this, hold 8,000 different ones.
   */
  private static final class Language {
    private static final int WORDS = 10_000;
    private static final String[] SYLLABLES =
        ("plan gar lo mi ter ing ed scar fet ber no ra sti ven del ow un re con pro ta li ous ment"
                + " er al so wi ch th ea ou ck st ri ge po fa hu jo")
            .split(" ");

    private final Random random;
    private final List<String> words = new ArrayList<>();

    Language(long seed) {
      random = new Random(seed);
      for (int i = 0; i < WORDS; i++) {
        StringBuilder word = new StringBuilder();
        for (int rest = i + 1; rest > 0; rest /= SYLLABLES.length) {
          word.append(SYLLABLES[rest % SYLLABLES.length]);
        }
        words.add(word.toString());
      }
    }

    String words(int count) {
      StringBuilder said = new StringBuilder();
      for (int i = 0; i < count; i++) {
        // The inverse of a harmonic sum, which grows as a logarithm.
        int rank = (int) Math.exp(random.nextDouble() * Math.log(WORDS));
        said.append(i == 0 ? "" : " ").append(words.get(rank - 1));
      }
      return said.toString();
    }

    SearchEntry entry(int i) {
      String title = words(5);
      return new SearchEntry(
          "entries/2024-"
              + (10 + i % 3)
              + "-"
              + (10 + i % 20)
              + "-"
              + title.replace(' ', '-')
              + ".html",
          title,
          1 + i % 28 + " October " + (2022 + i / 250),
          i % 5 + "¾ hours",
          List.of("Phase " + i % 12, "Phase " + i % 11),
          List.of(
              "material " + random.nextInt(20),
              "stuff " + random.nextInt(20),
              "thing " + random.nextInt(20),
              "item " + random.nextInt(20)),
          List.of(words(15)),
          List.of(words(10), words(10), words(10)),
          words(60));
    }
  }
}
