package ribband.joints;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribband.journal.Entry;
import ribband.journal.Journal;
import ribband.journal.Project;
import ribband.measure.Name;

/**
 * All joints and coats up to a moment.
 *
 * @param project theirs
 * @param now the moment
 * @param all in the order of their entries; of one entry the joints first
 */
public record Bonds(Project project, Instant now, List<Bond> all) {
  public Bonds {
    all = List.copyOf(all);
  }

  /** spec: entries dated after today do not count; today is the project's. */
  public static Bonds of(Journal journal, Instant now) {
    Project project = journal.project();
    LocalDate today = now.atZone(project.zone()).toLocalDate();
    Reckoner reckoner = new Reckoner(project);
    List<Bond> all = new ArrayList<>();
    for (Entry entry : journal.entries()) {
      if (!entry.date().isAfter(today)) {
        addTo(all, entry, reckoner);
      }
    }
    return new Bonds(project, now, covered(all, project, now));
  }

  private static void addTo(List<Bond> all, Entry entry, Reckoner reckoner) {
    Map<String, Integer> joints = new HashMap<>();
    entry
        .joints()
        .forEach(joint -> all.add(reckoner.joint(joint, entry, next(joints, joint.name()))));
    Map<String, Integer> coats = new HashMap<>();
    entry.coats().forEach(coat -> all.add(reckoner.coat(coat, entry, next(coats, coat.what()))));
  }

  private static int next(Map<String, Integer> numbers, String name) {
    return numbers.merge(Name.fold(name), 1, Integer::sum) - 1;
  }

  /** spec: a coat is covered by the next one of the same {@code what}. */
  private static List<Bond> covered(List<Bond> all, Project project, Instant now) {
    Map<String, List<LaidCoat>> byName = new HashMap<>();
    for (Bond bond : all) {
      if (bond instanceof LaidCoat coat) {
        byName.computeIfAbsent(Name.fold(coat.made().name()), n -> new ArrayList<>()).add(coat);
      }
    }
    Map<Bond, Bond> covered = new HashMap<>();
    for (List<LaidCoat> coats : byName.values()) {
      // Sorting is stable: coats of one moment lie as they are written.
      coats.sort(Comparator.comparing(coat -> laid(coat, project)));
      for (int i = 0; i + 1 < coats.size(); i++) {
        Instant next = laid(coats.get(i + 1), project);
        if (!next.isAfter(now)) {
          covered.put(coats.get(i), coats.get(i).covered(Optional.of(next)));
        }
      }
    }
    return all.stream().map(bond -> covered.getOrDefault(bond, bond)).toList();
  }

  private static Instant laid(LaidCoat coat, Project project) {
    return coat.at().orElseGet(() -> coat.made().day().atStartOfDay(project.zone()).toInstant());
  }

  /** Those that there is something to wait for. */
  public List<Bond> live() {
    return all.stream().filter(bond -> bond.isLive(now)).toList();
  }

  public List<Bond> listed(Which which) {
    return which == Which.ALL ? all : live();
  }

  /** What a live one calls for first. */
  public Optional<Due> next() {
    return live().stream()
        .flatMap(bond -> bond.dues().stream())
        .filter(due -> due.isAhead(now))
        .min(Comparator.comparing(Due::at));
  }
}
