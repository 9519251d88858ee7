package ribband.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PictureHeadTest {
  private static final Optional<LocalDateTime> TAKEN =
      Optional.of(LocalDateTime.of(2026, 3, 14, 20, 25, 41));

  @TempDir private Path folder;

  private PictureHead head(byte[] bytes) throws UnfitPicture, IOException {
    return PictureHead.read(Files.write(folder.resolve("a.jpg"), bytes));
  }

  private String refusal(byte[] bytes) {
    return assertThrows(UnfitPicture.class, () -> head(bytes)).getMessage();
  }

  private static byte[] jpeg() {
    return Exif.inJpeg(Scene.jpeg(Scene.of(60, 40)), Exif.orientation(6));
  }

  @Test
  void timeIsTheOneThatTheWholeFileTells() throws Exception {
    byte[] plain = Scene.jpeg(Scene.of(60, 40));
    byte[] png = Scene.png(Scene.of(60, 40));
    for (byte[] bytes :
        List.of(
            jpeg(),
            plain,
            Exif.inJpeg(plain, Exif.tiff(1, "2026:02:30 20:25:41")),
            Exif.inJpeg(jpeg(), Exif.tiff(1, "2025:01:01 00:00:00")),
            Exif.inPng(png, Exif.orientation(1)),
            png)) {
      PictureHead head = head(bytes);
      assertEquals(Optional.empty(), head.other());
      assertEquals(new PictureReader().facts(folder.resolve("a.jpg")).taken(), head.taken());
    }
    assertEquals(TAKEN, head(jpeg()).taken());
    assertEquals(TAKEN, head(Exif.inPng(png, Exif.orientation(1))).taken());
  }

  @Test
  void restOfAJpegIsNotLookedAt() throws Exception {
    byte[] whole = jpeg();
    assertEquals(TAKEN, head(Arrays.copyOf(whole, whole.length / 2)).taken());
  }

  @Test
  void jpegWithoutAFrameIsRefused() {
    byte[] whole = jpeg();
    assertEquals("is cut short; copy it again from the camera", refusal(Arrays.copyOf(whole, 300)));
    assertEquals(
        "holds no picture; copy it again from the camera",
        refusal(HexFormat.of().parseHex("ffd8ffe000104a46494600010100000100010000ffd9")));
    assertEquals(
        "is damaged; copy it again from the camera",
        refusal(HexFormat.of().parseHex("ffd8ffe000000000000000000000000000000000")));
  }

  @Test
  void emptyFileIsRefused() {
    assertEquals("is empty; copy it again from the camera", refusal(new byte[0]));
  }

  @Test
  void missingFileIsTheCallersCase() {
    assertThrows(NoSuchFileException.class, () -> PictureHead.read(folder.resolve("none.jpg")));
  }

  @ParameterizedTest
  @CsvSource({
    "00000018667479706865696300000000, HEIC",
    "00000018667479706176696600000000, AVIF",
    "00000018667479706372782000000001, RAW",
    "4d4d002a000000080000000000000000, TIFF",
    "000000186674797069736f6d00000200, VIDEO",
    "1a45dfa3a34286810142f7810142f281, VIDEO",
    "00010203040506fffffefdfcfbfaf9f8, UNKNOWN"
  })
  void otherFilesAreNamed(String hex, OtherKind kind) throws Exception {
    assertEquals(
        new PictureHead(Optional.of(kind), Optional.empty()), head(HexFormat.of().parseHex(hex)));
  }

  @Test
  void textIsNamed() throws Exception {
    byte[] text = "Clamped the garboard.\n".getBytes(StandardCharsets.UTF_8);
    assertEquals(Optional.of(OtherKind.TEXT), head(text).other());
  }
}
