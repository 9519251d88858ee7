package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ribband.cli.InMemory.Run;

/** Whatever is typed, mix and boards tell a figure or what to write, and never fail. */
class ShopOfBadWordsTest {
  /** What fits nothing, or little. */
  static final List<String> HOSTILE =
      List.of(
          "2 oz",
          "0 in",
          "0 ml",
          "-3 ft",
          "1",
          "",
          " ",
          "-",
          "\u202e",
          "\n",
          "½",
          "1e9",
          "1/0 in",
          "999999999999 ft",
          "0.000000001 mm",
          "999999999 m",
          "100000",
          "1,5 m",
          "-58 F",
          "101%");

  private static final List<String> LENGTHS =
      List.of("1/2 in", "8 ft", "99 m", "0.1 mm", "7 ft 6 1/64 in", "0.3 in");
  private static final List<String> AMOUNTS =
      List.of("3 fl oz", "1/3 gal", "0.001 ml", "90 g", "999 kg", "0.000000001 tsp");
  private static final List<String> SHARES = List.of("0.01%", "10%", "100%");
  private static final List<String> COUNTS = List.of("1", "2", "99999");
  private static final List<String> DEGREES = List.of("61 F", "16 C", "-58 F", "211 F");
  private static final List<String> TIMES = List.of("1 min", "90 min", "3650 days", "1/60 min");
  private static final List<String> RATIOS =
      List.of("2 to 1", "9999.9999 to 0.0001", "0.0001:9999", "1 to 1");

  private static final Map<String, List<String>> MIX =
      Map.ofEntries(
          Map.entry("--area", List.of("2 in x 8 ft", "0.000000001 in2", "9 m2", "99 yd2")),
          Map.entry("--amount", AMOUNTS),
          Map.entry("--cloth", List.of("6 oz per yd2", "0.000001 g per 999999999 m2")),
          Map.entry("--pieces", COUNTS),
          Map.entry("--waste", SHARES),
          Map.entry("--temperature", List.of("61 F", "16 C", "70 F for 1 min then 20 C")),
          Map.entry("--takes", TIMES),
          Map.entry("--step", AMOUNTS),
          Map.entry("--ratio", RATIOS),
          Map.entry("--densities", RATIOS),
          Map.entry("--spread", List.of("140 in2 per fl oz", "9999 m2 per 0.001 ml", "1 m2 per g")),
          Map.entry("--rated-at", DEGREES),
          Map.entry("--coldest", DEGREES),
          Map.entry("--pot-life", TIMES),
          Map.entry("--open-time", TIMES),
          Map.entry("--soft-for", TIMES),
          Map.entry("--clamp-time", TIMES),
          Map.entry("--units", List.of("us", "metric")),
          Map.entry("--format", List.of("csv", "json", "table")));

  private static final Map<String, List<String>> BOARDS =
      Map.ofEntries(
          Map.entry(
              "--board",
              List.of("6 in x 12 ft", "0.1 mm x 0.1 mm", "99/4 x 100 m x 100 m", "5 in x 8 ft")),
          Map.entry("--strip", LENGTHS),
          Map.entry("--kerf", List.of("1/8 in", "0 mm", "0.1 in", "3 mm", "99 m")),
          Map.entry("--need", COUNTS),
          Map.entry("--spare", SHARES),
          Map.entry("--length", LENGTHS),
          Map.entry("--scarf", List.of("8:1", "1:1", "99:1")),
          Map.entry("--thick", LENGTHS),
          Map.entry("--units", List.of("us", "metric")),
          Map.entry("--format", List.of("csv", "json", "table")));

  @TempDir Path folder;

  static IntStream seeds() {
    return IntStream.range(0, 40);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void noLineIsADefect(int seed) {
    Random random = new Random(seed);
    int reckoned = 0;
    for (int i = 0; i < 15; i++) {
      List<String> mix = new ArrayList<>(List.of("mix"));
      add(mix, random, MIX, List.of(random.nextBoolean() ? "--area" : "--amount"));
      add(mix, random, MIX, some(random, MIX));
      reckoned += 1 - run(mix, seed) / 2;
      List<String> boards = new ArrayList<>(List.of("boards"));
      add(boards, random, BOARDS, List.of("--board", "--strip", "--kerf"));
      add(boards, random, BOARDS, some(random, BOARDS));
      reckoned += 1 - run(boards, seed) / 2;
    }
    assertTrue(reckoned > 3, "seed " + seed + " reckoned through " + reckoned + " of 30");
  }

  /** A figure on one stream, or what to write on the other. */
  private int run(List<String> line, int seed) {
    Run run = new InMemory(folder).run(line.toArray(String[]::new));
    String told = "seed " + seed + ": " + line + "\n" + run;
    assertTrue(run.code() == 0 || run.code() == 2, told);
    assertEquals(run.code() == 0, run.err().isEmpty(), told);
    assertEquals(run.code() == 0, !run.out().isEmpty(), told);
    assertTrue(
        run.err().lines().allMatch(l -> l.startsWith("ribband: ") || l.startsWith("how to ")),
        told);
    return run.code();
  }

  private static List<String> some(Random random, Map<String, List<String>> options) {
    List<String> names = new ArrayList<>(new TreeSet<>(options.keySet()));
    Collections.shuffle(names, random);
    return names.subList(0, random.nextInt(6));
  }

  private static void add(
      List<String> line, Random random, Map<String, List<String>> options, List<String> names) {
    for (String name : names) {
      if (line.stream().noneMatch(word -> word.startsWith(name + "="))) {
        List<String> values = random.nextInt(12) == 0 ? HOSTILE : options.get(name);
        line.add(name + "=" + values.get(random.nextInt(values.size())));
      }
    }
  }
}
