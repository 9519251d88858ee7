package ribband.journal;

import java.time.LocalDate;
import java.time.Month;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import ribband.journal.SiteSettings.MoneyShown;
import ribband.measure.Currency;
import ribband.measure.Name;
import ribband.measure.Ordered;
import ribband.measure.SaidMoney;
import ribband.measure.Temperature;
import ribband.measure.Units;
import ribband.shop.Adhesive;

/**
 * What is built, as {@code project.yaml} has it.
 *
 * @param currency {@link Currency#NONE} where none is named
 * @param phases the plan in its order; empty where the entries name the phases
 * @param materials by folded name
 * @param adhesives by folded name
 * @param pieces by folded name
 * @param clamps how many the shop has
 */
public record Project(
    String name,
    Optional<String> what,
    Currency currency,
    Units units,
    ZoneId zone,
    Optional<LocalDate> started,
    SiteSettings site,
    List<Phase> phases,
    Carried carried,
    Map<String, Material> materials,
    Map<String, Adhesive> adhesives,
    Map<String, PieceKind> pieces,
    OptionalInt clamps,
    List<Away> away,
    Map<Month, Temperature> shopTemperatures) {
  public Project {
    phases = List.copyOf(phases);
    materials = Ordered.copy(materials);
    adhesives = Ordered.copy(adhesives);
    pieces = Ordered.copy(pieces);
    away = List.copyOf(away);
    shopTemperatures = Map.copyOf(shopTemperatures);
  }

  /** How its money is said to readers. */
  public SaidMoney saidMoney() {
    return new SaidMoney(currency, site.money() == MoneyShown.SHOWN);
  }

  public Optional<PieceKind> pieceKind(String name) {
    return Optional.ofNullable(pieces.get(Name.fold(name)));
  }
}
