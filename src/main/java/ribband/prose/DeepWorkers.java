package ribband.prose;

import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Runs work on threads with a deep stack and gives up on it after a deadline; threads are kept for
 * a moment and used again. May be shared between threads.
 */
final class DeepWorkers {
  private static final long STACK_BYTES = 32L << 20;
  private static final long KEPT_SECONDS = 5;

  private final Duration deadline;
  private final ExecutorService threads =
      new ThreadPoolExecutor(
          0,
          Integer.MAX_VALUE,
          KEPT_SECONDS,
          TimeUnit.SECONDS,
          new SynchronousQueue<>(),
          DeepWorkers::thread);

  DeepWorkers(Duration deadline) {
    this.deadline = deadline;
  }

  /**
   * The work's result.
   *
   * @throws Failure if it went too deep, took too long or failed
   */
  <T> T run(Callable<T> work) throws Failure {
    Future<T> future = threads.submit(work);
    try {
      return future.get(deadline.toNanos(), TimeUnit.NANOSECONDS);
    } catch (TimeoutException late) {
      future.cancel(true);
      throw new Failure(Failure.Cause.TOO_LONG, late);
    } catch (ExecutionException failed) {
      if (failed.getCause() instanceof OutOfMemoryError noMemory) {
        throw noMemory;
      }
      boolean deep = failed.getCause() instanceof StackOverflowError;
      throw new Failure(deep ? Failure.Cause.TOO_DEEP : Failure.Cause.DEFECT, failed.getCause());
    } catch (InterruptedException stopped) {
      future.cancel(true);
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while reading a text", stopped);
    }
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(null, work, "prose", STACK_BYTES);
    thread.setDaemon(true);
    return thread;
  }

  /** Why work has no result. */
  static final class Failure extends Exception {
    private static final long serialVersionUID = 1;

    enum Cause {
      TOO_DEEP,
      TOO_LONG,
      DEFECT
    }

    private final Cause why;

    Failure(Cause why, Throwable cause) {
      super(why.toString(), cause);
      this.why = why;
    }

    Cause why() {
      return why;
    }
  }
}
