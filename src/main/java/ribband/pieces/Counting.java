package ribband.pieces;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribband.journal.Entry;
import ribband.journal.PieceKind;
import ribband.journal.PieceWork;
import ribband.journal.Project;
import ribband.measure.Hours;
import ribband.measure.Name;

/** Goes through the entries once and counts every kind. */
final class Counting {
  /** Where a kind has no phase: any hours are its own. */
  private static final String ANY = "";

  private final Map<String, KindCount> kinds = new LinkedHashMap<>();
  private final Map<String, List<KindCount>> byPhase = new LinkedHashMap<>();

  Counting(Project project) {
    project
        .pieces()
        .forEach(
            (fold, kind) -> {
              KindCount count = new KindCount(kind);
              kinds.put(fold, count);
              byPhase.computeIfAbsent(phase(kind), p -> new ArrayList<>()).add(count);
            });
  }

  private static String phase(PieceKind kind) {
    return kind.phase().map(Name::fold).orElse(ANY);
  }

  /** The next one, by date. */
  void add(Entry entry) {
    if (!entry.pieces().isEmpty()) {
      pieces(entry);
    }
    entry.hours().keySet().forEach(phase -> worked(Name.fold(phase), entry));
    if (!entry.hours().isEmpty()) {
      worked(ANY, entry);
    }
  }

  private void worked(String phase, Entry entry) {
    byPhase.getOrDefault(phase, List.of()).forEach(kind -> kind.worked(entry.date()));
  }

  private void pieces(Entry entry) {
    Map<KindCount, Made> made = new LinkedHashMap<>();
    for (PieceWork work : entry.pieces()) {
      Optional.ofNullable(kinds.get(Name.fold(work.kind())))
          .ifPresent(
              kind -> {
                kind.add(work);
                made.computeIfAbsent(kind, k -> new Made()).add(work);
              });
    }
    made.values().removeIf(kind -> kind.pieces() <= 0);
    Map<String, Map<KindCount, Made>> phases = new LinkedHashMap<>();
    made.forEach(
        (kind, of) ->
            phases.computeIfAbsent(phase(kind.kind()), p -> new LinkedHashMap<>()).put(kind, of));
    phases.forEach((phase, those) -> sessions(entry, hours(entry, phase), those));
  }

  private static Hours hours(Entry entry, String phase) {
    return phase.equals(ANY)
        ? entry.totalHours()
        : entry.hours().entrySet().stream()
            .filter(hours -> Name.fold(hours.getKey()).equals(phase))
            .map(Map.Entry::getValue)
            .reduce(Hours.ZERO, Hours::plus);
  }

  /** Kinds that share a phase share its hours. */
  private static void sessions(Entry entry, Hours hours, Map<KindCount, Made> made) {
    List<BigInteger> planned = planned(made);
    boolean hasPlan = planned.stream().anyMatch(weight -> weight.signum() > 0);
    List<Hours> shares = Shares.of(hours, hasPlan ? planned : counted(made.values()));
    int next = 0;
    for (Map.Entry<KindCount, Made> kind : made.entrySet()) {
      kind.getKey().made(entry, kind.getValue(), shares.get(next++));
    }
  }

  /** spec: by the planned hours where all of them give some; else empty. */
  private static List<BigInteger> planned(Map<KindCount, Made> made) {
    List<BigInteger> planned = new ArrayList<>();
    made.forEach(
        (kind, of) ->
            kind.kind()
                .hours()
                .map(each -> BigInteger.valueOf(each.seconds()))
                .map(each -> each.multiply(BigInteger.valueOf(of.pieces())))
                .ifPresent(planned::add));
    return planned.size() == made.size() ? planned : List.of();
  }

  private static List<BigInteger> counted(Collection<Made> made) {
    return made.stream().map(of -> BigInteger.valueOf(of.pieces())).toList();
  }

  Map<String, PieceCount> counts() {
    Map<String, PieceCount> counts = new LinkedHashMap<>();
    kinds.forEach((fold, kind) -> counts.put(fold, kind.count()));
    return counts;
  }
}
