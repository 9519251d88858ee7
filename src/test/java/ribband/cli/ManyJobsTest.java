package ribband.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory.Run;

/** Four hundred jobs, noted in four entries in no order, most of them after up to three others. */
class ManyJobsTest {
  private static final int JOBS = 400;

  @TempDir Path folder;
  private final Map<String, Set<String>> after = new LinkedHashMap<>();
  private InMemory memory;

  @BeforeEach
  void tangle() throws IOException {
    Random random = new Random(5);
    List<String> ids = new ArrayList<>();
    for (int i = 0; i < JOBS; i++) {
      ids.add("job-" + (100 + i));
    }
    Collections.shuffle(ids, random);
    for (int i = 0; i < JOBS; i++) {
      Set<String> before = new LinkedHashSet<>();
      for (int n = i == 0 ? 0 : random.nextInt(4); n > 0; n--) {
        before.add(ids.get(random.nextInt(i)));
      }
      after.put(ids.get(i), before);
    }
    List<String> noted = new ArrayList<>(ids);
    Collections.shuffle(noted, random);
    memory = new InMemory(folder).with("project.yaml", "name: Dunlin\nphases: [fairing]\n");
    for (int night = 0; night < 4; night++) {
      String todo =
          noted.subList(night * 100, night * 100 + 100).stream()
              .map(id -> "  - {id: " + id + ", after: " + after.get(id) + ", hours: 1}\n")
              .collect(Collectors.joining());
      memory.with(
          "2026-05-0" + (night + 1) + ".md",
          "---\nhours: 2\nphase: fairing\ntodo:\n" + todo + "---\nFaired.\n");
    }
  }

  /** By the book: again and again the smallest of those that wait for nothing any more. */
  private List<String> smallestFirst() {
    List<String> order = new ArrayList<>();
    TreeSet<String> rest = new TreeSet<>(after.keySet());
    while (!rest.isEmpty()) {
      String next =
          rest.stream().filter(id -> order.containsAll(after.get(id))).findFirst().orElseThrow();
      order.add(next);
      rest.remove(next);
    }
    return order;
  }

  private boolean isReady(String id) {
    return after.get(id).isEmpty();
  }

  /** As many nights as jobs follow each other, each of them a night. */
  private int longest() {
    Map<String, Integer> nights = new LinkedHashMap<>();
    after.forEach(
        (id, before) -> nights.put(id, 1 + before.stream().mapToInt(nights::get).max().orElse(0)));
    return Collections.max(nights.values());
  }

  @Test
  void standInTheOrderOfWork() {
    Run run = memory.run("ahead", "-q", "--format", "csv");
    assertEquals("", run.err());
    assertEquals(smallestFirst(), run.out().lines().skip(1).map(row -> row.split(",")[0]).toList());
  }

  @Test
  void fitTheScreen() {
    Run run = memory.run("ahead", "-q");
    assertEquals("", run.err());
    assertEquals(0, run.code());
    assertTrue(run.out().lines().allMatch(line -> line.length() <= 80), run.out());
    assertTrue(
        run.out().contains("The longest chain: " + longest() + " nights in a row\n"), run.out());
    after
        .keySet()
        .forEach(id -> assertTrue(run.out().contains("\n  " + id + ": 1 hour"), () -> id));
  }

  /** A hundred of each state; the terminal tells all. */
  @Test
  void areCountedOnThePage() throws IOException {
    Run run = memory.run("publish", "-q");
    assertEquals("", run.err());
    assertEquals(0, run.code());
    Document page = Jsoup.parse(Files.readString(folder.resolve("site").resolve("ahead.html")));
    List<String> jobs = page.select("ul.jobs > li > a").eachText();
    List<String> order = smallestFirst();
    List<String> listed = new ArrayList<>(order.stream().filter(this::isReady).limit(100).toList());
    listed.addAll(order.stream().filter(id -> !isReady(id)).limit(100).toList());
    assertEquals(listed, jobs);
    assertEquals(
        "And " + (JOBS - jobs.size()) + " more, not listed.",
        page.select("section:has(#jobs) > p").text());
    assertEquals(longest(), page.select("ol.chain > li").size());
  }
}
