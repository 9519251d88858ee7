package ribband.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;

/** All sheets as the templates print them. */
class ProofTest {
  private static final Pattern SVG = Pattern.compile("<svg.*?</svg>", Pattern.DOTALL);
  private static final List<String> COORDINATES =
      List.of("x", "y", "width", "height", "cx", "cy", "r", "d", "viewBox");

  private static String page;
  private static Document document;

  @BeforeAll
  static void print() throws Exception {
    page = new Proof().page("light", Sheets.all());
    document = Jsoup.parse(page);
  }

  @Test
  void everySheetIsPrintedToBeLookedAt() throws Exception {
    Path folder = Path.of("target", "chart-proof");
    new Proof().print(folder);
    assertEquals(page, Files.readString(folder.resolve("light.html")));
  }

  @Test
  void twicePrintedIsTheSame() throws Exception {
    assertEquals(page, new Proof().page("light", Sheets.all()));
  }

  @Test
  void everyDrawingIsXml() throws Exception {
    Matcher drawing = SVG.matcher(page);
    int drawings = 0;
    for (; drawing.find(); drawings++) {
      DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new InputSource(new StringReader(drawing.group())));
    }
    assertEquals(3 * Sheets.all().size(), drawings);
  }

  @Test
  void everyDrawingIsNamedAndDescribedByIdsOfItsOwn() {
    Set<String> ids = new HashSet<>();
    document.select("[id]").forEach(element -> assertTrue(ids.add(element.id()), element.id()));
    for (Element svg : document.select("svg[role=img]")) {
      String[] words = svg.attr("aria-labelledby").split(" ");
      assertEquals("title", document.getElementById(words[0]).tagName());
      assertEquals("desc", document.getElementById(words[1]).tagName());
    }
  }

  @Test
  void noStyleIsInlineAndNothingRuns() {
    assertFalse(page.contains("style="));
    assertFalse(page.contains("<script") || page.contains("<style"));
  }

  @Test
  void coordinatesAreWholeNumbers() {
    for (Element svg : document.select("svg[role=img]")) {
      for (Element element : svg.getAllElements()) {
        for (String name : COORDINATES) {
          assertFalse(element.attr(name).contains("."), element::outerHtml);
        }
      }
    }
  }

  @Test
  void everyRectangleAndLetteringBeginsOnItsSheet() {
    for (Element svg : document.select("svg[role=img]")) {
      int[] sheet =
          Arrays.stream(svg.attr("viewBox").split(" ")).mapToInt(Integer::parseInt).toArray();
      for (Element element : svg.select("rect, text")) {
        int x = Integer.parseInt(element.attr("x"));
        int y = Integer.parseInt(element.attr("y"));
        assertTrue(x >= 0 && x <= sheet[2] && y >= 0 && y <= sheet[3], element::outerHtml);
      }
    }
  }

  /** By widths that are guessed high; the browser's own are lower. */
  @Test
  void noLetteringLiesOnOtherLetteringOrLeavesItsSheet() {
    for (Element svg : document.select("svg[role=img]")) {
      int width = Integer.parseInt(svg.attr("viewBox").split(" ")[2]);
      List<Element> texts = svg.select("text");
      List<Box> boxes = texts.stream().map(ProofTest::box).toList();
      for (int i = 0; i < boxes.size(); i++) {
        Element text = texts.get(i);
        assertTrue(boxes.get(i).left() >= -1 && boxes.get(i).right() <= width + 1, text::outerHtml);
        for (int k = 0; k < i; k++) {
          Element other = texts.get(k);
          assertFalse(
              boxes.get(i).overlaps(boxes.get(k)),
              () -> text.outerHtml() + " on " + other.outerHtml() + svg.select("title").text());
        }
      }
    }
  }

  private static Box box(Element text) {
    Label.Anchor anchor =
        switch (text.attr("text-anchor")) {
          case "middle" -> Label.Anchor.MIDDLE;
          case "end" -> Label.Anchor.END;
          default -> Label.Anchor.START;
        };
    int x = Integer.parseInt(text.attr("x"));
    Label label = new Label(x, Integer.parseInt(text.attr("y")), anchor, text.text());
    Box box = text.hasClass("chart-total") ? label.largeBox() : label.box();
    // Lines of lettering may touch.
    return new Box(
        box.left() + 1, box.top() + 3, Math.max(box.left() + 1, box.right() - 1), box.bottom() - 3);
  }

  @Test
  void tablesTellWhatTheChartsHold() {
    List<Element> tables = new ArrayList<>(document.select("figure table"));
    List<Table> held =
        Sheets.all().stream()
            .map(Sheets.Sheet::chart)
            .filter(Chart.class::isInstance)
            .map(chart -> ((Chart<?>) chart).table())
            .toList();
    assertEquals(held.size(), tables.size());
    for (int i = 0; i < held.size(); i++) {
      Table table = held.get(i);
      List<List<String>> expected =
          Stream.concat(
                  Stream.of(line(table.corner(), table.heads())),
                  Stream.concat(table.rows().stream(), table.foot().stream())
                      .map(row -> line(row.head(), row.cells())))
              .toList();
      List<List<String>> printed =
          tables.get(i).select("tr").stream()
              .map(row -> row.children().stream().map(Element::text).toList())
              .toList();
      assertEquals(expected, printed);
      assertTrue(tables.get(i).select("th:not([scope])").isEmpty());
    }
  }

  private static List<String> line(String head, List<String> cells) {
    return Stream.concat(Stream.of(head), cells.stream()).toList();
  }
}
