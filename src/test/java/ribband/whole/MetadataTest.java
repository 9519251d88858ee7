package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory;
import ribband.photo.Camera;

/** What cameras and their owners note in pictures, planted and looked for by ExifTool. */
class MetadataTest {
  private static final List<String> NOTES =
      List.of(
          "-EXIF:SerialNumber=PLANTED-4711",
          "-EXIF:OwnerName=Planted Owner",
          "-EXIF:Artist=Planted Artist",
          "-EXIF:Copyright=Planted Copyright",
          "-EXIF:ImageDescription=Planted Description",
          "-EXIF:UserComment=Planted Comment",
          "-EXIF:Make=Planted Make",
          "-EXIF:Model=Planted Model",
          "-EXIF:DateTimeOriginal=2026:03:14 20:25:41",
          "-GPS:GPSLatitude=12.345678",
          "-GPS:GPSLatitudeRef=N",
          "-GPS:GPSLongitude=43.218765",
          "-GPS:GPSLongitudeRef=W",
          "-XMP-dc:Creator=Planted Creator",
          "-XMP-exif:GPSLatitude=12.345678",
          "-XMP-photoshop:City=Planted City");

  /** What a print has to say of itself to be shown at all. */
  /** A card says by which tool it was drawn, so that only such a one is ever replaced. */
  private static final Set<String> OF_A_DRAWING =
      Set.of(
          "PNG BitDepth",
          "PNG ColorType",
          "PNG Compression",
          "PNG Filter",
          "PNG ImageHeight",
          "PNG ImageWidth",
          "PNG Interlace",
          "PNG Software");

  private static final Set<String> OF_A_PRINT =
      new TreeSet<>(
          Set.of(
              "Composite ImageSize",
              "Composite Megapixels",
              "File BitsPerSample",
              "File ColorComponents",
              "File EncodingProcess",
              "File FileType",
              "File FileTypeExtension",
              "File ImageHeight",
              "File ImageWidth",
              "File MIMEType",
              "File YCbCrSubSampling",
              "JFIF JFIFVersion",
              "JFIF ResolutionUnit",
              "JFIF ThumbnailHeight",
              "JFIF ThumbnailWidth",
              "JFIF XResolution",
              "JFIF YResolution"));

  @TempDir private Path folder;

  @BeforeAll
  static void needExifTool() {
    ExifTool.needed();
  }

  private Path own(String name) {
    return folder.resolve("2026-03-14-scarf").resolve(name);
  }

  /** The builder's own copy keeps all; only what is published is without. */
  @Test
  void whatTonightBringsFromACardIsPublishedWithoutIt() throws IOException {
    Path boat = folder.resolve("boat");
    Path picture = folder.resolve("card/IMG_1.jpg");
    new InMemory(boat).with("project.yaml", "name: Teal\nphases: [planking]\n");
    Camera.shoot(picture, 500, 400, 1, "2026:03:14 20:25:41");
    ExifTool.plant(picture, NOTES);
    String card = picture.getParent().toString();
    String[] tonight = {"tonight", "--say", "planking 2:45", "--photos", card};
    assertEquals(0, new InMemory(boat).at("2026-03-14T22:30").run(tonight).code());
    Path brought = boat.resolve("2026/2026-03-14-planking/IMG_1.jpg");
    assertEquals(-1, Files.mismatch(picture, brought));
    new Builder(boat).publish();
    assertTrue(ExifTool.dump(brought).contains("12.345678"));
    String published = ExifTool.dump(boat.resolve("site"));
    assertTrue(published.contains("JFIF"), published);
    for (String planted : List.of("PLANTED-4711", "Planted", "12.345678", "43.218765")) {
      assertFalse(published.contains(planted), planted);
    }
  }

  @Test
  void nothingPlantedIsFoundInAnyFileOfTheSite() throws IOException {
    new InMemory(folder)
        .with(
            "project.yaml",
            "name: Teal\nsite: {address: 'https://example.org/teal/'}\nphases: [planking]\n")
        .with("2026-03-14-scarf.md", "---\nphase: planking\nhours: 1\n---\n![in](in.jpg)\n");
    Camera.shoot(own("a.jpg"), 1700, 1000, 6, "2026:03:14 20:00:00");
    Camera.shoot(own("in.jpg"), 500, 400, 1, "2026:03:14 20:00:00");
    FullJournal.picture(own("drawing.png"), 900, 700);
    FullJournal.picture(folder.resolve("small.jpg"), 16, 12);
    for (String name : List.of("a.jpg", "in.jpg")) {
      List<String> notes = new ArrayList<>(NOTES);
      notes.add("-IPTC:By-line=Planted Byline");
      notes.add("-IPTC:City=Planted Town");
      notes.add("-Comment=Planted Remark");
      notes.add("-ThumbnailImage<=" + folder.resolve("small.jpg"));
      ExifTool.plant(own(name), notes);
    }
    List<String> notes = new ArrayList<>(NOTES);
    notes.add("-PNG:Comment=Planted Remark");
    notes.add("-PNG:Author=Planted Author");
    ExifTool.plant(own("drawing.png"), notes);

    for (String name : List.of("lossy.webp", "animated.gif")) {
      Files.copy(Path.of("src/test/resources/ribband/photo", name), own(name));
    }
    ExifTool.plant(own("lossy.webp"), NOTES);
    ExifTool.plant(
        own("animated.gif"),
        List.of(
            "-Comment=Planted Gif Remark",
            "-XMP-dc:Creator=Planted Gif Creator",
            "-XMP-exif:GPSLatitude=12.345678"));

    Path site = folder.resolve("site");
    new Builder(folder).publish();

    for (String name : List.of("a.jpg", "in.jpg", "drawing.png", "lossy.webp")) {
      assertTrue(ExifTool.dump(own(name)).contains("PLANTED-4711"), name);
    }
    String camera = ExifTool.dump(folder.resolve("2026-03-14-scarf"));
    String published = ExifTool.dump(site);
    for (String planted :
        List.of(
            "PLANTED-4711",
            "Planted Owner",
            "Planted Artist",
            "Planted Copyright",
            "Planted Description",
            "Planted Comment",
            "Planted Make",
            "Planted Model",
            "Planted Creator",
            "Planted City",
            "Planted Byline",
            "Planted Town",
            "Planted Remark",
            "Planted Author",
            "Planted Gif Remark",
            "Planted Gif Creator",
            "12 deg 20' 44",
            "GPSPosition",
            "ThumbnailImage",
            "20:25:41")) {
      assertTrue(camera.contains(planted), planted + " was not planted");
      assertFalse(published.contains(planted), planted);
      assertEquals(List.of(), new Published(site).filesWith(planted), planted);
    }
    for (String number : List.of("12.345", "43.218", "Planted", "PLANTED")) {
      assertEquals(List.of(), new Published(site).filesWith(number), number);
    }
  }

  @Test
  void aPrintTellsItsShapeAndNothingElse() throws IOException {
    new InMemory(folder)
        .with(
            "project.yaml",
            "name: Teal\nphases: [planking]\nsite: {address: 'https://example.org/'}\n")
        .with("2026-03-14-scarf.md", "---\nphase: planking\nhours: 1\n---\n");
    Camera.shoot(own("a.jpg"), 1700, 1000, 6, "2026:03:14 20:00:00");
    FullJournal.picture(own("drawing.png"), 900, 700);
    new Builder(folder).publish();

    Map<String, Set<String>> tags = ExifTool.tagsByKind(folder.resolve("site"));

    assertEquals(Set.of("CSV", "HTML", "JPEG", "JSON", "PNG", "SVG", "TXT"), tags.keySet());
    assertEquals(List.of(), foreign(tags.get("JPEG")));
    Set<String> drawn = new TreeSet<>(foreign(tags.get("PNG")));
    assertEquals(new TreeSet<>(OF_A_DRAWING), drawn);
  }

  /** What a print tells beyond its shape. */
  static List<String> foreign(Set<String> tags) {
    return tags.stream().filter(tag -> !OF_A_PRINT.contains(tag)).sorted().toList();
  }
}
