package ribband.prose;

import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;

/**
 * Does the same work on many things at once: on twice as many threads as there are cores, as each
 * that meets a text waits for the deep thread that reads it.
 */
public final class Crew {
  private Crew() {}

  /** What the work makes of each, in the order of the things; all are at rest when it returns. */
  public static <A, B> List<B> work(List<A> things, Function<A, B> work) {
    ForkJoinPool pool = new ForkJoinPool(2 * Runtime.getRuntime().availableProcessors());
    try {
      return pool.submit(() -> things.parallelStream().map(work).toList()).get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      if (e.getCause() instanceof Error cause) {
        throw cause;
      }
      throw new IllegalStateException(e.getCause());
    } finally {
      rest(pool);
    }
  }

  /** After a failure others are still at work, on files that the caller is about to clear away. */
  private static void rest(ForkJoinPool pool) {
    pool.shutdownNow();
    try {
      pool.awaitTermination(1, TimeUnit.MINUTES);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
