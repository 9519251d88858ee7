package ribband.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ribband.album.Leaf;
import ribband.journal.Entry;
import ribband.journal.Phase;
import ribband.measure.Saying;

/** What was learned, by phase, the newest first, each beside the entry that tells it. */
final class LessonsPage {
  private final Book book;
  private final Map<Optional<String>, List<Entry>> byPhase;
  private final EntryNames names;

  LessonsPage(Book book) {
    this.book = book;
    this.byPhase = byPhase(book);
    this.names = new EntryNames(book.album());
  }

  /** What the template shows. */
  record View(String sentence, List<Section> sections) {}

  /**
   * The lessons of a phase.
   *
   * @param count said
   * @param href its own place on this page
   * @param phaseHref the phase's page; empty where they have none
   */
  record Section(
      String id, String href, String title, String phaseHref, String count, List<Night> nights) {}

  /** What one entry taught, in its order. */
  record Night(String date, String day, String title, String href, List<String> lessons) {}

  View view() {
    List<Section> sections = new ArrayList<>();
    for (Phase phase : book.journal().phases()) {
      Optional.ofNullable(byPhase.get(Optional.of(phase.id())))
          .ifPresent(entries -> sections.add(section(Optional.of(phase), entries)));
    }
    Optional.ofNullable(byPhase.get(Optional.<String>empty()))
        .ifPresent(entries -> sections.add(section(Optional.empty(), entries)));
    int count = byPhase.values().stream().mapToInt(LessonsPage::count).sum();
    return new View(
        Saying.counted(count, "lesson", "lessons") + ", the newest of each phase first.", sections);
  }

  private static Map<Optional<String>, List<Entry>> byPhase(Book book) {
    Map<Optional<String>, List<Entry>> byPhase = new LinkedHashMap<>();
    for (Leaf leaf : book.newestFirst()) {
      Entry entry = leaf.entry();
      if (!entry.lessons().isEmpty()) {
        byPhase.computeIfAbsent(phaseOf(entry), phase -> new ArrayList<>()).add(entry);
      }
    }
    return byPhase;
  }

  /** The entry's own phase, else the only one that it worked in. */
  private static Optional<String> phaseOf(Entry entry) {
    return entry
        .phase()
        .or(
            () ->
                entry.hours().keySet().stream().findFirst().filter(id -> entry.hours().size() == 1))
        .filter(id -> !id.equals(Phase.UNSORTED.id()));
  }

  private Section section(Optional<Phase> phase, List<Entry> entries) {
    String id = phase.map(Phase::id).map(Addresses::lessonsId).orElse("others");
    return new Section(
        id,
        Addresses.href(Addresses.LESSONS, "#" + id),
        phase.map(Phase::title).orElse("Without a phase"),
        phase.map(p -> Addresses.href(Addresses.LESSONS, Addresses.phase(p.id()))).orElse(""),
        Saying.count(count(entries)),
        entries.stream().map(this::night).toList());
  }

  private Night night(Entry entry) {
    return new Night(
        entry.date().toString(),
        Saying.day(entry.date()),
        names.of(entry),
        Addresses.href(Addresses.LESSONS, Addresses.entry(entry)),
        entry.lessons());
  }

  /** How many lessons readers may hear of, of a phase. */
  int count(String phase) {
    return count(byPhase.getOrDefault(Optional.of(phase), List.of()));
  }

  private static int count(List<Entry> entries) {
    return entries.stream().mapToInt(entry -> entry.lessons().size()).sum();
  }
}
