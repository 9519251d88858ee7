package ribband.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribband.measure.Dimension;
import ribband.measure.Quantity;
import ribband.measure.Reading;
import ribband.measure.Unreadable;

/** Reads the values of options; all that cannot be read are told together. */
final class Wants {
  private final List<String> refusals = new ArrayList<>();

  /**
   * One value.
   *
   * @param typed null where the option was not given
   */
  <T> Optional<T> read(String option, String typed, Reading<T> reading) {
    if (typed == null) {
      return Optional.empty();
    }
    try {
      return Optional.of(reading.read(typed.strip()));
    } catch (Unreadable e) {
      refusals.add(Refusal.line(option, typed, e));
      return Optional.empty();
    }
  }

  /** An amount of something, more than nothing of it. */
  static Reading<Quantity> some(Dimension dimension) {
    return some(dimension, dimension.example());
  }

  static Reading<Quantity> some(Dimension dimension, String example) {
    return text -> some(Quantity.of(dimension).read(text), example);
  }

  /** What is mixed: by volume or by weight. */
  static Quantity volumeOrWeight(String text) throws Unreadable {
    Quantity read = Quantity.read(text);
    Dimension dimension = read.unit().dimension();
    if (dimension != Dimension.VOLUME && dimension != Dimension.MASS) {
      throw new Unreadable(
          "is " + dimension.words() + ", and a volume or a weight belongs here",
          "write it as 3 fl oz or 90 g");
    }
    return some(read, "3 fl oz or 90 g");
  }

  private static Quantity some(Quantity read, String example) throws Unreadable {
    if (read.isZero()) {
      throw new Unreadable("is nothing at all", "write it as " + example);
    }
    return read;
  }

  /** A whole number of things, 1 to 99,999. */
  static Reading<Integer> whole(int example) {
    return text -> {
      if (!text.matches("[1-9][0-9]{0,4}")) {
        throw new Unreadable(
            "is no whole number from 1 to 99,999", "write figures alone, as " + example);
      }
      return Integer.parseInt(text);
    };
  }

  /** Something else that is wrong with what was typed. */
  void refuse(String line) {
    refusals.add(line);
  }

  /**
   * Ends the command where anything was wrong.
   *
   * @throws Refusal that tells all of it, a line each
   */
  void settle() {
    if (!refusals.isEmpty()) {
      throw Refusal.wrongUsage(refusals);
    }
  }
}
