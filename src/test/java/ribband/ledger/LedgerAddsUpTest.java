package ribband.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ribband.journal.Journal;
import ribband.measure.Hours;
import ribband.measure.Money;

/** Over generated journals: however time and work are cut, the parts make the same whole. */
class LedgerAddsUpTest {
  @TempDir Path folder;

  static LongStream seeds() {
    return LongStream.range(100, 140);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void allCutsMakeTheSameWhole(long seed) throws IOException {
    GeneratedJournal generated = GeneratedJournal.write(folder, seed, 40);
    Journal journal = Journals.read(folder);
    assertEquals(40, journal.entries().size());
    Optional<LocalDate> middle = Optional.of(journal.entries().get(20).date());
    for (Selection selection :
        List.of(
            Selection.ALL,
            new Selection(middle, Optional.empty(), Optional.empty()),
            new Selection(Optional.empty(), middle, Optional.empty()),
            new Selection(Optional.empty(), middle, Optional.of("planking")),
            new Selection(Optional.empty(), Optional.empty(), Optional.of("varnish")))) {
      Ledger ledger = Ledger.of(journal, selection);
      for (List<? extends Row<?>> rows :
          List.of(ledger.months(), ledger.years(), ledger.weeks(), ledger.entries())) {
        addUp(rows, ledger);
      }
      assertEquals(
          ledger.whole().totalHours(),
          Hours.sum(ledger.phases().stream().map(PhaseRow::hours).toList()));
      assertEquals(
          ledger.whole().totalCost(),
          Money.sum(ledger.phases().stream().map(PhaseRow::cost).toList()));
      assertEquals(
          Hours.sum(ledger.nights().values()).plus(ledger.carried().totalHours()),
          ledger.whole().totalHours());
    }
    Ledger whole = Ledger.of(journal);
    assertEquals(
        generated.facts.stream().flatMap(f -> f.work().values().stream()).mapToLong(s -> s).sum()
            + generated.carriedWork.values().stream().mapToLong(s -> s).sum(),
        whole.whole().totalHours().seconds());
    List<Purchases.Spent> spent = Purchases.of(journal).lines();
    assertEquals(whole.whole().totalCost(), spent.get(spent.size() - 1).running());
    assertEquals(whole.whole().totalCost(), Money.sum(Purchases.of(journal).bySupplier().values()));
  }

  private static void addUp(List<? extends Row<?>> rows, Ledger ledger) {
    assertTrue(!rows.isEmpty());
    Hours hours = ledger.carried().totalHours();
    Money cost = ledger.carried().totalCost();
    int sessions = ledger.carried().sessions();
    for (Row<?> row : rows) {
      hours = hours.plus(row.hours());
      cost = cost.plus(row.cost());
      sessions += row.sums().sessions();
      assertEquals(hours, row.hoursToDate());
      assertEquals(cost, row.costToDate());
    }
    assertEquals(ledger.whole().totalHours(), hours);
    assertEquals(ledger.whole().totalCost(), cost);
    assertEquals(ledger.whole().sessions(), sessions);
  }
}
