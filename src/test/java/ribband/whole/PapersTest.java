package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import ribband.cli.InMemory;
import ribband.photo.Camera;

/** The papers say what the journal and its tallies say, and of private entries nothing. */
class PapersTest extends PapersRun {
  private static List<List<String>> figures(Document page, String heading) {
    return page.select("section[aria-labelledby=" + heading + "] tbody tr").stream()
        .map(row -> row.select("data").eachAttr("value"))
        .toList();
  }

  private List<List<String>> tally(String by, int... columns) {
    InMemory.Run run = journal().run("tally", "--by", by, "--format", "csv");
    List<List<String>> rows = new ArrayList<>();
    for (String line : run.out().lines().skip(1).toList()) {
      String[] cells = line.split(",", -1);
      List<String> row = new ArrayList<>();
      for (int column : columns) {
        row.add(cells[column]);
      }
      rows.add(row);
    }
    return rows;
  }

  @Test
  void figuresAreTheCellsOfTheTallies() throws IOException {
    FullJournal.write(folder);
    Document page = papers().page("papers.html");

    assertEquals(tally("phase", 2, 3), figures(page, "phases"));
    List<List<String>> months = new ArrayList<>(figures(page, "months"));
    assertEquals(List.of("3", "7.5", "61.20", "7.5", "61.20"), months.remove(0));
    assertEquals(tally("month", 1, 2, 3, 4, 5), months);
    List<String> totals = page.select("tfoot data").eachAttr("value");
    List<String> last = months.get(months.size() - 1);
    assertEquals(List.of(last.get(3), last.get(4), last.get(4)), totals);
    BigDecimal purchases =
        figures(page, "purchases").stream()
            .map(row -> new BigDecimal(row.get(0)))
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    assertEquals(last.get(4), purchases.toPlainString());
  }

  @Test
  void theWholePageInWords() throws IOException {
    FullJournal.write(folder);
    InMemory.Run run = run();
    assertEquals(
        "1 picture, 1 receipt, 18½ hours, $63.90\n" + into.resolve("papers.html") + "\n",
        run.out());
    Document page = new Published(into).page("papers.html");

    assertEquals("Papers of Wigeon", page.title());
    assertEquals(
        List.of(
            "Begun 2 January 2026",
            "First night with hours 15 January 2026",
            "Last night with hours 1 May 2026",
            "Nights with hours 5",
            "Sessions 8, 3 of them before this journal",
            "Hours in all 18½ hours",
            "Spent in all $63.90",
            "Of it before this journal 7½ hours and $61.20, through 10 January 2026",
            "Launched (by hand)"),
        page.select("dl.known > div").eachText());
    assertEquals(
        List.of(
            "Moulds and strongback 11:00 12:00 $85.70 $80.00",
            "Planking 4:20 40:00 −$45.50 $400.00",
            "Fairing 3:10 $23.70"),
        rows(page, "phases"));
    assertEquals(
        List.of(
            "Before From before this journal, not itemised Moulds and strongback $61.20",
            "15 January 2026 The strongback, not itemised Moulds and strongback $24.50",
            "14 March 2026 epoxy 2 of 1 qt the chandlery Planking 001 $64.50",
            "14 March 2026 sanding discs Fairing $23.70",
            "20 March 2026 Refund, not itemised Planking −$120.00",
            "March 2026 Not listed $10.00"),
        rows(page, "purchases"));
    assertEquals(
        List.of("001 receipts/0314.txt 14 March 2026 epoxy the chandlery $64.50"),
        rows(page, "receipts"));
    assertEquals(List.of("epoxy 2 fl oz 82 fl oz", "ring nails 40 160"), rows(page, "materials"));
    assertEquals(
        List.of(
            "14 March 2026 Garboard scarf joint epoxy 61 °F",
            "14 March 2026 Inside of the garboards coat epoxy 64 °F"),
        rows(page, "glue"));
    assertEquals(
        List.of("March 2026 · Planking · Fairing 14 March 2026. The first plank"),
        page.select(".plates li").eachText());
    assertTrue(page.text().contains("This is no legal form. Local law governs:"));
    assertTrue(page.select("script").isEmpty());
    assertEquals(7, page.select(".statement .blanks dd").size());
    assertEquals("", page.select(".blanks dd").text().strip());
  }

  private static List<String> rows(Document page, String heading) {
    return page.select("section[aria-labelledby=" + heading + "] tbody tr").eachText();
  }

  @Test
  void receiptsAreCopiedByteForByteUnderTheirNumbers() throws IOException {
    byte[] scan = new byte[100_000];
    for (int i = 0; i < scan.length; i++) {
      scan[i] = (byte) (i * 31 >> 3);
    }
    journal()
        .with("project.yaml", "name: Teal\ncurrency: USD\nphases: [planking]\n")
        .with("receipts/b.txt", "second")
        .with(
            "2026-01-02-a.md",
            closed(bought("receipts/scan 1.pdf", "5") + item("receipts/b.txt", "6")))
        .with(
            "2026-01-03-b.md",
            closed(bought("receipts/gone.pdf", "7") + item("receipts/scan 1.pdf", "8")))
        .with("2026-01-04-c.md", closed(bought("receipts/b.txt", "0")));
    Files.write(folder.resolve("receipts/scan 1.pdf"), scan);

    InMemory.Run run = run();
    assertEquals(0, run.code(), run.err());
    assertEquals(
        "2026-01-03-b.md:5:32: warning: receipt \"receipts/gone.pdf\" is not there; put the receipt"
            + " into receipts/ or name another\n1 warning in 3 entries\n",
        run.err());
    assertTrue(run.out().startsWith("0 pictures, 2 receipts, 1 named and not found, "), run.out());
    Published papers = new Published(into);
    Document page = papers.page("papers.html");
    assertEquals(
        List.of(
            "001 receipts/scan 1.pdf 2 January 2026; 3 January 2026 a thing; another the yard $13.00",
            "002 receipts/b.txt 2 January 2026; 4 January 2026 another; a thing the yard $6.00"),
        rows(page, "receipts"));
    assertEquals(
        List.of("receipts/gone.pdf: a thing, the yard, 3 January 2026, $7.00"),
        page.select("section[aria-labelledby=receipts] li").eachText());
    assertEquals(
        List.of("001", "002", "named, not found", "001", "002"),
        page.select("section[aria-labelledby=purchases] tbody td:nth-child(6)").eachText());
    assertEquals(
        List.of("receipts/001-scan-1.pdf", "receipts/002-b.txt"),
        papers.paths().stream().filter(path -> path.startsWith("receipts/")).toList());
    assertEquals(
        -1,
        Files.mismatch(
            folder.resolve("receipts/scan 1.pdf"), into.resolve("receipts/001-scan-1.pdf")));
    assertEquals("second", papers.text("receipts/002-b.txt"));
  }

  @Test
  void privateEntriesAreCountedAndInNoWordPictureOrReceipt() throws IOException {
    FullJournal.write(folder);
    journal()
        .with(
            "2026/2026-06-06-zebrafile.md",
            """
            ---
            title: Zebratitle
            phase: fairing
            hours: 1:15
            private: true
            materials:
              used: {zebramaterial: 3 ml}
              bought: [{item: zebraitem, cost: 17.17, from: zebraseller, receipt: receipts/zebra.txt}]
            joints: [{name: zebrajoint, temperature: 61 F}]
            coats: [{what: zebracoat}]
            todo: [{id: zebrajob, what: Zebrawork}]
            lesson: Zebralesson
            photos: [{file: zebraphoto.png, caption: Zebracaption, alt: Zebraalt, cover: true}]
            ---
            Zebratext.
            """)
        .with("receipts/zebra.txt", "zebrareceipt");
    FullJournal.picture(folder.resolve("2026/2026-06-06-zebrafile/zebraphoto.png"), 321, 213);

    Published papers = papers();
    Document page = papers.page("papers.html");
    for (String planted :
        List.of("zebra", "Zebra", "6 June", "2026-06-06", "15 March", "2026-03-15", "Secretly")) {
      // The one day that is told of any private entry, where it is the last: all is as of it.
      List<String> found = new ArrayList<>(papers.filesWith(planted));
      if (planted.equals("6 June")) {
        assertEquals(List.of("papers.html"), found);
        assertEquals(2, papers.text("papers.html").split("6 June 2026", -1).length - 1);
      } else {
        assertEquals(List.of(), found, planted);
      }
      assertTrue(papers.paths().stream().noneMatch(path -> path.contains(planted)), planted);
    }
    assertTrue(papers.paths().stream().noneMatch(path -> path.contains("-321")));
    assertTrue(
        page.text()
            .contains(
                "2 entries of the journal are private: counted in every figure here, and told in no"
                    + " word, picture or receipt."));
    assertEquals("Last night with hours June 2026", page.select("dl.known > div").get(2).text());
    assertEquals(
        List.of("March 2026 Not listed $10.00", "June 2026 Not listed $17.17"),
        page.select("section[aria-labelledby=purchases] tbody tr:contains(Not listed)").eachText());
    assertEquals(
        "1 more, not listed.", page.select("section[aria-labelledby=materials] .under").text());
    assertEquals(tally("phase", 2, 3), figures(page, "phases"));
  }

  @Test
  void moneyThatTheSiteHidesIsToldHere() throws IOException {
    FullJournal.write(folder);
    Published shown = papers();
    into = scratch.resolve("again");
    journal()
        .with("project.yaml", FullJournal.PROJECT.replace("show money: true", "show money: false"));
    assertEquals(shown.hashes(), papers().hashes());
  }

  @Test
  void everyLinkLeadsToAFileOfThePapers() throws IOException {
    FullJournal.write(folder);
    journal().with("receipts/0314.txt", "paid").with("receipts/ü (1).txt", "paid");
    journal().with("2026/2026-05-02-more.md", closed(bought("receipts/ü (1).txt", "3")));
    Published papers = papers();
    Document page = papers.page("papers.html");
    Set<String> linked = new TreeSet<>(Set.of("papers.html", "look/fonts-licence.txt"));
    for (Element element : page.select("[href], [src]")) {
      String link = element.attr(element.hasAttr("href") ? "href" : "src");
      if (link.startsWith("#")) {
        assertEquals(1, page.select("[id=" + link.substring(1) + "]").size(), link);
      } else {
        assertFalse(URI.create(link).isAbsolute(), link);
        linked.add(URI.create(link).getPath());
      }
    }
    assertEquals(linked, new TreeSet<>(papers.paths()));
  }

  @Test
  void aPictureStandsForItsMonthAndItsPhaseTheCoverFirst() throws IOException {
    journal()
        .with("project.yaml", "name: Teal\nphases: [moulds, planking, sails]\n")
        .with("2026-01-02-a.md", "---\nphase: moulds\nhours: 1\n---\n")
        .with(
            "2026-01-09-b.md",
            "---\nhours: {moulds: 1, planking: 1}\nphotos: [{file: b.png, cover: true}]\n---\n")
        .with("2026-03-01-c.md", "---\nphase: planking\nhours: 1\nphotos: [b.png, c.png]\n---\n")
        .with("2026-04-01-d.md", "---\nphase: planking\nhours: 1\n---\n![d](d.png)\n");
    FullJournal.picture(folder.resolve("2026-01-02-a/a.png"), 300, 200);
    FullJournal.picture(folder.resolve("b.png"), 301, 200);
    FullJournal.picture(folder.resolve("c.png"), 302, 200);
    FullJournal.picture(folder.resolve("d.png"), 2000, 900);

    Published papers = papers();
    Map<String, String> shown = new TreeMap<>();
    for (Element plate : papers.page("papers.html").select(".plates li")) {
      shown.put(
          plate.select("img").attr("src").replaceFirst(".*-", ""),
          plate.text() + "; " + plate.select("img").attr("alt"));
    }
    assertEquals(
        new TreeMap<>(
            Map.of(
                "301.jpg",
                "January 2026 · March 2026 · Moulds · Planking 9 January 2026; Photograph of 9"
                    + " January 2026, B",
                "1600.jpg",
                "April 2026 1 April 2026. d; d")),
        shown);
    assertEquals(2, papers.paths().stream().filter(path -> path.startsWith("pictures/")).count());
  }

  @Test
  void aJournalWithNextToNothingHasHonestPapers() throws IOException {
    journal()
        .with("project.yaml", "name: Teal\n")
        .with("2026-01-02-a.md", "---\nphase: moulds\nhours: 1\n---\n");
    Document page = papers().page("papers.html");
    assertEquals(
        List.of(
            "No purchase is written down in this journal.",
            "No receipt is kept in this journal.",
            "No use of a material is written down in this journal."),
        page.select("main > section > p:not(.under)").eachText().subList(0, 3));
    assertEquals(List.of(List.of("1")), figures(page, "phases"));
    assertTrue(page.select("#glue, #pictures").isEmpty());
    assertFalse(page.text().contains("Spent"), page.text());

    journal().with("2026-01-02-a.md", "---\ntitle: Nothing\n---\n");
    into = scratch.resolve("empty");
    assertTrue(papers().page("papers.html").text().contains("Nights with hours 0"));
    Files.delete(folder.resolve("2026-01-02-a.md"));
    into = scratch.resolve("none");
    assertTrue(papers().page("papers.html").text().contains("No month has an entry yet."));
  }

  @Test
  void printsTellNothingOfCameraOrPlace() throws IOException {
    ExifTool.needed();
    journal()
        .with("project.yaml", "name: Teal\nphases: [planking]\n")
        .with("2026-03-14-scarf.md", "---\nphase: planking\nhours: 1\n---\n");
    Path photo = folder.resolve("2026-03-14-scarf/a.jpg");
    Camera.shoot(photo, 1700, 1000, 6, "2026:03:14 20:00:00");
    ExifTool.plant(
        photo,
        List.of(
            "-EXIF:OwnerName=Planted Owner",
            "-GPS:GPSLatitude=12.345678",
            "-GPS:GPSLatitudeRef=N",
            "-XMP-dc:Creator=Planted Creator",
            "-Comment=Planted Remark"));
    assertTrue(ExifTool.dump(photo).contains("Planted Owner"));
    Published papers = papers();
    String told = ExifTool.dump(into.resolve("pictures"));
    assertFalse(told.contains("Planted") || told.contains("GPS"), told);
    assertEquals(List.of(), papers.filesWith("Planted"));
    assertEquals(
        List.of(), MetadataTest.foreign(ExifTool.tagsByKind(into.resolve("pictures")).get("JPEG")));
  }
}
