package ribband.site;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ribband.journal.Amount;
import ribband.journal.Coat;
import ribband.journal.Entry;
import ribband.journal.Job;
import ribband.journal.Joint;
import ribband.journal.Journal;
import ribband.journal.Mark;
import ribband.journal.Outlay;
import ribband.journal.PieceWork;
import ribband.journal.Purchase;
import ribband.measure.Name;
import ribband.measure.Packs;
import ribband.measure.Quantity;
import ribband.measure.SaidMoney;
import ribband.measure.Saying;
import ribband.measure.ShopTalk;

/** Says what an entry's keys hold in a builder's words. */
public final class Bench {
  private final SaidMoney words;
  private final ShopTalk shop;
  private final Function<String, String> phaseTitle;
  private final Map<String, Job> jobs;
  private final Set<String> hidden;

  /** Of a journal's entries; what private ones note is never said. */
  public Bench(Journal journal, SaidMoney words) {
    this.words = words;
    this.shop = new ShopTalk(journal.project().units());
    this.phaseTitle = journal::phaseTitle;
    this.jobs = jobs(journal.entries().stream().filter(Entry::isPublic));
    this.hidden = new HashSet<>(jobs(journal.entries().stream()).keySet());
    hidden.removeAll(jobs.keySet());
  }

  private static Map<String, Job> jobs(Stream<Entry> entries) {
    return entries
        .flatMap(entry -> entry.todo().stream())
        .collect(Collectors.toMap(job -> Name.fold(job.id()), job -> job, (one, other) -> one));
  }

  /**
   * A few lines under one heading.
   *
   * @param lines never empty
   */
  public record Note(String heading, List<String> lines) {}

  public List<Note> notes(Entry entry) {
    LocalDate date = entry.date();
    List<Note> notes = new ArrayList<>();
    add(notes, "Made", entry.pieces().stream().map(Bench::piece).toList());
    add(notes, "Glued", entry.joints().stream().map(joint -> joint(joint, date)).toList());
    add(notes, "Coated", entry.coats().stream().map(coat -> coat(coat, date)).toList());
    add(notes, "Used", amounts(entry.used()));
    add(notes, "Left on the shelf", amounts(entry.left()));
    add(
        notes,
        "Bought",
        entry.outlays().stream().flatMap(outlay -> bought(outlay, date).stream()).toList());
    add(
        notes,
        "Where it stands",
        entry.complete().entrySet().stream()
            .map(e -> phaseTitle.apply(e.getKey()) + ": " + Saying.percent(e.getValue()) + " done")
            .toList());
    add(notes, "Off the list", shown(entry.done()).map(this::done).toList());
    add(notes, "For later", entry.todo().stream().map(this::job).toList());
    return notes;
  }

  private static void add(List<Note> notes, String heading, List<String> lines) {
    if (!lines.isEmpty()) {
      notes.add(new Note(heading, lines));
    }
  }

  private static String piece(PieceWork work) {
    String count =
        work.count() < 0 ? Saying.count(-work.count()) + " scrapped" : Saying.count(work.count());
    String which = work.numbers().isEmpty() ? count : numbers(work.numbers());
    return Saying.capitalised(work.kind())
        + ": "
        + which
        + work.side().map(side -> ", " + side).orElse("");
  }

  private static String numbers(List<Integer> numbers) {
    List<String> made = numbers.stream().filter(n -> n > 0).map(n -> n.toString()).toList();
    List<String> scrapped = numbers.stream().filter(n -> n < 0).map(n -> "" + -n).toList();
    List<String> said = new ArrayList<>();
    if (!made.isEmpty()) {
      said.add("number " + Saying.list(made));
    }
    if (!scrapped.isEmpty()) {
      said.add("number " + Saying.list(scrapped) + " scrapped");
    }
    return String.join(", ", said);
  }

  private String joint(Joint joint, LocalDate date) {
    List<String> parts = new ArrayList<>();
    joint.adhesive().ifPresent(adhesive -> parts.add("with " + adhesive));
    joint.area().ifPresent(area -> parts.add("over " + shop.written(area)));
    joint.spreadAt().ifPresent(at -> parts.add("spread at " + Saying.moment(at, date)));
    joint.clampedAt().ifPresent(at -> parts.add("clamped at " + Saying.moment(at, date)));
    joint.temperature().ifPresent(t -> parts.add("at " + shop.warmth(t)));
    return sentence(joint.name(), parts);
  }

  private String coat(Coat coat, LocalDate date) {
    List<String> parts = new ArrayList<>();
    coat.adhesive().ifPresent(adhesive -> parts.add("with " + adhesive));
    coat.area().ifPresent(area -> parts.add("over " + shop.written(area)));
    coat.at().ifPresent(at -> parts.add("at " + Saying.moment(at, date)));
    coat.temperature().ifPresent(t -> parts.add("in " + shop.warmth(t)));
    return sentence(coat.what(), parts);
  }

  private static String sentence(String name, List<String> parts) {
    return parts.isEmpty() ? name : name + ": " + String.join(", ", parts);
  }

  private List<String> amounts(List<Amount> amounts) {
    return amounts.stream().map(a -> amount(a.quantity(), a.material())).toList();
  }

  private String amount(Quantity amount, String material) {
    String said = shop.written(amount);
    return amount.unit().name().isEmpty() ? said + " " + material : said + " of " + material;
  }

  private Optional<String> bought(Outlay outlay, LocalDate date) {
    return outlay.purchase().map(purchase -> bought(purchase, outlay, date));
  }

  private String bought(Purchase purchase, Outlay outlay, LocalDate date) {
    String what =
        purchase.amount().map(packs -> packs(packs, purchase.what())).orElse(purchase.what());
    String money =
        outlay.amount().isZero() || !words.shown() ? "" : ", " + words.money(outlay.amount());
    String from = purchase.from().map(seller -> ", from " + seller).orElse("");
    String arrived =
        purchase
            .arrived()
            .filter(day -> day.isAfter(date))
            .map(day -> "; arrived " + Saying.day(day))
            .orElse("");
    return what + from + money + arrived;
  }

  private String packs(Packs packs, String what) {
    String each = amount(packs.pack(), what);
    return packs.count() == 1 ? each : packs.count() + " times " + each;
  }

  private Stream<Mark> shown(List<Mark> marks) {
    return marks.stream().filter(mark -> !hidden.contains(Name.fold(mark.name())));
  }

  private String done(Mark mark) {
    return Optional.ofNullable(jobs.get(Name.fold(mark.name()))).map(Job::what).orElse(mark.name());
  }

  private String job(Job job) {
    List<String> parts = new ArrayList<>();
    List<String> after = shown(job.after()).map(this::goal).toList();
    if (!after.isEmpty()) {
      parts.add("after " + Saying.list(after));
    }
    job.hours().ifPresent(hours -> parts.add("about " + Saying.hoursInWords(hours)));
    job.phase().ifPresent(phase -> parts.add("for " + phaseTitle.apply(phase)));
    return parts.isEmpty() ? job.what() : job.what() + " (" + String.join(", ", parts) + ")";
  }

  private String goal(Mark mark) {
    return Optional.ofNullable(jobs.get(Name.fold(mark.name())))
        .map(job -> "\u201c" + job.what() + "\u201d")
        .orElse(mark.name());
  }
}
