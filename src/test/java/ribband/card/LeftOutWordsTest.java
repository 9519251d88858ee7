package ribband.card;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LeftOutWordsTest {
  private static final Window WINDOW =
      Window.since(Optional.of(LocalDate.of(2026, 3, 14)), LocalDate.of(2026, 3, 17));

  private static final List<LeftOut> ONE_OF_EACH =
      List.of(
          left("a.txt", Reason.NO_PICTURE, ""),
          left("b.jpg", Reason.UNREADABLE, "is a link that leads to no file"),
          left("c.jpg", Reason.DAMAGED, "is cut short; copy it again from the camera"),
          left("d.jpg", Reason.TWICE_ON_THE_CARD, "DCIM/z.jpg"),
          left("e.jpg", Reason.ALREADY_THERE, "2026/2026-03-15-keel/k.jpg"),
          left("f.jpg", Reason.NO_TIME, ""),
          left("g.jpg", Reason.LATER, "04:00 on 18 March 2026"),
          left("h.jpg", Reason.OLDER, "03:59 on 15 March 2026"),
          left("i.mp4", Reason.FILM, ""),
          left("j.bmp", Reason.OTHER_FORMAT, ""),
          left("k.nef", Reason.RAW, ""),
          left("l.heic", Reason.HEIC, ""));

  private static LeftOut left(String name, Reason reason, String detail) {
    return new LeftOut(Path.of("/card").resolve(name), name, reason, detail);
  }

  private static String line(List<LeftOut> leftOut) {
    return new LeftOutWords(leftOut, WINDOW).line().orElseThrow();
  }

  @Test
  void nothingLeftOutIsNoLine() {
    assertEquals(Optional.empty(), new LeftOutWords(List.of(), WINDOW).line());
    assertEquals(List.of(), new LeftOutWords(List.of(), WINDOW).list());
  }

  @Test
  void oneOfEach() {
    assertEquals(
        "left out 12: 1 HEIC (export it as JPEG), 1 camera RAW or TIFF (export it as JPEG),"
            + " 1 in another format (export it as JPEG), 1 film,"
            + " 1 taken before 04:00 on 15 March 2026,"
            + " 1 taken after 04:00 on 18 March 2026 (is the camera's clock right?),"
            + " 1 with no time inside (f.jpg: copy it by hand if it is tonight's),"
            + " 1 already in the journal, 1 copy of another,"
            + " 1 that cannot be shown (c.jpg is cut short; copy it again from the camera),"
            + " 1 that cannot be read (b.jpg is a link that leads to no file), 1 other file",
        line(ONE_OF_EACH));
  }

  @Test
  void twoOfEach() {
    List<LeftOut> two = new ArrayList<>(ONE_OF_EACH);
    two.addAll(ONE_OF_EACH);
    assertEquals(
        "left out 24: 2 HEIC (export them as JPEG), 2 camera RAW or TIFF (export them as JPEG),"
            + " 2 in other formats (export them as JPEG), 2 films,"
            + " 2 taken before 04:00 on 15 March 2026,"
            + " 2 taken after 04:00 on 18 March 2026 (is the camera's clock right?),"
            + " 2 with no time inside (f.jpg, f.jpg: copy them by hand if they are tonight's),"
            + " 2 already in the journal, 2 copies of others,"
            + " 2 that cannot be shown (c.jpg is cut short; copy it again from the camera;"
            + " also c.jpg),"
            + " 2 that cannot be read (b.jpg is a link that leads to no file; also b.jpg),"
            + " 2 other files",
        line(two));
  }

  @Test
  void ofManyFiveAreNamed() {
    List<LeftOut> many = new ArrayList<>();
    for (int n = 1; n <= 7; n++) {
      many.add(left("n" + n + ".jpg", Reason.NO_TIME, ""));
      many.add(left("DCIM/d" + n + ".jpg", Reason.DAMAGED, "is empty"));
    }
    assertEquals(
        "left out 14: 7 with no time inside (n1.jpg, n2.jpg, n3.jpg, n4.jpg, n5.jpg and 2 more:"
            + " copy them by hand if they are tonight's), 7 that cannot be shown (DCIM/d1.jpg is"
            + " empty; also DCIM/d2.jpg, DCIM/d3.jpg, DCIM/d4.jpg, DCIM/d5.jpg, DCIM/d6.jpg and 1"
            + " more)",
        line(many));
  }

  @Test
  void listHasALineForEach() {
    assertEquals(
        List.of(
            "a.txt is no picture",
            "b.jpg is a link that leads to no file",
            "c.jpg is cut short; copy it again from the camera",
            "d.jpg is a copy of DCIM/z.jpg",
            "e.jpg is in the journal already, as 2026/2026-03-15-keel/k.jpg",
            "f.jpg has no time inside; copy it by hand if it is tonight's",
            "g.jpg was taken at 04:00 on 18 March 2026",
            "h.jpg was taken at 03:59 on 15 March 2026",
            "i.mp4 is a film",
            "j.bmp is a picture in another format; export it as JPEG",
            "k.nef is a camera RAW picture or a TIFF; export it as JPEG",
            "l.heic is a HEIC picture; export it as JPEG"),
        new LeftOutWords(ONE_OF_EACH, WINDOW).list());
  }

  @Test
  void strangeNamesStayOnOneLine() {
    List<LeftOut> strange = List.of(left("a\n\u001b[2J.jpg", Reason.DAMAGED, "is empty"));
    assertEquals(
        "left out 1: 1 that cannot be shown (a\\u000a\\u001b[2J.jpg is empty)", line(strange));
    assertEquals(
        "left out 1: 1 with no time inside (a\\u000a.jpg: copy it by hand if it is tonight's)",
        line(List.of(left("a\n.jpg", Reason.NO_TIME, ""))));
    assertEquals(
        List.of("a\\u000a\\u001b[2J.jpg is empty"), new LeftOutWords(strange, WINDOW).list());
  }
}
