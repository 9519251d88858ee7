package ribband.journal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribband.journal.Entry.Shown;
import ribband.journal.Node.Mapping;
import ribband.journal.Node.Text;
import ribband.measure.Dates;
import ribband.measure.Hours;
import ribband.measure.Percent;
import ribband.measure.Quantity;
import ribband.measure.Saying;
import ribband.problem.OneLine;
import ribband.problem.Place;
import ribband.problem.Problems;

/** Reads one entry: each key by what it means. Knows the project, no other entry. */
final class EntryReader {
  private static final Hours MOST_A_SESSION = Hours.ofMinutes(24 * 60L);

  private final JournalFolder folder;
  private final Project project;
  private final Listed phases;
  private final Source source;
  private final Problems problems;

  EntryReader(JournalFolder folder, Project project, Source source, Problems problems) {
    this.folder = folder;
    this.project = project;
    this.phases =
        new Listed("phases of project.yaml", project.phases().stream().map(Phase::id).toList());
    this.source = source;
    this.problems = problems;
  }

  /** The entry; empty where its date or its keys cannot be read, which has then been told. */
  Optional<Entry> read() {
    EntryName name = EntryName.of(source.file());
    return FrontMatter.of(source, problems)
        .flatMap(
            parts -> {
              if (!parts.fenced()) {
                problems.warning(
                    new Place(source.file(), 1, 1),
                    "no --- fence opens this entry, so it counts as words only; put --- above and"
                        + " below its keys");
              }
              Fields keys = new Fields(parts.keys(), problems);
              Optional<LocalDate> date = date(keys, name);
              // The other keys are read all the same, so that their problems are told in this run.
              Entry entry = entry(keys, name, parts, date.orElse(LocalDate.EPOCH));
              keys.close();
              return date.map(day -> entry);
            });
  }

  private Entry entry(Fields keys, EntryName name, FrontMatter parts, LocalDate date) {
    Optional<String> phase = keys.value("phase", PhaseMap.phase(phases));
    String ownPhase = phase.orElse(Phase.UNSORTED.id());
    Optional<Fields> materials = keys.mapping("materials");
    Spending spending = new Spending(folder, source.file(), project.currency(), phases, problems);
    Work work = new Work(project, phases, date, problems);
    Map<String, Hours> hours = hours(keys, ownPhase);
    List<Outlay> outlays = spending.read(keys, materials, ownPhase);
    Map<String, Quantity> used = amounts(materials, "used");
    Map<String, Quantity> left = amounts(materials, "left");
    materials.ifPresent(Fields::close);
    warnUnsorted(keys, phase, hours, outlays);
    return new Entry(
        source.file(),
        date,
        name.address(date.toString()),
        keys.text("title").or(name::words).orElseGet(() -> Saying.day(date)),
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
        new PhotoList(folder, source.file(), problems).read(keys),
        keys.value("private", Readings::trueOrFalse).orElse(false) ? Shown.PRIVATE : Shown.PUBLIC,
        parts.text(),
        parts.textLine());
  }

  /**
   * spec: the date is {@code date}, else the one in the name, else the folder's; two must agree.
   */
  private Optional<LocalDate> date(Fields keys, EntryName name) {
    Optional<Text> written = keys.located("date");
    List<LocalDate> dates = new ArrayList<>();
    boolean readable = true;
    Place whole = new Place(source.file(), 1, 1);
    for (Optional<Text> candidate :
        List.of(
            written,
            name.date().map(date -> new Text(date, whole)),
            name.folderDate().map(date -> new Text(date, whole)))) {
      if (candidate.isPresent()) {
        String key = candidate == written ? "date" : "the date in the name,";
        Optional<LocalDate> read = Values.read(key, candidate.get(), Dates::readDay, problems);
        readable &= read.isPresent();
        read.ifPresent(dates::add);
      }
    }
    if (dates.stream().distinct().count() > 1) {
      problems.error(
          written.map(Text::place).orElse(whole),
          (written.isPresent() ? "date " : "the file's name says ")
              + dates.get(0)
              + (written.isPresent() ? " is not the " : " but its folder's ")
              + dates.get(1)
              + (written.isPresent() ? " of the name" : "")
              + "; change one of them");
      return Optional.empty();
    }
    return readable ? dates.stream().findFirst() : Optional.empty();
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
    if (total.compareTo(MOST_A_SESSION) > 0) {
      problems.error(
          written.orElseThrow().place(),
          "hours come to "
              + Saying.hours(total)
              + ", more than a day has; write one entry a day, or carried in project.yaml");
    }
    return byPhase;
  }

  private Map<String, Quantity> amounts(Optional<Fields> materials, String key) {
    Map<String, Quantity> amounts = new LinkedHashMap<>();
    materials.ifPresent(
        keys ->
            keys.eachNamed(
                key,
                (name, node) ->
                    Values.read(name.value(), node, Quantity::read, problems)
                        .ifPresent(amount -> amounts.put(name.value(), amount))));
    return amounts;
  }

  private Map<String, Percent> complete(Fields keys) {
    return keys.find("complete")
        .map(
            node -> {
              if (node instanceof Mapping mapping) {
                return PhaseMap.read("complete", mapping, Percent::read, phases, problems);
              }
              problems.error(
                  node.place(), "complete needs a phase and a share, as complete: {planking: 40%}");
              return Map.<String, Percent>of();
            })
        .orElse(Map.of());
  }

  private void warnUnsorted(
      Fields keys, Optional<String> phase, Map<String, Hours> hours, List<Outlay> outlays) {
    boolean anyHours = hours.containsKey(Phase.UNSORTED.id());
    boolean anyMoney = outlays.stream().anyMatch(o -> o.phase().equals(Phase.UNSORTED.id()));
    if (phase.isEmpty() && (anyHours || anyMoney)) {
      String what = anyHours && anyMoney ? "hours and money" : anyHours ? "hours" : "money";
      Place place =
          anyHours ? keys.placeOf("hours") : keys.placeOf(keys.has("cost") ? "cost" : "materials");
      problems.warning(
          place,
          what
              + " of this entry name no phase and count under unsorted; write phase: "
              + example());
    }
  }

  private String example() {
    return phases.names().stream().findFirst().map(OneLine::of).orElse("planking");
  }
}
