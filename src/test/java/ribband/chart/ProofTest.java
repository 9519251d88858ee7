package ribband.chart;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class ProofTest {
  @Test
  void everySheetIsPrintedToBeLookedAt() throws Exception {
    Path folder = Path.of("target", "chart-proof");
    new Proof().print(folder);
    assertTrue(Files.size(folder.resolve("light.html")) > 0);
  }
}
