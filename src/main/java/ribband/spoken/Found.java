package ribband.spoken;

import java.util.Objects;
import java.util.Optional;

/**
 * A part with what was heard in it.
 *
 * @param join with the part before it
 * @param start where its text begins in the line
 * @param end just behind its text
 * @param heard empty for a remark
 */
record Found(Part part, Segment.Join join, int start, int end, Optional<Heard> heard) {
  Found {
    Objects.requireNonNull(part);
    Objects.requireNonNull(join);
    Objects.requireNonNull(heard);
  }

  boolean isLoose() {
    return heard.isEmpty() || heard.get() instanceof Heard.Unclear;
  }

  Optional<Heard.Work> work() {
    return heard.filter(Heard.Work.class::isInstance).map(Heard.Work.class::cast);
  }

  Optional<String> why() {
    return heard
        .filter(Heard.Unclear.class::isInstance)
        .map(Heard.Unclear.class::cast)
        .map(Heard.Unclear::why);
  }

  Found with(Heard other) {
    return new Found(part, join, start, end, Optional.of(other));
  }

  Found unclear(String why) {
    return with(new Heard.Unclear(why));
  }

  /**
   * What cannot be taken because of what it hangs together with, whose own reason is told first.
   */
  Found tied() {
    return new Found(part, join, start, end, Optional.empty());
  }
}
