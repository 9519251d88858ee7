package ribband.ahead;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import ribband.jobs.NotedJob;
import ribband.journal.Project;
import ribband.measure.Name;
import ribband.measure.Saying;
import ribband.measure.ShopTalk;
import ribband.measure.Temperature;
import ribband.plan.ColdMonths;

/**
 * A job that names an adhesive or a coating in a month whose mean in the shop is below what that
 * may be used at: a fact beside the job, and no word on whether it can be done.
 *
 * @param adhesive its name
 * @param mean of the month in the shop, below the coldest
 */
public record ColdWork(String adhesive, Temperature coldest, YearMonth month, Temperature mean) {
  public ColdWork {
    Objects.requireNonNull(adhesive);
    Objects.requireNonNull(coldest);
    Objects.requireNonNull(month);
    Objects.requireNonNull(mean);
  }

  /**
   * Looks for it; of several that the job names the longest name counts.
   *
   * @param asOf a day of the month
   */
  static Optional<ColdWork> of(Project project, NotedJob job, LocalDate asOf) {
    return ColdMonths.of(project, asOf, asOf).stream()
        .flatMap(month -> month.adhesives().stream())
        .filter(adhesive -> names(job, adhesive))
        .max(Comparator.comparing(String::length))
        .map(
            adhesive ->
                new ColdWork(
                    adhesive,
                    project.adhesives().get(Name.fold(adhesive)).coldest().orElseThrow(),
                    YearMonth.from(asOf),
                    project.shopTemperatures().get(asOf.getMonth())));
  }

  /** As whole words, compared as keys are. */
  private static boolean names(NotedJob job, String adhesive) {
    String words = (job.id() + " " + job.what()).replaceAll("[^\\p{L}\\p{N}]+", " ");
    return ("-" + Name.fold(words) + "-").contains("-" + Name.fold(adhesive) + "-");
  }

  /** {@code varnish is not used below 50 °F, and the shop's mean in November is 46 °F}. */
  public String words(ShopTalk talk) {
    return adhesive
        + " is not used below "
        + talk.temperature(coldest)
        + ", and the shop's mean in "
        + Saying.monthName(month)
        + " is "
        + talk.temperature(mean);
  }
}
