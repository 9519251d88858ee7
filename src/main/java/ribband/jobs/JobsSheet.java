package ribband.jobs;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ribband.ledger.Cell;
import ribband.ledger.Sheet;

/**
 * All jobs for other programs: names apart by spaces and commas, hours decimal, times in ISO 8601
 * with the project's offset.
 */
public final class JobsSheet {
  private static final List<String> COLUMNS =
      List.of(
          "id",
          "state",
          "what",
          "phase",
          "hours",
          "waits_for",
          "held_until",
          "held_by",
          "frees",
          "helps",
          "chain_nights",
          "noted",
          "done");

  private static final DateTimeFormatter ISO =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ssxxx", Locale.ROOT);

  private JobsSheet() {}

  /** The open jobs in the order of work, then those done. */
  public static Sheet of(PunchList list, Chain chain, ZoneId zone) {
    return Sheet.of(
        COLUMNS,
        Stream.concat(
                list.open().stream().map(open -> row(open, chain, zone)),
                list.done().stream().map(JobsSheet::row))
            .toList());
  }

  private static List<Cell> row(OpenJob open, Chain chain, ZoneId zone) {
    NotedJob job = open.job();
    return List.of(
        Cell.Words.of(job.id()),
        Cell.Words.of(open.state().name().toLowerCase(Locale.ROOT)),
        Cell.Words.of(job.what()),
        words(job.phase()),
        hours(job),
        words(open.waitsFor().stream().map(Goal::name)),
        words(open.hold().flatMap(Hold::until).map(at -> ISO.format(at.atZone(zone)))),
        words(open.hold().map(Hold::joint)),
        words(open.frees().stream().map(NotedJob::id)),
        words(open.helps().stream().map(NotedJob::id)),
        new Cell.Count(chain.behind(job.goal())),
        Cell.Words.of(job.noted().date().toString()),
        new Cell.Blank());
  }

  private static List<Cell> row(NotedJob job) {
    return List.of(
        Cell.Words.of(job.id()),
        Cell.Words.of("done"),
        Cell.Words.of(job.what()),
        words(job.phase()),
        hours(job),
        new Cell.Blank(),
        new Cell.Blank(),
        new Cell.Blank(),
        new Cell.Blank(),
        new Cell.Blank(),
        new Cell.Blank(),
        Cell.Words.of(job.noted().date().toString()),
        words(job.done().map(entry -> entry.date().toString())));
  }

  private static Cell hours(NotedJob job) {
    return job.hours().<Cell>map(Cell.Worked::new).orElseGet(Cell.Blank::new);
  }

  private static Cell words(Stream<String> names) {
    return words(Optional.of(names.collect(Collectors.joining(", "))).filter(n -> !n.isEmpty()));
  }

  private static Cell words(Optional<String> text) {
    return text.<Cell>map(Cell.Words::of).orElseGet(Cell.Blank::new);
  }
}
