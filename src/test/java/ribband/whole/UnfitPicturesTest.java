package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.cli.InMemory;
import ribband.photo.Camera;

/** Pictures that cannot be shown: all told in one run, and nothing is published. */
class UnfitPicturesTest {
  @TempDir private Path folder;

  private Path own(String name) {
    return folder.resolve("2026-03-14-scarf").resolve(name);
  }

  @Test
  void aPictureThatOnlyPrintingFindsBadStopsThePublish() throws IOException {
    new InMemory(folder)
        .with("project.yaml", "name: Teal\n")
        .with("2026-01-01-a.md", "---\nhours: 1\nphase: x\nphotos: [heic.jpg, empty.jpg]\n---\n")
        .with("empty.jpg", "")
        .with("heic.jpg", "\0\0\0\u0018ftypheic\0\0\0\0mif1heic");

    InMemory.Run run = new Builder(folder).run("publish");

    assertEquals(1, run.code());
    assertEquals(
        """
        2026-01-01-a.md:4:10: error: picture "heic.jpg" is a HEIC picture; export it as JPEG
        2026-01-01-a.md:4:20: error: picture "empty.jpg" is empty; copy it again from the camera
        2 errors in 1 entry, nothing was published
        """,
        run.err());
    assertFalse(Files.exists(folder.resolve("site")));
  }

  @Test
  void unfitPicturesAreAllToldWhereTheyAreNamed() throws IOException {
    new InMemory(folder)
        .with("project.yaml", "name: Teal\nphases: [planking]\n")
        .with(
            "2026-03-14-scarf.md",
            """
            ---
            phase: planking
            hours: 1
            photos:
              - scraf.jpg
              - {file: cut.jpg, caption: Cut}
              - notes.jpg
              - raw.nef
            ---
            Words, then ![gone](gone.jpg) and ![cut](cut.jpg).
            """)
        .with("2026-03-14-scarf/notes.jpg", "no picture at all, only words")
        .with("2026-03-14-scarf/raw.nef", "II*\0")
        .with("2026-03-14-scarf/empty.png", "");
    Camera.shoot(own("cut.jpg"), 500, 300, 1, "2026:03:14 20:00:00");
    FullJournal.picture(own("scarf.jpg"), 400, 300);
    byte[] whole = Files.readAllBytes(own("cut.jpg"));
    Files.write(own("cut.jpg"), Arrays.copyOf(whole, whole.length - 9000));

    InMemory.Run run = new Builder(folder).run("publish");

    assertEquals(1, run.code());
    assertEquals("", run.out());
    assertEquals(
        """
        2026-03-14-scarf.md:5:5: error: picture "scraf.jpg" is not there; did you mean "scarf.jpg"?
        2026-03-14-scarf.md:6:12: error: picture "2026-03-14-scarf/cut.jpg" is cut short; copy it again from the camera
        2026-03-14-scarf.md:7:5: error: picture "2026-03-14-scarf/notes.jpg" is text and no picture; name a JPEG or PNG
        2026-03-14-scarf.md:8:5: error: picture "2026-03-14-scarf/raw.nef" is a TIFF or camera RAW picture; export it as JPEG
        2026-03-14-scarf.md:10:13: error: picture "gone.jpg" is not there; put the picture into 2026-03-14-scarf/ or name another
        2026-03-14-scarf.md:10:35: error: picture "cut.jpg" is cut short; copy it again from the camera
        6 errors in 1 entry, nothing was published
        """,
        run.err());
    assertFalse(Files.exists(folder.resolve("site")));
  }
}
