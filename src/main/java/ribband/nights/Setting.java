package ribband.nights;

import java.time.LocalDate;
import java.util.Map;
import java.util.OptionalInt;
import ribband.journal.Project;
import ribband.measure.Hours;

/**
 * What a night has to work with.
 *
 * @param clamps that the shop has, 0 or more; empty where nothing tells it
 */
public record Setting(EveningLength evening, OptionalInt clamps) {
  /**
   * The builder's usual evening and the project's clamps.
   *
   * @param nights each date with hours
   * @param last the last that counts
   */
  public static Setting usual(Map<LocalDate, Hours> nights, Project project, LocalDate last) {
    return new Setting(EveningLength.usual(nights, last), project.clamps());
  }

  public Setting withEvening(Hours hours) {
    return new Setting(EveningLength.given(hours), clamps);
  }

  public Setting withClamps(int number) {
    return new Setting(evening, OptionalInt.of(number));
  }
}
