package ribband.prose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

class DeepWorkersTest {
  private final DeepWorkers workers = new DeepWorkers(Duration.ofSeconds(30));

  @Test
  void stackIsDeep() throws DeepWorkers.Failure {
    assertEquals(50_000, workers.run(() -> depth(50_000)));
  }

  @Test
  void endlessRecursionIsTooDeep() {
    DeepWorkers.Failure failure =
        assertThrows(DeepWorkers.Failure.class, () -> workers.run(() -> depth(Integer.MAX_VALUE)));
    assertEquals(DeepWorkers.Failure.Cause.TOO_DEEP, failure.why());
  }

  @Test
  void exceptionIsADefect() {
    DeepWorkers.Failure failure =
        assertThrows(
            DeepWorkers.Failure.class,
            () ->
                workers.run(
                    () -> {
                      throw new IndexOutOfBoundsException("x");
                    }));
    assertEquals(DeepWorkers.Failure.Cause.DEFECT, failure.why());
  }

  /** The leash lets work that only reads text end, though nobody waits for it any more. */
  @Test
  void workBeyondTheDeadlineIsStopped() throws InterruptedException {
    CountDownLatch stopped = new CountDownLatch(1);
    Leash leash = new Leash("abc", Duration.ofMillis(20));
    DeepWorkers.Failure failure =
        assertThrows(
            DeepWorkers.Failure.class,
            () ->
                new DeepWorkers(Duration.ofMillis(20))
                    .run(
                        () -> {
                          try {
                            for (int i = 0; ; i = (i + 1) % 3) {
                              leash.charAt(i);
                            }
                          } catch (CancellationException deadline) {
                            stopped.countDown();
                            throw deadline;
                          }
                        }));
    assertEquals(DeepWorkers.Failure.Cause.TOO_LONG, failure.why());
    assertTrue(stopped.await(60, TimeUnit.SECONDS));
  }

  private static int depth(int left) {
    return left == 0 ? 0 : 1 + depth(left - 1);
  }
}
