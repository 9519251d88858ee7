package ribband.postcard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import ribband.measure.Currency;
import ribband.measure.Money;
import ribband.measure.SaidMoney;
import ribband.recap.Recap;
import ribband.recap.Recap.Costs;
import ribband.recap.Recap.PhaseShare;
import ribband.recap.Recap.PiecesMade;

/** What a card says of a month, and that a figure of it is never cut or broken. */
class CardTest {
  private static final Costs COSTS = new Costs("$226.60 went out", "$1,509.80");
  private static final List<PiecesMade> PIECES =
      List.of(new PiecesMade("strakes", 4, 4, 16), new PiecesMade("copper rivets", 90, 622, 2400));

  /** The most that a project may write in one amount, and more than many of them make. */
  private static final List<Long> AMOUNTS = List.of(1_000_000_000_000L, Long.MAX_VALUE);

  private static Recap march(Costs costs, List<PiecesMade> pieces) {
    return new Recap(
        "Siskin",
        "March 2026",
        LocalDate.of(2026, 3, 1),
        LocalDate.of(2026, 3, 31),
        "26½",
        "hours",
        "26½ hours",
        "11 sessions",
        "9 nights",
        "third of 6 months with work, level with May (June and July beat it)",
        "third of 6 months with work, level with May",
        List.of(new PhaseShare("Planking", "26½", 95_400, "26½ hours", "40", "40 hours", false)),
        costs,
        pieces,
        Optional.empty(),
        "99:25",
        "hours",
        "99 hours 25 minutes");
  }

  private Face face(Costs costs, List<PiecesMade> pieces) {
    return Card.of(march(costs, pieces), Optional.of("A skiff"), Optional.empty()).face();
  }

  @Test
  void aFigureDoesNotPartFromItsUnit() {
    Face expected =
        new Face(
            "Siskin",
            "A skiff",
            "March 2026",
            "26½",
            "hours",
            "third of 6 months with work, level with May, 99:25\u00a0hours to date",
            "9\u00a0nights",
            List.of(new Share("Planking", "26½", 95_400)),
            "$226.60\u00a0went\u00a0out, $1,509.80\u00a0to\u00a0date",
            "622\u00a0of\u00a02,400\u00a0copper rivets");

    assertEquals(expected, face(COSTS, PIECES));
  }

  @Test
  void whatIsNotThereIsNotSaid() {
    Face face = face(new Costs("", ""), List.of(new PiecesMade("strakes", -1, 3, 16)));

    assertEquals(List.of("", ""), List.of(face.money(), face.pieces()));
    assertEquals("$12.00\u00a0to\u00a0date", face(new Costs("", "$12.00"), List.of()).money());
  }

  @Test
  void aMonthWithoutWorkSaysSo() {
    Recap march =
        new Recap(
            "Siskin",
            "March 2026",
            LocalDate.of(2026, 3, 1),
            LocalDate.of(2026, 3, 31),
            "0",
            "hours",
            "0 hours",
            "0 sessions",
            "0 nights",
            "",
            "",
            List.of(),
            new Costs("$4.00 came back", "$0.00"),
            List.of(new PiecesMade("frames", 2, 2, 9), new PiecesMade("knees", 2, 4, 6)),
            Optional.empty(),
            "99:25",
            "hours",
            "99 hours 25 minutes");
    assertEquals(
        new Face(
            "Siskin",
            "",
            "March 2026",
            "0",
            "hours",
            "no work on the boat, 99:25\u00a0hours to date",
            "",
            List.of(),
            "$4.00\u00a0came\u00a0back, $0.00\u00a0to\u00a0date",
            "2\u00a0of\u00a09\u00a0frames"),
        Card.of(march, Optional.empty(), Optional.empty()).face());
  }

  /** ISO 4217: every currency of the table, by its own places. */
  @ParameterizedTest
  @EnumSource(Shape.class)
  void everyAmountStandsWholeInEveryCurrency(Shape shape) {
    for (Currency currency : new TreeMap<>(Currency.all()).values()) {
      for (long most : AMOUNTS) {
        for (Money amount : List.of(new Money(most), new Money(-most))) {
          for (List<PiecesMade> pieces : List.of(PIECES, List.<PiecesMade>of(), manyOfLongKind())) {
            amountsStand(currency, amount, pieces, shape);
          }
        }
      }
    }
  }

  private static List<PiecesMade> manyOfLongKind() {
    return List.of(
        new PiecesMade(
            "bronze ring nails of the garboards and the sheer strakes", 999, 99_999, 99_999));
  }

  private void amountsStand(Currency currency, Money amount, List<PiecesMade> pieces, Shape shape) {
    SaidMoney words = new SaidMoney(currency, true);
    String moved = words.moved(amount).orElseThrow();
    String toDate = words.money(amount);
    Face face = face(new Costs(moved, toDate), pieces);

    Sheet sheet = SheetPlan.of(face, Optional.empty(), shape);

    assertStands(sheet, moved);
    assertStands(sheet, toDate + " to date");
    sheet.words().forEach(line -> assertFalse(line.text().endsWith("…"), line::toString));
    Sheets.hold(sheet, shape, face);
  }

  private static void assertStands(Sheet sheet, String said) {
    String unbroken = said.replace(' ', '\u00a0');
    assertTrue(
        sheet.words().stream().anyMatch(line -> line.text().contains(unbroken)),
        () -> said + " in " + sheet.words());
  }
}
