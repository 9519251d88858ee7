package ribband.album;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import ribband.journal.JournalFolder;
import ribband.photo.PictureFacts;
import ribband.photo.PictureReader;
import ribband.photo.UnfitPicture;

/** Looks at the journal's pictures, at each file once. May be used by several threads. */
final class PictureLooker {
  private final JournalFolder folder;
  private final PictureMemory memory;
  private final PictureReader reader = new PictureReader();
  private final Map<String, Look> looks = new ConcurrentHashMap<>();

  PictureLooker(JournalFolder folder, PictureMemory memory) {
    this.folder = folder;
    this.memory = memory;
  }

  /** What came of it: facts, or why there are none. */
  record Look(PictureFacts facts, UnfitPicture unfit) {}

  /** Looks at many at once, so that an entry with a card full of pictures keeps all cores busy. */
  void lookAhead(List<String> files) {
    files.parallelStream().forEach(file -> looks.computeIfAbsent(file, this::look));
  }

  PictureFacts facts(String file) throws UnfitPicture {
    Look look = looks.computeIfAbsent(file, this::look);
    if (look.unfit() != null) {
      throw look.unfit();
    }
    return look.facts();
  }

  private Look look(String file) {
    return memory.facts(file).map(facts -> new Look(facts, null)).orElseGet(() -> read(file));
  }

  private Look read(String file) {
    try {
      PictureFacts facts = reader.facts(folder.path(file));
      memory.remember(file, facts);
      return new Look(facts, null);
    } catch (UnfitPicture e) {
      return new Look(null, e);
    } catch (IOException e) {
      return unreadable(e);
    }
  }

  private static Look unreadable(IOException e) {
    return new Look(
        null, new UnfitPicture("cannot be read (" + e.getMessage() + "); check its permissions"));
  }
}
