package ribband.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.code_intelligence.jazzer.junit.FuzzTest;
import com.vladsch.flexmark.ext.footnotes.FootnoteExtension;
import com.vladsch.flexmark.ext.gfm.strikethrough.StrikethroughSubscriptExtension;
import com.vladsch.flexmark.ext.gfm.tasklist.TaskListExtension;
import com.vladsch.flexmark.ext.tables.TablesExtension;
import com.vladsch.flexmark.html.HtmlRenderer;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.data.MutableDataSet;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.io.TempDir;
import ribband.journal.Journal;
import ribband.journal.JournalFolder;
import ribband.journal.JournalReader;
import ribband.ledger.Ledger;
import ribband.problem.Problem;
import ribband.recap.Recap;
import ribband.recap.Recaps;
import ribband.site.Templates;
import ribband.telling.RecapText;

/**
 * Whatever the boat, a phase, a job and an entry are called, a recap stays a line a fact: no line
 * steers anything, and as HTML or Markdown it reads the same and is made of nothing else than its
 * headings, paragraph and lists.
 */
class RecapFuzzTest {
  private static final MutableDataSet DIALECTS =
      new MutableDataSet()
          .set(
              Parser.EXTENSIONS,
              List.of(
                  TablesExtension.create(),
                  StrikethroughSubscriptExtension.create(),
                  TaskListExtension.create(),
                  FootnoteExtension.create()));
  private static final Parser PARSER = Parser.builder(DIALECTS).build();
  private static final HtmlRenderer RENDERER = HtmlRenderer.builder(DIALECTS).build();
  private static final Templates TEMPLATES = new Templates();

  @TempDir static Path folder;

  @FuzzTest(maxDuration = "12s")
  void recap(byte[] bytes) throws IOException {
    // In YAML's double quotes, so that its escapes stand for what cannot be typed.
    String[] names =
        (new String(bytes, StandardCharsets.UTF_8) + "\0\0\0\0").replace("\"", "").split("\0", -1);
    write(
        "project.yaml",
        "name: \""
            + names[0]
            + "\"\nphases: [{id: hull, title: \""
            + names[1]
            + "\"}]\npieces: {floors: {total: 4}}\n");
    write(
        "2026-01-02.md",
        "---\ntitle: \""
            + names[3]
            + "\"\nphase: hull\nhours: 2\npieces: {floors: 1}\ntodo: [{id: job, what: \""
            + names[2]
            + "\"}]\n---\n");
    write(
        "2026-01-03.md",
        "---\nphase: hull\nhours: 1\nprivate: true\ntitle: Unsaid\n"
            + "todo: [{id: unsaid, what: Unsaid}]\n---\n");
    JournalReader.Read read =
        JournalReader.read(
            JournalFolder.list(folder, folder.resolve("site")), LocalDate.of(2026, 3, 1));
    if (read.problems().stream().noneMatch(Problem::isError)) {
      tell(read.journal());
    }
  }

  private static void write(String file, String text) throws IOException {
    Files.writeString(folder.resolve(file), text, StandardCharsets.UTF_8);
  }

  private static void tell(Journal journal) {
    Recaps recaps = Recaps.of(journal, Ledger.of(journal));
    Recap recap = recaps.month(YearMonth.of(2026, 1)).orElseThrow();
    RecapText text = new RecapText(recap, recaps.next(recap));
    String plain = text.plain();
    List<String> lines = plain.lines().filter(line -> !line.isEmpty()).toList();
    for (String line : lines) {
      assertFalse(line.codePoints().anyMatch(RecapFuzzTest::steers), plain);
      assertFalse(line.contains("Unsaid"), plain);
    }
    assertEquals(lines, parts(text.html(TEMPLATES)));
    assertEquals(
        lines, parts(RENDERER.render(PARSER.parse(text.markdown()))), () -> text.markdown());
  }

  private static boolean steers(int c) {
    return Character.isISOControl(c)
        || c == 0x2028
        || c == 0x2029
        || c >= 0x202A && c <= 0x202E
        || c >= 0x2066 && c <= 0x2069;
  }

  /** The texts of all elements, none of which may be another than these. */
  private static List<String> parts(String html) {
    Element body = Jsoup.parse(html).body();
    assertEquals(List.of(), body.select("body *:not(h2, h3, p, ul, li)"), html);
    return body.select("h2, h3, p, li").stream().map(Element::wholeText).toList();
  }
}
