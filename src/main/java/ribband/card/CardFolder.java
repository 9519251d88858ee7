package ribband.card;

import java.io.File;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import ribband.journal.JournalFolder;
import ribband.measure.Unreadable;

/**
 * All files of a card's folder that somebody would look at; what systems and programs keep for
 * themselves is passed over.
 *
 * @param files in no certain order
 * @param leftOut what could not be looked at
 */
record CardFolder(List<CardFile> files, List<LeftOut> leftOut) {
  private static final Set<String> OF_SYSTEMS =
      Set.of("thumbs.db", "desktop.ini", "system volume information", "$recycle.bin");

  /** A film's small picture, and what programs have noted of a picture. */
  private static final List<String> SIDECARS = List.of(".thm", ".aae", ".xmp");

  CardFolder {
    files = List.copyOf(files);
    leftOut = List.copyOf(leftOut);
  }

  /**
   * Walks the folder and those in it.
   *
   * @param output the site's folder, which is passed over, as is any that holds a site
   * @throws Unreadable where it is no folder
   * @throws IOException where the folder itself cannot be read
   */
  static CardFolder list(Path folder, Path output) throws Unreadable, IOException {
    if (!Files.exists(folder)) {
      throw new Unreadable("is not there", "name the folder that holds the pictures");
    }
    if (!Files.isDirectory(folder)) {
      throw new Unreadable("is no folder", "name the folder that holds the pictures");
    }
    Walk walk = new Walk(folder.toRealPath(), real(output));
    Files.walkFileTree(walk.root, walk);
    return new CardFolder(walk.files, walk.leftOut);
  }

  private static Path real(Path output) throws IOException {
    return Files.exists(output) ? output.toRealPath() : output.toAbsolutePath().normalize();
  }

  /** One pass over the folders; kept only while it runs. */
  static final class Walk extends SimpleFileVisitor<Path> {
    private final Path root;
    private final Path output;
    private final List<CardFile> files = new ArrayList<>();
    private final List<LeftOut> leftOut = new ArrayList<>();

    Walk(Path root, Path output) {
      this.root = root;
      this.output = output;
    }

    @Override
    public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
      if (folder.equals(root)) {
        return FileVisitResult.CONTINUE;
      }
      boolean passedOver =
          isPassedOver(folder)
              || folder.equals(output)
              || Files.exists(folder.resolve(JournalFolder.SITE_FILES));
      return passedOver ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFile(Path path, BasicFileAttributes attributes) {
      if (isPassedOver(path)) {
        return FileVisitResult.CONTINUE;
      }
      CardFile file = at(path);
      // A pipe would block whoever opens it, so that it must be known before.
      if (Files.isRegularFile(path)) {
        files.add(file);
      } else if (attributes.isSymbolicLink()) {
        leftOut.add(file.leftOut(Reason.UNREADABLE, wrongLink(path)));
      } else {
        leftOut.add(file.leftOut(Reason.NO_PICTURE));
      }
      return FileVisitResult.CONTINUE;
    }

    private static String wrongLink(Path link) {
      return Files.isDirectory(link)
          ? "is a link to a folder; name that folder instead"
          : "is a link that leads to no file";
    }

    @Override
    public FileVisitResult visitFileFailed(Path path, IOException why) throws IOException {
      return unreadable(path, why);
    }

    @Override
    public FileVisitResult postVisitDirectory(Path folder, IOException why) throws IOException {
      return why == null ? FileVisitResult.CONTINUE : unreadable(folder, why);
    }

    List<LeftOut> leftOut() {
      return List.copyOf(leftOut);
    }

    private FileVisitResult unreadable(Path path, IOException why) throws IOException {
      if (path.equals(root)) {
        throw why;
      }
      if (!isPassedOver(path)) {
        leftOut.add(at(path).leftOut(Reason.UNREADABLE, CardFolder.sentence(why)));
      }
      return FileVisitResult.CONTINUE;
    }

    private CardFile at(Path path) {
      String name = root.relativize(path).toString().replace(File.separatorChar, '/');
      return new CardFile(path, name);
    }

    private static boolean isPassedOver(Path path) {
      String name = path.getFileName().toString().toLowerCase(Locale.ROOT);
      return name.startsWith(".")
          || OF_SYSTEMS.contains(name)
          || SIDECARS.stream().anyMatch(name::endsWith);
    }
  }

  /** Why the disk refused, without its subject. */
  static String sentence(IOException why) {
    return why instanceof AccessDeniedException
        ? "may not be read by you; ask for permission or copy it elsewhere"
        : "cannot be read; try the card again, or another reader";
  }
}
