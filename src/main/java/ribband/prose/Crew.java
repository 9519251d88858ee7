package ribband.prose;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Does the same work on many things at once: on deep threads, so that texts are read where they
 * are, and on twice as many as there are cores, as some always wait for the disk.
 */
public final class Crew {
  private Crew() {}

  /** What the work makes of each, in the order of the things; all are at rest when it returns. */
  public static <A, B> List<B> work(List<A> things, Function<A, B> work) {
    List<B> made = new ArrayList<>(Collections.nCopies(things.size(), null));
    AtomicInteger next = new AtomicInteger();
    AtomicReference<Throwable> failure = new AtomicReference<>();
    Runnable hand =
        () -> {
          int mine = next.getAndIncrement();
          while (mine < things.size() && failure.get() == null) {
            try {
              made.set(mine, work.apply(things.get(mine)));
            } catch (Throwable thrown) {
              failure.compareAndSet(null, thrown);
            }
            mine = next.getAndIncrement();
          }
        };
    int hands = Math.min(things.size(), 2 * Runtime.getRuntime().availableProcessors());
    List<DeepThread> crew = Stream.generate(() -> new DeepThread(hand)).limit(hands).toList();
    crew.forEach(Thread::start);
    crew.forEach(Crew::rest);
    rethrow(failure.get());
    return made;
  }

  /** Others still at work would write files that the caller is about to clear away. */
  private static void rest(Thread hand) {
    boolean interrupted = false;
    while (hand.isAlive()) {
      try {
        hand.join();
      } catch (InterruptedException e) {
        interrupted = true;
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }

  private static void rethrow(Throwable failure) {
    if (failure instanceof RuntimeException exception) {
      throw exception;
    }
    if (failure instanceof Error error) {
      throw error;
    }
  }
}
