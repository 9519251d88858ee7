package ribband.journal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribband.journal.Entry.Shown;
import ribband.journal.Mention.How;
import ribband.journal.Node.Mapping;
import ribband.journal.Node.Text;
import ribband.measure.Dates;
import ribband.measure.Hours;
import ribband.measure.Percent;
import ribband.measure.Quantity;
import ribband.measure.Saying;
import ribband.problem.Place;
import ribband.problem.Problems;

/** Reads one entry: each key by what it means. Knows the project, no other entry; one use. */
final class EntryReader {
  /** spec: more than 24 h in an entry are an error. */
  static final Hours MOST_AN_ENTRY = Hours.ofMinutes(24 * 60L);

  private final JournalFolder folder;
  private final Known known;
  private final Listed phases;
  private final Source source;
  private final Problems problems;
  private final List<Mention> mentions = new ArrayList<>();

  EntryReader(JournalFolder folder, Known known, Source source, Problems problems) {
    this.folder = folder;
    this.known = known;
    this.phases = known.phases();
    this.source = source;
    this.problems = problems;
  }

  /** What was read of an entry: the entry, and its amounts of materials with their places. */
  record EntryRead(Entry entry, List<Mention> mentions) {
    EntryRead {
      mentions = List.copyOf(mentions);
    }
  }

  /** The entry; empty where its date or its keys cannot be read, which has then been told. */
  Optional<EntryRead> read() {
    EntryName name = EntryName.of(source.file());
    return FrontMatter.of(source, problems)
        .flatMap(
            parts -> {
              if (!parts.fenced()) {
                problems.warning(
                    top(),
                    "no --- fence opens this entry, so it counts as words only; put --- above and"
                        + " below its keys");
              }
              Fields keys = new Fields(parts.keys(), problems);
              Optional<LocalDate> date = date(keys, name);
              // The other keys are read all the same, so that their problems are told in this run.
              Entry entry = entry(keys, name, parts, date);
              keys.close();
              return date.map(day -> new EntryRead(entry, mentions));
            });
  }

  private Place top() {
    return new Place(source.file(), 1, 1);
  }

  private Entry entry(Fields keys, EntryName name, FrontMatter parts, Optional<LocalDate> date) {
    LocalDate day = date.orElse(LocalDate.EPOCH);
    Optional<String> phase = keys.value("phase", phases.reading());
    String ownPhase = phase.orElse(Phase.UNSORTED.id());
    Optional<Fields> materials = keys.mapping("materials");
    Work work = new Work(known, date, problems);
    Map<String, Hours> hours = hours(keys, ownPhase);
    List<Outlay> outlays =
        new Spending(folder, source.file(), known, mentions, problems)
            .read(keys, materials, ownPhase);
    List<Amount> used = amounts(materials, "used", How.USED);
    List<Amount> left = amounts(materials, "left", How.LEFT);
    materials.ifPresent(Fields::close);
    if (!keys.has("phase")) {
      warnUnsorted(keys, hours, outlays);
    }
    return new Entry(
        source.file(),
        day,
        name.address(day.toString()),
        keys.text("title").or(name::words).orElseGet(() -> Saying.day(day)),
        phase,
        hours,
        outlays,
        used,
        left,
        work.pieces(keys),
        complete(keys),
        work.joints(keys),
        work.coats(keys),
        work.jobs(keys),
        work.marks(keys, "done"),
        keys.values("lesson", text -> text),
        keys.value("mark", Readings::mark),
        new PhotoList(folder, source.file(), problems).read(keys),
        keys.value("private", Readings::trueOrFalse).orElse(false) ? Shown.PRIVATE : Shown.PUBLIC,
        parts.text(),
        parts.textLine());
  }

  /** A date that is written, and where: {@code date}, {@code the name's date}. */
  private record Written(String what, LocalDate date, Place place) {}

  /**
   * spec: the date is {@code date}, else the one in the name, else the folder's; where two are
   * there they must agree.
   */
  private Optional<LocalDate> date(Fields keys, EntryName name) {
    long told = problems.errors();
    List<Written> dates = new ArrayList<>();
    keys.located("date").ifPresent(text -> date("date", text, dates));
    name.date().ifPresent(text -> date("the name's date", new Text(text, top()), dates));
    name.folderDate().ifPresent(text -> date("the folder's date", new Text(text, top()), dates));
    if (problems.errors() > told) {
      return Optional.empty();
    }
    Written first = dates.get(0);
    for (Written other : dates) {
      if (!other.date().equals(first.date())) {
        problems.error(
            first.place(),
            first.what()
                + " is "
                + first.date()
                + ", but "
                + other.what()
                + " is "
                + other.date()
                + "; change one of them");
        return Optional.empty();
      }
    }
    return Optional.of(first.date());
  }

  private void date(String what, Text text, List<Written> dates) {
    Values.read(what, text, Dates::readDay, problems)
        .ifPresent(date -> dates.add(new Written(what, date, text.place())));
  }

  private Map<String, Hours> hours(Fields keys, String ownPhase) {
    Map<String, Hours> byPhase = new LinkedHashMap<>();
    Optional<Node> written = keys.find("hours");
    written.ifPresent(
        node -> {
          if (node instanceof Mapping mapping) {
            byPhase.putAll(PhaseMap.read("hours", mapping, Hours::read, phases, problems));
          } else {
            Values.read("hours", node, Hours::read, problems)
                .ifPresent(hours -> byPhase.put(ownPhase, hours));
          }
        });
    byPhase.values().removeIf(Hours::isZero);
    Hours total = Hours.sum(byPhase.values());
    if (total.compareTo(MOST_AN_ENTRY) > 0) {
      problems.error(
          written.orElseThrow().place(),
          "hours come to "
              + Saying.hours(total)
              + ", more than a day has; write one entry a day, or carried in project.yaml");
    }
    return byPhase;
  }

  private List<Amount> amounts(Optional<Fields> materials, String key, How how) {
    List<Amount> amounts = new ArrayList<>();
    materials.ifPresent(
        keys -> keys.eachNamed(key, (name, node) -> amount(name, node, how, amounts)));
    return amounts;
  }

  private void amount(Text name, Node node, How how, List<Amount> amounts) {
    Optional<String> material = Values.read("material", name, Readings::name, problems);
    Optional<Quantity> amount = Values.read(name.value(), node, Quantity::read, problems);
    if (material.isPresent() && amount.isPresent()) {
      amounts.add(new Amount(material.get(), amount.get(), node.place()));
      mentions.add(new Mention(name, amount.get(), node.place(), how));
    }
  }

  private Map<String, Percent> complete(Fields keys) {
    return keys.find("complete")
        .map(
            node -> {
              if (node instanceof Mapping mapping) {
                return PhaseMap.read("complete", mapping, Percent::read, phases, problems);
              }
              problems.error(
                  node.place(), "complete has no phase; write it as complete: {planking: 40%}");
              return Map.<String, Percent>of();
            })
        .orElse(Map.of());
  }

  private void warnUnsorted(Fields keys, Map<String, Hours> hours, List<Outlay> outlays) {
    boolean anyHours = hours.containsKey(Phase.UNSORTED.id());
    boolean anyMoney = outlays.stream().anyMatch(o -> o.phase().equals(Phase.UNSORTED.id()));
    if (anyHours || anyMoney) {
      String what = anyHours && anyMoney ? "hours and money" : anyHours ? "hours" : "money";
      Place place =
          anyHours ? keys.placeOf("hours") : keys.placeOf(keys.has("cost") ? "cost" : "materials");
      problems.warning(
          place,
          what
              + (anyHours
                  ? " of this entry name no phase and count"
                  : " of this entry names no phase and counts")
              + " under unsorted; write phase: "
              + example());
    }
  }

  private String example() {
    return phases.names().stream().findFirst().orElse("planking");
  }
}
