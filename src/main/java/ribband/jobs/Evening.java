package ribband.jobs;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import ribband.measure.Hours;

/**
 * What fits an evening. What the longest work hangs on stands first; of that as much as goes into
 * the evening is taken, one after another.
 *
 * @param length of the evening
 * @param together what fits one after another
 * @param instead what fits too, in place of something above
 * @param unknown jobs without hours: nobody said how long they take
 * @param tooLong what takes more than the evening
 */
public record Evening(
    Hours length, List<Item> together, List<Item> instead, List<Item> unknown, List<Item> tooLong) {
  public Evening {
    together = List.copyOf(together);
    instead = List.copyOf(instead);
    unknown = List.copyOf(unknown);
    tooLong = List.copyOf(tooLong);
  }

  /**
   * A ready job, or pieces of a kind.
   *
   * @param pieces how many; 1 for a job
   * @param hours for all of it; empty where nobody knows
   */
  public record Item(Goal goal, String what, long pieces, Optional<Hours> hours) {}

  /**
   * Pieces that could be made.
   *
   * @param most that this night allows: clamps, resin and what is left; 1 or more
   * @param each hours for one
   */
  public record Offer(Goal goal, String what, long most, Optional<Hours> each) {
    private Item item(long pieces) {
      return new Item(
          goal, what, pieces, each.map(e -> new Hours(Math.multiplyExact(e.seconds(), pieces))));
    }

    /** How many of them go into a stretch of time. */
    private long within(Hours time) {
      return each.filter(e -> !e.isZero())
          .map(e -> Math.min(most, time.seconds() / e.seconds()))
          .orElse(most);
    }
  }

  /**
   * Fills an evening.
   *
   * @param ready jobs that wait for nothing
   * @param chain says how long the work behind each is
   */
  public static Evening of(Hours length, List<OpenJob> ready, List<Offer> pieces, Chain chain) {
    List<Offer> offers = new ArrayList<>(pieces);
    ready.forEach(
        open -> offers.add(new Offer(open.job().goal(), open.job().what(), 1, open.job().hours())));
    offers.sort(
        Comparator.<Offer>comparingLong(offer -> -chain.behind(offer.goal()))
            .thenComparing(Offer::goal));
    List<Item> together = new ArrayList<>();
    List<Item> instead = new ArrayList<>();
    List<Item> unknown = new ArrayList<>();
    List<Item> tooLong = new ArrayList<>();
    Hours left = length;
    for (Offer offer : offers) {
      long alone = offer.within(length);
      long now = offer.within(left);
      if (offer.each().isEmpty()) {
        unknown.add(offer.item(offer.most()));
      } else if (now > 0) {
        Item item = offer.item(now);
        together.add(item);
        left = new Hours(left.seconds() - item.hours().orElseThrow().seconds());
      } else if (alone > 0) {
        instead.add(offer.item(alone));
      } else {
        tooLong.add(offer.item(1));
      }
    }
    return new Evening(length, together, instead, unknown, tooLong);
  }

  /** Nothing is ready, and no piece can be made. */
  public boolean isEmpty() {
    return together.isEmpty() && instead.isEmpty() && unknown.isEmpty() && tooLong.isEmpty();
  }
}
