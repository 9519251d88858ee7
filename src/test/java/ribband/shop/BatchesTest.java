package ribband.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ribband.measure.Quantity;
import ribband.measure.Span;

/** As few cups as are used up before they set. */
class BatchesTest {
  private static Span minutes(long minutes) {
    return new Span(minutes * 60);
  }

  @ParameterizedTest
  @CsvSource({"20, 20, 1", "21, 20, 2", "40, 20, 2", "41, 20, 3", "1, 20, 1", "300, 1, 300"})
  void asFewAsKeepWithinThePotLife(long takes, long potLife, long count) {
    Batches batches = Batches.of(Read.quantity("6 fl oz"), minutes(takes), minutes(potLife));
    assertEquals(count, batches.count());
    assertEquals(Read.quantity("6 fl oz"), batches.each().times((int) count));
  }

  /** Two minutes a fluid ounce, which is 30 ml: common practice, no source. */
  @Test
  void theTimeThatIsAssumed() {
    assertEquals(minutes(6), Batches.assumedTime(Read.quantity("3 fl oz")));
    assertEquals(minutes(256), Batches.assumedTime(Read.quantity("1 gal")));
    assertEquals(new Span(365), Batches.assumedTime(Read.quantity("90 ml")));
    Quantity trace = Read.quantity("0.001 ml");
    assertEquals(new Span(1), Batches.assumedTime(trace));
  }
}
