package ribband.prose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import ribband.problem.Problem;
import ribband.problem.Problems;

/** Texts no builder writes end in one problem or in proper HTML, never in a hang or a crash. */
class BoundsTest {
  private static final String DEEP =
      "the text is nested too deep here; take out some quote or list marks, stars or brackets";

  static Stream<Arguments> refused() {
    Map<String, String> cases = new TreeMap<>();
    cases.put("x\n[" + "\\".repeat(40), ":2: error: 40 times \"\\\" in a row; at most 30 are read");
    cases.put(
        "x\n" + growingTicks(400), ":2: error: 201 times \"`\" in a row; at most 200 are read");
    cases.put("*".repeat(3200), ":1: error: 3200 times \"*\" in a row; at most 200 are read");
    cases.put("_".repeat(201) + "a", ":1: error: 201 times \"_\" in a row; at most 200 are read");
    cases.put("x\n\n" + "[".repeat(61), ":3: error: 61 times \"[\" in a row; at most 60 are read");
    cases.put("x\n" + ">".repeat(800), ":2: error: " + DEEP);
    cases.put("> ".repeat(1600) + "a", ":1: error: " + DEEP);
    cases.put("- ".repeat(61) + "a", ":1: error: " + DEEP);
    cases.put("1. ".repeat(61) + "a", ":1: error: " + DEEP);
    cases.put("x\n\n" + nestedList("- ", 200), ":52: error: " + DEEP);
    cases.put(nestedList("1. ", 200).replace("  ", "   "), ":50: error: " + DEEP);
    cases.put("x\n\n" + "*a **a ".repeat(500) + "b" + " a** a*".repeat(500), ":3: error: " + DEEP);
    cases.put("![a ".repeat(500) + "](u)".repeat(500), ":1: error: " + DEEP);
    String crowded = ": error: more than 2000 times \"[\" in one paragraph; part it by empty lines";
    cases.put("x\n\n" + "[ (](".repeat(20000), ":3" + crowded);
    cases.put("![[]()".repeat(10000), ":1" + crowded);
    cases.put("[a]: u\n".repeat(2001), ":2001" + crowded);
    cases.put("**x".repeat(100) + "[a](b)".repeat(10000), ":1" + crowded);
    cases.put(
        "a".repeat((1 << 20) + 1),
        ":1: error: the text is longer than 1 MiB; split the entry into several");
    return cases.entrySet().stream().map(c -> Arguments.of(c.getKey(), c.getValue()));
  }

  @ParameterizedTest
  @MethodSource("refused")
  void refusedWithOneProblemAtItsLine(String text, String problem) {
    Read read = Read.of(text);
    assertEquals(List.of("e.md" + problem), read.problems());
    assertEquals("", read.html());
    assertEquals("", read.manuscript().words());
  }

  static Stream<String> read() {
    return Stream.of(
        "[" + "\\".repeat(30),
        "[" + "\\a".repeat(2000),
        "[" + "\\!".repeat(2000),
        "[a](b \"" + "\\!".repeat(2000),
        "[a]: b \"" + "\\!".repeat(2000),
        "[a]: b (" + "\\!".repeat(2000),
        "[a](<" + "\\!".repeat(2000) + " x",
        growingTicks(190),
        "`".repeat(200) + "a",
        "*".repeat(150) + "a" + "*".repeat(150),
        "[a](".repeat(2000),
        "![".repeat(2000),
        "![a](".repeat(2000),
        "[a".repeat(2000),
        "[a ".repeat(2000) + "](u)".repeat(2000),
        "[".repeat(59) + "a" + "]".repeat(59),
        "[ ".repeat(2000) + "a" + " ]".repeat(2000),
        "[^".repeat(2000),
        "[^a]\n\n" + "[^a]: ".repeat(60),
        "a**b".repeat(5000),
        "*a _b ".repeat(5000),
        "**x [a*b**c*](d)".repeat(500),
        "*_".repeat(5000) + "a" + "_*".repeat(5000),
        "> ".repeat(60) + "a",
        (">".repeat(58) + "a\n").repeat(200),
        nestedList("- ", 40),
        "< ".repeat(20000),
        "<a b='".repeat(5000),
        "a<!--".repeat(5000),
        "a<!-" + "- a".repeat(5000),
        "a<?".repeat(3000),
        "&a".repeat(20000),
        "|a".repeat(2000) + "\n" + "|-".repeat(2000) + "\n",
        "a|b\n" + "-".repeat(50000) + "x\n",
        "a\n" + "| - ".repeat(5000) + "x\n",
        "www.".repeat(500),
        "a.".repeat(2000) + "@",
        "<" + "a.".repeat(2000) + "@b",
        "#".repeat(20000),
        "# " + "#".repeat(20000) + "x",
        "a" + " ".repeat(100000) + "b",
        "\t".repeat(50000) + "b",
        "a\n".repeat(20000) + "===",
        "\0".repeat(10000),
        "a" + "\r".repeat(10000) + "b",
        "\ud800 \udc00 \ud800",
        "{{".repeat(20000),
        // The kinds of cmark's own pathological tests, from memory, that stand nowhere above.
        "a_ ".repeat(10000),
        "_a ".repeat(10000),
        "a** ".repeat(10000),
        "*a_ ".repeat(10000),
        "a]".repeat(10000),
        "[ (](".repeat(1500),
        "![[]()".repeat(1000),
        "**x".repeat(100) + "[a](b)".repeat(1500),
        "[a](<b".repeat(2000),
        "<![CDATA[".repeat(1000),
        "<!A ".repeat(5000),
        "[a]: u\n".repeat(1000) + "[a] ".repeat(1000),
        "[^a]".repeat(2000) + "\n\n[^a]: b\n",
        "~a ".repeat(10000),
        "- a\n\n".repeat(5000),
        "> a\nb\n\n".repeat(5000));
  }

  @ParameterizedTest
  @MethodSource("read")
  void readAsProperHtml(String text) {
    Read read = Read.of(text);
    assertTrue(
        read.problems().stream().noneMatch(p -> p.contains(": error: ")),
        read.problems()::toString);
    assertTrue(read.html().startsWith("<") && read.html().endsWith(">\n"), read.html());
  }

  private static final String LONG = ("[a](b.md) &amp; ".repeat(2000) + "\n\n").repeat(26);

  /** All that may stand in one text; the deadline is short here to be met. */
  @Test
  void deadlineEndsInOneProblem() {
    Problems problems = new Problems();
    Manuscript manuscript =
        new Prose(Duration.ofMillis(100)).read(new Body("e.md", 7, LONG), problems);
    assertEquals(
        List.of("e.md:7: error: reading this text took too long; shorten or simplify it"),
        problems.sorted().stream().map(Problem::toString).toList());
    assertEquals(List.of(), manuscript.mentions());
  }

  @Test
  void readerGoesOnAfterADeadline() {
    Prose prose = new Prose(Duration.ofSeconds(1));
    prose.read(new Body("e.md", 1, LONG), new Problems());
    Problems problems = new Problems();
    Manuscript manuscript = prose.read(new Body("e.md", 1, "fine"), problems);
    assertEquals("<p>fine</p>\n", prose.html(manuscript, Read.SITE));
    assertFalse(problems.errors() > 0);
  }

  private static String growingTicks(int longest) {
    StringBuilder text = new StringBuilder();
    for (int i = 1; i <= longest; i++) {
      text.append("e").append("`".repeat(i));
    }
    return text.toString();
  }

  private static String nestedList(String mark, int levels) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < levels; i++) {
      text.append("  ".repeat(i)).append(mark).append("a\n");
    }
    return text.toString();
  }
}
