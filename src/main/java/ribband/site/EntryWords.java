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

/** What links and pictures in the texts of a journal lead to on this site. */
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

  @Override
  public Optional<Surroundings> about(String file) {
    return Optional.of(around(file, Addresses.HOME, picture -> Optional.empty()));
  }

  private Surroundings around(Entry entry, List<Shot> shots) {
    String page = Addresses.entry(entry);
    return around(
        entry.file(),
        page,
        picture ->
            file(entry, picture)
                .flatMap(file -> shots.stream().filter(s -> s.file().equals(file)).findFirst())
                .map(shot -> new Prints(page).inText(shot)));
  }

  private Surroundings around(
      String file, String page, Function<Mention, Optional<Print>> pictures) {
    return new Surroundings() {
      @Override
      public Optional<String> href(Mention link) {
        return FileNames.linked(journal.folder(), file, link.path())
            .flatMap(target -> Optional.ofNullable(entriesByFile.get(target)))
            .filter(Entry::isPublic)
            .map(other -> Addresses.href(page, Addresses.entry(other)));
      }

      @Override
      public Optional<Print> print(Mention picture) {
        return pictures.apply(picture);
      }
    };
  }

  private Optional<String> file(Entry entry, Mention picture) {
    try {
      return Optional.of(FileNames.picture(journal.folder(), entry.file(), picture.path()));
    } catch (Unreadable e) {
      return Optional.empty();
    }
  }
}
