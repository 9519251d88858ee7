package ribband.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import ribband.postcard.Face;
import ribband.postcard.Share;
import ribband.postcard.Sheets;

/** Whatever words stand on a card, a line each, none is cut and none touches another. */
class PostcardFuzzTest {
  private static final int WORDS = 9;

  @FuzzTest(maxDuration = "8s")
  void postcard(byte[] bytes) {
    String[] lines = new String(bytes, StandardCharsets.UTF_8).split("\n", -1);
    List<Share> shares = new ArrayList<>();
    for (int i = WORDS; i < lines.length && i < WORDS + 8; i++) {
      shares.add(new Share(lines[i], "0:05", Math.abs(lines[i].hashCode() / 3600L)));
    }
    Face face =
        new Face(
            line(lines, 0) + "x",
            line(lines, 1),
            line(lines, 2) + "x",
            line(lines, 3) + "0",
            line(lines, 4),
            line(lines, 5),
            line(lines, 6),
            shares,
            line(lines, 7),
            line(lines, 8));

    Sheets.hold(face, bytes.length % 7 * 100, 100 + bytes.length % 11 * 50);
  }

  private static String line(String[] lines, int at) {
    return at < lines.length ? lines[at] : "";
  }
}
