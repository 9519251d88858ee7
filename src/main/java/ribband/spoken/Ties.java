package ribband.spoken;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribband.problem.OneLine;
import ribband.spoken.Segment.Join;

/**
 * Takes back what hangs by an {@code and} on words that were not understood: in {@code two strakes
 * and a knee dry-fitted} the last word is said of both.
 */
final class Ties {
  private static final String TIED =
      "hangs together with words that are not known; put a comma between the two";

  private static final String REST =
      "goes on with hours behind words that are not known, so they are not counted; write 2:45";

  private Ties() {}

  static List<Found> loosen(List<Found> heard) {
    List<Found> loosened = new ArrayList<>(heard);
    for (int i = 1; i < heard.size(); i++) {
      Found left = heard.get(i - 1);
      Found right = heard.get(i);
      if (right.join() == Join.HARD) {
        if (isSaidOf(right, left)) {
          String how = right.part().typed(right.part().get(0));
          loosened.set(
              i - 1,
              left.unclear("is not counted, as " + OneLine.quote(how) + " is said behind it"));
        }
        continue;
      }
      if (isPhaseOf(left, right) || isPhaseOf(right, left)) {
        loosened.set(i - 1, left.unclear(twoPhases(left, right)));
        loosened.set(i, right.tied());
      } else if (right.isLoose() && !left.isLoose() && !standsBefore(left, right.part())) {
        loosened.set(i - 1, right.why().isPresent() ? left.tied() : left.unclear(TIED));
      } else if (left.isLoose() && !right.isLoose() && !standsBehind(left.part(), right)) {
        String why = isRestOf(left.part(), right.part()) ? REST : TIED;
        loosened.set(i, left.why().isPresent() ? right.tied() : right.unclear(why));
      }
    }
    return loosened;
  }

  /** {@code two strakes, dry-fitted}: one word behind the comma that says how they are. */
  private static boolean isSaidOf(Found remark, Found pieces) {
    return pieces.heard().filter(Heard.Count.class::isInstance).isPresent()
        && remark.heard().isEmpty()
        && remark.part().size() == 1
        && remark.part().get(0).plain().matches(".*(?:ed|cut)");
  }

  /** {@code planking and fairing 2:45}. */
  private static boolean isPhaseOf(Found alone, Found other) {
    return alone.work().filter(Heard.Work::isPhaseAlone).isPresent()
        && other.work().filter(w -> w.phase().isPresent() && w.time().isPresent()).isPresent();
  }

  private static String twoPhases(Found left, Found right) {
    return "does not say the hours of each; write " + id(left) + " 1:30, " + id(right) + " 1:15";
  }

  private static String id(Found found) {
    return found.work().flatMap(Heard.Work::phase).orElseThrow().id();
  }

  /** Whether what follows leaves it as it is: a price, or hours that are not gone on with. */
  private static boolean standsBefore(Found taken, Part loose) {
    Optional<Heard.Work> work = taken.work();
    if (work.isEmpty()) {
      return taken.heard().filter(Heard.Cost.class::isInstance).isPresent();
    }
    boolean certain =
        work.get().time().filter(t -> t.form() == TimePhrase.Form.CERTAIN).isPresent();
    return certain && loose.words().stream().noneMatch(Ties::goesOn);
  }

  private static boolean goesOn(Lexeme word) {
    return word.whole().isPresent()
        || word.is("half")
        || word.isIn(SmallWords.QUARTER)
        || word.isIn(SmallWords.HOUR)
        || word.isIn(SmallWords.MINUTE);
  }

  private static boolean standsBehind(Part loose, Found taken) {
    return taken
        .work()
        .map(w -> w.phase().isPresent() && w.time().isPresent() && !isRestOf(loose, taken.part()))
        .orElse(taken.heard().filter(Heard.Cost.class::isInstance).isPresent());
  }

  /** {@code about two and a half hours}: the half is no time of its own. */
  private static boolean isRestOf(Part loose, Part taken) {
    Lexeme last = loose.get(loose.size() - 1);
    int first = taken.is(0, SmallWords.ARTICLES) ? 1 : 0;
    return first < taken.size()
        && goesOn(taken.get(first))
        && (last.whole().isPresent() || last.isIn(SmallWords.HOUR));
  }
}
