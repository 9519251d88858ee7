package ribband.desk;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Stream;
import ribband.journal.Entry;
import ribband.journal.Journal;
import ribband.measure.Name;

/** Gives many new entries their names, each once; remembers what it gave. */
final class NewNames {
  private final Journal journal;
  private final Set<String> taken = new HashSet<>();

  NewNames(Journal journal) {
    this.journal = journal;
    journal.folder().all().stream()
        .map(file -> file.substring(file.lastIndexOf('/') + 1))
        .map(name -> name.contains(".") ? name.substring(0, name.lastIndexOf('.')) : name)
        .forEach(name -> taken.add(Name.plain(name)));
    // Two names may come to one address.
    journal.entries().stream().map(Entry::address).map(Name::plain).forEach(taken::add);
  }

  /** The first free name of a day with these words. */
  NewEntry free(LocalDate day, String words) {
    NewEntry first = NewEntry.wished(journal, day, words);
    return Stream.iterate(1, n -> n + 1)
        .map(n -> n == 1 ? first : new NewEntry(first.folder(), first.stem() + "-" + n))
        .filter(this::take)
        .findFirst()
        .orElseThrow();
  }

  /** This very name, which is free. */
  NewEntry named(LocalDate day, String name) {
    NewEntry entry = new NewEntry(NewEntry.wished(journal, day, "").folder(), name);
    if (!take(entry)) {
      throw new IllegalArgumentException("taken: " + name);
    }
    return entry;
  }

  boolean isTaken(String name) {
    return taken.contains(Name.plain(name));
  }

  private boolean take(NewEntry entry) {
    return taken.add(Name.plain(entry.stem()));
  }
}
