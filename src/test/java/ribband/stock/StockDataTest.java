package ribband.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ribband.ledger.SheetCsv;
import ribband.measure.Currency;
import ribband.measure.Unreadable;

class StockDataTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 31);

  @TempDir Path folder;
  private Stock stock;

  @BeforeEach
  void readIt() throws Exception {
    stock =
        Texts.stock(
            folder,
            DAY,
            """
            materials: {resin: {unit: fl oz, on hand: 10 fl oz, worth: 20, lead time: 2 days, never below: 4 fl oz}}
            adhesives:
              epoxy: {material: resin, spread: 140 in2 per fl oz}
              thick: {material: resin, spread: 0.5 m2 per kg}
            pieces: {strakes: {total: 16, glue area: 2 in x 140 in, adhesive: epoxy}}
            """,
            """
            2026-03-14
            pieces: {strakes: 2}
            materials:
              used: {resin: 5 fl oz, nails: 40}
              bought: [{material: resin, amount: 1 pt, cost: 48, from: the chandlery, arrived: 2026-03-22}, {material: resin, amount: 1 pt, cost: 50, arrived: 2026-04-22}]
            """,
            """
            2026-03-28
            joints: [{adhesive: epoxy, area: 140 in2}]
            coats: [{adhesive: epoxy, area: 280 in2}]
            """,
            "2026-03-29\nmaterials: {left: {resin: 17 fl oz}, used: {nails: 8}}",
            "2026-03-30\nmaterials: {left: {resin: 18 fl oz}}",
            "2026-03-31\nmaterials: {bought: [{material: resin, amount: 2 fl oz, cost: -3}]}");
  }

  private String csv(StockList list, Currency currency) throws Exception {
    StringBuilder out = new StringBuilder();
    SheetCsv.write(StockData.of(list, stock.shelves(), currency), out);
    return out.toString();
  }

  private String csv(StockList list) throws Exception {
    return csv(list, Currency.readCode("USD"));
  }

  /** 9 used in the 18 days there are; 16 on hand and 16 on order last 64 days, to 3 June. */
  @Test
  void theShelf() throws Exception {
    assertEquals(
        """
        material,unit,opening,bought,found,used,estimated,unrecorded,returned,short,on_hand,value,on_order,needed,never_below,lacking,packs,pack,runs_out,order_by
        resin,fl oz,10,16,1,5,3,1,2,0,16,43.95,16,28,4,0,,,2026-06-03,
        nails,,0,0,0,48,0,0,0,0,,,0,,,,,,,
        """,
        csv(StockList.SHELF));
  }

  @Test
  void theMoves() throws Exception {
    assertEquals(
        """
        material,date,move,amount,unit,worth,short,on_hand,value,entry
        resin,,opening,10,fl oz,20.00,0,10,20.00,
        resin,2026-03-14,used,5,fl oz,10.00,0,5,10.00,2026-03-14.md
        resin,2026-03-22,bought,16,fl oz,48.00,0,21,58.00,2026-03-14.md
        resin,2026-03-28,estimated,3,fl oz,8.29,0,18,49.71,2026-03-28.md
        resin,2026-03-29,unrecorded,1,fl oz,2.76,0,17,46.95,2026-03-29.md
        resin,2026-03-30,found,1,fl oz,0.00,0,18,46.95,2026-03-30.md
        resin,2026-03-31,returned,2,fl oz,3.00,0,16,43.95,2026-03-31.md
        nails,2026-03-14,used,40,,,0,,,2026-03-14.md
        nails,2026-03-29,used,8,,,0,,,2026-03-29.md
        """,
        csv(StockList.MOVES));
  }

  @Test
  void theKits() throws Exception {
    assertEquals(
        """
        material,date,from,amount,unit,cost,left,emptied,nights,joints,coats,pieces,area_in2,entry
        resin,,,10,fl oz,,1,,2,1,1,2 strakes,980,
        resin,2026-03-22,the chandlery,16,fl oz,48.00,15,,0,0,0,,0,2026-03-14.md
        resin,2026-03-30,,1,fl oz,,0,2026-03-31,0,0,0,,0,2026-03-30.md
        """,
        csv(StockList.KITS));
  }

  @Test
  void theSpreads() throws Exception {
    assertEquals(
        """
        adhesive,material,date,area_in2,amount,unit,in2_per_unit,stated_in2_per_unit,entry
        epoxy,resin,2026-03-14,560,5,fl oz,112,140,2026-03-14.md
        """,
        csv(StockList.SPREADS));
  }

  @Test
  void withoutACurrencyNoMoneyIsTold() throws Exception {
    assertEquals(
        """
        material,date,from,amount,unit,cost,left,emptied,nights,joints,coats,pieces,area_in2,entry
        resin,,,10,fl oz,,1,,2,1,1,2 strakes,980,
        """,
        csv(StockList.KITS, Currency.NONE).lines().limit(2).reduce("", (a, b) -> a + b + "\n"));
  }

  @Test
  void listsAreReadByTheirNames() throws Exception {
    for (StockList list : StockList.values()) {
      assertEquals(list, StockList.read(" " + list.word().toUpperCase(Locale.ROOT)));
    }
    assertEquals(
        List.of("shelf", "moves", "kits", "spreads"),
        List.of(StockList.values()).stream().map(StockList::word).toList());
    assertThrows(Unreadable.class, () -> StockList.read("purse"));
  }
}
