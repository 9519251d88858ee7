package ribband.journal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribband.journal.Mention.How;
import ribband.journal.Node.Mapping;
import ribband.journal.Node.Text;
import ribband.measure.Currency;
import ribband.measure.Dates;
import ribband.measure.Money;
import ribband.measure.Packs;
import ribband.measure.Unreadable;
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
  private final List<Mention> mentions;
  private final Problems problems;

  Spending(
      JournalFolder folder, String file, Known known, List<Mention> mentions, Problems problems) {
    this.folder = folder;
    this.file = file;
    this.currency = known.currency();
    this.phases = known.phases();
    this.mentions = mentions;
    this.problems = problems;
  }

  /**
   * @param materials the entry's {@code materials}, under which the items stand
   * @param ownPhase the phase of all that names no other
   */
  List<Outlay> read(Fields entry, Optional<Fields> materials, String ownPhase) {
    long told = problems.errors();
    List<Outlay> items = new ArrayList<>();
    materials.ifPresent(
        keys ->
            keys.eachMapping("bought", (item, place) -> items.add(item(item, place, ownPhase))));
    Optional<Node> cost = entry.find("cost");
    if (cost.isEmpty()) {
      return items;
    }
    Map<String, Money> shares =
        cost.get() instanceof Mapping mapping
            ? PhaseMap.read("cost", mapping, currency::read, phases, problems)
            : Values.read("cost", cost.get(), currency::read, problems)
                .map(whole -> Map.of(ownPhase, whole))
                .orElse(Map.of());
    if (problems.errors() > told) {
      // What does not add up now may do so once the slips told above are mended.
      return items;
    }
    return cost.get() instanceof Mapping
        ? withShares(shares, items, cost.get().place())
        : withWhole(shares.get(ownPhase), items, ownPhase, cost.get().place());
  }

  private Outlay item(Fields keys, Place place, String ownPhase) {
    Optional<String> material = keys.value("material", Readings::name);
    Optional<String> item = keys.text("item");
    if (!keys.has("material") && !keys.has("item")) {
      problems.error(
          place, "something bought has no name; write material: epoxy or item: sanding discs");
    }
    Optional<Packs> amount = keys.value("amount", Packs::read);
    if (material.isPresent() && amount.isPresent()) {
      Text name = new Text(material.get(), keys.placeOfValue("material"));
      mentions.add(new Mention(name, amount.get().pack(), keys.placeOfValue("amount"), How.BOUGHT));
    }
    Purchase purchase =
        new Purchase(
            item.or(() -> material).orElse(""),
            material,
            amount,
            keys.text("from"),
            receipt(keys),
            keys.value("arrived", Dates::readDay));
    Money cost = keys.value("cost", currency::read).orElse(Money.ZERO);
    String phase = keys.value("phase", phases.reading()).orElse(ownPhase);
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
                String told = Values.told("receipt", name, e);
                if (e.wrong().equals(FileNames.NOT_THERE)) {
                  problems.warning(name.place(), told);
                  return Optional.of(name.value());
                }
                problems.error(name.place(), told);
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
