package ribband.spoken;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ribband.journal.Project;
import ribband.measure.Currency;
import ribband.measure.Hours;
import ribband.measure.Money;
import ribband.measure.Saying;
import ribband.problem.OneLine;

/** Says what was understood of a line, one line a thing, and then what was not. */
public final class SpokenWords {
  /** Decimals that could be minutes, and are no quarters. */
  private static final Pattern HUNDREDTHS = Pattern.compile("([0-9]+)\\.((?!25)[0-5][0-9])");

  private SpokenWords() {}

  /**
   * What the builder reads: {@code planking 2¾ h}, {@code $23.70 for sanding discs}, {@code 2
   * strakes}, {@code into the text: "the wood smelled of rain"}. Nothing in it steers a terminal.
   */
  public static List<String> told(Spoken spoken, Project project) {
    List<String> told = new ArrayList<>();
    spoken.worked().forEach(worked -> told.add(worked(worked)));
    spoken
        .phase()
        .filter(
            id -> spoken.worked().stream().noneMatch(w -> w.phase().filter(id::equals).isPresent()))
        .ifPresent(id -> told.add("phase " + id));
    spoken.spent().forEach(spent -> told.add(spent(spent, project.currency())));
    spoken.pieces().forEach(piece -> told.add(piece(piece)));
    spoken.loose().forEach(loose -> told.add(loose(loose)));
    return told.stream().map(OneLine::of).toList();
  }

  private static String worked(Worked worked) {
    String hours = Saying.hours(worked.hours()) + " h" + ifMinutesWereMeant(worked.hours());
    return worked.phase().map(id -> id + " ").orElse("") + hours;
  }

  /** Whoever writes 2.45 may mean 2:45, and hears which it is. */
  private static String ifMinutesWereMeant(Hours hours) {
    Matcher hundredths = HUNDREDTHS.matcher(hours.decimal());
    return hundredths.matches()
        ? " ("
            + hundredths.group()
            + " in decimals; "
            + hundredths.group(1)
            + " h "
            + hundredths.group(2)
            + " is "
            + hundredths.group(1)
            + ":"
            + hundredths.group(2)
            + ")"
        : "";
  }

  private static String spent(Spent spent, Currency currency) {
    Money amount = spent.amount();
    String sum =
        amount.isNegative()
            ? Saying.money(Money.ZERO.minus(amount), currency) + " back"
            : Saying.money(amount, currency);
    return spent.what().isEmpty() ? sum : sum + " for " + spent.what();
  }

  private static String piece(Piece piece) {
    int count = Math.abs(piece.count());
    String name =
        count == 1 ? Plural.singular(piece.kind().name()) : severalOf(piece.kind().name());
    List<String> numbers =
        piece.numbers().stream().map(number -> Integer.toString(Math.abs(number))).toList();
    return (numbers.isEmpty() ? count + " " + name : name + " " + Saying.list(numbers))
        + piece.side().map(side -> " " + side).orElse("")
        + (piece.count() < 0 ? ", taken back" : "");
  }

  private static String severalOf(String name) {
    return Plural.singular(name).equals(name) ? Plural.of(name) : name;
  }

  private static String loose(Loose loose) {
    return "into the text: \""
        + loose.words()
        + '"'
        + loose.why().map(why -> ": " + why).orElse("");
  }
}
