package ribband.preview;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Says when to publish: looks at the journal again and again, so that it finds every change on
 * every disk, those on the net too, however an editor writes and whatever is made or removed. Where
 * the system tells that something stirs, it looks at once.
 */
public final class Lookout {
  private final Work work;
  private final Pace pace;
  private final Clock clock;
  private final Bell bell;
  private final CountDownLatch ended = new CountDownLatch(1);

  /** Whether the last publish is to be tried again. */
  private boolean again;

  /** The journal, and what is done about it. */
  public interface Work {
    /** How the journal stands, in one short text; what keeps one from looking is a text too. */
    String look();

    /** The folders that the last look saw files in. */
    Set<Path> folders();

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
            Duration.ofMillis(400),
            20,
            Duration.ofSeconds(10),
            Duration.ofMillis(80),
            6,
            Duration.ofSeconds(1));
  }

  Lookout(Work work, Bell bell, Pace pace, Clock clock) {
    this.bell = bell;
    this.work = work;
    this.pace = pace;
    this.clock = clock;
  }

  /**
   * @param clock measures how long a look takes
   */
  public Lookout(Work work, Clock clock) {
    this(work, Bell.ofThisMachine(), Pace.USUAL, clock);
  }

  /** Publishes, then at each change, until it is stopped. */
  public void run() throws InterruptedException {
    try (bell) {
      String published = work.look();
      Duration rest = publish();
      while (!rests(rest)) {
        Instant began = clock.instant();
        String seen = work.look();
        rest = after(Duration.between(began, clock.instant()));
        if (again || !seen.equals(published) || !work.stands()) {
          published = settled(seen);
          rest = publish();
        }
      }
    } finally {
      ended.countDown();
    }
  }

  /** Whether it was stopped meanwhile. */
  private boolean rests(Duration rest) throws InterruptedException {
    return again ? bell.restInAnyCase(rest) : bell.rest(rest);
  }

  private Duration publish() throws InterruptedException {
    again = work.publish() == Outcome.TRY_AGAIN;
    bell.listenTo(work.folders());
    return again ? pace.again() : pace.rest();
  }

  Duration after(Duration look) {
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
      if (bell.restInAnyCase(pace.settling())) {
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

  /**
   * Ends {@link #run} after the publish that may be under way, and waits for that.
   *
   * @return whether it has ended
   */
  public boolean stop(Duration atMost) throws InterruptedException {
    bell.close();
    return ended.await(atMost.toNanos(), TimeUnit.NANOSECONDS);
  }
}
