package ribband.press;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/** Tells where a site may stand, before anything is made there. */
final class Ground {
  static final String WORK_FOLDER = ".ribband";

  private Ground() {}

  /**
   * The folder behind an output's name, links followed; it need not exist.
   *
   * @throws PressRefused where it is no folder, the root, the work folder, or the journal, the home
   *     folder or anything above either
   */
  static Path check(Path output, Path journal, Path home) throws PressRefused, IOException {
    Path real = real(output);
    if (Files.exists(real) && !Files.isDirectory(real)) {
      throw new PressRefused("the output " + output + " is not a folder", "choose a folder");
    }
    if (real.getParent() == null) {
      throw refused(output, "the root of a disk", journal);
    }
    for (Path part : real) {
      if (part.toString().equalsIgnoreCase(WORK_FOLDER)) {
        throw refused(output, "in a work folder of the tool", journal);
      }
    }
    refuseSameOrAbove(output, real, journal, "the journal", journal);
    refuseSameOrAbove(output, real, home, "your home folder", journal);
    return real;
  }

  static Path real(Path output) throws PressRefused, IOException {
    Path whole = output.toAbsolutePath();
    if (Files.exists(whole)) {
      return whole.toRealPath();
    }
    whole = whole.normalize();
    if (Files.exists(whole, LinkOption.NOFOLLOW_LINKS)) {
      throw new PressRefused(
          "the output " + output + " is a link that leads nowhere", "remove it or mend it");
    }
    return real(whole.getParent()).resolve(whole.getFileName());
  }

  // The file system itself says whether two names are one folder: it knows about case, the way
  // letters are composed, links and mounts.
  private static void refuseSameOrAbove(
      Path output, Path real, Path kept, String what, Path journal)
      throws PressRefused, IOException {
    if (!Files.exists(real) || !Files.exists(kept)) {
      return;
    }
    Path folder = kept.toRealPath();
    if (Files.isSameFile(real, folder)) {
      throw refused(output, what + " itself", journal);
    }
    for (Path above = folder.getParent(); above != null; above = above.getParent()) {
      if (Files.isSameFile(real, above)) {
        throw refused(output, "a folder above " + what, journal);
      }
    }
  }

  private static PressRefused refused(Path output, String what, Path journal) {
    return new PressRefused(
        "the output " + output + " is " + what,
        "choose a folder of its own, such as " + journal.resolve("site"));
  }
}
