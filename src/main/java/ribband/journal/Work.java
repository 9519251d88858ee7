package ribband.journal;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ribband.journal.Node.Field;
import ribband.journal.Node.Listing;
import ribband.journal.Node.Mapping;
import ribband.measure.Dates;
import ribband.measure.Dimension;
import ribband.measure.Hours;
import ribband.measure.Name;
import ribband.measure.Quantity;
import ribband.measure.Reading;
import ribband.measure.Saying;
import ribband.measure.Warmth;
import ribband.problem.OneLine;
import ribband.problem.Place;
import ribband.problem.Problems;

/** Reads what was made in a night: pieces, joints, coats, and the jobs noted for later. */
final class Work {
  private final Known known;
  private final Optional<LocalDate> date;
  private final Problems problems;

  /**
   * @param date empty where it could not be read, which has been told
   */
  Work(Known known, Optional<LocalDate> date, Problems problems) {
    this.known = known;
    this.date = date;
    this.problems = problems;
  }

  List<PieceWork> pieces(Fields entry) {
    List<PieceWork> work = new ArrayList<>();
    if (known.unsure().contains("pieces")) {
      entry.find("pieces");
      return work;
    }
    entry.eachNamed(
        "pieces",
        (name, node) ->
            Values.read("piece", name, known.pieces().reading(), problems)
                .flatMap(known.project()::pieceKind)
                .ifPresent(kind -> ofKind(kind, node, work)));
    return work;
  }

  private void ofKind(PieceKind kind, Node node, List<PieceWork> work) {
    if (!(node instanceof Mapping sides)) {
      done(kind, Optional.empty(), node).ifPresent(work::add);
      return;
    }
    if (kind.sides().isEmpty()) {
      problems.error(
          node.place(),
          kind.name()
              + " have no sides in project.yaml; write a number, as {"
              + kind.name()
              + ": 2}");
      return;
    }
    Listed names = new Listed("sides of " + kind.name(), kind.sides());
    for (Field side : CutAtComma.passed(sides, problems)) {
      Optional<String> listed = Values.read("side", side.key(), names.reading(), problems);
      listed.flatMap(name -> done(kind, Optional.of(name), side.value())).ifPresent(work::add);
    }
  }

  private Optional<PieceWork> done(PieceKind kind, Optional<String> side, Node node) {
    if (node instanceof Listing numbers) {
      List<Integer> which = numbers(kind, numbers);
      int count = which.stream().mapToInt(Integer::signum).sum();
      return Optional.of(new PieceWork(kind.name(), side, count, which, node.place()));
    }
    return Values.read(kind.name(), node, Readings.whole(-kind.total(), kind.total()), problems)
        .map(count -> new PieceWork(kind.name(), side, count, List.of(), node.place()));
  }

  /** spec: a number below zero takes that one back. */
  private List<Integer> numbers(PieceKind kind, Listing listing) {
    List<Integer> which = new ArrayList<>();
    Set<Integer> seen = new HashSet<>();
    for (Node item : listing.items()) {
      Values.read(kind.name() + " number", item, number(kind), problems)
          .ifPresent(
              number -> {
                if (seen.add(Math.abs(number))) {
                  which.add(number);
                } else {
                  problems.error(
                      item.place(), kind.name() + " number " + number + " stands twice; keep one");
                }
              });
    }
    return which;
  }

  private static Reading<Integer> number(PieceKind kind) {
    return text -> {
      int least = text.startsWith("-") ? -kind.total() : 1;
      int most = text.startsWith("-") ? -1 : kind.total();
      return Readings.whole(least, most).read(text);
    };
  }

  List<Joint> joints(Fields entry) {
    List<Joint> joints = new ArrayList<>();
    entry.eachMapping(
        "joints",
        (keys, place) -> {
          Optional<LocalDateTime> spread = keys.value("spread at", moment());
          Optional<LocalDateTime> clamped = keys.value("clamped at", moment());
          if (date.isPresent()
              && spread.isPresent()
              && clamped.isPresent()
              && clamped.get().isBefore(spread.get())) {
            problems.error(
                keys.placeOfValue("clamped at"),
                "the joint is clamped before it is spread; where that was after midnight write the"
                    + " date too, as "
                    + clamped.get().toLocalDate().plusDays(1)
                    + " "
                    + Saying.clock(clamped.get().toLocalTime()));
          }
          joints.add(
              new Joint(
                  keys.text("name").orElse("Joint"),
                  keys.value("adhesive", known.adhesives().reading()),
                  spread,
                  clamped,
                  keys.value("temperature", Warmth::read),
                  keys.value("area", Quantity.of(Dimension.AREA))));
        });
    return joints;
  }

  private Reading<LocalDateTime> moment() {
    return Dates.readMoment(date.orElse(LocalDate.EPOCH));
  }

  List<Coat> coats(Fields entry) {
    List<Coat> coats = new ArrayList<>();
    entry.eachMapping(
        "coats",
        (keys, place) ->
            coats.add(
                new Coat(
                    keys.text("what").orElse("Coat"),
                    keys.value("adhesive", known.adhesives().reading()),
                    keys.value("at", moment()),
                    keys.value("temperature", Warmth::read),
                    keys.value("area", Quantity.of(Dimension.AREA)))));
    return coats;
  }

  List<Job> jobs(Fields entry) {
    List<Job> jobs = new ArrayList<>();
    Map<String, Place> seen = new LinkedHashMap<>();
    entry.eachMapping(
        "todo",
        (keys, place) -> {
          Optional<String> id = keys.value("id", Readings::id);
          if (!keys.has("id")) {
            problems.error(
                place, "a job has no id; write it as - {id: trim-ends, what: Trim the ends}");
          }
          Optional<String> what = keys.text("what");
          List<Mark> after = marks(keys, "after");
          Optional<String> phase = keys.value("phase", known.phases().reading());
          Optional<Hours> hours = keys.value("hours", Hours::read);
          id.filter(name -> isNew(name, keys.placeOfValue("id"), seen))
              .ifPresent(
                  name ->
                      jobs.add(
                          new Job(
                              name,
                              what.orElse(name),
                              after,
                              phase,
                              hours,
                              keys.placeOfValue("id"))));
        });
    return jobs;
  }

  private boolean isNew(String id, Place place, Map<String, Place> seen) {
    Place first = seen.putIfAbsent(Name.fold(id), place);
    if (first != null) {
      problems.error(place, "job " + OneLine.quote(id) + " is noted twice here; keep one");
    }
    return first == null;
  }

  /** Names with their places, for checks across entries. */
  List<Mark> marks(Fields keys, String key) {
    List<Mark> marks = new ArrayList<>();
    for (Node item : keys.items(key)) {
      Values.read(key, item, Readings::id, problems)
          .ifPresent(name -> marks.add(new Mark(name, item.place())));
    }
    return marks;
  }
}
