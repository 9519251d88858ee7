package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory;
import ribband.site.ReadBack;
import ribband.site.SearchEntry;

/** What a search of a published site looks at. */
class SearchTest {
  @TempDir private Path folder;

  @BeforeEach
  void write() throws IOException {
    FullJournal.write(folder);
  }

  private ReadBack search() throws IOException {
    String script = new Builder(folder).publish().text("search.js");
    return ReadBack.of(script.getBytes(StandardCharsets.UTF_8));
  }

  private static String sorted(String words) {
    return Arrays.stream(words.split(" ")).sorted().distinct().collect(Collectors.joining(" "));
  }

  @Test
  void shownEntriesStandInItTheNewestFirst() throws IOException {
    ReadBack search = search();

    assertEquals(
        List.of(
            "entries/2026-05-01-fair.html",
            "entries/2026-03-20-refund.html",
            "entries/2026-03-14-garboards.html",
            "entries/2026-01-16.html",
            "entries/2026-01-15-strongback.html"),
        search.entries().stream().map(SearchEntry::href).toList());
    assertEquals(List.of("Moulds and strongback", "Planking", "Fairing"), search.names("phases"));
    assertEquals(
        new SearchEntry(
            "entries/2026-03-14-garboards.html",
            "Garboards on, both & <sides>",
            "14 March 2026",
            "4 hours",
            List.of("Planking", "Fairing"),
            List.of("epoxy", "ring nails", "sanding discs"),
            List.of("before", "clamp", "dry", "every", "fit", "opening", "resin", "the", "with"),
            List.of("close", "first", "plank", "the", "twist"),
            sorted(
                "the first planks twist at the stem planks and nails rivets https example org"
                    + " rivets what went wrong dry fit wipe the squeeze out strake port starboard"
                    + " garboard 96 in 96 in the twist close"
                    + " averyveryveryveryveryveryveryveryveryveryverylongwordthatdoesnotbreakanywhereatall"
                    + " some code that is rather long and goes on beyond the edge of a phone"
                    + " held upright a deeper head one two")),
        search.entries().get(2));
  }

  @Test
  void sixtyWordsOfATextAreLookedAt() throws IOException {
    String words =
        IntStream.rangeClosed(1, 70).mapToObj(i -> "word" + i).collect(Collectors.joining(" "));
    new InMemory(folder)
        .with("2026/2026-06-01-long.md", "---\nphase: fairing\n---\n**" + words + "**\n");

    SearchEntry entry = search().entries().get(0);

    assertEquals("Fairing", String.join("|", entry.phases()));
    assertEquals("", entry.hours());
    assertTrue(entry.text().contains("word60"), entry.text());
    assertFalse(entry.text().contains("word61"), entry.text());
  }

  @Test
  void noAmountNoReceiptAndNothingPrivateStandsInIt() throws IOException {
    String script = new Builder(folder).publish().text("search.js");

    for (String kept :
        List.of(
            "88.2",
            "64.5",
            "23.7",
            "120.0",
            "USD",
            "$",
            "0314",
            "chandlery",
            "ecretly",
            "idden",
            "2026-03-15")) {
      assertFalse(script.contains(kept), kept);
    }
  }

  @Test
  void sevenEntriesOfOneWordDifferInNothingElse() throws IOException {
    for (int day = 10; day < 17; day++) {
      new InMemory(folder)
          .with("2026/2026-07-" + day + ".md", "---\nphase: fairing\n---\nbattens " + day + "\n");
    }
    List<String> texts = search().entries().stream().limit(7).map(SearchEntry::text).toList();

    List<String> expected =
        IntStream.range(10, 17).mapToObj(day -> day + " battens").collect(Collectors.toList());
    Collections.reverse(expected);
    assertEquals(expected, texts);
  }
}
