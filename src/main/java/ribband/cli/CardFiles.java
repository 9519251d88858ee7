package ribband.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ribband.journal.JournalFolder;
import ribband.photo.Darkroom;
import ribband.photo.UnfitPicture;
import ribband.postcard.Card;
import ribband.postcard.Postcard;
import ribband.postcard.Shape;
import ribband.press.LoneFile;
import ribband.problem.OneLine;

/** The two files of a card, in a folder that the builder named. */
final class CardFiles {
  /** Far longer than any card of ours. */
  private static final long LONGEST = 64L << 20;

  private static final Map<Shape, String> ENDINGS =
      Map.of(Shape.SHARED, "-card.png", Shape.FRAME, "-frame.png");

  private final Surroundings around;
  private final String typed;

  /**
   * @param typed the folder, from where the builder stands
   */
  CardFiles(Surroundings around, String typed) {
    this.around = around;
    this.typed = typed;
  }

  /**
   * Draws both, then writes each whole or not at all, with the folders above it; a card that stands
   * there is replaced.
   *
   * @param stem what both names begin with, of plain letters
   * @return the names, as they may be typed from where the builder stands
   * @throws Refusal where something else stands there
   * @throws IOException where the disk fails
   */
  List<String> write(Card card, String stem, JournalFolder journal) throws IOException {
    Path folder = around.path(typed);
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      throw Refusal.surroundings(
          "cannot write into " + OneLine.of(typed) + ": it is no folder; name one");
    }
    Map<Path, byte[]> files = new LinkedHashMap<>();
    List<String> names = new ArrayList<>();
    for (Shape shape : Shape.values()) {
      Path named = Path.of(typed).resolve(stem + ENDINGS.get(shape)).normalize();
      Path file = around.path(named.toString());
      requireOurs(file, named);
      files.put(file, drawn(card, shape, journal));
      names.add(OneLine.of(named.toString()));
    }
    LoneFile.makeFolder(folder);
    for (Map.Entry<Path, byte[]> file : files.entrySet()) {
      LoneFile.write(file.getKey(), file.getValue());
    }
    return names;
  }

  private static void requireOurs(Path file, Path named) throws IOException {
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !isOurs(file)) {
      throw Refusal.wrongUsage(
          OneLine.of(named.toString())
              + " is no card that ribband drew and stays as it is; name another folder with --into");
    }
  }

  private static boolean isOurs(Path file) throws IOException {
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
        && Files.size(file) <= LONGEST
        && Postcard.isOurs(Files.readAllBytes(file));
  }

  private static byte[] drawn(Card card, Shape shape, JournalFolder journal) throws IOException {
    Darkroom darkroom = new Darkroom();
    try {
      return card.draw(
          shape, (shot, size) -> darkroom.print(journal.path(shot.file()), shot.facts(), size));
    } catch (UnfitPicture e) {
      // It was whole a moment ago, when the journal was looked at.
      throw new IOException(
          "cannot read " + card.shot().orElseThrow().file() + ": it " + e.getMessage(), e);
    }
  }
}
