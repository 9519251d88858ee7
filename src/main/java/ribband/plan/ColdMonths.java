package ribband.plan;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ribband.journal.Project;
import ribband.measure.Temperature;
import ribband.shop.Adhesive;

/** Finds the months in which the shop is too cold for an adhesive; keeps no state. */
public final class ColdMonths {
  /**
   * One month.
   *
   * @param adhesives the names of those it is too cold for, at least one
   */
  public record ColdMonth(YearMonth month, List<String> adhesives) {
    public ColdMonth {
      adhesives = List.copyOf(adhesives);
    }
  }

  private ColdMonths() {}

  /**
   * The calendar months whose mean in the shop is below what an adhesive may be used at.
   *
   * @param from a day of the first month
   * @param to a day of the last month
   */
  public static List<ColdMonth> of(Project project, LocalDate from, LocalDate to) {
    List<ColdMonth> cold = new ArrayList<>();
    YearMonth last = YearMonth.from(to);
    for (YearMonth m = YearMonth.from(from); !m.isAfter(last); m = m.plusMonths(1)) {
      Optional<Temperature> shop =
          Optional.ofNullable(project.shopTemperatures().get(m.getMonth()));
      List<String> adhesives = shop.map(mean -> tooColdFor(project, mean)).orElse(List.of());
      if (!adhesives.isEmpty()) {
        cold.add(new ColdMonth(m, adhesives));
      }
    }
    return cold;
  }

  private static List<String> tooColdFor(Project project, Temperature mean) {
    return project.adhesives().values().stream()
        .filter(adhesive -> adhesive.coldest().filter(least -> isBelow(mean, least)).isPresent())
        .map(Adhesive::name)
        .toList();
  }

  /** In Fahrenheit, where no Celsius is rounded. */
  private static boolean isBelow(Temperature mean, Temperature least) {
    Temperature.Scale exact = Temperature.Scale.F;
    return mean.in(exact).degrees().compareTo(least.in(exact).degrees()) < 0;
  }
}
