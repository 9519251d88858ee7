package ribband.telling;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.album.Album;
import ribband.ledger.Ledger;
import ribband.photo.Darkroom;
import ribband.photo.PictureFacts;
import ribband.site.Templates;

/** The papers' folder: its files, its prints and its receipts. */
class PapersTest {
  @TempDir private Path scratch;
  private Teal teal;

  @BeforeEach
  void lay() throws IOException {
    teal = new Teal(scratch.resolve("journal"));
    teal.with(
            "project.yaml",
            "name: Teal\nwhat: An invented dinghy\ncurrency: USD\nphases: [planking]\n")
        .with("receipts/a.txt", "paid")
        .picture("a.png", 700)
        .entry(
            "2026-03-14-a",
            """
            phase: planking
            hours: 2
            photos: [a.png]
            materials:
              bought:
                - {item: rivets, cost: 4.00, receipt: receipts/a.txt}
                - {item: roves, cost: 5.00, receipt: receipts/gone.txt}
            """);
  }

  @Test
  void thePageAndWhatItIsDrawnWith() throws IOException {
    Map<String, byte[]> files = teal.papers().files("ribband 1.2.3");
    assertEquals(
        List.of(
            "look/fonts.css",
            "look/ribband.css",
            "look/papers.css",
            "look/icon.svg",
            "look/fonts-licence.txt",
            "papers.html"),
        List.copyOf(files.keySet()));
    for (String name : List.of("fonts.css", "ribband.css", "papers.css", "icon.svg")) {
      assertArrayEquals(Templates.asset("assets/" + name), files.get("look/" + name), name);
    }
    Document page = Jsoup.parse(new String(files.get("papers.html"), StandardCharsets.UTF_8));
    assertEquals("Papers of Teal", page.title());
    assertEquals(
        List.of("Boat Teal", "She is An invented dinghy", "Sheet Papers", "As of 14 March 2026"),
        page.select(".titleblock .cell").eachText());
    assertEquals(
        List.of("14 March 2026 rivets Planking 001 $4.00"),
        page.select("section[aria-labelledby=purchases] tbody tr:contains(rivets)").eachText());
  }

  @Test
  void printsAreNamedByTheirPictureAndWidth() throws IOException {
    List<PictureFacts> pictures = teal.papers().pictures();
    assertEquals(List.of(700), pictures.stream().map(PictureFacts::width).toList());
    PictureFacts facts = pictures.get(0);
    String print = Darkroom.stem(facts) + "-700.jpg";
    assertEquals(print, Papers.print(facts));
    assertEquals("pictures/" + print, Papers.printPath(facts));
  }

  @Test
  void receiptsAreThoseThatAreThere() throws IOException {
    Papers papers = teal.papers();
    assertEquals(
        List.of("receipts/001-a.txt"), papers.receipts().stream().map(Receipt::path).toList());
    assertEquals(1, papers.missing());
  }

  @Test
  void aLedgerOfAnotherSumIsRefused() throws IOException {
    Album album = teal.album();
    Ledger other = Ledger.of(teal.entry("2026-03-15-b", "phase: planking\ncost: 1.00\n").journal());
    IllegalStateException refused =
        assertThrows(
            IllegalStateException.class,
            () -> new Papers(album, other, Teal.stock(album.journal())));
    assertEquals(
        "purchases come to Money[minor=900], the ledger to Money[minor=1000]",
        refused.getMessage());
  }
}
