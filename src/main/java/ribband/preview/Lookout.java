package ribband.preview;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Says when to publish: looks at the journal again and again, so that it finds every change on
 * every disk, those on the net too, however an editor writes and whatever is made or removed.
 */
public final class Lookout {
  private final Work work;
  private final Pace pace;
  private final Clock clock;
  private final CountDownLatch stopped = new CountDownLatch(1);
  private final CountDownLatch ended = new CountDownLatch(1);

  /** Whether the last publish is to be tried again. */
  private boolean again;

  /** The journal, and what is done about it. */
  public interface Work {
    /** How the journal stands, in one short text; what keeps one from looking is a text too. */
    String look();

    /** Whether the site is as the last publish left it. */
    boolean stands();

    /** Publishes, or tells why not. */
    Outcome publish() throws InterruptedException;
  }

  /** How a publish ended. */
  public enum Outcome {
    /** There is nothing more to do until something changes. */
    SETTLED,
    /** It may go well in a while, though nothing of the journal changes. */
    TRY_AGAIN
  }

  /**
   * How long is waited.
   *
   * @param rest between two looks
   * @param restPerLook the least rest, as a multiple of what a look takes on a slow disk
   * @param longestRest even then; a clock that is set takes no look for a long one
   * @param settling between the looks that must agree before a change is taken for whole
   * @param settlingLooks how many of them there are at most
   * @param again before a publish is tried again
   */
  record Pace(
      Duration rest,
      int restPerLook,
      Duration longestRest,
      Duration settling,
      int settlingLooks,
      Duration again) {
    static final Pace USUAL =
        new Pace(
            Duration.ofMillis(250),
            10,
            Duration.ofSeconds(10),
            Duration.ofMillis(80),
            6,
            Duration.ofSeconds(1));
  }

  Lookout(Work work, Pace pace, Clock clock) {
    this.work = work;
    this.pace = pace;
    this.clock = clock;
  }

  /**
   * @param clock measures how long a look takes
   */
  public Lookout(Work work, Clock clock) {
    this(work, Pace.USUAL, clock);
  }

  /** Publishes, then at each change, until it is stopped. */
  public void run() throws InterruptedException {
    try {
      String published = work.look();
      Duration rest = publish();
      while (!stopped.await(rest.toNanos(), TimeUnit.NANOSECONDS)) {
        Instant began = clock.instant();
        String seen = work.look();
        rest = after(Duration.between(began, clock.instant()));
        if (!seen.equals(published) || !work.stands() || again) {
          published = settled(seen);
          rest = publish();
        }
      }
    } finally {
      ended.countDown();
    }
  }

  private Duration publish() throws InterruptedException {
    again = work.publish() == Outcome.TRY_AGAIN;
    return again ? pace.again() : pace.rest();
  }

  private Duration after(Duration look) {
    Duration rest = look.multipliedBy(pace.restPerLook());
    if (rest.compareTo(pace.rest()) < 0) {
      return pace.rest();
    }
    return rest.compareTo(pace.longestRest()) > 0 ? pace.longestRest() : rest;
  }

  /** Waits for an editor that is still writing; the last look. */
  private String settled(String first) throws InterruptedException {
    String seen = first;
    for (int looks = 1; looks < pace.settlingLooks(); looks++) {
      if (stopped.await(pace.settling().toNanos(), TimeUnit.NANOSECONDS)) {
        break;
      }
      String before = seen;
      seen = work.look();
      if (seen.equals(before)) {
        break;
      }
    }
    return seen;
  }

  /** Ends {@link #run} after the publish that may be under way, and waits for that. */
  public void stop(Duration atMost) throws InterruptedException {
    stopped.countDown();
    ended.await(atMost.toNanos(), TimeUnit.NANOSECONDS);
  }
}
