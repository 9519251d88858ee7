package ribband.site;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import ribband.album.Leaf;
import ribband.chart.Chart;
import ribband.chart.PhaseBars;
import ribband.ledger.Row;
import ribband.measure.Hours;
import ribband.measure.Money;
import ribband.measure.Saying;
import ribband.recap.BestPicture;
import ribband.recap.MonthSentence;

/** One month: said in a sentence, by phase, its entries and pictures. */
final class MonthPage {
  private final Book book;
  private final MonthSentence sentence;

  MonthPage(Book book) {
    this.book = book;
    this.sentence = new MonthSentence(book.journal(), book.ledger(), book.words());
  }

  /**
   * What the template shows.
   *
   * @param lead its best picture; none or one
   * @param hull as far as she stood at its end; none without a plan
   * @param rank among the months with work, in short; empty without any
   * @param hidden what private entries add, in words; empty for none
   */
  record View(
      String month,
      List<Prints.View> lead,
      List<Hull> hull,
      String sentence,
      String hours,
      String nights,
      String rank,
      String cost,
      String hoursToDate,
      String costToDate,
      boolean showsMoney,
      List<PhaseShare> phases,
      List<Chart<PhaseBars>> chart,
      List<Notices.View> entries,
      String hidden,
      List<Prints.View> prints,
      List<EntryPage.Link> neighbours) {}

  /** A phase's part of the month. */
  record PhaseShare(
      String title,
      String href,
      String hours,
      String share,
      String cost,
      String hoursToDate,
      String costToDate) {}

  View view(Row<YearMonth> month, List<Leaf> leaves) {
    String page = Addresses.month(month.period());
    return new View(
        Saying.month(month.period()),
        BestPicture.of(book.album(), book.ledger(), month.period())
            .map(new Prints(page)::lead)
            .stream()
            .toList(),
        Hull.of(book, month),
        sentence.of(month),
        Saying.hoursInColumn(month.hours()),
        Saying.count(month.nights()),
        month.hours().isZero() ? "" : sentence.briefRank(month),
        book.words().moneyOrDash(month.cost()),
        Saying.hoursInColumn(month.hoursToDate()),
        book.words().money(month.costToDate()),
        book.showsMoney(),
        phases(month, page),
        new HoursCharts(book).monthPhases(month),
        new Notices(book, page).of(leaves, false),
        hidden(month, leaves),
        new Prints(page).gallery(leaves, false),
        neighbours(month, page));
  }

  private List<PhaseShare> phases(Row<YearMonth> month, String page) {
    List<PhaseShare> shares = new ArrayList<>();
    for (String id : book.ledger().phaseIds()) {
      Hours hours = month.sums().hoursOf(id);
      Money cost = month.sums().costOf(id);
      if (!hours.isZero() || !cost.isZero() && book.showsMoney()) {
        shares.add(
            new PhaseShare(
                book.phaseTitle(id),
                Addresses.href(page, Addresses.phase(id)),
                hours.isZero() ? "–" : Saying.hoursInColumn(hours),
                Saying.share(hours.seconds(), month.hours().seconds()),
                book.words().moneyOrDash(cost),
                Saying.hoursInColumn(month.toDate().hoursOf(id)),
                book.words().money(month.toDate().costOf(id))));
      }
    }
    return shares;
  }

  /** So that the list and the total agree without a word of what is private. */
  private String hidden(Row<YearMonth> month, List<Leaf> leaves) {
    Hours listed = Hours.sum(leaves.stream().map(leaf -> leaf.entry().totalHours()).toList());
    long rest = month.hours().seconds() - listed.seconds();
    return rest == 0 ? "" : Saying.hoursInWords(new Hours(rest)) + " more not listed";
  }

  private List<EntryPage.Link> neighbours(Row<YearMonth> month, String page) {
    List<EntryPage.Link> links = new ArrayList<>();
    YearMonth before = month.period().minusMonths(1);
    YearMonth after = month.period().plusMonths(1);
    book.month(before).ifPresent(row -> links.add(link("prev", before, page)));
    book.month(after).ifPresent(row -> links.add(link("next", after, page)));
    return links;
  }

  private static EntryPage.Link link(String rel, YearMonth month, String page) {
    return new EntryPage.Link(
        rel, Saying.month(month), Addresses.href(page, Addresses.month(month)));
  }
}
