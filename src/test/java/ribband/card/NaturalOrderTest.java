package ribband.card;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class NaturalOrderTest {
  @Test
  void numbersStandByTheirValue() {
    List<String> sorted =
        List.of(
            "",
            "0",
            "000",
            "2026-3.jpg",
            "2026-12.jpg",
            "99999999999999999999",
            "100000000000000000000",
            "IMG",
            "IMG.JPG",
            "IMG1.JPG",
            "IMG_01.JPG",
            "IMG_1.JPG",
            "IMG_2-2.JPG",
            "img_2.jpg",
            "IMG_9.JPG",
            "IMG_10.JPG",
            "IMG_10b.JPG",
            "IMG_11.JPG",
            "IMGS",
            "x");
    List<String> shuffled = new ArrayList<>(sorted);
    Collections.shuffle(shuffled, new Random(7));
    shuffled.sort(NaturalOrder::compare);
    assertEquals(sorted, shuffled);
  }

  @Test
  void onlyTheSameNameIsTheSame() {
    assertEquals(0, NaturalOrder.compare("IMG_1.JPG", "IMG_1.JPG"));
    assertEquals(-1, Integer.signum(NaturalOrder.compare("IMG_1.JPG", "img_1.jpg")));
    assertEquals(1, Integer.signum(NaturalOrder.compare("img_1.jpg", "IMG_1.JPG")));
    assertEquals(1, NaturalOrder.compare("a1", "a"));
    assertEquals(-1, NaturalOrder.compare("a", "a1"));
  }
}
