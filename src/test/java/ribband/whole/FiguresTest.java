package ribband.whole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ribband.ledger.GeneratedJournal;
import ribband.ledger.GeneratedJournal.Fact;
import ribband.measure.Currency;
import ribband.measure.Hours;
import ribband.measure.Money;
import ribband.measure.Saying;

/** What the pages show, against sums of the plain facts behind journals written at random. */
class FiguresTest {
  @TempDir private Path folder;
  private GeneratedJournal journal;
  private Published site;

  private void publish(long seed) throws IOException {
    journal = GeneratedJournal.write(folder, seed, 90);
    site = new Builder(folder).publish();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void monthsShowTheirSums(long seed) throws IOException {
    publish(seed);
    Document home = site.page("index.html");
    List<String> shown =
        home.select("table:has(caption:contains(Every month)) tbody:not(.sum) tr").eachText();
    List<YearMonth> months = months();

    assertEquals(months.size(), shown.size());
    for (int i = 0; i < months.size(); i++) {
      YearMonth month = months.get(months.size() - 1 - i);
      Predicate<Fact> in = fact -> YearMonth.from(fact.day()).equals(month);
      Predicate<Fact> upTo = fact -> !YearMonth.from(fact.day()).isAfter(month);
      long worked = work(in, id -> true);
      long paid = money(in, id -> true);
      long workedToDate = work(upTo, id -> true) + sum(journal.carriedWork, id -> true);
      long paidToDate = money(upTo, id -> true) + sum(journal.carriedMoney, id -> true);
      assertEquals(Saying.month(month), shown.get(i).replaceFirst("^(\\S+ \\S+) .*", "$1"));
      assertEquals(
          figures(worked, workedToDate, paid, paidToDate).replaceFirst("^0:00 ", "– "),
          shown.get(i).replaceFirst("^\\S+ \\S+ \\S+ \\S+ ", ""),
          month + "");
      Element together = site.page("months/" + month + ".html").selectFirst("tfoot tr");
      if (together == null) {
        assertEquals("0 0", worked + " " + paid, month + " has no table");
      } else {
        assertEquals(
            "Together " + figures(worked, workedToDate, paid, paidToDate), together.text());
      }
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void aMonthsPhasesShowWhereTheyStand(long seed) throws IOException {
    publish(seed);
    int checked = 0;
    for (YearMonth month : months()) {
      Predicate<Fact> in = fact -> YearMonth.from(fact.day()).equals(month);
      Predicate<Fact> upTo = fact -> !YearMonth.from(fact.day()).isAfter(month);
      for (Element row : site.page("months/" + month + ".html").select("main .table tbody tr")) {
        String id = row.selectFirst("a").attr("href").replaceAll(".*/|\\.html", "");
        long worked = work(in, id::equals);
        long paid = money(in, id::equals);
        long workedToDate = work(upTo, id::equals) + sum(journal.carriedWork, id::equals);
        long paidToDate = money(upTo, id::equals) + sum(journal.carriedMoney, id::equals);
        assertEquals(
            figures(worked, workedToDate, paid, paidToDate).replaceFirst("^0:00 ", "– "),
            row.select("td").text().replaceFirst(" \\S+", ""),
            month + " " + id);
        checked++;
      }
    }
    assertTrue(checked > 20, "rows checked: " + checked);
  }

  private String figures(long worked, long workedToDate, long paid, long paidToDate) {
    return hours(worked)
        + " "
        + hours(workedToDate)
        + " "
        + dash(paid, said(paid))
        + " "
        + said(paidToDate);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void phasesShowTheirSumsAndTheAuditAddsUp(long seed) throws IOException {
    publish(seed);
    for (String id : GeneratedJournal.PHASES) {
      long worked = work(fact -> true, id::equals) + sum(journal.carriedWork, id::equals);
      long paid = money(fact -> true, id::equals) + sum(journal.carriedMoney, id::equals);
      Document page = site.page("phases/" + id + ".html");

      List<String> gauge = page.select(".gauge dd").eachText();
      assertEquals(List.of(hours(worked), "80:00", dash(paid, said(paid)), said500()), gauge, id);
      List<Element> lines = page.select("table:has(caption:contains(Entry by entry)) tbody tr");
      Element last = lines.get(lines.size() - 1);
      assertEquals(hours(worked), last.select("td").get(2).text(), id);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void moneyRunsUpToTheWhole(long seed) throws IOException {
    publish(seed);
    long whole = money(fact -> true, id -> true) + sum(journal.carriedMoney, id -> true);
    Document page = site.page("money.html");
    List<Element> lines = page.select("table:has(caption:contains(running total)) > tbody > tr");

    long running = 0;
    List<String> wrong = new ArrayList<>();
    for (Element line : lines) {
      running += minor(line.select("td").get(3).text());
      if (!said(running).equals(line.select("td").get(4).text())) {
        wrong.add(line.text());
      }
    }
    assertEquals(List.of(), wrong);
    assertEquals(whole, running);
    long bySupplier =
        page.select("table:has(caption:contains(by supplier)) tbody tr").stream()
            .mapToLong(row -> minor(row.select("td").first().text()))
            .sum();
    assertEquals(whole, bySupplier);
    long byPhase =
        page.select("table:has(caption:contains(Money by phase, beside)) tbody tr").stream()
            .mapToLong(row -> minor(row.select("td").first().text()))
            .sum();
    assertEquals(whole, byPhase);
    List<String> hidden =
        lines.stream()
            .map(line -> line.select("td").first().text() + line.select("th").text())
            .filter(text -> text.endsWith("Not listed"))
            .toList();
    assertEquals(hidden.stream().distinct().toList(), hidden, "one line a month");
    assertFalse(lines.isEmpty());
  }

  @Test
  void pagesShowTheLedgersFigures() throws IOException {
    FullJournal.write(folder);
    site = new Builder(folder).publish();

    assertEquals(
        List.of(
            "Moulds and strongback 11:00 12:00 59% 2 $85.70 $80.00",
            "Planking 4:20 40:00 23% 2 −$45.50 $400.00", "Fairing 3:10 17% 2 $23.70"),
        rows(site.page("index.html").selectFirst("table:has(caption:contains(beside the plan))")));
    assertEquals(
        "Together 18:30 52:00 8 $63.90 $480.00",
        site.page("index.html")
            .selectFirst("table:has(caption:contains(beside the plan)) tfoot")
            .text());
    assertEquals(
        List.of(
            "Before Carried in from before this journal Moulds and strongback $61.20 $61.20",
            "15 January 2026 The strongback, not itemised Moulds and strongback $24.50 $85.70",
            "14 March 2026 epoxy, 2 of 1 qt the chandlery Planking $64.50 $150.20",
            "14 March 2026 sanding discs Fairing $23.70 $173.90",
            "20 March 2026 Refund, not itemised Planking −$120.00 $53.90",
            "March 2026 Not listed $10.00 $63.90"),
        rows(site.page("money.html").selectFirst("table:has(caption:contains(running total))")));
    assertEquals(
        List.of(
            "15 January 2026 The strongback 2:45 10:15 $24.50",
            "16 January 2026 Short 0:45 11:00 –"),
        rows(site.page("phases/moulds.html")
                .selectFirst("table:has(caption:contains(Entry by entry))"))
            .subList(1, 3));
    assertEquals(
        List.of("the chandlery $64.50 101%", "Nobody named −$0.60 –"),
        rows(site.page("money.html").selectFirst("table:has(caption:contains(by supplier))")));
    assertEquals(
        List.of("Best month 5:00 hours in March 2026", "Longest night 4:00 hours on 14 March 2026"),
        site.page("records.html").select(".records > div").eachText().subList(0, 2));
  }

  private static List<String> rows(Element table) {
    return table.select("tbody tr").eachText();
  }

  private List<YearMonth> months() {
    List<YearMonth> months = new ArrayList<>();
    YearMonth last = YearMonth.from(journal.facts.get(journal.facts.size() - 1).day());
    YearMonth month = YearMonth.from(journal.facts.get(0).day());
    for (; !month.isAfter(last); month = month.plusMonths(1)) {
      months.add(month);
    }
    return months;
  }

  private long work(Predicate<Fact> in, Predicate<String> phase) {
    return journal.facts.stream().filter(in).mapToLong(fact -> sum(fact.work(), phase)).sum();
  }

  private long money(Predicate<Fact> in, Predicate<String> phase) {
    return journal.facts.stream().filter(in).mapToLong(fact -> sum(fact.money(), phase)).sum();
  }

  private static long sum(Map<String, Long> amounts, Predicate<String> phase) {
    return new TreeMap<>(amounts)
        .entrySet().stream()
            .filter(e -> phase.test(e.getKey()))
            .mapToLong(Map.Entry::getValue)
            .sum();
  }

  private static String hours(long seconds) {
    return Saying.hoursInColumn(new Hours(seconds));
  }

  private String said(long minor) {
    // A sign of letters is tied to its figures.
    return Saying.money(new Money(minor), Currency.all().get(journal.currency))
        .replace('\u00a0', ' ');
  }

  private String said500() {
    return said(500 * (long) Math.pow(10, journal.digits));
  }

  private static String dash(long amount, String said) {
    return amount == 0 ? "–" : said;
  }

  private long minor(String said) {
    String figures = said.replaceAll("[^0-9]", "");
    return figures.isEmpty() ? 0 : Long.parseLong(figures) * (said.startsWith("−") ? -1 : 1);
  }
}
