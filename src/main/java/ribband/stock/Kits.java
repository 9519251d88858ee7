package ribband.stock;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribband.journal.Entry;
import ribband.journal.Outlay;
import ribband.measure.Quantity;
import ribband.measure.Unit;

/** Keeps what came of a material apart, oldest first, while a journal is gone through. */
final class Kits {
  private static final Quantity NO_AREA = Quantity.none(Unit.of("in2"));

  private final List<Story> stories = new ArrayList<>();
  private int oldest;

  /** A kit while it is written. */
  private static final class Story {
    private final Move.Kind from;
    private final Optional<LocalDate> date;
    private final Optional<Entry> entry;
    private final Optional<Outlay> outlay;
    private final Quantity amount;
    private Quantity left;
    private Quantity area = NO_AREA;
    private Map<String, Integer> pieces = Map.of();
    private Optional<LocalDate> lastNight = Optional.empty();
    private int nights;
    private int joints;
    private int coats;
    private Optional<LocalDate> emptied = Optional.empty();

    private Story(
        Move.Kind from,
        Optional<LocalDate> date,
        Optional<Entry> entry,
        Optional<Outlay> outlay,
        Quantity amount) {
      this.from = from;
      this.date = date;
      this.entry = entry;
      this.outlay = outlay;
      this.amount = amount;
      this.left = amount;
    }

    private Quantity take(Quantity wanted, LocalDate day) {
      Quantity taken = wanted.isMoreThan(left) ? left : wanted;
      left = left.minus(taken);
      if (left.isZero()) {
        emptied = Optional.of(day);
      }
      return taken;
    }

    /** Days come in their order. */
    private void drawnFrom(LocalDate day) {
      if (!lastNight.equals(Optional.of(day))) {
        lastNight = Optional.of(day);
        nights++;
      }
    }

    private void made(GlueWork work) {
      joints += work.joints();
      coats += work.coats();
      work.area().ifPresent(more -> area = area.plus(more));
      if (!work.pieces().isEmpty()) {
        Map<String, Integer> all = new LinkedHashMap<>(pieces);
        work.pieces().forEach((kind, count) -> all.merge(kind, count, Story::atMost));
        pieces = all;
      }
    }

    /** More pieces than a number holds are a slip, and no reason to tell nothing at all. */
    private static int atMost(int some, int more) {
      return (int) Math.min(Integer.MAX_VALUE, (long) some + more);
    }

    private Kit kit() {
      return new Kit(
          from, date, entry, outlay, amount, left, nights, joints, coats, area, pieces, emptied);
    }
  }

  void add(
      Move.Kind from,
      Optional<LocalDate> date,
      Optional<Entry> entry,
      Optional<Outlay> outlay,
      Quantity amount) {
    if (!amount.isZero()) {
      stories.add(new Story(from, date, entry, outlay, amount));
    }
  }

  /**
   * Takes from the oldest first. What an entry made counts for the kit that gave the most to it, so
   * that no joint is told twice or in halves.
   *
   * @param amount at most what is there
   * @param work empty where nobody wrote down what it went into
   */
  void take(Quantity amount, LocalDate day, Optional<GlueWork> work) {
    Quantity wanted = amount;
    Optional<Story> most = Optional.empty();
    Quantity mostTaken = Quantity.none(amount.unit());
    while (oldest < stories.size() && stories.get(oldest).left.isZero()) {
      oldest++;
    }
    for (int i = oldest; i < stories.size() && !wanted.isZero(); i++) {
      Story story = stories.get(i);
      if (!story.left.isZero()) {
        Quantity taken = story.take(wanted, day);
        wanted = wanted.minus(taken);
        work.ifPresent(w -> story.drawnFrom(day));
        if (taken.isMoreThan(mostTaken)) {
          most = Optional.of(story);
          mostTaken = taken;
        }
      }
    }
    most.ifPresent(story -> work.ifPresent(story::made));
  }

  /** Takes back to the shop what came last. */
  void giveBack(Quantity amount, LocalDate day) {
    Quantity wanted = amount;
    for (int i = stories.size() - 1; i >= 0 && !wanted.isZero(); i--) {
      Story story = stories.get(i);
      if (!story.left.isZero()) {
        wanted = wanted.minus(story.take(wanted, day));
      }
    }
  }

  List<Kit> kits() {
    return stories.stream().map(Story::kit).toList();
  }
}
