package ribband.site;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import ribband.album.Leaf;
import ribband.journal.Entry;
import ribband.ledger.Made;
import ribband.ledger.PerHour;
import ribband.ledger.Records;
import ribband.ledger.Records.Stretch;
import ribband.measure.Hours;
import ribband.measure.Saying;

/** The records that stand in big letters. */
final class RecordFacts {
  private final Book book;
  private final Map<LocalDate, Entry> entryOfDay;
  private final ShownNights shown;

  RecordFacts(Book book) {
    this.book = book;
    this.entryOfDay = book.firstEntryOfDay();
    this.shown = ShownNights.of(book);
  }

  /** One record in big letters. */
  record Fact(String name, String figure, String words, String href) {}

  List<Fact> all() {
    Records records = book.records();
    List<Fact> facts = new ArrayList<>();
    records
        .bestMonth()
        .ifPresent(
            month ->
                facts.add(
                    new Fact(
                        "Best month",
                        Saying.hoursInColumn(month.hours()),
                        Saying.hourOrHours(month.hours()) + " in " + Saying.month(month.period()),
                        RecordsPage.monthHref(month.period()))));
    records
        .longestNight()
        .ifPresent(
            night ->
                facts.add(
                    new Fact(
                        "Longest night",
                        Saying.hoursInColumn(night.hours()),
                        Saying.hourOrHours(night.hours()) + onDay(night.date()),
                        entryHref(night.date()))));
    stretch(records.runOfNights(), "Longest run", "night in a row", "nights in a row")
        .ifPresent(facts::add);
    stretch(records.runOfWeeks(), "Longest run of weeks", "week in a row", "weeks in a row")
        .ifPresent(facts::add);
    stretch(records.gap(), "Longest gap", "day without work", "days without work")
        .ifPresent(facts::add);
    mostPieces().ifPresent(facts::add);
    averageNight().ifPresent(facts::add);
    dearest().ifPresent(facts::add);
    if (book.showsMoney() && !book.ledger().whole().totalCost().isNegative()) {
      PerHour.of(book.ledger().whole().totalCost(), book.ledger().whole().totalHours())
          .ifPresent(
              each ->
                  facts.add(
                      new Fact(
                          "Money",
                          book.words().money(each),
                          "for each hour of work",
                          Addresses.href(Addresses.RECORDS, Addresses.MONEY))));
    }
    return facts;
  }

  private Optional<Fact> stretch(
      Optional<Stretch> stretch, String name, String one, String several) {
    return stretch.map(
        s ->
            new Fact(
                name,
                Saying.count(s.length()),
                (s.length() == 1 ? one : several) + ", " + days(s),
                ""));
  }

  /** Private nights hold their record, without a day. */
  private String onDay(LocalDate date) {
    return shown.has(date) ? " on " + Saying.day(date) : " in one night";
  }

  /** By month alone where a private night is in it or ends it. */
  private String days(Stretch stretch) {
    boolean told =
        book.ledger().nights().keySet().stream()
            .filter(day -> !day.isBefore(stretch.from().minusDays(1)))
            .filter(day -> !day.isAfter(stretch.to().plusDays(1)))
            .allMatch(shown::has);
    Function<LocalDate, String> say = told ? Saying::day : day -> Saying.month(YearMonth.from(day));
    String from = say.apply(stretch.from());
    String to = say.apply(stretch.to());
    return from.equals(to) ? from : from + " to " + to;
  }

  private Optional<Fact> mostPieces() {
    return book.records()
        .mostPieces()
        .map(
            made -> {
              Optional<Entry> told =
                  book.album().shown().stream()
                      .map(Leaf::entry)
                      .filter(entry -> tellsOf(entry, made))
                      .findFirst();
              return new Fact(
                  "Most pieces in a night",
                  Saying.count(made.count()),
                  made.kind() + told.map(e -> " on " + Saying.day(made.date())).orElse(""),
                  told.map(RecordsPage::href).orElse(""));
            });
  }

  private static boolean tellsOf(Entry entry, Made made) {
    return entry.date().equals(made.date())
        && entry.pieces().stream().anyMatch(work -> work.kind().equals(made.kind()));
  }

  /** spec: of what private entries bought readers hear one sum a month, and no single price. */
  private Optional<Fact> dearest() {
    return book.records().bought().stream()
        .filter(bought -> book.showsMoney() && bought.entry().isPublic())
        .findFirst()
        .map(
            bought ->
                new Fact(
                    "Largest purchase",
                    book.words().money(bought.amount()),
                    bought.what() + ", on " + Saying.day(bought.entry().date()),
                    RecordsPage.href(bought.entry())));
  }

  private Optional<Fact> averageNight() {
    int nights = book.ledger().nights().size();
    if (nights == 0) {
      return Optional.empty();
    }
    long seconds = Hours.sum(book.ledger().nights().values()).seconds();
    Hours mean = new Hours((seconds + nights / 2) / nights);
    return Optional.of(
        new Fact(
            "A night, on average",
            Saying.hoursInColumn(mean),
            Saying.hourOrHours(mean) + ", over " + Saying.counted(nights, "night", "nights"),
            ""));
  }

  private String entryHref(LocalDate date) {
    return Optional.of(date)
        .filter(shown::has)
        .map(entryOfDay::get)
        .map(RecordsPage::href)
        .orElse("");
  }
}
