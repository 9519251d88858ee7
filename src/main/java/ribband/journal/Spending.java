package ribband.journal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribband.journal.Node.Mapping;
import ribband.measure.Currency;
import ribband.measure.Dates;
import ribband.measure.Money;
import ribband.measure.Packs;
import ribband.measure.Reading;
import ribband.measure.Unreadable;
import ribband.problem.OneLine;
import ribband.problem.Place;
import ribband.problem.Problems;

/**
 * Reads what an entry cost.
 *
 * <p>spec: {@code cost} is the whole of tonight's spending; {@code bought} items are inside it;
 * without {@code cost} their sum stands in; items that exceed it are an error. Each item counts for
 * its own phase, else the entry's; what is left of {@code cost} for the entry's. With a {@code
 * cost} map the map alone counts per phase, and the items of a phase may not exceed its share.
 */
final class Spending {
  private final JournalFolder folder;
  private final String file;
  private final Currency currency;
  private final Listed phases;
  private final Problems problems;

  Spending(JournalFolder folder, String file, Currency currency, Listed phases, Problems problems) {
    this.folder = folder;
    this.file = file;
    this.currency = currency;
    this.phases = phases;
    this.problems = problems;
  }

  /**
   * @param materials the entry's {@code materials}, under which the items stand
   * @param ownPhase the phase of all that names no other
   */
  List<Outlay> read(Fields entry, Optional<Fields> materials, String ownPhase) {
    List<Outlay> items = new ArrayList<>();
    materials.ifPresent(
        keys ->
            keys.eachMapping("bought", (item, place) -> items.add(item(item, place, ownPhase))));
    Optional<Node> cost = entry.find("cost");
    if (cost.isEmpty()) {
      return items;
    }
    Place place = cost.get().place();
    if (cost.get() instanceof Mapping mapping) {
      Map<String, Money> shares = PhaseMap.read("cost", mapping, amounts(), phases, problems);
      return withShares(shares, items, place);
    }
    return Values.read("cost", cost.get(), amounts(), problems)
        .map(whole -> withWhole(whole, items, ownPhase, place))
        .orElse(items);
  }

  private Reading<Money> amounts() {
    return ProjectReader.amounts(currency);
  }

  private Outlay item(Fields keys, Place place, String ownPhase) {
    Optional<String> material = keys.text("material");
    Optional<String> item = keys.text("item");
    if (material.isEmpty() && item.isEmpty()) {
      problems.error(
          place, "something bought has no name; write material: epoxy or item: sanding discs");
    }
    Purchase purchase =
        new Purchase(
            item.or(() -> material).orElse(""),
            material,
            keys.value("amount", Packs::read),
            keys.text("from"),
            receipt(keys),
            keys.value("arrived", Dates::readDay));
    Money cost = keys.value("cost", amounts()).orElse(Money.ZERO);
    String phase = keys.value("phase", PhaseMap.phase(phases)).orElse(ownPhase);
    return new Outlay(phase, cost, Optional.of(purchase));
  }

  /** A receipt that is not there yet takes nothing from the figures, so it only warns. */
  private Optional<String> receipt(Fields keys) {
    return keys.located("receipt")
        .flatMap(
            name -> {
              try {
                return Optional.of(FileNames.file(folder, file, name.value(), "receipt"));
              } catch (Unreadable e) {
                String told =
                    "receipt " + OneLine.quote(name.value()) + " " + e.wrong() + "; " + e.cure();
                if (e.wrong().equals("is not there")) {
                  problems.warning(name.place(), told);
                } else {
                  problems.error(name.place(), told);
                }
                return Optional.empty();
              }
            });
  }

  private List<Outlay> withWhole(Money whole, List<Outlay> items, String ownPhase, Place place) {
    Money listed = Money.sum(items.stream().map(Outlay::amount).toList());
    Money rest = whole.minus(listed);
    if (rest.isNegative() && !items.isEmpty()) {
      problems.error(
          place,
          "the items bought come to "
              + listed.decimal(currency)
              + ", more than the cost of "
              + whole.decimal(currency)
              + "; raise the cost or mend an item");
    }
    return withRest(items, Map.of(ownPhase, rest));
  }

  private List<Outlay> withShares(Map<String, Money> shares, List<Outlay> items, Place place) {
    Map<String, Money> rests = new LinkedHashMap<>(shares);
    for (Outlay item : items) {
      rests.merge(item.phase(), Money.ZERO.minus(item.amount()), Money::plus);
    }
    rests.forEach(
        (phase, rest) -> {
          boolean hasItems = items.stream().anyMatch(item -> item.phase().equals(phase));
          if (rest.isNegative() && hasItems) {
            Money share = shares.getOrDefault(phase, Money.ZERO);
            problems.error(
                place,
                "the items bought for "
                    + phase
                    + " come to "
                    + share.minus(rest).decimal(currency)
                    + ", more than its share of "
                    + share.decimal(currency)
                    + "; raise the share or mend an item");
          }
        });
    return withRest(items, rests);
  }

  private static List<Outlay> withRest(List<Outlay> items, Map<String, Money> rests) {
    List<Outlay> outlays = new ArrayList<>(items);
    rests.forEach(
        (phase, rest) -> {
          if (!rest.isZero()) {
            outlays.add(new Outlay(phase, rest, Optional.empty()));
          }
        });
    return outlays;
  }
}
