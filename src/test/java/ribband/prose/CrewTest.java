package ribband.prose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CrewTest {
  @Test
  void resultsStandInTheOrderOfTheThings() {
    assertEquals(List.of(1, 4, 9, 16), Crew.work(List.of(1, 2, 3, 4), n -> n * n));
  }

  /** What the others write would else come after the folder was cleared. */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void afterAFailureNobodyIsAtWork(boolean firstFails) {
    CountDownLatch bothBegan = new CountDownLatch(2);
    AtomicInteger atWork = new AtomicInteger();

    UncheckedIOException failure =
        assertThrows(
            UncheckedIOException.class,
            () ->
                Crew.work(
                    List.of(firstFails, !firstFails),
                    fails -> {
                      bothBegan.countDown();
                      await(bothBegan);
                      if (fails) {
                        throw new UncheckedIOException(new IOException("the disk is full"));
                      }
                      atWork.incrementAndGet();
                      linger();
                      return atWork.decrementAndGet();
                    }));

    assertEquals(0, atWork.get());
    assertTrue(failure.getMessage().contains("the disk is full"), failure.getMessage());
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Long enough to outlive the other's failure, whoever asks it to stop. */
  private static void linger() {
    long end = System.nanoTime() + 200_000_000;
    while (System.nanoTime() < end) {
      Thread.onSpinWait();
    }
  }
}
