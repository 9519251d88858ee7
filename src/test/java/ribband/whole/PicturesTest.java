package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.Directory;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import javax.imageio.ImageIO;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ribband.cli.InMemory;
import ribband.photo.Camera;

/** Pictures from the journal's folders to the pages. */
class PicturesTest {
  private static final String NIGHT = "---\nphase: planking\nhours: 1\n---\n";

  @TempDir private Path folder;

  private InMemory journal() throws IOException {
    return new InMemory(folder).with("project.yaml", "name: Teal\nphases: [planking]\n");
  }

  private Path own(String name) {
    return folder.resolve("2026-03-14-scarf").resolve(name);
  }

  /** The widths tell which picture is which. */
  private static List<String> widths(Document page, String images) {
    return page.select(images).stream().map(image -> image.attr("width")).toList();
  }

  @Test
  void anUnlistedGalleryStandsByTheTimeTaken() throws IOException {
    journal().with("2026-03-14-scarf.md", NIGHT);
    Camera.shoot(own("a.jpg"), 403, 300, 1, "2026:03:14 21:00:00");
    Camera.shoot(own("b.jpg"), 402, 300, 1, "2026:03:14 20:00:00");
    Camera.shoot(own("c.jpg"), 401, 300, 1, "2026:03:13 23:59:59");
    FullJournal.picture(own("a-drawing.png"), 404, 300);
    Published site = new Builder(folder).publish();

    List<String> byTime = List.of("401", "402", "403", "404");
    assertEquals(byTime, widths(site.page("entries/2026-03-14-scarf.html"), ".prints img"));
    assertEquals(byTime, widths(site.page("months/2026-03.html"), ".prints img"));
    assertEquals(byTime, widths(site.page("phases/planking.html"), ".prints img"));
    assertEquals(byTime, widths(site.page("pictures.html"), ".prints img"));
  }

  @Test
  void aListKeepsItsOrderAndAPatternItsTimes() throws IOException {
    journal()
        .with(
            "2026-03-14-scarf.md",
            NIGHT
                .replace("---\n---", "")
                .replaceFirst("hours: 1\n", "hours: 1\nphotos: [z.jpg, \"s-*.jpg\"]\n"));
    Camera.shoot(own("s-1.jpg"), 403, 300, 1, "2026:03:14 21:00:00");
    Camera.shoot(own("s-2.jpg"), 402, 300, 1, "2026:03:14 20:00:00");
    Camera.shoot(own("z.jpg"), 401, 300, 1, "2026:03:14 22:00:00");
    Camera.shoot(own("left-out.jpg"), 400, 300, 1, "2026:03:14 19:00:00");
    Published site = new Builder(folder).publish();

    assertEquals(
        List.of("401", "402", "403"),
        widths(site.page("entries/2026-03-14-scarf.html"), ".prints img"));
  }

  /** EXIF 2.32, table of tag 0x0112: where the stored upper left corner belongs. */
  /** Little is smaller than its place on a desk, modest smaller than a phone is wide. */
  @Test
  void aPictureSmallerThanItsPlaceIsToldSo() throws IOException {
    journal().with("2026-03-14-scarf.md", NIGHT);
    FullJournal.picture(own("a.png"), 60, 40);
    FullJournal.picture(own("b.png"), 500, 360);
    FullJournal.picture(own("c.png"), 900, 640);
    Published site = new Builder(folder).publish();

    assertEquals(
        List.of("print wide little modest", "print wide modest", "print wide"),
        site.page("pictures.html").select(".print").eachAttr("class"));
    assertEquals(
        List.of("print wide little modest", "print wide little modest", "print wide"),
        site.page("entries/2026-03-14-scarf.html").select(".print").eachAttr("class"));
  }

  @ParameterizedTest
  @CsvSource({
    "1, left, top", "2, right, top", "3, right, bottom", "4, left, bottom",
    "5, left, top", "6, right, top", "7, right, bottom", "8, left, bottom"
  })
  void printsStandUpright(int orientation, String across, String down) throws IOException {
    journal().with("2026-03-14-scarf.md", NIGHT);
    Camera.shoot(own("p.jpg"), 600, 400, orientation, "2026:03:14 20:00:00");
    Published site = new Builder(folder).publish();

    Element image = site.page("pictures.html").selectFirst(".prints img");
    boolean turned = orientation >= 5;
    assertEquals(turned ? "400" : "600", image.attr("width"));
    assertEquals(turned ? "600" : "400", image.attr("height"));
    assertEquals(
        turned ? "print tall modest" : "print wide modest", image.closest("li").className());
    BufferedImage print = ImageIO.read(folder.resolve("site/" + image.attr("src")).toFile());
    int x = across.equals("left") ? 12 : print.getWidth() - 12;
    int y = down.equals("top") ? 12 : print.getHeight() - 12;
    Color corner = new Color(print.getRGB(x, y));
    assertTrue(
        corner.getRed() > 150 && corner.getGreen() < 90 && corner.getBlue() < 90, "" + corner);
  }

  @Test
  void nothingACameraNotesIsPublished() throws IOException, ImageProcessingException {
    journal().with("2026-03-14-scarf.md", NIGHT + "![in text](text.jpg)\n");
    Camera.shoot(own("p.jpg"), 1700, 1000, 6, "2026:03:14 20:00:00");
    Camera.shoot(own("text.jpg"), 500, 400, 1, "2026:03:14 20:25:41");
    String original = new String(Files.readAllBytes(own("p.jpg")), StandardCharsets.ISO_8859_1);
    Published site = new Builder(folder).publish();

    for (String planted : Camera.PLANTED) {
      assertTrue(original.contains(planted), planted);
      assertEquals(List.of(), site.filesWith(planted), planted);
    }
    int prints = 0;
    for (Path file : Published.filesOf(folder.resolve("site/pictures"))) {
      Set<String> blocks = new TreeSet<>();
      for (Directory block : ImageMetadataReader.readMetadata(file.toFile()).getDirectories()) {
        blocks.add(block.getName());
      }
      assertEquals(Set.of("File", "File Type", "Huffman", "JFIF", "JPEG"), blocks, file.toString());
      prints++;
    }
    assertEquals(5, prints);
  }

  /** A picture among words may stand anywhere down the page, so each of those can wait. */
  @Test
  void theFirstPictureOfAPageIsLoadedAtOnceAndNoOther() throws IOException {
    FullJournal.write(folder);
    Camera.shoot(folder.resolve("2026/2026-05-09-late/p.jpg"), 700, 500, 1, "2026:05:09 20:00:00");
    new InMemory(folder).with("2026/2026-05-09-late.md", NIGHT);
    Published site = new Builder(folder).publish();

    List<String> wrong = new ArrayList<>();
    int pages = 0;
    for (String name : site.pages()) {
      List<Element> images = site.page(name).select("img");
      for (int i = 0; i < images.size(); i++) {
        Element image = images.get(i);
        boolean lazy = image.attr("loading").equals("lazy");
        boolean first = image.attr("fetchpriority").equals("high");
        boolean atOnce = i == 0 && image.closest(".prose") == null;
        if (lazy == atOnce || first != atOnce || !image.attr("decoding").equals("async")) {
          wrong.add(name + " " + image);
        }
      }
      pages += images.isEmpty() ? 0 : 1;
    }
    assertEquals(List.of(), wrong);
    assertTrue(pages >= 6, "pages with pictures: " + pages);
  }

  @Test
  void everyPictureHasItsSizesAndWords() throws IOException {
    FullJournal.write(folder);
    Published site = new Builder(folder).publish();

    for (String name : site.pages()) {
      for (Element image : site.page(name).select("img")) {
        String told = name + " " + image;
        String[] candidates = image.attr("srcset").split(", ");
        assertFalse(image.attr("alt").isBlank(), told);
        assertFalse(image.attr("alt").matches("(?i).*\\.(jpe?g|png)\\b.*"), told);
        assertFalse(image.attr("sizes").isBlank(), told);
        assertTrue(Arrays.stream(candidates).anyMatch(c -> c.startsWith(image.attr("src"))), told);
        for (String candidate : candidates) {
          String[] parts = candidate.split(" ");
          BufferedImage print = read(name, parts[0]);
          assertEquals(print.getWidth() + "w", parts[1], told);
        }
        BufferedImage shown = read(name, image.attr("src"));
        assertEquals(shown.getWidth() + "", image.attr("width"), told);
        assertEquals(shown.getHeight() + "", image.attr("height"), told);
      }
    }
  }

  private BufferedImage read(String page, String href) throws IOException {
    Path at = folder.resolve("site").resolve(page).getParent().resolve(href);
    return ImageIO.read(at.normalize().toFile());
  }

  @Test
  void aPictureInTheTextIsNotHungAgainBesideIt() throws IOException {
    journal()
        .with(
            "2026-03-14-scarf.md", NIGHT + "![The **scarf**](in.png)\n\nAnd again ![](in.png).\n");
    FullJournal.picture(own("in.png"), 401, 300);
    FullJournal.picture(own("beside.png"), 402, 300);
    Published site = new Builder(folder).publish();

    Document entry = site.page("entries/2026-03-14-scarf.html");
    assertEquals(List.of("402"), widths(entry, ".prints img"));
    assertEquals(List.of("401", "401"), widths(entry, ".prose img"));
    for (String page : List.of("months/2026-03.html", "phases/planking.html", "pictures.html")) {
      assertEquals(2, site.page(page).select(".prints img").size(), page);
    }
    assertEquals(
        List.of("The scarf"), site.page("pictures.html").select(".prints .caption").eachText());
  }

  @Test
  void aCaptionOfTheListStandsInTheTextThatGivesNone() throws IOException {
    journal()
        .with(
            "2026-03-14-scarf.md",
            NIGHT.replace("hours: 1\n", "hours: 1\nphotos: [{file: in.png, caption: An hour in}]\n")
                + "![](in.png)\n\n![Its own words](in.png)\n");
    FullJournal.picture(own("in.png"), 401, 300);
    Document entry = new Builder(folder).publish().page("entries/2026-03-14-scarf.html");
    assertEquals(
        List.of("An hour in", "Its own words"), entry.select(".prose figcaption").eachText());
  }

  @Test
  void onePictureOfTwoNightsIsCountedOnce() throws IOException {
    journal()
        .with("2026-03-14-scarf.md", NIGHT)
        .with("2026-04-15.md", NIGHT + "![](2026-03-14-scarf/p.png)\n");
    FullJournal.picture(own("p.png"), 401, 300);
    Document page = new Builder(folder).publish().page("pictures.html");
    assertEquals("1 picture, the newest month first.", page.selectFirst(".said").text());
    assertEquals(2, page.select(".prints img").size());
  }

  @Test
  void picturesOfANightWithoutHoursHangInItsPhaseToo() throws IOException {
    journal().with("2026-03-14-scarf.md", "---\nphase: planking\n---\nOnly looked.\n");
    FullJournal.picture(own("p.png"), 401, 300);
    Published site = new Builder(folder).publish();

    assertEquals(List.of("401"), widths(site.page("phases/planking.html"), ".prints img"));
  }

  @Test
  void oneRemovedPictureGoesAndTheOthersAreNotTouched() throws IOException {
    journal().with("2026-03-14-scarf.md", NIGHT);
    FullJournal.picture(own("goes.png"), 500, 300);
    FullJournal.picture(own("stays.png"), 400, 300);
    new Builder(folder).publish();
    Map<String, String> before = Published.times(folder.resolve("site/pictures"), List.of());
    Files.delete(own("goes.png"));

    new Builder(folder).publish();

    Map<String, String> after = Published.times(folder.resolve("site/pictures"), List.of());
    assertEquals(3, before.size());
    before.keySet().removeIf(name -> !name.endsWith("-400.jpg"));
    assertEquals(before, after);
  }

  @Test
  void ofAnAnimatedFileTheFirstFrameIsShownWithAWarning() throws IOException {
    new InMemory(folder)
        .with("project.yaml", "name: Teal\nsite: {address: none}\n")
        .with("2026-01-01-a.md", "---\nhours: 1\nphase: x\nphotos: [moving.gif]\n---\n");
    try (InputStream gif = Camera.class.getResourceAsStream("animated.gif")) {
      Files.copy(gif, folder.resolve("moving.gif"));
    }
    InMemory.Run run = new Builder(folder).run("publish");
    assertEquals(0, run.code());
    assertEquals(
        """
        2026-01-01-a.md:4:10: warning: picture "moving.gif" has 3 frames, and only the first is \
        shown; save others as pictures of their own
        1 warning in 1 entry
        """,
        run.err());
  }
}
