package ribband.desk;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import ribband.card.Picture;
import ribband.journal.Journal;
import ribband.photo.PictureReader;
import ribband.photo.UnfitPicture;
import ribband.press.LoneFile;

/**
 * The pictures in a new entry's own folder, in order: those that are copied there, and those that
 * lie there already, put by hand or by a run that did not come to its end.
 */
final class OwnPictures {
  private static final Comparator<Shown> ORDER =
      Comparator.comparing(shown -> shown.taken().orElse(LocalDateTime.MAX));

  private OwnPictures() {}

  /**
   * A picture.
   *
   * @param name of its file in the folder
   * @param taken empty where nothing tells
   */
  private record Shown(String name, Optional<LocalDateTime> taken) {}

  /**
   * Copies pictures into the folder, each whole or not at all.
   *
   * @return the names of all that are there then, in order
   * @throws IOException where the disk fails, with a message that names what it failed on
   */
  static List<String> bring(List<Picture> pictures, Journal journal, NewEntry entry)
      throws IOException {
    List<Shown> all = found(journal, entry);
    Path folder = journal.folder().path(entry.pictures());
    LoneFile.clear(folder);
    if (!pictures.isEmpty()) {
      LoneFile.makeFolder(folder);
    }
    for (Picture picture : pictures) {
      copy(picture.file(), folder.resolve(picture.name()));
      all.add(new Shown(picture.name(), Optional.of(picture.taken())));
    }
    return inOrder(all);
  }

  private static List<String> inOrder(List<Shown> pictures) {
    // Sorting is stable: what the card has within a second stays in its order.
    return pictures.stream().sorted(ORDER).map(Shown::name).toList();
  }

  private static List<Shown> found(Journal journal, NewEntry entry) throws IOException {
    PictureReader reader = new PictureReader();
    List<Shown> found = new ArrayList<>();
    for (String file : journal.folder().in(entry.pictures())) {
      String name = file.substring(file.lastIndexOf('/') + 1);
      try {
        found.add(new Shown(name, reader.facts(journal.folder().path(file)).taken()));
      } catch (UnfitPicture e) {
        // It is no picture, or one that cannot be shown: the entry is right without it.
        continue;
      }
    }
    return found;
  }

  /** Where the same picture has come there since the folder was listed, all is well. */
  private static void copy(Path original, Path file) throws IOException {
    try {
      LoneFile.copyNew(original, file);
    } catch (FileAlreadyExistsException e) {
      if (Files.mismatch(original, file) != -1) {
        throw new IOException("cannot write " + file + ": another file came there; try again", e);
      }
    }
  }
}
