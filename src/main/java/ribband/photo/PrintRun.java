package ribband.photo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CompletionService;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorCompletionService;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.IntConsumer;

/**
 * Works on many pictures at once, on several threads and within a bound of memory. Outcomes come in
 * the order asked for, whatever the threads do. Keeps nothing between calls.
 */
public final class PrintRun {
  private static final int MEGABYTE = 1_000_000;

  /** Decoded JPEG pixels and the halved copy that scaling makes of them. */
  private static final int BYTES_PER_JPEG_PIXEL = 5;

  /** Up to four samples of 16 bits, then the flat copy. */
  private static final int BYTES_PER_PNG_PIXEL = 13;

  private final int workers;
  private final int megabytes;

  /**
   * @param workers threads, at least 1
   * @param memory bytes of heap that the pictures in work may take together; a picture that alone
   *     needs more is worked on alone
   */
  public PrintRun(int workers, long memory) {
    if (workers < 1 || memory < 1) {
      throw new IllegalArgumentException(workers + " workers, " + memory + " bytes");
    }
    this.workers = workers;
    this.megabytes = (int) Math.max(1, Math.min(Integer.MAX_VALUE, memory / MEGABYTE));
  }

  /** All cores, and six tenths of the heap that Java may take. */
  public static PrintRun onThisMachine() {
    Runtime machine = Runtime.getRuntime();
    return new PrintRun(machine.availableProcessors(), machine.maxMemory() / 10 * 6);
  }

  /** A picture to work on. */
  public record Order(Path file, PictureFacts facts) {
    public Order {
      Objects.requireNonNull(file);
      Objects.requireNonNull(facts);
    }
  }

  /**
   * What became of an order.
   *
   * @param sizes the prints, smallest first; none where the picture is unfit
   * @param unfit why there are none
   */
  public record Outcome(Order order, List<PrintSize> sizes, Optional<UnfitPicture> unfit) {
    public Outcome {
      sizes = List.copyOf(sizes);
      Objects.requireNonNull(unfit);
    }
  }

  /** What is done with each picture. */
  interface Work {
    void on(Order order) throws UnfitPicture, IOException;
  }

  /**
   * Prints each picture into the folder, pictures of the same bytes once.
   *
   * @param done told on the calling thread, after each order, how many are done
   * @throws IOException where a file cannot be read or the folder not be written; the rest is left
   */
  public List<Outcome> print(List<Order> orders, Path folder, IntConsumer done)
      throws IOException, InterruptedException {
    Darkroom darkroom = new Darkroom();
    return run(orders, order -> darkroom.print(order.file(), order.facts(), folder), done);
  }

  /** Decodes each picture and forgets it; otherwise as {@link #print}. */
  public List<Outcome> tryOut(List<Order> orders, IntConsumer done)
      throws IOException, InterruptedException {
    PictureReader reader = new PictureReader();
    return run(orders, order -> reader.tryOut(order.file(), order.facts()), done);
  }

  List<Outcome> run(List<Order> orders, Work work, IntConsumer done)
      throws IOException, InterruptedException {
    Map<String, List<Integer>> placesByDigest = new LinkedHashMap<>();
    for (int i = 0; i < orders.size(); i++) {
      placesByDigest
          .computeIfAbsent(orders.get(i).facts().digest(), digest -> new ArrayList<>())
          .add(i);
    }
    Outcome[] outcomes = new Outcome[orders.size()];
    ExecutorService pool = Executors.newFixedThreadPool(workers, PrintRun::daemon);
    try {
      Semaphore memory = new Semaphore(megabytes, true);
      CompletionService<Outcome> finished = new ExecutorCompletionService<>(pool);
      for (List<Integer> places : placesByDigest.values()) {
        finished.submit(() -> outcome(orders.get(places.get(0)), work, memory));
      }
      int count = 0;
      for (int left = placesByDigest.size(); left > 0; left--) {
        Outcome outcome = value(finished.take());
        for (int place : placesByDigest.get(outcome.order().facts().digest())) {
          outcomes[place] = new Outcome(orders.get(place), outcome.sizes(), outcome.unfit());
          done.accept(++count);
        }
      }
      return List.of(outcomes);
    } finally {
      pool.shutdownNow();
      pool.awaitTermination(1, TimeUnit.MINUTES);
    }
  }

  private Outcome outcome(Order order, Work work, Semaphore memory)
      throws IOException, InterruptedException {
    try {
      try {
        within(megabytesFor(order), order, work, memory);
      } catch (OutOfMemoryError first) {
        // Another worker may have taken the memory: once more, with all of it.
        within(megabytes, order, work, memory);
      }
      return new Outcome(order, PrintSize.of(order.facts()), Optional.empty());
    } catch (UnfitPicture unfit) {
      return new Outcome(order, List.of(), Optional.of(unfit));
    } catch (OutOfMemoryError second) {
      return new Outcome(order, List.of(), Optional.of(tooLarge(order.facts())));
    }
  }

  private static void within(int share, Order order, Work work, Semaphore memory)
      throws UnfitPicture, IOException, InterruptedException {
    memory.acquire(share);
    try {
      work.on(order);
    } finally {
      memory.release(share);
    }
  }

  private int megabytesFor(Order order) throws IOException {
    int perPixel =
        switch (order.facts().kind()) {
          case JPEG -> BYTES_PER_JPEG_PIXEL;
          case PNG, GIF, WEBP -> BYTES_PER_PNG_PIXEL;
        };
    long bytes = 2 * Files.size(order.file()) + order.facts().pixels() * perPixel;
    return (int) Math.min(megabytes, bytes / MEGABYTE + 1);
  }

  private static UnfitPicture tooLarge(PictureFacts facts) {
    return new UnfitPicture(
        "is "
            + facts.width()
            + " x "
            + facts.height()
            + " px, too large for the memory that Java has here; save it smaller, or give Java"
            + " more with -Xmx");
  }

  private static Outcome value(Future<Outcome> future) throws IOException, InterruptedException {
    try {
      return future.get();
    } catch (ExecutionException e) {
      Throwable cause = e.getCause();
      if (cause instanceof IOException disk) {
        throw disk;
      }
      if (cause instanceof InterruptedException stop) {
        throw stop;
      }
      throw new IllegalStateException("a picture could not be worked on", cause);
    }
  }

  private static Thread daemon(Runnable task) {
    Thread thread = new Thread(task, "print");
    thread.setDaemon(true);
    return thread;
  }
}
