package ribband.card;

import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ribband.journal.JournalFolder;
import ribband.measure.Unreadable;

/**
 * Picks the pictures of a night from a phone's or a camera card's folder. Changes nothing in it.
 */
public final class Card {
  private Card() {}

  /**
   * Looks at all files in the folder and those in it. Hidden and system files, sidecars and folders
   * that hold a site are passed over; links to folders are not gone into.
   *
   * @param folder may lie in the journal, or be it
   * @param zone in which the files' own times are told
   * @param journal where a picture of the same content means that it is there already
   * @param output where the site goes; it need not exist
   * @param taken names in the entry's own folder that no picture may be given
   * @throws Unreadable where there is no such folder: what is wrong with its name, and the cure
   * @throws IOException where the folder itself cannot be read; what cannot be read in it is left
   *     out
   */
  public static Picked pick(
      Path folder,
      Window window,
      ZoneId zone,
      JournalFolder journal,
      Path output,
      Set<String> taken)
      throws Unreadable, IOException {
    CardFolder card = CardFolder.list(folder, output);
    Look look = new Look(window, zone);
    List<Seen> seen = card.files().parallelStream().map(look::at).toList();
    List<LeftOut> leftOut = new ArrayList<>(card.leftOut());
    leftOut.addAll(only(LeftOut.class, seen));
    List<Picture> pictures = new ArrayList<>();
    SoundNames names = new SoundNames(taken);
    for (Shot shot : fresh(only(Shot.class, seen), new InJournal(journal), leftOut)) {
      String name = names.give(shot.file().lastName(), shot.kind());
      pictures.add(new Picture(shot.file().path(), name, shot.taken()));
    }
    leftOut.sort(Comparator.comparing(LeftOut::name, NaturalOrder::compare));
    return new Picked(pictures, leftOut);
  }

  private static <T extends Seen> List<T> only(Class<T> kind, List<Seen> seen) {
    return seen.stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  /** In order, and each content once; what is not fresh is added to what is left out. */
  private static List<Shot> fresh(List<Shot> shots, InJournal journal, List<LeftOut> leftOut) {
    List<Shot> fresh = new ArrayList<>();
    Map<String, String> firstOf = new HashMap<>();
    for (Shot shot : shots.stream().sorted(Shot.ORDER).toList()) {
      Optional<String> there = journal.of(shot);
      String first = firstOf.putIfAbsent(shot.digest(), shot.file().name());
      if (there.isPresent()) {
        leftOut.add(shot.leftOut(Reason.ALREADY_THERE, there.get()));
      } else if (first != null) {
        leftOut.add(shot.leftOut(Reason.TWICE_ON_THE_CARD, first));
      } else {
        fresh.add(shot);
      }
    }
    return fresh;
  }
}
