package ribband.preview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import ribband.preview.Lookout.Outcome;
import ribband.preview.Lookout.Pace;

/** When is published, told by what the looks find. */
@Timeout(60)
class LookoutTest {
  private static final Duration INSTANT = Duration.ofMillis(1);
  private static final Duration NEVER = Duration.ofHours(1);
  private static final Clock STILL = Clock.fixed(Instant.EPOCH, ZoneOffset.UTC);

  @TempDir private Path folder;

  /** Finds one state after the other, and stops when there are no more. */
  private static class Script implements Lookout.Work {
    private final Deque<String> states;
    private final List<String> done = new CopyOnWriteArrayList<>();
    private final Deque<Outcome> outcomes = new ArrayDeque<>();
    private final Deque<Boolean> standing = new ArrayDeque<>();
    private final Bell bell = new Bell(Optional.empty());
    private Set<Path> folders = Set.of();
    private String last = "";

    Script(String... states) {
      this.states = new ArrayDeque<>(List.of(states));
    }

    @Override
    public String look() {
      if (states.size() <= 1) {
        bell.close();
      }
      last = states.isEmpty() ? last : states.remove();
      done.add(last);
      return last;
    }

    @Override
    public Set<Path> folders() {
      return folders;
    }

    @Override
    public boolean stands() {
      return standing.isEmpty() || standing.remove();
    }

    @Override
    public Outcome publish() {
      done.add("publish");
      return outcomes.isEmpty() ? Outcome.SETTLED : outcomes.remove();
    }

    String run() throws InterruptedException {
      new Lookout(this, bell, pace(INSTANT, INSTANT), STILL).run();
      return String.join(" ", done);
    }
  }

  private static Pace pace(Duration rest, Duration again) {
    return new Pace(rest, 20, Duration.ofSeconds(10), INSTANT, 4, again);
  }

  @Test
  void aStillJournalIsPublishedOnce() throws InterruptedException {
    assertEquals("a publish a a a", new Script("a", "a", "a", "a").run());
  }

  @Test
  void aChangeIsPublishedWhenTwoLooksAgree() throws InterruptedException {
    assertEquals(
        "a publish a b c d d publish d", new Script("a", "a", "b", "c", "d", "d", "d").run());
  }

  @Test
  void whatNeverSettlesIsPublishedAllTheSame() throws InterruptedException {
    assertEquals(
        "a publish b c d e publish e e", new Script("a", "b", "c", "d", "e", "e", "e").run());
  }

  @Test
  void aSiteThatWasTouchedIsPublishedAnew() throws InterruptedException {
    Script script = new Script("a", "a", "a", "a", "a");
    script.standing.addAll(List.of(true, false));
    assertEquals("a publish a a a publish a", script.run());
  }

  @Test
  void whatMayGoWellLaterIsTriedAgainUntilItDoes() throws InterruptedException {
    Script script = new Script("a", "a", "a", "a", "a", "a");
    script.outcomes.addAll(List.of(Outcome.TRY_AGAIN, Outcome.TRY_AGAIN));
    assertEquals("a publish a a publish a a publish a", script.run());
  }

  /** Else this would take an hour. */
  @Test
  void eachOutcomeHasARestOfItsOwn() throws InterruptedException {
    Script settled = new Script("a", "b", "c");
    new Lookout(settled, settled.bell, pace(INSTANT, NEVER), STILL).run();
    assertEquals(List.of("a", "publish", "b", "c", "publish"), settled.done);
    Script again = new Script("a", "b", "c");
    again.outcomes.addAll(List.of(Outcome.TRY_AGAIN, Outcome.TRY_AGAIN));
    new Lookout(again, again.bell, pace(NEVER, INSTANT), STILL).run();
    assertEquals(List.of("a", "publish", "b", "c", "publish"), again.done);
  }

  @Test
  void aSlowLookIsRestedFrom() {
    Script script = new Script();
    Lookout lookout = new Lookout(script, script.bell, Pace.USUAL, STILL);
    assertEquals(Duration.ofMillis(400), lookout.after(Duration.ofMillis(1)));
    assertEquals(Duration.ofMillis(400), lookout.after(Duration.ofMillis(20)));
    assertEquals(Duration.ofMillis(420), lookout.after(Duration.ofMillis(21)));
    assertEquals(Duration.ofSeconds(10), lookout.after(Duration.ofMillis(500)));
    assertEquals(Duration.ofSeconds(10), lookout.after(Duration.ofHours(9)));
    assertEquals(Duration.ofMillis(400), lookout.after(Duration.ofHours(-9)));
  }

  /** The clock of a machine whose looks take a second each. */
  private static final class SlowClock extends Clock {
    private Instant now = Instant.EPOCH;

    @Override
    public Instant instant() {
      now = now.plusSeconds(1);
      return now;
    }

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }
  }

  @Test
  void theRestIsMeasured() throws Exception {
    Script script = new Script("a", "a", "a", "a", "a", "a", "a", "a", "a", "a", "a", "a");
    Pace pace = new Pace(INSTANT, 20, Duration.ofMillis(1500), INSTANT, 4, INSTANT);
    Lookout lookout = new Lookout(script, script.bell, pace, new SlowClock());
    CompletableFuture<Void> run = running(lookout);
    // The first rest is short, and then a look took a second.
    Thread.sleep(500);
    assertEquals(List.of("a", "publish", "a"), List.copyOf(script.done));
    lookout.stop(NEVER);
    run.join();
  }

  @Test
  void whatStirsIsLookedAtAtOnce() throws Exception {
    Bell bell = Bell.ofThisMachine();
    Script script = new Script("a", "b", "b", "b", "b", "b", "b", "b", "b", "b", "b", "b", "b");
    script.folders = Set.of(folder, folder.resolve("nowhere"));
    Lookout lookout = new Lookout(script, bell, pace(NEVER, INSTANT), STILL);
    CompletableFuture<Void> run = running(lookout);
    while (script.done.lastIndexOf("publish") < 2) {
      Files.writeString(folder.resolve("x"), "x");
      Thread.sleep(10);
    }
    lookout.stop(NEVER);
    run.join();
    assertTrue(
        String.join(" ", script.done).startsWith("a publish b b publish"), script.done::toString);
  }

  @Test
  void itEndsWhileItRestsAndWhileItWaitsToTryAgain() throws Exception {
    for (Outcome outcome : Outcome.values()) {
      Script script = new Script("a", "b", "c");
      script.outcomes.add(outcome);
      Lookout lookout = new Lookout(script, Bell.ofThisMachine(), pace(NEVER, NEVER), STILL);
      CompletableFuture<Void> run = running(lookout);
      while (!script.done.contains("publish")) {
        Thread.sleep(5);
      }
      lookout.stop(NEVER);
      assertTrue(run.thenApply(ended -> true).get());
      assertEquals(List.of("a", "publish"), script.done);
    }
  }

  @Test
  void aPublishUnderWayIsWaitedForButNotForEver() throws Exception {
    CompletableFuture<Void> begun = new CompletableFuture<>();
    CompletableFuture<Void> mayEnd = new CompletableFuture<>();
    Lookout.Work slow =
        new Lookout.Work() {
          @Override
          public String look() {
            return "a";
          }

          @Override
          public Set<Path> folders() {
            return Set.of();
          }

          @Override
          public boolean stands() {
            return true;
          }

          @Override
          public Outcome publish() {
            begun.complete(null);
            mayEnd.join();
            return Outcome.SETTLED;
          }
        };
    Lookout lookout = new Lookout(slow, STILL);
    CompletableFuture<Void> run = running(lookout);
    begun.join();
    assertFalse(lookout.stop(Duration.ofMillis(30)));
    assertFalse(run.isDone());
    CompletableFuture<Void> stop =
        CompletableFuture.runAsync(() -> quietly(() -> lookout.stop(NEVER)));
    mayEnd.complete(null);
    stop.join();
    run.join();
  }

  @Test
  void whatIsThrownEndsIt() throws Exception {
    Script script =
        new Script("a") {
          @Override
          public Outcome publish() {
            throw new IllegalStateException("told");
          }
        };
    Lookout lookout = new Lookout(script, STILL);
    assertThrows(IllegalStateException.class, lookout::run);
    assertTrue(lookout.stop(NEVER));
  }

  private interface Step {
    void run() throws InterruptedException;
  }

  private static void quietly(Step step) {
    try {
      step.run();
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    }
  }

  private static CompletableFuture<Void> running(Lookout lookout) {
    return CompletableFuture.runAsync(() -> quietly(lookout::run));
  }
}
