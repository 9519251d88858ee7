package ribband.site;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import ribband.album.Shot;
import ribband.album.Showing;
import ribband.journal.Entry;
import ribband.journal.FileNames;
import ribband.journal.Journal;
import ribband.measure.Unreadable;
import ribband.prose.Mention;
import ribband.prose.Print;
import ribband.prose.Surroundings;

/** What links and pictures in entries' texts lead to on this site. */
final class EntryWords implements Showing {
  private final Journal journal;
  private final Map<String, Entry> entriesByFile;

  EntryWords(Journal journal) {
    this.journal = journal;
    this.entriesByFile =
        journal.entries().stream().collect(Collectors.toMap(Entry::file, Function.identity()));
  }

  @Override
  public Optional<Surroundings> of(Entry entry, List<Shot> shots) {
    return entry.isPublic() ? Optional.of(around(entry, shots)) : Optional.empty();
  }

  private Surroundings around(Entry entry, List<Shot> shots) {
    String page = Addresses.entry(entry);
    return new Surroundings() {
      @Override
      public Optional<String> href(Mention link) {
        return FileNames.linked(journal.folder(), entry.file(), link.path())
            .flatMap(file -> Optional.ofNullable(entriesByFile.get(file)))
            .filter(Entry::isPublic)
            .map(other -> Addresses.href(page, Addresses.entry(other)) + fragment(link));
      }

      @Override
      public Optional<Print> print(Mention picture) {
        return shots.stream()
            .filter(shot -> shows(entry, shot, picture))
            .findFirst()
            .map(shot -> new Prints(page).inText(shot));
      }
    };
  }

  private static String fragment(Mention link) {
    return link.fragment().isEmpty() ? "" : "#h-" + link.fragment();
  }

  private boolean shows(Entry entry, Shot shot, Mention picture) {
    try {
      return FileNames.picture(journal.folder(), entry.file(), picture.path()).equals(shot.file());
    } catch (Unreadable e) {
      return false;
    }
  }
}
