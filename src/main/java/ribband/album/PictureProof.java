package ribband.album;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntConsumer;
import java.util.function.Predicate;
import ribband.photo.PictureFacts;
import ribband.photo.PrintRun;
import ribband.photo.PrintRun.Order;
import ribband.photo.PrintRun.Outcome;
import ribband.problem.Problems;

/**
 * Decodes the pictures of an album whole, once each: to see that they can be shown, or to print.
 */
public final class PictureProof {
  private final Album album;
  private final PictureMemory memory;
  private final PrintRun run;

  public PictureProof(Album album, PictureMemory memory, PrintRun run) {
    this.album = album;
    this.memory = memory;
    this.run = run;
  }

  /** Tells how many of how many pictures are done. */
  @FunctionalInterface
  public interface Progress {
    void done(int pictures, int of);
  }

  /** Decodes every picture that was not decoded before; the bad ones become problems. */
  public void tryOut(Progress progress, Problems problems)
      throws IOException, InterruptedException {
    List<Order> orders = orders(album.leaves(), facts -> !memory.isProven(facts));
    tell(run.tryOut(orders, counter(progress, orders)), problems);
  }

  /**
   * Prints the pictures of the leaves that are shown and decodes those of private ones.
   *
   * @param needed whether the prints of a picture are still to be made
   * @param folder where the prints go
   */
  public void print(
      Predicate<PictureFacts> needed, Path folder, Progress progress, Problems problems)
      throws IOException, InterruptedException {
    List<Order> orders = orders(album.shown(), needed);
    tell(run.print(orders, folder, counter(progress, orders)), problems);
    tryOut((pictures, of) -> {}, problems);
  }

  private static IntConsumer counter(Progress progress, List<Order> orders) {
    return done -> progress.done(done, orders.size());
  }

  private List<Order> orders(List<Leaf> leaves, Predicate<PictureFacts> wanted) {
    Map<String, Order> byDigest = new LinkedHashMap<>();
    for (Leaf leaf : leaves) {
      for (Shot shot : leaf.shots()) {
        if (wanted.test(shot.facts())) {
          Path file = album.journal().folder().path(shot.file());
          byDigest.putIfAbsent(shot.facts().digest(), new Order(file, shot.facts()));
        }
      }
    }
    return new ArrayList<>(byDigest.values());
  }

  private void tell(List<Outcome> outcomes, Problems problems) {
    Map<String, Outcome> unfit = new LinkedHashMap<>();
    for (Outcome outcome : outcomes) {
      if (outcome.unfit().isPresent()) {
        unfit.put(outcome.order().facts().digest(), outcome);
      } else {
        memory.prove(outcome.order().facts());
      }
    }
    for (Leaf leaf : album.leaves()) {
      for (Shot shot : leaf.shots()) {
        Outcome outcome = unfit.get(shot.facts().digest());
        if (outcome != null) {
          problems.error(
              shot.place(), AlbumReader.told(shot.file(), outcome.unfit().orElseThrow()));
        }
      }
    }
  }
}
