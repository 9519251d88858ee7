package ribband.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ribband.journal.Entry;

/** Words come back from the journal's own reader as they are. */
class YamlTest {
  @TempDir private Path folder;

  /** As a value, as a name in a block, and in braces, where YAML takes more signs for its own. */
  private void comesBack(String words) throws IOException {
    String text = Yaml.text(words);
    Desk desk =
        new Desk(folder)
            .with("project.yaml", "name: x", "currency: USD")
            .entry(
                "2026-03-14.md",
                "title: " + text,
                "materials:",
                "  used: {" + text + ": 2}",
                "  bought:",
                "    - item: " + text,
                "      cost: 1.00",
                "    - {item: " + text + ", cost: 1.00}",
                "lesson: [" + text + ", x]");
    assertEquals(List.of(), desk.problems().stream().filter(p -> !p.contains("unsorted")).toList());
    Entry entry = desk.journal().entries().get(0);
    assertEquals(words, entry.title());
    assertEquals(words, entry.used().get(0).material());
    assertEquals(words, entry.outlays().get(0).purchase().orElseThrow().what());
    assertEquals(words, entry.outlays().get(1).purchase().orElseThrow().what());
    assertEquals(List.of(words, "x"), entry.lessons());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "garboard",
        "Plank #3 on",
        "#3",
        "a: b",
        "a:",
        ": b",
        "- a",
        "-",
        "? a",
        "[a]",
        "{a: b}",
        "a, b",
        "'a'",
        "it's",
        "''",
        "\"a\"",
        "a \"b\" c",
        "back\\slash",
        "\\n",
        "&a",
        "*a",
        "!a",
        "|",
        ">",
        "%a",
        "@a",
        "`a`",
        "null",
        "Null",
        "~",
        "true",
        "YES",
        "no",
        "Off",
        "y",
        "2:45",
        "12",
        "0x1F",
        "1e3",
        ".5",
        "1_000",
        ".inf",
        "2026-03-14",
        "---",
        "--- a",
        "...",
        "=",
        "a -b",
        "a (b)",
        "Größe",
        "船",
        "e\u0301",
        "😀 plank",
        "½ in ply",
        "{{ x }}",
        "a #",
        "a# b",
        "x\u00a0y"
      })
  void anyWordsComeBack(String words) throws IOException {
    comesBack(words);
  }

  @Test
  void quotesStandOnlyWhereTheyAreNeeded() {
    assertEquals("Garboards on", Yaml.text("Garboards on"));
    assertEquals("Über 3 (port)", Yaml.text("Über 3 (port)"));
    assertEquals("IMG_2031.JPG", Yaml.text("IMG_2031.JPG"));
    assertEquals("receipts/a-b.pdf", Yaml.text("receipts/a-b.pdf"));
    assertEquals("'it''s'", Yaml.text("it's"));
    assertEquals("'on'", Yaml.text("on"));
    assertEquals("once", Yaml.text("once"));
    assertEquals("'3 planks'", Yaml.text("3 planks"));
    assertEquals("'a, b'", Yaml.text("a, b"));
  }

  @Test
  void whatAFileMayNotHoldIsASpace() throws IOException {
    String unseen =
        "\u0000\u0007\t\n\r\u001b\u007f\u0085\u0090\u009f\u2028\u2029\ufeff\ufffe\uffff\udfff\ud800"
            + "\u202a\u202e\u2066\u2069";
    unseen
        .chars()
        .forEach(letter -> assertEquals("a b", Yaml.text("a" + (char) letter + "b"), letter + ""));
    assertEquals("a b", Yaml.text("\n a" + unseen + "b\u2029 "));
    assertEquals("''", Yaml.text("\n"));
    comesBack("a b");
  }

  @Test
  void anyMixOfSignsComesBack() throws IOException {
    String[] parts = {
      "a", "Z", "1", "ü", " ", ":", "#", "'", "\"", "-", "{", "}", "[", "]", ",", "&", "*", "!",
      "|", ">", "%", "@", "`", "\\", "?", "~", ".", "=", "/", "(", ")", "+", "_"
    };
    Random random = new Random(14);
    for (int run = 0; run < 300; run++) {
      StringBuilder words = new StringBuilder();
      int length = 1 + random.nextInt(8);
      for (int i = 0; i < length; i++) {
        words.append(parts[random.nextInt(parts.length)]);
      }
      String line = words.toString().replaceAll(" +", " ").strip();
      if (!line.isEmpty()) {
        comesBack(line);
      }
    }
  }
}
