package ribband.card;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import ribband.journal.JournalFolder;
import ribband.memory.Hash;

/**
 * Finds content among the files of a journal. Reads only those that are as long as what is looked
 * for, each once, and remembers them while it lives.
 */
final class InJournal {
  private final JournalFolder journal;

  /** Journal paths in order. */
  private final Map<Long, List<String>> bySize;

  private final Map<String, String> digests = new HashMap<>();

  InJournal(JournalFolder journal) {
    this.journal = journal;
    this.bySize =
        journal.all().stream()
            .collect(Collectors.groupingBy(file -> journal.stamp(file, Instant.EPOCH).size()));
  }

  /** The first file of that content, as a journal path. */
  Optional<String> of(Shot shot) {
    return bySize.getOrDefault(shot.size(), List.of()).stream()
        .filter(file -> digests.computeIfAbsent(file, this::digest).equals(shot.digest()))
        .findFirst();
  }

  /** A file that is gone or cannot be read is like none, so that the picture is brought in. */
  private String digest(String file) {
    Path path = journal.path(file);
    try {
      return Hash.of(path);
    } catch (IOException e) {
      return "";
    }
  }
}
