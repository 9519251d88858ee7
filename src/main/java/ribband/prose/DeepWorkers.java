package ribband.prose;

import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
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
  private static final long KEPT_SECONDS = 5;

  private final Duration deadline;
  private final ExecutorService threads =
      new ThreadPoolExecutor(
          0,
          Integer.MAX_VALUE,
          KEPT_SECONDS,
          TimeUnit.SECONDS,
          new SynchronousQueue<>(),
          DeepThread::new);

  DeepWorkers(Duration deadline) {
    this.deadline = deadline;
  }

  /**
   * The result of work that looks at the clock itself: done at once where the stack is deep
   * already, as handing it over takes longer than most texts.
   *
   * @throws Failure if it went too deep, took too long or failed
   */
  <T> T runShort(Callable<T> work) throws Failure {
    if (!DeepThread.isCurrent()) {
      return run(work);
    }
    try {
      return work.call();
    } catch (Exception | StackOverflowError failed) {
      throw failure(failed);
    }
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
      throw failure(failed.getCause());
    } catch (InterruptedException stopped) {
      future.cancel(true);
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while reading a text", stopped);
    }
  }

  private static Failure failure(Throwable cause) {
    if (cause instanceof StackOverflowError) {
      return new Failure(Failure.Cause.TOO_DEEP, cause);
    }
    boolean late = cause instanceof CancellationException;
    return new Failure(late ? Failure.Cause.TOO_LONG : Failure.Cause.DEFECT, cause);
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
