package ribband.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PrintSizeTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = ':',
      textBlock =
          """
          4032x3024 : 480x360 960x720 1600x1200
          1600x1200 : 480x360 960x720 1600x1200
          1599x1200 : 480x360 960x720 1599x1200
          1000x1000 : 480x480 960x960 1000x1000
          960x641   : 480x321 960x641
          700x525   : 480x360 700x525
          480x4     : 480x4
          300x200   : 300x200
          1x30000   : 1x30000
          30000x1   : 480x1 960x1 1600x1
          """)
  void noPrintIsWiderThanThePicture(String size, String prints) {
    String[] sides = size.split("x");
    PictureFacts facts =
        new PictureFacts(
            "0".repeat(64),
            0,
            PictureKind.JPEG,
            1,
            Integer.parseInt(sides[0]),
            Integer.parseInt(sides[1]),
            1,
            Optional.empty());
    StringBuilder made = new StringBuilder();
    for (PrintSize print : PrintSize.of(facts)) {
      made.append(' ').append(print.width()).append('x').append(print.height());
    }
    assertEquals(prints, made.substring(1));
  }
}
