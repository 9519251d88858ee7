package ribband.ahead;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import ribband.jobs.JobsSheet;
import ribband.ledger.Sheet;
import ribband.measure.Unreadable;
import ribband.problem.Nearest;

/** What can be listed of what lies ahead. */
public enum AheadList {
  JOBS,
  PIECES,
  NIGHTS,
  PLAN,
  LEFT,
  FORECAST;

  public static AheadList read(String text) throws Unreadable {
    List<String> words = Arrays.stream(values()).map(AheadList::word).toList();
    int which = words.indexOf(text.strip().toLowerCase(Locale.ROOT));
    if (which < 0) {
      throw new Unreadable("cannot be shown", Nearest.hint(text, words, ""));
    }
    return values()[which];
  }

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Its rows. */
  public Sheet sheet(Ahead ahead) {
    return switch (this) {
      case JOBS -> JobsSheet.of(ahead.jobs(), ahead.chain(), ahead.zone());
      case PIECES -> PiecesSheet.of(ahead.pieces().values());
      case NIGHTS -> NightsSheet.of(ahead);
      case PLAN -> PlanSheet.of(ahead.standing(), ahead.journal().project().currency());
      case LEFT -> ForecastSheet.of(ahead.left());
      case FORECAST -> ForecastSheet.of(ahead.launch());
    };
  }
}
